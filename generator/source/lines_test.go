package source

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"
)

// documents are shapes of TOML that a key index may get wrong; each has a name that says why it is here.
var documents = []struct {
	name, text string
	want       map[string]int // path -> line
}{
	{"first of two", "[[test]]\nid = 1\n[[test]]\nid = 2\n", map[string]int{"test": 1, "test[0]": 1, "test[0].id": 2, "test[1]": 3, "test[1].id": 4}},
	{"table below a list", "[[a]]\n[a.b]\nc = 1\n[[a]]\n[a.b]\nc = 2\n", map[string]int{"a[0].b": 2, "a[0].b.c": 3, "a[1].b": 5, "a[1].b.c": 6}},
	{"list below a list", "[[a]]\n[[a.b]]\nc = 1\n[[a.b]]\nc = 2\n[[a]]\n[[a.b]]\nc = 3\n", map[string]int{"a[0].b[0].c": 3, "a[0].b[1].c": 5, "a[1].b[0]": 7, "a[1].b[0].c": 8}},
	{"dotted keys imply tables", "left.peak_n = 1\nleft.arm_cm = 2\n", map[string]int{"left": 1, "left.peak_n": 1, "left.arm_cm": 2}},
	{"own header after an implied one", "[a.b]\nc = 1\n[a]\nd = 2\n", map[string]int{"a": 3, "a.b": 1, "a.d": 4}},
	{"inline list of tables", "any = [ { measure = 1 }, { measure = 2 } ]\n", map[string]int{"any[0].measure": 1, "any[1].measure": 1}},
	{"inline list over lines", "any = [\n  { measure = 1 },\n  # a [comment]\n  { measure = 2 },\n]\nb = 1\n", map[string]int{"any": 1, "any[0]": 2, "any[1].measure": 4, "b": 6}},
	{"numbers over lines", "peak_n = [\n 1,\n 2, 3,\n]\n", map[string]int{"peak_n": 1, "peak_n[0]": 2, "peak_n[1]": 3, "peak_n[2]": 3}},
	{"list in a list", "a = [[1, 2], [\n3]]\nb = 1\n", map[string]int{"a[1][0]": 2, "b": 3}},
	{"brackets in strings", "a = \"]\"\nb = ['[', \"}\", '''\n]''']\nc = 1\n", map[string]int{"a": 1, "b": 2, "c": 4}},
	{"quotes in long strings", "a = \"\"\"\n\\\"\"\" \"\"x\"\"\"\"\"\nb = 1\n", map[string]int{"a": 1, "b": 3}},
	{"hash in a string", "a = \"# no\" # yes \"\nb = 1\n", map[string]int{"b": 2}},
	{"quoted keys", "\"a.b\" = 1\n'c d'.e = 2\n\"\\u0041\" = 3\n", map[string]int{`"a.b"`: 1, `"c d"`: 2, `"c d".e`: 2, "A": 3}},
	{"spaces around points", "a . b = 1\n[ c . d ]\ne=2\n", map[string]int{"a.b": 1, "c.d": 2, "c.d.e": 3}},
	{"keys that look like values", "true = 1\n2026-04-06 = 2\n3.14 = 3\n", map[string]int{"true": 1, "2026-04-06": 2, "3.14": 3}},
	{"dates and hours", "a = 2026-04-06 10:00:00\nb = 10:00:00\nc = 1\n", map[string]int{"c": 3}},
	{"inline table over lines", "a = {\n b = 1, # c\n d = 2\n}\ne = 1\n", map[string]int{"a.b": 2, "a.d": 3, "e": 5}},
	{"CRLF", "a = 1\r\n[b]\r\nc = 2\r\n", map[string]int{"a": 1, "b": 2, "b.c": 3}},
	{"BOM", "\xef\xbb\xbfa = 1\nb = 2\n", map[string]int{"a": 1, "b": 2}},
	{"no line end", "a = 1\nb = [1,\n2]", map[string]int{"b": 2, "b[1]": 3}},
	{"empty", "", map[string]int{"a": 1}},
	{"what is not there", "[[slot]]\nid = 1\n[[slot]]\nid = 2\n", map[string]int{"slot[1].dose.sets": 3, "slot[7]": 1, "nothing": 1}},
	{"escaped line end", "a = \"\"\"x \\\n  y\"\"\"\nb = 1\n", map[string]int{"b": 3}},
	{"inline table in dotted table", "a.b = [{c.d = 1}, {c = {d = 2}}]\n", map[string]int{"a.b[0].c.d": 1, "a.b[1].c.d": 1}},
}

