package source

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

type logFile struct {
	Log  int      `json:"log"`
	Done []doneOn `json:"done"`
}

type doneOn struct {
	On  unit.Day `json:"on"`
	Do  string   `json:"do"`
	Rep []int    `json:"rep,omitempty"`
}

func TestJSON(t *testing.T) {
	rows := []struct{ name, text, says string }{
		{"plain", `{"log": 1, "done": [{"on": "2026-04-06", "do": "press"}]}`, ""},
		{"BOM", "\xef\xbb\xbf{}", ""},
		{"unknown key", "{\n\"log\": 1,\n\"dnoe\": []}", `l.json:3: unknown key dnoe; use the file as it was written, or write it again`},
		{"wrong kind", "{\n\"log\": \"x\"}", `l.json:2: log is a text; use the file as it was written, or write it again`},
		{"fraction", "{\"log\": 1.5}", `l.json:1: log is a number 1.5; use the file as it was written, or write it again`},
		{"wrong kind in a list", "{\"done\": [\n{\"rep\": [1, true]}]}", `l.json:2: done.rep is true or false; use the file as it was written, or write it again`},
		{"a type's own judgement", "{\"done\": [{\"on\": \"6 April\"}]}", `l.json:1: "6 April" is not a day; write year-month-day, as in 2026-04-06`},
		{"not JSON", "{\n\"log\" 1}", `l.json:2: this is not JSON; use the file as it was written, or write it again`},
		{"cut off", "{\n\"log\": 1,\n", `l.json:2: the file ends before its value does; use the file as it was written, or write it again`},
		{"empty", "", `l.json:1: the file ends before its value does; use the file as it was written, or write it again`},
		{"two values", "{}\n{}", `l.json:2: something follows the end of the value; use the file as it was written, or write it again`},
		{"list for a table", "[]", `l.json:1: the whole file is a list; use the file as it was written, or write it again`},
		{"another encoding", "{}\n\xff", `l.json:2: this line is not UTF-8 text; save the file as UTF-8`},
		{"too long", strings.Repeat(" ", maxBytes+1), `l.json: the file is longer than 1 MiB; split it, or remove what does not belong here`},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			var l logFile
			if got := JSON("l.json", []byte(r.text), &l).Error(); got != r.says {
				t.Errorf("\n got %s\nwant %s", got, r.says)
			}
		})
	}
}

func TestWriteJSON(t *testing.T) {
	l := logFile{Log: 1, Done: []doneOn{{unit.Day{Year: 2026, Month: 4, Date: 6}, "a < b & c", nil}}}
	want := "{\n  \"log\": 1,\n  \"done\": [\n    {\n      \"on\": \"2026-04-06\",\n      \"do\": \"a < b & c\"\n    }\n  ]\n}\n"
	got := WriteJSON(l)
	if string(got) != want {
		t.Errorf("got %s", got)
	}
	var back logFile
	if fs := JSON("l.json", got, &back); len(fs) > 0 || !reflect.DeepEqual(back, l) {
		t.Errorf("read back: %v %v", back, fs)
	}
	defer func() {
		if recover() == nil {
			t.Error("a number that JSON does not have was written")
		}
	}()
	WriteJSON(math.NaN())
}
