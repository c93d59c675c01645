package words_test

import (
	"fmt"
	"io/fs"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
	"paceleaf/templates"
)

// language is a clinic's folder with a whole language "xx": the shipped words, changed by the caller.
func language(t *testing.T, change func(file, text string) string) (*words.Words, source.Faults) {
	t.Helper()
	own := fstest.MapFS{}
	entries, err := fs.ReadDir(templates.FS, "words/en-GB")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		data, err := fs.ReadFile(templates.FS, "words/en-GB/"+e.Name())
		if err != nil {
			t.Fatal(err)
		}
		own["words/xx/"+e.Name()] = &fstest.MapFile{Data: []byte(change(e.Name(), string(data)))}
	}
	return words.Load(source.Over(own, templates.FS), "xx")
}

func as(direction, decimal, plurals string) func(file, text string) string {
	return func(_, text string) string {
		return strings.NewReplacer(`direction = "ltr"`, fmt.Sprintf("direction = %q", direction), `decimal = "."`, fmt.Sprintf("decimal = %q", decimal),
			`plurals = "en"`, fmt.Sprintf("plurals = %q", plurals)).Replace(text)
	}
}

// counted gives every sentence that counts the forms that are named.
func counted(text string, forms ...string) string {
	return regexp.MustCompile(`\{ one = ("[^"]*"), other = ("[^"]*") \}`).ReplaceAllStringFunc(text, func(s string) string {
		var all []string
		for _, f := range forms {
			all = append(all, fmt.Sprintf("%s = %q", f, f+" {n}"))
		}
		return "{ " + strings.Join(all, ", ") + " }"
	})
}

// TestPlurals: a sentence is chosen by the plurals of its language. Source of the expected forms: CLDR's chart of plural rules
// (cardinals): Polish 1; 2 to 4 but not 12 to 14; 0, 5 to 21 and so on; fractions. Arabic zero, one, two, 3 to 10, 11 to 99, 100.
// French takes 0 and 1.5 as one.
func TestPlurals(t *testing.T) {
	for _, row := range []struct {
		plurals string
		forms   []string
		of      map[string]string
	}{
		{"en", []string{"one", "other"}, map[string]string{"0": "other", "1": "one", "2": "other", "1.5": "other"}},
		{"fr", []string{"one", "many", "other"}, map[string]string{"0": "one", "1": "one", "1.5": "one", "2": "other"}},
		{"pl", []string{"one", "few", "many", "other"}, map[string]string{"1": "one", "2": "few", "4": "few", "5": "many", "12": "many", "22": "few", "112": "many", "1.5": "other"}},
		{"ru", []string{"one", "few", "many", "other"}, map[string]string{"1": "one", "21": "one", "11": "many", "3": "few", "13": "many", "1.5": "other"}},
		{"ar", []string{"zero", "one", "two", "few", "many", "other"}, map[string]string{"0": "zero", "1": "one", "2": "two", "3": "few", "10": "few", "11": "many", "99": "many", "100": "other", "103": "few"}},
		{"ja", []string{"other"}, map[string]string{"1": "other", "5": "other"}},
	} {
		grammar := as("ltr", ".", row.plurals)
		w, faults := language(t, func(file, text string) string { return counted(grammar(file, text), row.forms...) })
		if len(faults) > 0 {
			t.Errorf("%s: %.300v", row.plurals, faults)
			continue
		}
		for n, want := range row.of {
			if got, _, _ := strings.Cut(w.Say("dose.sets", "n", n), " "); got != want {
				t.Errorf("%s: %s is %q, want %q", row.plurals, n, got, want)
			}
		}
	}
}

