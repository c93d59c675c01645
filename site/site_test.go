package site

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

func TestClose(t *testing.T) {
	for _, row := range []struct {
		name, want, reason string
		do                 func(s *Site)
	}{
		{"gone", "a/x=1 b/x=1", "c was not mentioned", func(s *Site) { s.Fresh("a", "k"); s.Keep("b") }},
		{"partial", "a/x=1 b/x=1 c/x=1", "others were not meant", func(s *Site) { s.Partial(); s.Fresh("a", "k") }},
		{"nothing mentioned", "a/x=1 b/x=1 c/x=1", "a run that stopped at once", func(*Site) {}},
		{"asked and no more", "a/x=1", "its client exists, whatever happened then", func(s *Site) { s.Fresh("a", "other") }},
		{"bad put", "a/x=1", "as good as Keep", func(s *Site) { s.Put("a", "k", pages("../x", "1")) }},
		{"dropped", "b/x=1 c/x=1", "also in a partial run", func(s *Site) { s.Partial(); s.Drop("a") }},
		{"dropped, then kept", "a/x=1 b/x=1 c/x=1", "the last word counts", func(s *Site) { s.Partial(); s.Drop("a"); s.Keep("a") }},
		{"unknown", "a/x=1 b/x=1 c/x=1", "no such groups", func(s *Site) { s.Partial(); s.Drop("q"); s.Keep("q"); s.Fresh("q", "k") }},
	} {
		t.Run(row.name, func(t *testing.T) {
			dir := t.TempDir()
			run(t, dir, map[string][]File{"a": pages("a/x", "1"), "b": pages("b/x", "1"), "c": pages("c/x", "1")})
			s := open(t, dir)
			row.do(s)
			shut(t, s)
			shut(t, s) // a second Close does nothing
			if got := list(t, dir); got != row.want {
				t.Errorf("%s: got %s, want %s", row.reason, got, row.want)
			}
			if _, err := os.Stat(filepath.Join(dir, lockName)); err == nil {
				t.Error("the lock remains")
			}
		})
	}
}

func TestManifestBytes(t *testing.T) {
	build := map[string][]File{"b": pages("hand/b/y", "22", "hand/b/x", "1"), "a": pages("a/x", "1")}
	one, two := t.TempDir(), t.TempDir()
	run(t, one, build)
	run(t, two, map[string][]File{"old": pages("old/x", "1"), "a": pages("a/x", "0", "a/y", "0")})
	run(t, two, build)
	got, _ := os.ReadFile(filepath.Join(two, manifestName))
	want, _ := os.ReadFile(filepath.Join(one, manifestName))
	if string(got) != string(want) {
		t.Errorf("the way there shows:\n%s\n%s", got, want)
	}
	const x1 = "6b86b273ff34fce19d6b804eff5a3f5747ada4eaa22f1d49c01e52ddb7875b4b" // printf 1 | sha256sum
	const y22 = "785f3ec7eb32f30b90cd0fcf3657d388b5ff4297f2f9716ff66e9b69c05ddd09"
	text := `{"format":1,"folders":["a","hand","hand/b"],"groups":[
{"group":"a","key":"k","files":[{"path":"a/x","size":1,"sha256":"` + x1 + `"}]},
{"group":"b","key":"k","files":[{"path":"hand/b/x","size":1,"sha256":"` + x1 + `"},{"path":"hand/b/y","size":2,"sha256":"` + y22 + `"}]}
]}
`
	if string(want) != text {
		t.Errorf("got\n%s\nwant\n%s", want, text)
	}
}

func TestOpenRefuses(t *testing.T) {
	for _, row := range []struct {
		name, file, text, wrong, reason string
	}{
		{"stranger's", "report.doc", "x", "was not made by paceleaf; name a new or an empty folder", "a folder of somebody's"},
		{"git", ".git/config", "x", "was not made by paceleaf", "hidden, but not empty"},
		{"desktop litter", ".DS_Store", "x", "", "every folder on a Mac has it"},
		{"newer", manifestName, `{"format":2,"groups":[]}` + "\n", "has format 2, written by a newer paceleaf", "we would lose what it knows"},
		{"newer, other layout", manifestName, "{ \"pages\": {}, \"format\": 3 }", "has format 3", "we cannot read the rest"},
		{"other machine's lock", lockName, "1 elsewhere\n", "process 1 on elsewhere", "we cannot ask there"},
		{"lock just made", lockName, "", "just starting", "its owner has not filled it yet"},
		{"our own lock", lockName, lockText(), "is being written by another build", "this process lives"},
	} {
		t.Run(row.name, func(t *testing.T) {
			dir := t.TempDir()
			write(t, filepath.Join(dir, row.file), row.text)
			s, err := Open(dir)
			if row.wrong == "" {
				if err != nil {
					t.Fatal(err)
				}
				shut(t, s)
				return
			}
			wantError(t, err, row.wrong)
			after := tree(t, dir)
			if after[row.file] != row.text {
				t.Errorf("%s: the file was touched", row.reason)
			}
			if _, locked := after[lockName]; locked && row.file != lockName {
				t.Errorf("%s: a lock was left", row.reason)
			}
		})
	}
	file := filepath.Join(t.TempDir(), "f")
	write(t, file, "x")
	_, err := Open(file)
	wantError(t, err, "cannot be made")
}

