package site

import (
	"bytes"
	"crypto/sha256"
	"io"
	"os"
	"sync"
)

// buffers are for reading pages back; 32 KiB each, one a worker.
var buffers = sync.Pool{New: func() any { b := make([]byte, 32<<10); return &b }}

// sumOf hashes a file.
func (s *Site) sumOf(path string) (sum [sha256.Size]byte, err error) {
	f, err := s.root.Open(path)
	if err != nil {
		return sum, err
	}
	defer f.Close()
	h := sha256.New()
	buf := buffers.Get().(*[]byte)
	defer buffers.Put(buf)
	for {
		n, err := f.Read(*buf)
		h.Write((*buf)[:n])
		if err != nil {
			return [sha256.Size]byte(h.Sum(nil)), endOrError(err)
		}
	}
}

// holds reports whether a file has exactly these bytes.
func holds(dir *os.Root, name string, data []byte) (bool, error) {
	f, err := dir.Open(name)
	if err != nil {
		return false, err
	}
	defer f.Close()
	buf := buffers.Get().(*[]byte)
	defer buffers.Put(buf)
	for {
		n, err := f.Read(*buf)
		if n > len(data) || !bytes.Equal((*buf)[:n], data[:n]) {
			return false, nil
		}
		data = data[n:]
		if err != nil {
			return len(data) == 0, endOrError(err)
		}
	}
}

func endOrError(err error) error {
	if err == io.EOF {
		return nil
	}
	return err
}
