package site

import (
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// The three builds of the crash tests. From first to second, a changes, b does
// not, c goes and d comes.
var builds = map[string]map[string][]File{
	"first": {
		"a": pages("hand/a/p", "one", "hand/a/q", "one", "hand/a/r", "one", "desk/a/s", "same"),
		"b": pages("hand/b/p", "same"), "c": pages("hand/c/p", "one", "desk/c/s", "one"),
	},
	"second": {
		"a": pages("hand/a/p", "two", "hand/a/q", "zwei", "hand/a/n", "two", "desk/a/s", "same"),
		"b": pages("hand/b/p", "same"), "d": pages("hand/d/p", "two", "library/d", "two"),
	},
}

// TestMain lets a test start this binary again as a build that dies.
func TestMain(m *testing.M) {
	if dir := os.Getenv("PACELEAF_TEST_DIR"); dir != "" {
		os.Exit(child(dir, os.Getenv("PACELEAF_TEST_BUILD"), os.Getenv("PACELEAF_TEST_DIE_AT")))
	}
	os.Exit(m.Run())
}

func child(dir, build, dieAt string) int {
	last, _ := strconv.Atoi(dieAt)
	steps := 0
	testOnlyStep = func(string, string) error {
		if steps++; steps == last {
			self, _ := os.FindProcess(os.Getpid())
			self.Kill()
			select {}
		}
		return nil
	}
	s, err := Open(dir)
	if err != nil {
		fmt.Println(err)
		return 1
	}
	groups := builds[build]
	if build == "many" {
		groups = many()
	}
	for _, name := range []string{"a", "b", "c", "d"} {
		if files, ok := groups[name]; ok {
			if _, err := s.Put(name, build, files); err != nil {
				fmt.Println(err)
				return 1
			}
			delete(groups, name)
		}
	}
	for name, files := range groups {
		if _, err := s.Put(name, build, files); err != nil {
			fmt.Println(err)
			return 1
		}
	}
	if err := s.Close(); err != nil {
		fmt.Println(err)
		return 1
	}
	return 0
}

func start(dir, build string, dieAt int) *exec.Cmd {
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), "PACELEAF_TEST_DIR="+dir, "PACELEAF_TEST_BUILD="+build, fmt.Sprintf("PACELEAF_TEST_DIE_AT=%d", dieAt))
	return cmd
}

// A build is killed at its first step, at its second, and so on to the end.
// Each time every page is whole, old or new; and whichever build comes next,
// the folder is as if nothing had happened.
func TestKilledAtEveryStep(t *testing.T) {
	want := map[string]map[string]string{}
	for _, build := range []string{"first", "second"} {
		dir := t.TempDir()
		build2(t, dir, build)
		want[build] = tree(t, dir)
	}
	for _, before := range []string{"", "first"} {
		step, done := 0, false
		for !done {
			step++
			for _, after := range []string{"second", "first"} {
				dir := t.TempDir()
				if before != "" {
					build2(t, dir, before)
				}
				out, err := start(dir, "second", step).CombinedOutput()
				if done = err == nil; !done && len(out) > 0 {
					t.Fatalf("step %d: %s", step, out)
				}
				wantWhole(t, dir, step, want)
				build2(t, dir, after)
				same(t, fmt.Sprintf("%q killed at step %d, then %s", before, step, after), tree(t, dir), want[after])
			}
		}
		if step < 15 {
			t.Errorf("only %d steps were tried", step)
		}
		t.Logf("after %q: killed at %d steps", before, step-1)
	}
}

// build2 builds in this process; every group must be fresh right afterwards.
func build2(t *testing.T, dir, build string) {
	t.Helper()
	s := open(t, dir)
	for name, files := range builds[build] {
		if !s.Fresh(name, build) {
			mustPut(t, s, name, build, files)
		}
	}
	shut(t, s)
	s = open(t, dir)
	for name := range builds[build] {
		if !s.Fresh(name, build) {
			t.Errorf("%s is not fresh right after it was built", name)
		}
	}
	shut(t, s)
}

func wantWhole(t *testing.T, dir string, step int, want map[string]map[string]string) {
	t.Helper()
	for name, text := range tree(t, dir) {
		if name[0] == '.' || strings.HasSuffix(name, tmpEnding) || strings.HasSuffix(name, "/") {
			continue
		}
		old, isOld := want["first"][name]
		new, isNew := want["second"][name]
		if !(isOld && text == old || isNew && text == new) {
			t.Errorf("step %d: %s is %q, neither old nor new", step, name, text)
		}
	}
}

func same(t *testing.T, when string, got, want map[string]string) {
	t.Helper()
	for name, text := range want {
		if g, ok := got[name]; !ok || g != text {
			t.Errorf("%s: %s is %q, want %q", when, name, g, text)
		}
	}
	for name := range got {
		if _, ok := want[name]; !ok {
			t.Errorf("%s: %s is left over", when, name)
		}
	}
}

func many() map[string][]File {
	groups := map[string][]File{}
	for i := range 300 {
		name := fmt.Sprintf("m-%03d", i)
		groups[name] = pages("hand/"+name+"/p", strings.Repeat(name, 2000), "desk/"+name+"/p", strings.Repeat(name, 50))
	}
	return groups
}

// The same with a process that is killed from outside at any moment.
func TestKilledFromOutside(t *testing.T) {
	clean := t.TempDir()
	run(t, clean, many())
	want := tree(t, clean)
	dir := t.TempDir()
	killed := 0
	for range 12 {
		cmd := start(dir, "many", 0)
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(time.Duration(5+rand.IntN(60)) * time.Millisecond)
		cmd.Process.Kill()
		if cmd.Wait() != nil {
			killed++
		}
		for name, text := range tree(t, dir) {
			if whole, page := want[name]; page && name[0] != '.' && text != whole {
				t.Fatalf("%s is not whole", name)
			}
		}
	}
	t.Logf("%d of 12 were killed in time", killed)
	run(t, dir, many())
	same(t, "after kills", tree(t, dir), want)
}

// The same for a journal of which the last line is cut.
func TestJournalCut(t *testing.T) {
	dir := t.TempDir()
	build2(t, dir, "first")
	write(t, filepath.Join(dir, journalName), "\n{\"group\":\"d\",\"paths\":[\"hand/d/p\"],\"folders\":[\"hand/d\"]}\n\n{\"group\":\"e\",\"pat")
	write(t, filepath.Join(dir, "hand/d/p"), "half")
	write(t, filepath.Join(dir, "hand/d/p"+tmpEnding), "half")
	write(t, filepath.Join(dir, "hand/b/lost"+tmpEnding), "half")
	build2(t, dir, "second")
	clean := t.TempDir()
	build2(t, clean, "second")
	same(t, "journal cut", tree(t, dir), tree(t, clean))
}
