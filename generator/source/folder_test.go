package source

import (
	"errors"
	"fmt"
	"io/fs"
	"reflect"
	"testing"
	"testing/fstest"
)

func file(text string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(text)} }

func twoLayers() Folder {
	return Over(fstest.MapFS{
		"own.toml":           file("own"),
		"both.toml":          file("top"),
		"phases/a.toml":      file("top a"),
		".hidden":            file(""),
		"both.toml~":         file(""),
		"x.toml.swp":         file(""),
		"x.bak":              file(""),
		"Thumbs.db":          file(""), // what a file browser leaves where somebody looked
		"desktop.ini":        file(""),
		"mixed/inside.toml":  file(""),
		"folder.toml/a.toml": file(""),
	}, nil, fstest.MapFS{
		"both.toml":     file("below"),
		"shipped.toml":  file("below"),
		"phases/b.toml": file("below b"),
		"mixed":         file("a file below a folder"),
		"folder.toml":   file("a file below a folder"),
	})
}

func TestFolderList(t *testing.T) {
	want := []Entry{{"both.toml", false, 0}, {"folder.toml", true, 0}, {"mixed", true, 0}, {"own.toml", false, 0}, {"phases", true, 0}, {"shipped.toml", false, 2}}
	if got := twoLayers().List("."); !reflect.DeepEqual(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
	want = []Entry{{"a.toml", false, 0}, {"b.toml", false, 2}}
	if got := twoLayers().List("phases"); !reflect.DeepEqual(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
	if got := twoLayers().List("nowhere"); len(got) != 0 || twoLayers().Trouble("nowhere") != nil {
		t.Errorf("a directory that is not there: %v", got)
	}
}

func TestFolderRead(t *testing.T) {
	rows := []struct {
		name  string
		text  string
		layer int
		err   string
	}{
		{"both.toml", "top", 0, ""},
		{"shipped.toml", "below", 2, ""},
		{"phases/b.toml", "below b", 2, ""},
		{"none.toml", "", 0, "none.toml: file does not exist"},
		{"folder.toml", "", 0, "folder.toml is a folder, not a file"},
		{"../both.toml", "", 0, `"../both.toml" is no name inside the folder`},
		{"phases/../both.toml", "", 0, `"phases/../both.toml" is no name inside the folder`},
		{"/both.toml", "", 0, `"/both.toml" is no name inside the folder`},
		{`phases\a.toml`, "", 0, `"phases\\a.toml" is no name inside the folder`},
		{"", "", 0, `"" is no name inside the folder`},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			data, layer, err := twoLayers().Read(r.name)
			if got := fmt.Sprint(err); r.err == "" && err != nil || r.err != "" && got != r.err {
				t.Fatalf("error %v, want %q", err, r.err)
			}
			if string(data) != r.text || layer != r.layer {
				t.Errorf("got %q of layer %d, want %q of layer %d", data, layer, r.text, r.layer)
			}
			if exists := twoLayers().Exists(r.name); exists != (r.err == "" || r.name == "folder.toml") {
				t.Errorf("exists: %v", exists)
			}
		})
	}
	if _, _, err := twoLayers().Read("none.toml"); !errors.Is(err, fs.ErrNotExist) {
		t.Error("a missing file must be known as missing")
	}
}

func TestFolderLayers(t *testing.T) {
	var got []string
	for _, data := range twoLayers().Layers("both.toml") {
		got = append(got, string(data))
	}
	if want := []string{"top", "below"}; !reflect.DeepEqual(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestFolderLimits(t *testing.T) {
	many := fstest.MapFS{"long.toml": file(string(make([]byte, maxBytes+1)))}
	for i := range maxEntries + 1 {
		many[fmt.Sprintf("crowd/%d", i)] = file("")
	}
	f := Over(many)
	if _, _, err := f.Read("long.toml"); err == nil || err.Error() != "long.toml is longer than 1 MiB" {
		t.Errorf("got %v", err)
	}
	if err := f.Trouble("crowd"); err == nil || err.Error() != "crowd holds more than 20000 files" || len(f.List("crowd")) != 0 {
		t.Errorf("got %v", err)
	}
}

// refusing is a layer whose file cannot be read: the one below must not be taken for it.
type refusing struct{}

func (refusing) Open(name string) (fs.File, error) {
	return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
}

func TestUnreadableFileIsNotReplaced(t *testing.T) {
	f := Over(refusing{}, fstest.MapFS{"a.toml": file("below")})
	if data, _, err := f.Read("a.toml"); err == nil || err.Error() != "a.toml: permission denied" || data != nil {
		t.Errorf("got %q, %v", data, err)
	}
	if err := f.Trouble("."); err == nil || err.Error() != ".: permission denied" {
		t.Errorf("got %v", err)
	}
}
