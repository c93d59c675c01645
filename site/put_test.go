package site

import (
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"
)

func TestPutCounts(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "out")
	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1", "hand/a/y", "1", "desk/a/z", "1")})
	old := time.Now().Add(-time.Hour).Truncate(time.Second)
	if err := os.Chtimes(filepath.Join(dir, "hand/a/x"), old, old); err != nil {
		t.Fatal(err)
	}

	s := open(t, dir)
	got := mustPut(t, s, "a", "k2", pages("hand/a/x", "1", "hand/a/y", "2", "hand/a/w", "3"))
	shut(t, s)
	if want := (Written{New: 1, Changed: 1, Same: 1, Removed: 1}); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
	wantList(t, dir, "hand/a/w=3 hand/a/x=1 hand/a/y=2")
	if fi, err := os.Stat(filepath.Join(dir, "hand/a/x")); err != nil || !fi.ModTime().Equal(old) {
		t.Errorf("an equal page was touched")
	}
	if _, err := os.Stat(filepath.Join(dir, "desk")); err == nil {
		t.Errorf("empty folders that we made remain")
	}
}

func TestFresh(t *testing.T) {
	const page = "hand/a/x"
	for _, row := range []struct {
		name   string
		spoil  func(file string)
		key    string
		want   bool
		reason string
	}{
		{"untouched", func(string) {}, "k", true, "nothing changed"},
		{"other key", func(string) {}, "k2", false, "the client's file changed"},
		{"no key", func(string) {}, "", false, "an empty key is never fresh"},
		{"removed", func(f string) { os.Remove(f) }, "k", false, "somebody deleted the page"},
		{"longer", func(f string) { os.WriteFile(f, []byte("12"), 0o600) }, "k", false, "size tells"},
		{"same size", func(f string) { os.WriteFile(f, []byte("2"), 0o600) }, "k", false, "time tells, the hash decides"},
		{"touched", func(f string) { os.Chtimes(f, time.Unix(1, 0), time.Unix(1, 0)) }, "k", true, "time differs, the hash says it is ours"},
		{"folder", func(f string) { os.Remove(f); os.Mkdir(f, 0o755) }, "k", false, "not a file"},
		{"link", func(f string) { os.Rename(f, f+"2"); os.Symlink("x2", f) }, "k", false, "not a file, whatever it leads to"},
	} {
		t.Run(row.name, func(t *testing.T) {
			dir := t.TempDir()
			run(t, dir, map[string][]File{"a": pages(page, "1")})
			row.spoil(filepath.Join(dir, page))
			s := open(t, dir)
			if got := s.Fresh("a", row.key); got != row.want {
				t.Errorf("got %v, want %v: %s", got, row.want, row.reason)
			}
			shut(t, s)
		})
	}
}

// A file changed in the same tick as the stamps were written has the same size
// and the same time; only its bytes tell.
func TestFreshRacy(t *testing.T) {
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1")})
	file, stamps := filepath.Join(dir, "hand/a/x"), filepath.Join(dir, stampsName)
	fi, err := os.Stat(file)
	if err != nil {
		t.Fatal(err)
	}
	os.WriteFile(file, []byte("2"), 0o600)
	os.Chtimes(file, fi.ModTime(), fi.ModTime())
	os.Chtimes(stamps, fi.ModTime(), fi.ModTime())
	s := open(t, dir)
	if s.Fresh("a", "k") {
		t.Error("a racy change was taken for fresh")
	}
	mustPut(t, s, "a", "k", pages("hand/a/x", "1"))
	shut(t, s)
	wantList(t, dir, "hand/a/x=1")
}

func TestNothingWrittenTwice(t *testing.T) {
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1"), "overview": pages("desk/overview.html", "o")})
	before := times(t, dir)
	s := open(t, dir)
	if !s.Fresh("a", "k") || !s.Fresh("overview", "k") {
		t.Error("not fresh")
	}
	shut(t, s)
	for name, at := range times(t, dir) {
		if !before[name].Equal(at) {
			t.Errorf("%s was written again", name)
		}
	}
}

