package words_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
	"paceleaf/templates"
)

func load(t *testing.T, over map[string]string) (*words.Words, source.Faults) {
	t.Helper()
	own := fstest.MapFS{}
	for name, body := range over {
		own[name] = &fstest.MapFile{Data: []byte(body)}
	}
	return words.Load(source.Over(own, templates.FS), "en-GB")
}

func shipped(t *testing.T) *words.Words {
	t.Helper()
	w, faults := load(t, nil)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	return w
}

func TestSay(t *testing.T) {
	w := shipped(t)
	for _, tt := range []struct{ name, got, want string }{
		{"one place", w.Say("dose.reserve", "n", 2), "stop when 2 more were possible"},
		{"a number that is one", w.Say("dose.sets", "n", 1), "1 set"},
		{"any other number", w.Say("dose.sets", "n", 3), "3 sets"},
		{"a key of nobody", w.Say("dose.nonsense"), "‹dose.nonsense›"},
		{"a list", w.Join([]string{"a", "b", "c"}), "a, b and c"},
		{"a list of two", w.Join([]string{"a", "b"}), "a and b"},
		{"a list of none", w.Join(nil), ""},
		{"choices", w.Either([]string{"a", "b", "c"}), "a, b or c"},
		{"a day", w.Day(unit.Day{Year: 2026, Month: 4, Date: 6}), "Mon 6\u00a0April 2026"},
		{"a short day", w.ShortDay(unit.Day{Year: 2026, Month: 4, Date: 6}), "6\u00a0April"},
		{"no day", w.Day(unit.Day{}), ""},
		{"no trailing zeros", w.Number(22.50, 2), "22.5"},
		{"a whole number", w.Number(100, 2), "100"},
		{"a true minus", w.Number(-5, 0), "−5"},
		{"no minus before nothing", w.Number(-0.001, 1), "0"},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, tt.got, tt.want)
		}
	}
}

// A value that looks like a place is only a value.
func TestSayFillsOnce(t *testing.T) {
	w := shipped(t)
	if got := w.Say("head.named", "name", "{code}", "code", "tern-04"); got != "{code} (tern-04)" {
		t.Errorf("%q", got)
	}
}

func TestOverlay(t *testing.T) {
	for _, tt := range []struct{ name, file, want string }{
		{"own words", "[stop]\ntitle = \"Halt\"", ""},
		{"a key misspelt", "[stop]\ntitel = \"Halt\"", `templates/words/en-GB/client.toml:2: no page uses the sentence "stop.titel"; did you mean "stop.title"?`},
		{"a place of nobody", "[dose]\nreserve = \"leave {m}\"", `templates/words/en-GB/client.toml:2: the page has nothing to put in the place {m} of "dose.reserve"; it may use {n}`},
		{"no sentence", "[stop]\ntitle = \"\"", "empty"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			w, faults := load(t, map[string]string{"words/en-GB/client.toml": tt.file})
			switch {
			case tt.want == "" && len(faults) > 0:
				t.Fatal(faults)
			case tt.want == "" && w.Say("stop.title") != "Halt":
				t.Errorf("the clinic's own words are not used: %s", w.Say("stop.title"))
			case !strings.Contains(faults.Error(), tt.want):
				t.Errorf("%v\nwant %s", faults, tt.want)
			}
		})
	}
}

func TestUnknownLanguage(t *testing.T) {
	if _, faults := words.Load(source.Over(templates.FS), "xx"); !strings.Contains(faults.Error(), `no words of the language "xx"`) {
		t.Error(faults)
	}
}
