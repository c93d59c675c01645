//go:build unix

package site

import (
	"errors"
	"syscall"
)

// alive reports whether a process with this number runs. Signal 0 is sent to
// nobody; it only asks.
func alive(pid int) bool {
	err := syscall.Kill(pid, 0)
	return err == nil || errors.Is(err, syscall.EPERM)
}