// TestNumbersOfALanguage: the decimal mark is the language's own, in doses and in fragments; days in fragments stay as files write them.
func TestNumbersOfALanguage(t *testing.T) {
	w, faults := language(t, as("rtl", ",", "en"))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	reason := basis.Say("{a} has {b}", "gym", basis.Say("pain {a}", 2.5))
	for _, row := range []struct{ name, got, want string }{
		{"a dose", w.Number(22.5, 2), "22,5"},
		{"a negative number", w.Number(-0.5, 1), "−0,5"},
		{"no decimals", w.Number(1250, 2), "1250"},
		{"a fragment in a fragment", w.Reason(reason), "gym has pain 2,5"},
		{"a day in a fragment", w.Reason(basis.Say("pain on {a}", unit.Day{Year: 2026, Month: 4, Date: 6})), "pain on 2026-04-06"},
		{"several fragments", w.Reasons("left out", "", basis.Say("pain {a}", 1)), "left out; pain 1"},
		{"what a person typed", w.Reason("she travels"), "she travels"},
		{"its direction", w.Dir, "rtl"},
	} {
		if row.got != row.want {
			t.Errorf("%s: %q, want %q", row.name, row.got, row.want)
		}
	}
}

// TestReasonInOtherWords: a language, or a clinic, says a fragment its own way, and may turn its values round.
func TestReasonInOtherWords(t *testing.T) {
	w, faults := load(t, map[string]string{"words/en-GB/reasons.toml": `[[text]]
en = "{a} of {b} sessions"
say = { one = "once, of {b}", other = "of {b} sessions {a} were done" }`})
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	for n, want := range map[int]string{1: "once, of 3", 2: "of 3 sessions 2 were done"} {
		if got := w.Reason(basis.Say("{a} of {b} sessions", n, 3)); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// TestMistakesOfALanguage: each is told with its file, and all at once.
func TestMistakesOfALanguage(t *testing.T) {
	without := func(key string) func(string, string) string {
		return func(_, text string) string {
			return regexp.MustCompile(`(?m)^`+key+` = .*\n`).ReplaceAllString(text, "")
		}
	}
	for _, row := range []struct {
		name   string
		change func(file, text string) string
		want   string
	}{
		{"a sentence left out", without("emergency"), `templates/words/xx/client.toml: the sentence "stop.emergency" is missing; translate "Emergency: call now"`},
		{"a fragment left out", func(_, text string) string {
			return strings.Replace(text, "[[text]]\nen = \"left out\"\nsay = \"left out\"\n", "", 1)
		}, `templates/words/xx/reasons.toml: the sentence "reason.left out" is missing; translate "left out"`},
		{"a fragment of nobody", func(file, text string) string {
			if file == "reasons.toml" {
				text += "\n[[text]]\nen = \"pain {a} at noon\"\nsay = \"x\"\n"
			}
			return text
		}, `no page uses the sentence "reason.pain {a} at noon"`},
		{"a fragment twice", func(file, text string) string {
			if file == "reasons.toml" {
				text += "\n[[text]]\nen = \"left out\"\nsay = \"x\"\n"
			}
			return text
		}, `the fragment "left out" stands twice; keep one of the two`},
		{"a value of nobody", func(_, text string) string { return strings.Replace(text, `say = "pain {a}"`, `say = "pain {b}"`, 1) }, `has nothing to put in the place {b} of "reason.pain {a}"; it may use {a}`},
		{"a direction misspelt", as("right", ".", "en"), `templates/words/xx/client.toml:7: "right" is no direction of writing; write "ltr" or "rtl"`},
		{"a decimal mark of nobody", as("ltr", ";", "en"), `";" does not part decimals; write ".", "," or "٫"`},
		{"plurals of nobody", as("ltr", ".", "polish-ish"), `"polish-ish" is no tag of a language; write one such as "en", "pl" or "ar"`},
		{"a plural left out", as("ltr", ".", "pl"), `"dose.sets" counts, and has no form "few", which the language has; write { few = "…", many = "…", one = "…", other = "…" }`},
	} {
		_, faults := language(t, row.change)
		if !strings.Contains(faults.Error(), row.want) {
			t.Errorf("%s: %.400v\nwant %s", row.name, faults, row.want)
		}
	}
}
