//go:build windows

package site

import (
	"errors"
	"syscall"
)

const (
	queryLimitedInformation = 0x1000 // PROCESS_QUERY_LIMITED_INFORMATION
	stillActive             = 259    // STILL_ACTIVE
)

// alive reports whether a process with this number runs. A process that we may
// not ask is taken for alive.
func alive(pid int) bool {
	h, err := syscall.OpenProcess(queryLimitedInformation, false, uint32(pid))
	if err != nil {
		return errors.Is(err, syscall.ERROR_ACCESS_DENIED)
	}
	defer syscall.CloseHandle(h)
	var code uint32
	return syscall.GetExitCodeProcess(h, &code) != nil || code == stillActive
}
