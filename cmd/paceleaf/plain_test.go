package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
)

// watched are the scripts in which two things happen at once, and so the ones that the race detector has something to
// find in. With it on, the others run a plain binary: seven times as fast, and of the same code.
var watched = []string{"build_client_removed", "build_only_what_changed", "demo", "floor", "library", "logs"}

// plainBinary compiles this very test binary without the race detector and hands on the folder in which it is named
// paceleaf; empty where the detector is off, and the binary at hand is the plain one.
func plainBinary(t *testing.T) string {
	for _, script := range watched {
		if _, err := os.Stat(filepath.Join(scripts, script+".txtar")); err != nil {
			t.Errorf("a watched script is not there: %v", err)
		}
	}
	if !detecting {
		return ""
	}
	dir := t.TempDir()
	name := filepath.Join(dir, "paceleaf")
	if runtime.GOOS == "windows" {
		name += ".exe"
	}
	if out, err := exec.Command("go", "test", "-c", "-race=false", "-o", name, ".").CombinedOutput(); err != nil {
		t.Fatalf("a plain binary for the scripts: %v\n%s", err, out)
	}
	return dir
}

// isWatched says whether the script that works in a folder is one of watched; testscript names the folder script-NAME.
func isWatched(work string) bool {
	return slices.Contains(watched, strings.TrimPrefix(filepath.Base(work), "script-"))
}