func times(t *testing.T, dir string) map[string]time.Time {
	t.Helper()
	all := map[string]time.Time{}
	for _, name := range []string{manifestName, stampsName, "hand/a/x", "desk/overview.html"} {
		fi, err := os.Stat(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		all[name] = fi.ModTime()
	}
	return all
}

// Whatever fails, the group is as before: its pages, and no trace of the new.
func TestPutAllOrNone(t *testing.T) {
	old := pages("hand/a/b", "1", "hand/a/c", "1", "hand/a/d", "1")
	next := pages("desk/a/n", "2", "hand/a/b", "2", "hand/a/c", "22", "hand/a/d", "2", "hand/a/e", "2")
	const asBefore = "hand/a/b=1 hand/a/c=1 hand/a/d=1"
	for _, row := range []struct {
		name, step, path string
		prepare          func(dir string)
		wrong, reason    string
	}{
		{name: "journal", step: "journal", path: "a", wrong: "injected", reason: "nothing begun"},
		{name: "folder", step: "mkdir", path: "desk/a", wrong: "injected", reason: "desk is made, desk/a not"},
		{name: "first page", step: "stage", path: "desk/a/n", wrong: "injected", reason: "nothing staged"},
		{name: "last page", step: "stage", path: "hand/a/e", wrong: "injected", reason: "all others staged"},
		{name: "first name", step: "rename", path: "desk/a/n", wrong: "injected", reason: "nothing renamed"},
		{name: "third name", step: "rename", path: "hand/a/c", wrong: "injected", reason: "a new and a changed page to put back"},
		{name: "last name", step: "rename", path: "hand/a/e", wrong: "injected", reason: "everything to put back"},
		{name: "folder in the way", prepare: func(dir string) { os.Mkdir(filepath.Join(dir, "hand/a/e"), 0o755) },
			wrong: "is a folder where a page should go", reason: "real, found before anything is written"},
		{name: "link in the way", prepare: func(dir string) { os.Symlink("b", filepath.Join(dir, "hand/a/e")) },
			wrong: "is a link", reason: "real"},
		{name: "file for a folder", prepare: func(dir string) { write(t, filepath.Join(dir, "desk"), "") },
			wrong: "is a file where a folder should be", reason: "real"},
	} {
		t.Run(row.name, func(t *testing.T) {
			dir := t.TempDir()
			run(t, dir, map[string][]File{"a": old})
			if row.prepare != nil {
				row.prepare(dir)
			}
			s := open(t, dir)
			failAt(t, row.step, row.path)
			w, err := s.Put("a", "k2", next)
			testOnlyStep = nil
			wantError(t, err, row.wrong)
			if w != (Written{}) {
				t.Errorf("a failed Put counts %+v", w)
			}
			shut(t, s)
			got := list(t, dir)
			if row.prepare != nil { // what was put in the way is not ours
				got = strings.NewReplacer(" hand/a/e=1", "", "desk= ", "").Replace(got)
			}
			if got != asBefore {
				t.Errorf("%s: got %s, want %s", row.reason, got, asBefore)
			}
			for name := range tree(t, dir) {
				if strings.HasSuffix(name, tmpEnding) || name == journalName || name == "desk/" {
					t.Errorf("%s: %s was left", row.reason, name)
				}
			}
			s = open(t, dir)
			if !s.Fresh("a", "k") {
				t.Errorf("%s: the old pages are no longer known", row.reason)
			}
			shut(t, s)
		})
	}
}

// A read-only folder stops nobody who is root, so this runs only for others.
func TestPutReadOnly(t *testing.T) {
	if os.Getuid() <= 0 {
		t.Skip("needs a user whom a read-only folder stops")
	}
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("desk/a/x", "1", "hand/a/x", "1")})
	os.Chmod(filepath.Join(dir, "hand/a"), 0o500)
	defer os.Chmod(filepath.Join(dir, "hand/a"), 0o700)
	s := open(t, dir)
	_, err := s.Put("a", "k2", pages("desk/a/x", "2", "hand/a/x", "2"))
	wantError(t, err, "permission denied")
	shut(t, s)
	wantList(t, dir, "desk/a/x=1 hand/a/x=1")
	s = open(t, dir)
	mustPut(t, s, "b", "k", pages("hand/b/x", "1"))
	wantError(t, s.Close(), "out of date and cannot be removed")
	os.Chmod(filepath.Join(dir, "hand/a"), 0o700)
	run(t, dir, map[string][]File{"b": pages("hand/b/x", "1")})
	wantList(t, dir, "hand/b/x=1")
}

