package site

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestRenew(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "new", "folder")
	mark := []byte("mark of ours")
	read := func(name string) string {
		data, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
	first := map[string][]byte{"a.json": []byte("1 mark of ours"), "b.json": []byte("1 mark of ours")}
	second := map[string][]byte{"a.json": []byte("2 mark of ours"), "b.json": []byte("2 mark of ours")}
	if err := Renew(dir, first, mark); err != nil {
		t.Fatal(err)
	}
	if err := Renew(dir, second, mark); err != nil || read("a.json") != "2 mark of ours" {
		t.Errorf("our own file was not renewed: %v, %s", err, read("a.json"))
	}

	// a person's file in the place of the last: the first is not written either
	if err := os.WriteFile(filepath.Join(dir, "b.json"), []byte("mine"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := Renew(dir, first, mark); err == nil || !strings.Contains(err.Error(), "Paceleaf did not write it") {
		t.Errorf("got %v, want a refusal", err)
	}
	if read("a.json") != "2 mark of ours" || read("b.json") != "mine" {
		t.Errorf("something was written: %s, %s", read("a.json"), read("b.json"))
	}

	if err := Renew(dir, map[string][]byte{"../out.json": nil}, mark); err == nil {
		t.Error("a name that leads out of the folder was taken")
	}
	entries, err := os.ReadDir(dir)
	if err != nil || len(entries) != 2 {
		t.Errorf("left behind: %v, %v", entries, err)
	}
}

// TestRenewThroughALink: a link in the place of a file is not ours, whatever it points at.
func TestRenewThroughALink(t *testing.T) {
	dir, other := t.TempDir(), filepath.Join(t.TempDir(), "theirs")
	if err := os.WriteFile(other, []byte("mark of ours"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(other, filepath.Join(dir, "a.json")); err != nil {
		t.Skip("no links here")
	}
	if err := Renew(dir, map[string][]byte{"a.json": []byte("new")}, []byte("mark of ours")); err == nil {
		t.Error("a link was replaced")
	}
	if data, _ := os.ReadFile(other); string(data) != "mark of ours" {
		t.Errorf("what the link points at was written: %s", data)
	}
}
