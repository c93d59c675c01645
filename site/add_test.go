package site

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestAddNeverChangesAFile(t *testing.T) {
	dir := t.TempDir()
	if err := Add(dir, "clients/tern-04/client.toml", []byte("mine")); err != nil {
		t.Fatal(err)
	}
	err := Add(dir, "clients/tern-04/client.toml", []byte("theirs"))
	if err == nil || !strings.Contains(err.Error(), "is there already") {
		t.Fatalf("got %v, want a refusal", err)
	}
	got, _ := os.ReadFile(filepath.Join(dir, "clients/tern-04/client.toml"))
	if string(got) != "mine" {
		t.Errorf("the file was changed to %q", got)
	}
	left, _ := filepath.Glob(filepath.Join(dir, "clients/tern-04/*"))
	if len(left) != 1 {
		t.Errorf("left behind: %v", left)
	}
}

func TestAddRefusesNames(t *testing.T) {
	for _, name := range []string{"../x", "/x", "a/../../x", `a\b`, "c:x", ""} {
		if err := Add(t.TempDir(), name, nil); err == nil {
			t.Errorf("%q was accepted", name)
		}
	}
}

func TestFillWantsAnEmptyFolder(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "new")
	if err := Fill(dir, map[string][]byte{"a/b.toml": []byte("1"), "c.toml": []byte("2")}); err != nil {
		t.Fatal(err)
	}
	if err := Fill(dir, map[string][]byte{"d.toml": nil}); err == nil || !strings.Contains(err.Error(), "is not empty") {
		t.Errorf("got %v, want a refusal", err)
	}
	if _, err := os.Stat(filepath.Join(dir, "d.toml")); err == nil {
		t.Error("a file was written into a folder in use")
	}
}

func TestNoteComesBackAndKeyStaysFresh(t *testing.T) {
	dir := t.TempDir()
	s, err := Open(dir)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := s.Put("client/tern-04", Noted("k1", []byte(`{"a":"ü"}`)), []File{{"hand/tern-04/handout.md", []byte("x")}}); err != nil {
		t.Fatal(err)
	}
	if err := s.Close(); err != nil {
		t.Fatal(err)
	}
	s, err = Open(dir)
	if err != nil {
		t.Fatal(err)
	}
	defer s.Close()
	if !s.Fresh("client/tern-04", "k1") || s.Fresh("client/tern-04", "k2") {
		t.Error("the note hides the key")
	}
	if got := string(s.Note("client/tern-04")); got != `{"a":"ü"}` {
		t.Errorf("note came back as %q", got)
	}
	if !s.Has("client/tern-04") || s.Has("client/other") {
		t.Error("Has is wrong")
	}
}

func TestFillNamesWhatAPersonSees(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{".hidden", "letter.txt"} {
		if err := os.WriteFile(filepath.Join(dir, name), nil, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := Fill(dir, nil); err == nil || !strings.Contains(err.Error(), "(letter.txt is in it)") {
		t.Errorf("got %v, want letter.txt named", err)
	}
}
