package site

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"

	"github.com/gofrs/flock"
)

// One run at a time writes into a folder. The lock is the operating system's,
// on a file that stays: it goes with its process, however that ends, so there
// is no dead lock to tell from a living one, and nothing to take over.

const lockName = ".paceleaf.lock"

func (s *Site) lock() error {
	info, err := s.root.Lstat(lockName)
	switch {
	case errors.Is(err, fs.ErrNotExist):
	case err != nil:
		return fmt.Errorf("%s cannot be read: %w; choose another output folder", s.full(lockName), reason(err))
	case !info.Mode().IsRegular():
		return fmt.Errorf("%s is no plain file; remove it, then build again", s.full(lockName))
	}
	s.only = flock.New(filepath.Join(s.abs, lockName), flock.SetPermissions(0o600))
	free, err := s.only.TryLock()
	if err != nil {
		return fmt.Errorf("%s cannot be locked: %w; choose another output folder", s.full(lockName), reason(err))
	}
	if !free {
		return fmt.Errorf("%s is being written by another build; wait for it", s.dir)
	}
	return nil
}

func (s *Site) unlock() error {
	if err := s.only.Close(); err != nil {
		return fmt.Errorf("%s cannot be unlocked: %w", s.full(lockName), reason(err))
	}
	return nil
}

// reason strips the operation and the path from a system error: our own text
// names the path in full.
func reason(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}
