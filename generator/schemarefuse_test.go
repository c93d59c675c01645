package generator_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"paceleaf/generator"
	"paceleaf/generator/source"
)

// What schemas refuse, and that they refuse no more than the reader.

// TestSchemasRefuse: what is wrong by itself is refused, and the reader refuses it too.
func TestSchemasRefuse(t *testing.T) {
	schemas := compiled(t)
	for _, c := range []struct{ name, kind, text string }{
		{"an unknown key", "test", "efusion = \"trace\""},
		{"a key of another table", "test", "[[hop]]\ntest = \"single\"\neffusion = \"trace\""},
		{"a key in another case", "test", "Mass_kg = 64"},
		{"no unit", "test", "mass = 64"},
		{"an unknown unit", "test", "mass_st = 10"},
		{"two units", "test", "mass_kg = 64\nmass_lb = 141"},
		{"two units in a leg", "test", "[[strength]]\ntest = \"knee-extension\"\nleft.peak_n = [300]\nleft.peak_kgf = [31]"},
		{"two units of a mark", "program", "title = \"T\"\ncounts_from = \"start\"\nphases = [\"a\"]\n[[goal]]\nmeasure = \"flexion\"\nby_week = 4\nat_least = 90\nat_least_deg = 90"},
		{"too much", "test", "mass_kg = 251"},
		{"too much in pounds", "test", "mass_lb = 552"},
		{"too little", "test", "pain_worst = -1"},
		{"too much in a list", "test", "[[strength]]\ntest = \"knee-extension\"\nleft.peak_n = [300, 3001]"},
		{"beyond the joint", "test", "[[lift]]\nexercise = \"squat\"\nrange_deg = [0, 170]"},
		{"a range of three", "test", "[[lift]]\nexercise = \"squat\"\nrange_deg = [0, 90, 100]"},
		{"a wrong word", "test", "effusion = \"some\""},
		{"a wrong word in a list", "exercise", exerciseWith(`needs = ["sofa"]`)},
		{"a wrong word alone", "exercise", exerciseWith(`needs = "sofa"`)},
		{"a text for a number", "test", "mass_kg = \"64\""},
		{"a number for a truth", "block", blockWith("[[override]]\nexercise = \"squat\"\nreason = \"wish\"\nleave_out = 1")},
		{"a fraction for a whole number", "block", "starts = 2026-04-06\nweeks = 2.5\nby = \"imbali\""},
		{"a day that is none", "block", "starts = \"6.4.2026\"\nweeks = 2\nby = \"imbali\""},
		{"what must be there", "block", "starts = 2026-04-06\nby = \"imbali\""},
		{"what must be said to be none", "exercise", strings.Replace(exerciseWith(""), "kinds = []\n", "", 1)},
		{"an empty list that must not be", "client", personWith("training_days = []")},
		{"an empty text that must not be", "hold", "by = \"\"\nreason = \"pain\""},
		{"a gap to fill", "hold", "by = \"?\"\nreason = \"pain\""},
		{"an id that is none", "client", personWith("training_days = [\"mon\"]\n[setup.Knee_Extension]\nseat = 4")},
		{"an id of a source that is none", "sources", "[KNGF]\ntitle = \"T\""},
		{"a grade with a unit", "phase", "title = \"T\"\naim = \"A\"\n[[enter]]\nmeasure = \"effusion\"\nat_most_deg = \"trace\""},
		{"no grade and no number", "phase", "title = \"T\"\naim = \"A\"\n[[enter]]\nmeasure = \"effusion\"\nat_most = \"some\""},
		{"an answer that is none", "test", "[[questionnaire]]\nid = \"acl-rsi\"\nitems = [4, \"x\"]"},
		{"a list for a table", "client", personWith("training_days = [\"mon\"]\nsetup = [1]")},
	} {
		t.Run(c.name, func(t *testing.T) {
			if schemas[c.kind].Validate(asDocument(t, []byte(c.text))) == nil {
				t.Errorf("%s.json takes\n%s", c.kind, c.text)
			}
			if len(readAs[c.kind]([]byte(c.text)).Wrong()) == 0 {
				t.Errorf("the reader takes what %s.json refuses:\n%s", c.kind, c.text)
			}
		})
	}
	for kind, text := range map[string]string{"exercise": exerciseWith(""), "block": blockWith(""), "client": personWith("training_days = \"mon\"\n[[event]]\nkind = \"start\"\ndate = 2026-01-01\nside = \"left\"")} {
		if err := schemas[kind].Validate(asDocument(t, []byte(text))); err != nil {
			t.Errorf("the %s that the wrong ones are made of is itself refused: %v", kind, err)
		}
	}
}

func exerciseWith(more string) string {
	return "title = \"T\"\ndescribe = \"D\"\ntrains = \"calf\"\nkinds = []\nside = \"one\"\ncontraction = \"isometric\"\nresisted_by = \"body\"\n" + more
}

func blockWith(more string) string {
	return "starts = 2026-04-06\nweeks = 4\nby = \"imbali\"\n" + more
}

func personWith(more string) string {
	return "program = \"p\"\nplace = \"gym\"\nother_leg = \"sound\"\n" + more
}

// TestSchemasRefuseNoMoreThanTheReader: each key is written at its bounds, beyond them, and as other things than it is; where the
// schema refuses the value of that key, the reader does too.
func TestSchemasRefuseNoMoreThanTheReader(t *testing.T) {
	schemas := compiled(t)
	values := []string{"-16", "-1", "0", "0.25", "1", "5", "8.5", "40", "100", "101", "250", "551", "551.155", "552", "1e6", `""`, `"?"`, `"trace"`, `"-"`, `"both"`, `"2026-04-06"`,
		"2026-04-06", "true", "[]", "[5]", `["mon"]`, "[0, 90]", "[90, 0]", "[-15, 160]", "{}", `{ an-id = "x" }`}
	agreed := map[bool]int{}
	for _, kind := range generator.FileKinds() {
		for _, table := range kind.Tables {
			for _, key := range table.Keys {
				for _, name := range key.Names {
					for _, value := range append(slices.Clone(values), key.Value) {
						refused := refusesKey(t, schemas[kind.Name], alone(kind, table, name+" = "+value), name)
						agreed[refused]++
						if refused && len(faultsOf(kind, table, source.Key{Shown: name, Value: value})) == 0 {
							t.Errorf("%s %s: %s = %s is refused by the schema and taken by the reader", kind.Name, table.Header, name, value)
						}
					}
				}
			}
		}
	}
	if agreed[true] < 2000 || agreed[false] < 2000 {
		t.Errorf("refused %d, let through %d: the values no longer try both", agreed[true], agreed[false])
	}
}

// refusesKey reports whether a schema refuses the value of a key, whatever else it finds wrong.
func refusesKey(t *testing.T, schema *jsonschema.Schema, text, name string) bool {
	last := name[strings.LastIndexByte(name, '.')+1:]
	return slices.ContainsFunc(refusedAt(schema.Validate(asDocument(t, []byte(text)))), func(at []string) bool {
		return slices.Contains(at, last)
	})
}
