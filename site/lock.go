package site

import (
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"time"
)

// The lock is a file that only one run can create. It holds the number of its
// process and the name of its machine: the lock of a process that is dead is
// taken over, that of another machine never, for we cannot ask there.

const lockName = ".paceleaf.lock"

// newborn is how long a lock may stay empty where a disk knows no second names:
// there its owner creates it first and fills it a moment later. Chosen.
const newborn = 2 * time.Second

func lockText() string {
	host, err := os.Hostname()
	if err != nil || strings.ContainsAny(host, " \n") {
		host = "-"
	}
	return fmt.Sprintf("%d %s\n", os.Getpid(), host)
}

func (s *Site) lock() error {
	mine := lockText()
	for range 3 { // each round loses only to another run that is faster
		err := s.writeLock(mine)
		if err == nil {
			return nil
		}
		if !errors.Is(err, fs.ErrExist) {
			return fmt.Errorf("%s cannot be written: %w; choose another output folder", s.full(lockName), reason(err))
		}
		seen, err := s.root.ReadFile(lockName)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		if err != nil {
			return fmt.Errorf("%s cannot be read: %w; remove it if no build is running", s.full(lockName), reason(err))
		}
		if s.locked(string(seen)) {
			return fmt.Errorf("%s is being written by another build (%s); wait for it, or remove %s if none is running",
				s.dir, holder(string(seen)), s.full(lockName))
		}
		s.takeAway(string(seen))
	}
	return fmt.Errorf("%s is being written by another build; wait for it", s.dir)
}

// writeLock makes the lock, filled from its first moment: it gets its name by a
// link, which fails if the name is taken.
func (s *Site) writeLock(text string) error {
	own := ownName()
	if err := writeNew(s.root, own, []byte(text), 0o600); err != nil {
		return err
	}
	defer s.root.Remove(own)
	err := s.root.Link(own, lockName)
	if err == nil || errors.Is(err, fs.ErrExist) {
		return err
	}
	return writeNew(s.root, lockName, []byte(text), 0o600)
}

// ownName is a temporary name that no other run uses.
func ownName() string { return fmt.Sprintf("%s.%016x%s", lockName, rand.Uint64(), tmpEnding) }

// locked reports whether the owner of a lock may still be at work.
func (s *Site) locked(seen string) bool {
	pid, host := owner(seen)
	if pid <= 0 {
		fi, err := s.root.Lstat(lockName)
		return err == nil && time.Since(fi.ModTime()) < newborn
	}
	_, here := owner(lockText())
	return host != here || alive(pid)
}

func owner(text string) (pid int, host string) {
	first, rest, _ := strings.Cut(strings.TrimSpace(text), " ")
	pid, err := strconv.Atoi(first)
	if err != nil {
		return 0, ""
	}
	return pid, rest
}

func holder(text string) string {
	pid, host := owner(text)
	if pid <= 0 {
		return "just starting"
	}
	return fmt.Sprintf("process %d on %s", pid, host)
}

// takeAway moves a dead lock aside. Two runs may try at once; the one that
// finds it has moved the other's living lock gives it back.
func (s *Site) takeAway(dead string) {
	aside := ownName()
	if s.root.Rename(lockName, aside) != nil {
		return
	}
	if got, err := s.root.ReadFile(aside); err == nil && string(got) != dead {
		s.root.Link(aside, lockName)
	}
	s.root.Remove(aside)
}

// unlock removes the lock if it is still ours.
func (s *Site) unlock() error {
	if text, err := s.root.ReadFile(lockName); err != nil || string(text) != lockText() {
		return nil
	}
	if err := at("remove", lockName); err != nil {
		return err
	}
	if err := s.root.Remove(lockName); err != nil {
		return fmt.Errorf("%s cannot be removed: %w; remove it by hand", s.full(lockName), reason(err))
	}
	return nil
}

// writeNew writes a file that must not exist yet.
func writeNew(root *os.Root, name string, data []byte, perm fs.FileMode) error {
	f, err := root.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, perm)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if cerr := f.Close(); err == nil {
		err = cerr
	}
	if err != nil {
		root.Remove(name)
	}
	return err
}

// reason strips the operation and the path from a system error: our own text
// names the path in full.
func reason(err error) error {
	var path *fs.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &path):
		return path.Err
	case errors.As(err, &link):
		return link.Err
	}
	return err
}
