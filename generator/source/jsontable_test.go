package source

import (
	"reflect"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

type diary struct {
	At   basis.Origin
	Log  int        `key:"log,required" range:"1 9"`
	Rows []diaryRow `key:"done"`
	Says string     `key:"says"`
}

type diaryRow struct {
	At   basis.Origin
	On   unit.Day                `key:"on,required"`
	Do   string                  `key:"do,required"`
	Reps []basis.Num[unit.Count] `key:"reps,list" range:"0 100"`
}

// TestJSONTable: all mistakes of a file at once, each on its own line, in the writing of JSON.
func TestJSONTable(t *testing.T) {
	for _, row := range []struct{ name, text, says, why string }{
		{"plain", `{"log": 1, "done": [{"on": "2026-04-06", "do": "press", "reps": [10, 9]}]}`, "", ""},
		{"null is left out", `{"log": 1, "says": null}`, "", "a value that does not exist is absent or null"},
		{"all at once", "{\n\"log\": 1,\n\"done\": [\n{\"on\": \"6 April\", \"do\": \"press\"},\n{\"on\": \"2026-04-06\",\n \"reps\": [10,\n 1000]}\n],\n\"dnoe\": 3}",
			"l.json:4: on \"6 April\" is a text; write year-month-day, as in \"on\": \"2026-04-06\"\n" +
				"l.json:5: do is missing; write \"do\": \"…\"\n" +
				"l.json:7: reps 1000 is outside 0 to 100; check the number\n" +
				"l.json:9: unknown key dnoe; did you mean done?", "the second row's mistakes stand on the second row's lines"},
		{"twice", "{\"log\": 1,\n\"log\": 2}", "l.json:2: log stands twice; keep one", "the library would take the last in silence"},
		{"a day the calendar lacks", `{"log": 1, "done": [{"on": "2026-02-30", "do": "x"}]}`, "l.json:1: on \"2026-02-30\" is a text; write year-month-day, as in \"on\": \"2026-04-06\"", ""},
		{"a year far off", `{"log": 1, "done": [{"on": "0026-02-03", "do": "x"}]}`, "l.json:1: on 0026-02-03 is not between 1900 and 2100; check the year", ""},
		{"a list for the table", "[]", "l.json:1: the whole file is a list; write a table: { … }", ""},
		{"cut off", "{\n\"log\": 1,\n", "l.json:2: the file ends before its value does; use the file as it was written, or write it again", ""},
		{"not JSON", "{\n\"log\" 1}", "l.json:2: this is not JSON; use the file as it was written, or write it again", ""},
		{"two values", "{\"log\": 1}\n{}", "l.json:2: something follows the end of the value; use the file as it was written, or write it again", ""},
		{"null in a list", "{\"log\": 1, \"done\": [\nnull]}", "l.json:2: null stands in a list; take it out", ""},
		{"too deep", `{"log":` + strings.Repeat("[", 30) + strings.Repeat("]", 30) + "}", "l.json:1: more than 20 tables or lists inside one another; write it flatter", ""},
		{"a huge number", `{"log": 1e999}`, "l.json:1: 1e999 is beyond all numbers; check the number", ""},
	} {
		var d diary
		if got := JSONTable("l.json", []byte(row.text), &d).Error(); got != row.says {
			t.Errorf("%s (%s):\n got %s\nwant %s", row.name, row.why, got, row.says)
		}
	}
	var d diary
	JSONTable("l.json", []byte("{\"log\": 1, \"done\": [{\"on\": \"2026-04-06\", \"do\": \"press\",\n\"reps\": [10, 9]}]}"), &d)
	if want := (basis.Origin{File: "l.json", Key: "done[0].reps[1]", Line: 2}); d.Rows[0].Reps[1].Step().At != want || d.Rows[0].On.String() != "2026-04-06" {
		t.Errorf("%+v, want %+v", d.Rows[0].Reps[1].Step().At, want)
	}
}

// FuzzJSONTable holds the laws of any file: no panic, each fault on a line that exists, the same faults again.
func FuzzJSONTable(f *testing.F) {
	f.Add(`{"log": 1, "done": [{"on": "2026-04-06", "do": "press", "reps": [10, 9]}], "says": null}`)
	f.Add("{\n\"log\": 1.5, \"done\": {\"on\": []}, \"\": [[{}]], \"a.b\": \"\\u0000\"}")
	f.Add(`{"log": 1, "log": 1e400}`)
	f.Fuzz(func(t *testing.T, text string) {
		var a, b diary
		fs := JSONTable("a.json", []byte(text), &a)
		last := strings.Count(strings.TrimSuffix(text, "\n"), "\n") + 1
		for _, fault := range fs {
			if fault.Line < 0 || fault.Line > last {
				t.Errorf("line %d of %d: %v", fault.Line, last, fault)
			}
			if say := fault.Error(); strings.Contains(say, "interface {}") || strings.Contains(say, "%!") || strings.ContainsRune(fault.What, '\n') {
				t.Errorf("no therapist reads: %s", say)
			}
		}
		if again := JSONTable("a.json", []byte(text), &b); !reflect.DeepEqual(fs, again) || !reflect.DeepEqual(a, b) {
			t.Errorf("otherwise the second time:\n%v\n%v", fs, again)
		}
	})
}
