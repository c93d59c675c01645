package program_test

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/programs"
)

// inLanguage reads a shipped program with the words of a language: its own texts in capitals, changed by the caller.
func inLanguage(t *testing.T, change func(file string, texts []string) []string) (*program.Program, source.Faults) {
	t.Helper()
	shipped, _ := program.Library{Folder: source.Over(programs.FS)}.Program("acl-reconstruction")
	own := fstest.MapFS{}
	for file, texts := range shipped.Texts() {
		var b strings.Builder
		for _, text := range change(file, texts) {
			fmt.Fprintf(&b, "[[text]]\nen = %q\nsay = %q\n", text, strings.ToUpper(text))
		}
		own["words/xx/"+strings.TrimPrefix(file, "programs/")] = &fstest.MapFile{Data: []byte(b.String())}
	}
	return program.Library{Folder: source.Over(own, programs.FS), Language: "xx"}.Program("acl-reconstruction")
}

func unchanged(_ string, texts []string) []string { return texts }

// TestTranslated: every text that a page prints is said in the language, and no id is.
func TestTranslated(t *testing.T) {
	p, faults := inLanguage(t, unchanged)
	if len(faults) > 0 {
		t.Fatalf("%.1000v", faults)
	}
	press := p.Exercises["leg-press-single"]
	for _, text := range []string{p.Title, p.Phases[0].Title, p.Phases[0].Aim, p.Phases[0].Sessions[0].Title, p.Activities[0].Title, press.Title, press.Describe, press.Words.Steps[0],
		press.Words.Cues[0].Text, press.Words.Stop} {
		if text == "" || text != strings.ToUpper(text) {
			t.Errorf("%q is not said in the language", text)
		}
	}
	if press.ID != "leg-press-single" || p.Phases[0].ID != strings.ToLower(p.Phases[0].ID) || p.Sources["reid-2007"].Title == strings.ToUpper(p.Sources["reid-2007"].Title) {
		t.Error("an id or the title of a work was translated")
	}
	if !slices.Contains(p.Files, "words/xx/exercises/leg-press-single.toml") {
		t.Error("the words of an exercise are no part of what the program was read from: its pages would not be built anew")
	}
}

// TestTranslationMistakes: what is missing and what is stale is named, with the file to write in.
func TestTranslationMistakes(t *testing.T) {
	_, faults := inLanguage(t, func(file string, texts []string) []string {
		if file != "programs/exercises/leg-press-single.toml" {
			return texts
		}
		return append(slices.Clone(texts[1:]), "Leg press, as it was")
	})
	for _, want := range []string{
		`programs/words/xx/exercises/leg-press-single.toml: the text "Leg press, one leg" of programs/exercises/leg-press-single.toml has no words in xx; add it as [[text]] with en and say`,
		`programs/exercises/leg-press-single.toml has no text "Leg press, as it was"; see whether it has been changed: translate the new one and take this out`,
	} {
		if !strings.Contains(faults.Error(), want) {
			t.Errorf("%.800v\nwant %s", faults, want)
		}
	}
	if len(faults) != 2 {
		t.Errorf("%d mistakes, want 2", len(faults))
	}
}

// TestEveryTextIsMarked: a key whose value is a sentence for somebody is marked for translation; a new one cannot be forgotten.
func TestEveryTextIsMarked(t *testing.T) {
	texts := []string{"title", "describe", "aim", "about", "note", "do", "indoor"}
	seen := 0
	for _, of := range []reflect.Type{reflect.TypeFor[program.File](), reflect.TypeFor[program.Activity](), reflect.TypeFor[program.Phase](), reflect.TypeFor[program.Session](),
		reflect.TypeFor[program.Criterion](), reflect.TypeFor[program.Goal](), reflect.TypeFor[program.Exercise](), reflect.TypeFor[program.Level](), reflect.TypeFor[program.Limit](),
		reflect.TypeFor[program.Step](), reflect.TypeFor[program.Error]()} {
		for i := range of.NumField() {
			f := of.Field(i)
			key, _, _ := strings.Cut(f.Tag.Get("key"), ",")
			if !slices.Contains(texts, key) || f.Type.Kind() != reflect.String {
				continue
			}
			if seen++; f.Tag.Get("said") == "" {
				t.Errorf(`%s.%s is a text; mark it said:"client" or said:"desk"`, of, f.Name)
			}
		}
	}
	if seen < 14 {
		t.Errorf("only %d texts were looked at", seen)
	}
}