func TestPaths(t *testing.T) {
	for _, row := range []struct {
		name   string
		puts   [][]File
		wrong  string
		reason string
	}{
		{"climbs", [][]File{pages("../x", "1")}, "has the part ..", "leads out"},
		{"one good, one bad", [][]File{pages("a/x", "1", "b\\x", "1")}, "backslash", "none is written"},
		{"twice in a group", [][]File{pages("a/x", "1", "a/x", "2")}, "has a/x twice", "which one would win?"},
		{"case in a group", [][]File{pages("a/x", "1", "a/X", "2")}, "one file on some disks", "macOS and Windows"},
		{"two groups", [][]File{pages("a/x", "1"), pages("a/x", "1")}, `belongs to "a"`, "even with equal bytes"},
		{"two groups, case", [][]File{pages("a/x", "1"), pages("A/x", "1")}, `belongs to "a"`, "macOS and Windows"},
		{"file and folder", [][]File{pages("a", "1"), pages("a/x", "1")}, "is a file where a folder should be", "cannot be both"},
	} {
		t.Run(row.name, func(t *testing.T) {
			dir := t.TempDir()
			s := open(t, dir)
			var err error
			for i, files := range row.puts {
				_, err = s.Put(string(rune('a'+i)), "k", files)
			}
			wantError(t, err, row.wrong)
			shut(t, s)
			if got := list(t, dir); strings.Count(got, "=") != len(row.puts)-1 {
				t.Errorf("%s: got %s", row.reason, got)
			}
		})
	}
}

func TestGroupNames(t *testing.T) {
	s := open(t, t.TempDir())
	for _, row := range []struct{ name, key, wrong string }{
		{"", "k", "has no name"},
		{"a\nb", "k", "character '\\n'"},
		{"a", `k"`, "character '\"'"},
		{strings.Repeat("a", 181), "k", "has 181 characters"},
	} {
		_, err := s.Put(row.name, row.key, nil)
		wantError(t, err, row.wrong)
	}
	mustPut(t, s, "a", "k", nil)
	_, err := s.Put("a", "k", nil)
	wantError(t, err, "written twice")
	shut(t, s)
	_, err = s.Put("b", "k", nil)
	wantError(t, err, "is closed")
	if s.Fresh("a", "k") {
		t.Error("fresh after Close")
	}
}

func TestForeignFiles(t *testing.T) {
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1"), "b": pages("hand/b/x", "1")})
	write(t, filepath.Join(dir, "hand/b/note.txt"), "mine")
	write(t, filepath.Join(dir, "hand/c/x"), "mine")
	write(t, filepath.Join(dir, "hand/d/x"), "same")
	write(t, filepath.Join(dir, "hand/e/x"), "")

	s := open(t, dir)
	mustPut(t, s, "a", "k", pages("hand/a/x", "1"))
	_, err := s.Put("c", "k", pages("hand/c/x", "ours"))
	wantError(t, err, "was not written by paceleaf")
	mustPut(t, s, "d", "k", pages("hand/d/x", "same")) // nothing is lost by calling it ours
	mustPut(t, s, "e", "k", pages("hand/e/x", "full")) // nobody's work is in an empty file
	shut(t, s)
	wantList(t, dir, "hand/a/x=1 hand/b/note.txt=mine hand/c/x=mine hand/d/x=same hand/e/x=full")

	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1")})
	wantList(t, dir, "hand/a/x=1 hand/b/note.txt=mine hand/c/x=mine")
	if _, err := os.Stat(filepath.Join(dir, "hand/d")); err != nil {
		t.Error("a folder that somebody else made was removed")
	}
}

// What stands where a page of ours was, but is no file, is not ours to remove.
func TestStaleReplaced(t *testing.T) {
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1"), "b": pages("hand/b/x", "1")})
	os.Remove(filepath.Join(dir, "hand/b/x"))
	write(t, filepath.Join(dir, "hand/b/x/deep"), "mine")
	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1")})
	wantList(t, dir, "hand/a/x=1 hand/b/x/deep=mine")
}

