package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// TestBuiltBinary builds the command as a therapist would get it and runs the demo with it.
func TestBuiltBinary(t *testing.T) {
	dir := t.TempDir()
	binary := filepath.Join(dir, "paceleaf")
	if out, err := exec.Command("go", "build", "-o", binary, ".").CombinedOutput(); err != nil {
		t.Fatalf("go build: %v\n%s", err, out)
	}
	for _, where := range []string{"cold", "warm"} {
		began := time.Now()
		c := exec.Command(binary, "demo", where)
		c.Dir = dir
		out, err := c.CombinedOutput()
		if err != nil {
			t.Fatalf("demo: %v\n%s", err, out)
		}
		t.Logf("%s demo: %v", where, time.Since(began).Round(time.Millisecond))
		if said, _, _ := strings.Cut(string(out), "\n"); !strings.HasPrefix(said, "8 clients built") {
			t.Errorf("demo says %q", said)
		}
		for _, page := range []string{"hand/tern-04/handout.html", "desk/tern-04/plan.json", "desk/overview.html"} {
			if info, err := os.Stat(filepath.Join(dir, where, "out", page)); err != nil || info.Size() == 0 {
				t.Errorf("%s: %v", page, err)
			}
		}
	}
}
