package site

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
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
		{"kept but one", "b/x=1 c/x=1", "the others are not this run's business", func(s *Site) { s.KeepBut("a") }},
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
			shut(t, open(t, dir)) // the lock is free again
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
	wantError(t, err, "is being written by another build; wait for it")
	shut(t, s)
	shut(t, open(t, dir))

	lock := filepath.Join(dir, lockName)
	write(t, lock, "4711 elsewhere\n") // what is in it says nothing
	shut(t, open(t, dir))

	if err := os.Remove(lock); err != nil {
		t.Fatal(err)
	}
	if err := os.Mkdir(lock, 0o755); err != nil {
		t.Fatal(err)
	}
	_, err = Open(dir)
	wantError(t, err, "is no plain file")
}

// A build that was killed leaves its lock file, and no lock.
func TestLockOfTheDead(t *testing.T) {
	dir := t.TempDir()
	if start(dir, "first", 5).Run() == nil {
		t.Fatal("the build was to be killed")
	}
	if _, err := os.Stat(filepath.Join(dir, lockName)); err != nil {
		t.Fatal("killed before it held the lock")
	}
	shut(t, open(t, dir))
}

func TestManyTakers(t *testing.T) {
	dir := t.TempDir()
	for range 50 {
		got := make(chan *Site)
		for range 8 {
			go func() { s, _ := Open(dir); got <- s }()
		}
		var winners []*Site
		for range 8 {
			if s := <-got; s != nil {
				winners = append(winners, s)
			}
		}
		if len(winners) != 1 {
			t.Fatalf("%d builds at once", len(winners))
		}
		shut(t, winners[0])
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