func TestLock(t *testing.T) {
	dir := t.TempDir()
	s := open(t, dir)
	_, err := Open(dir)
	wantError(t, err, "is being written by another build (process")
	shut(t, s)

	dead := exec.Command(os.Args[0], "-test.run=^$")
	if err := dead.Run(); err != nil {
		t.Fatal(err)
	}
	_, host := owner(lockText())
	lock := filepath.Join(dir, lockName)
	write(t, lock, fmt.Sprintf("%d %s\n", dead.Process.Pid, host))
	shut(t, open(t, dir))

	write(t, lock, "garbage")
	os.Chtimes(lock, time.Now(), time.Now().Add(-time.Minute))
	shut(t, open(t, dir))
	if got := tree(t, dir); len(got) != 1 {
		t.Errorf("left: %v", got)
	}

	// Somebody removed our lock by hand and another build began: its lock stays.
	s = open(t, dir)
	write(t, lock, "1 elsewhere\n")
	shut(t, s)
	if data, _ := os.ReadFile(lock); string(data) != "1 elsewhere\n" {
		t.Error("a stranger's lock was removed")
	}
}

func TestManyTakers(t *testing.T) {
	dir := t.TempDir()
	_, host := owner(lockText())
	for range 20 {
		write(t, filepath.Join(dir, lockName), "999999999 "+host+"\n")
		got := make(chan *Site)
		for range 4 {
			go func() { s, _ := Open(dir); got <- s }()
		}
		var winners []*Site
		for range 4 {
			if s := <-got; s != nil {
				winners = append(winners, s)
			}
		}
		if len(winners) > 1 {
			t.Fatalf("%d builds at once", len(winners))
		}
		for _, s := range winners {
			shut(t, s)
		}
		os.Remove(filepath.Join(dir, lockName))
	}
}

// However the manifest is hurt, the next build repairs the folder, and the
// pages of clients that are gone do not stay behind.
func TestDamaged(t *testing.T) {
	for _, row := range []struct{ name, reason string }{
		{"cut", "the disk was full"}, {"empty", "a power cut"}, {"garbage", "another program"}, {"removed", "by hand"},
		{"climbing", "a path that leads out"}, {"doubled", "merged by a version control"}, {"reformatted", "an editor"},
	} {
		t.Run(row.name, func(t *testing.T) {
			dir, clean := t.TempDir(), t.TempDir()
			run(t, dir, map[string][]File{"a": pages("hand/a/x", "1"), "gone": pages("hand/gone/x", "1")})
			manifest := filepath.Join(dir, manifestName)
			data, err := os.ReadFile(manifest)
			if err != nil {
				t.Fatal(err)
			}
			text := string(data)
			switch row.name {
			case "cut":
				text = text[:len(text)-5]
			case "empty":
				text = ""
			case "garbage":
				text = "\x00\xff not json"
			case "climbing":
				text = strings.Replace(text, "hand/a/x", "../../a/x", 1)
			case "doubled":
				text += text
			case "reformatted":
				text = strings.ReplaceAll(text, ":", ": ")
			}
			os.WriteFile(manifest, []byte(text), 0o600)
			if row.name == "removed" {
				os.Remove(manifest)
			}
			write(t, filepath.Join(dir, "hand/a/x"+tmpEnding), "half")
			write(t, filepath.Join(dir, "hand/a/note"), "mine")

			s := open(t, dir)
			if s.Fresh("a", "k") {
				t.Errorf("fresh with no manifest")
			}
			if w := mustPut(t, s, "a", "k", pages("hand/a/x", "2")); w.Changed != 1 {
				t.Errorf("%+v", w)
			}
			shut(t, s)
			wantList(t, dir, "hand/a/note=mine hand/a/x=2")
			run(t, clean, map[string][]File{"a": pages("hand/a/x", "2")})
			if got, want := tree(t, dir)[manifestName], tree(t, clean)[manifestName]; got != want {
				t.Errorf("%s: got\n%s\nwant\n%s", row.reason, got, want)
			}
		})
	}
}

// Manifest and stamps both lost, and only one client built: the others' pages
// must still be replaceable later.
func TestDamagedPartial(t *testing.T) {
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("a/x", "1"), "b": pages("b/x", "1")})
	os.WriteFile(filepath.Join(dir, manifestName), nil, 0o600)
	os.WriteFile(filepath.Join(dir, stampsName), nil, 0o600)
	s := open(t, dir)
	s.Partial()
	mustPut(t, s, "a", "k", pages("a/x", "2"))
	shut(t, s)
	run(t, dir, map[string][]File{"a": pages("a/x", "2"), "b": pages("b/x", "2")})
	wantList(t, dir, "a/x=2 b/x=2")
	if strings.Contains(tree(t, dir)[manifestName], "lost") {
		t.Error("still lost after a whole build")
	}
}

func TestStampsLost(t *testing.T) {
	for _, text := range []string{"", "garbage", `{"format":1,"of":"00","stamps":[` + "\n" + `{"path":"a/x","ns":1}` + "\n]}\n"} {
		dir := t.TempDir()
		run(t, dir, map[string][]File{"a": pages("a/x", "1")})
		os.WriteFile(filepath.Join(dir, stampsName), []byte(text), 0o600)
		s := open(t, dir)
		if !s.Fresh("a", "k") {
			t.Errorf("stamps %q: the hash should have told", text)
		}
		shut(t, s)
		if s = open(t, dir); s.born == 0 {
			t.Errorf("stamps %q were not written again", text)
		}
		shut(t, s)
	}
}

// An old page that cannot go is told, and tried again.
func TestRemoveFails(t *testing.T) {
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("a/x", "1", "a/y", "1"), "b": pages("b/x", "1")})
	s := open(t, dir)
	failAt(t, "remove", "a/y")
	mustPut(t, s, "a", "k2", pages("a/x", "2"))
	wantError(t, s.Close(), "injected")
	testOnlyStep = nil
	s = open(t, dir)
	if s.Fresh("a", "k2") {
		t.Error("fresh with an old page about")
	}
	mustPut(t, s, "a", "k2", pages("a/x", "2"))
	shut(t, s)
	wantList(t, dir, "a/x=2")
}