func TestLinks(t *testing.T) {
	for _, row := range []struct{ name, link, to, reason string }{
		{"outside", "hand/a", "OUTSIDE", "os.Root would refuse it too"},
		{"outside, relative", "hand/a", "../../outside", "climbs"},
		{"inside", "hand/a", "b", "two clients in one folder"},
		{"top", "hand", "OUTSIDE", "all clients elsewhere"},
		{"dangling", "hand/a", "nowhere", "leads nowhere"},
	} {
		t.Run(row.name, func(t *testing.T) {
			tmp := t.TempDir()
			dir, outside := filepath.Join(tmp, "out"), filepath.Join(tmp, "outside")
			os.Mkdir(outside, 0o755)
			run(t, dir, map[string][]File{"b": pages("desk/b/x", "1")})
			os.MkdirAll(filepath.Join(dir, filepath.Dir(row.link)), 0o755)
			if err := os.Symlink(strings.Replace(row.to, "OUTSIDE", outside, 1), filepath.Join(dir, row.link)); err != nil {
				t.Skip(err)
			}
			s := open(t, dir)
			_, err := s.Put("a", "k", pages("hand/a/x", "1"))
			wantError(t, err, "is a link")
			shut(t, s)
			if left, _ := os.ReadDir(outside); len(left) > 0 {
				t.Errorf("%s: written outside", row.reason)
			}
		})
	}
}

func TestRights(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("no such bits")
	}
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1", "desk/a/x", "1", "library/i/x", "1", "handy/x", "1")})
	for path, want := range map[string]os.FileMode{
		"hand": 0o700, "hand/a": 0o700, "hand/a/x": 0o600, "desk": 0o700, "desk/a/x": 0o600,
		"library": 0o755, "library/i": 0o755, "library/i/x": 0o644, "handy/x": 0o644,
		manifestName: 0o600, stampsName: 0o600,
	} {
		fi, err := os.Stat(filepath.Join(dir, path))
		if err != nil {
			t.Fatal(err)
		}
		if got := fi.Mode().Perm(); got&^want != 0 || isPrivate(path) && got != want {
			t.Errorf("%s has %o, want %o", path, got, want)
		}
	}
}

// A path may pass from a group that has not spoken to one that does.
func TestPathChangesHands(t *testing.T) {
	for _, order := range []string{"taker first", "giver first", "giver gone", "giver kept", "taker fails"} {
		t.Run(order, func(t *testing.T) {
			dir := t.TempDir()
			run(t, dir, map[string][]File{"giver": pages("p/x", "1", "p/y", "1"), "taker": pages("p/z", "1")})
			s := open(t, dir)
			want := "p/x=2 p/y=1 p/z=1"
			switch order {
			case "taker first":
				mustPut(t, s, "taker", "k2", pages("p/x", "2", "p/z", "1"))
				if s.Fresh("giver", "k") {
					t.Error("a group that lost a page is fresh")
				}
				mustPut(t, s, "giver", "k2", pages("p/y", "1"))
			case "giver first":
				mustPut(t, s, "giver", "k2", pages("p/y", "1"))
				mustPut(t, s, "taker", "k2", pages("p/x", "2", "p/z", "1"))
			case "giver gone":
				mustPut(t, s, "taker", "k2", pages("p/x", "2", "p/z", "1"))
				want = "p/x=2 p/z=1"
			case "giver kept":
				s.Keep("giver")
				_, err := s.Put("taker", "k2", pages("p/x", "2", "p/z", "1"))
				wantError(t, err, `belongs to "giver"`)
				want = "p/x=1 p/y=1 p/z=1"
			case "taker fails":
				failAt(t, "rename", "p/z")
				_, err := s.Put("taker", "k2", pages("p/x", "2", "p/z", "2"))
				testOnlyStep = nil
				wantError(t, err, "injected")
				if !s.Fresh("giver", "k") {
					t.Error("the giver did not get its page back")
				}
				want = "p/x=1 p/y=1 p/z=1"
			}
			shut(t, s)
			wantList(t, dir, want)
		})
	}
}

func TestCaseChanges(t *testing.T) {
	dir := t.TempDir()
	run(t, dir, map[string][]File{"a": pages("hand/A/x", "1")})
	run(t, dir, map[string][]File{"a": pages("hand/a/x", "1")})
	if data, err := os.ReadFile(filepath.Join(dir, "hand/a/x")); err != nil || string(data) != "1" {
		t.Error("the page is gone")
	}
}
