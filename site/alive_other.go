//go:build !unix && !windows

package site

// alive cannot be asked here, so no lock is ever taken over.
func alive(int) bool { return true }