func TestLines(t *testing.T) {
	for _, d := range documents {
		t.Run(d.name, func(t *testing.T) {
			ix := Lines([]byte(d.text))
			for path, line := range d.want {
				if got := ix.Line(path); got != line {
					t.Errorf("%s: line %d, want %d", path, got, line)
				}
			}
			agrees(t, d.text)
		})
	}
}

// agrees holds the index against the library: the same keys in the same order, and a line of its own for each value.
func agrees(t *testing.T, text string) {
	t.Helper()
	if _, bad := unreadable("x.toml", []byte(text)); bad {
		return
	}
	var decoded map[string]any
	meta, err := libraryDecode(text, &decoded)
	if err != nil {
		return
	}
	ix := Lines([]byte(text))
	var want, got []string
	for _, k := range meta.Keys() {
		want = append(want, strings.Join(k, "\x00"))
	}
	for _, k := range ix.keys {
		got = append(got, strings.Join(k, "\x00"))
	}
	if !slices.Equal(got, want) {
		t.Fatalf("keys of %q:\n got %q\nwant %q", text, got, want)
	}
	last := max(1, len(strings.Split(strings.TrimSuffix(text, "\n"), "\n")))
	hasLines(t, text, ix, decoded, "", last)
}

func hasLines(t *testing.T, text string, ix Index, v any, path string, last int) {
	t.Helper()
	if path != "" {
		if line, ok := ix.lines[path]; !ok || line < 1 || line > last {
			t.Fatalf("%q: %s is on line %d (known: %v) of %d", text, path, line, ok, last)
		}
	}
	if table, ok := v.(map[string]any); ok {
		for k, inner := range table {
			hasLines(t, text, ix, inner, below(path, k), last)
		}
	}
	items, _ := asList(v)
	for i, inner := range items {
		hasLines(t, text, ix, inner, item(path, i), last)
	}
}

func libraryDecode(text string, into *map[string]any) (meta toml.MetaData, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%v", r)
		}
	}()
	return toml.Decode(text, into)
}

func FuzzLines(f *testing.F) {
	for _, d := range documents {
		f.Add(d.text)
	}
	f.Fuzz(agrees)
}

func TestLocate(t *testing.T) {
	reads := 0
	read := func(file string) []byte {
		reads++
		if file == "gone.toml" {
			return nil
		}
		return []byte("[[stage]]\nid = 1\n[[stage]]\nid = 2\n")
	}
	found := Faults{
		{File: "a.toml", Key: "stage[1].id", What: "x"},
		{File: "a.toml", Key: "stage[0]", What: "x"},
		{File: "a.toml", Key: "stage[0]", Line: 9, What: "x"},
		{File: "a.toml", What: "the whole file"},
		{File: "a.csv", Key: "stage[1]", What: "x"},
		{File: "gone.toml", Key: "stage[1]", What: "x"},
	}.Locate(read)
	var lines []int
	for _, f := range found {
		lines = append(lines, f.Line)
	}
	if want := []int{4, 1, 9, 0, 0, 0}; !slices.Equal(lines, want) || reads != 2 {
		t.Errorf("lines %v, want %v; %d reads, want one a file", lines, want, reads)
	}
}
