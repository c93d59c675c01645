package generator_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/page"
	"paceleaf/programs"
	"paceleaf/templates"
)

// Every sum behind a load that comes from a log gives its result on a pocket calculator: a step that was earned by repetitions, on
// plates and on a stack with an add-on, and a set that was done as asked.
func TestLawLoggedLoadsCanBeRedone(t *testing.T) {
	for _, row := range []struct {
		name, slot, exercise, sets string
		sums                       []string // quantities of week 1 that must be among them
	}{
		{"an earned step", "reps = 8\nreps_to = 12\nreserve = 2", "leg-press-single", `"kg": 55, "reps": [12, 13, 12]`, []string{"next-setting", "step-earned", "load"}},
		{"the next pin", "reps = 8\nreps_to = 12\nreserve = 2", "knee-extension-machine", `"kg": 51.25, "reps": [13, 13, 13]`, []string{"next-setting", "step-earned", "load"}},
		{"no step yet", "reps = 6\nreps_to = 12\nreserve = 2", "leg-press-single", `"kg": 57.5, "reps": [7, 7, 7]`, []string{"as-logged", "load"}},
		{"more than fifteen", "reps = 8\nreps_to = 14\nreserve = 2", "leg-press-single", `"kg": 55, "reps": [14, 14, 14]`, []string{"next-setting", "load"}},
		{"done as asked", "reps = 10\nreserve = 2", "leg-press-single", `"kg": 52.5, "reps": [11, 12, 8]`, []string{"as-logged", "load"}},
	} {
		house, faults := generator.Open(generator.Files{Clinic: logged(t, row.slot, row.exercise, row.sets), Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
		if house == nil {
			t.Fatal(faults)
		}
		p := house.Plan("wren-09").Plan
		if p == nil {
			t.Fatalf("%s: %v", row.name, house.Plan("wren-09").Faults)
		}
		if shared := page.SharedIDs(p); len(shared) > 0 {
			t.Errorf("%s: ids that mean two numbers: %v", row.name, shared)
		}
		chain, _ := page.WhyText(p, row.exercise+".left.w1.load", nil)
		for _, step := range strings.Split(chain, "\n") {
			if _, err := redo(step); err != nil {
				t.Errorf("%s: %v\n%s", row.name, err, step)
			}
		}
		for _, quantity := range row.sums {
			if !strings.Contains(chain, row.exercise+".left.w1."+quantity+" = ") {
				t.Errorf("%s: no %s in\n%s", row.name, quantity, chain)
			}
		}
	}
}

// logged is the demo clinic with one more client, whose block 1 was logged on a calm knee.
func logged(t *testing.T, slot, exercise, sets string) fstest.MapFS {
	files := demoFiles(t)
	for name, text := range map[string]string{
		"programs/ranges.toml":        "title = \"Ranges\"\ncounts_from = \"start\"\nphases = [\"ranges\"]\n",
		"programs/phases/ranges.toml": "title = \"Ranges\"\naim = \"Stronger thighs\"\n[[slot]]\nid = \"press\"\nchoose = [\"" + exercise + "\"]\nsets = 3\n" + slot + "\n[[session]]\nid = \"a\"\nslots = [\"press\"]\n",
		"clients/wren-09/client.toml": "program = \"ranges\"\nplace = \"gym\"\ntraining_days = [\"mon\", \"wed\", \"fri\"]\nother_leg = \"sound\"\n[[event]]\nkind = \"start\"\ndate = 2026-03-01\nside = \"left\"\n",
		"clients/wren-09/tests/2026-03-16.toml": "by = \"imbali\"\npain_worst = 0\npain_next_morning = 0\npain_kind = \"ache\"\neffusion = \"zero\"\nleft.lacks_extension_deg = 0\nleft.flexion_deg = 140\nright.flexion_deg = 140\n" +
			"[[lift]]\nexercise = \"" + exercise + "\"\nrange_deg = [0, 100]\nleft = \"60 kg x 8+0\"\nright = \"60 kg x 8+0\"\n",
		"clients/wren-09/blocks/1.toml": "starts = 2026-03-23\nweeks = 4\nby = \"imbali\"\n",
		"clients/wren-09/blocks/2.toml": "starts = 2026-04-20\nweeks = 4\nby = \"imbali\"\n",
		"clients/wren-09/logs/2026-04-17.json": "{ \"log\": 1, \"client\": \"wren-09\", \"block\": 1, \"done\": [ { \"on\": \"2026-04-17\", \"do\": \"" + exercise + "\", \"left\": { " + sets + ", \"reserve\": 2 } } ],\n" +
			"\"knee\": [ { \"on\": \"2026-04-17\", \"pain\": 0, \"pain_am\": 0, \"kind\": \"ache\", \"swelling\": \"same\" } ] }",
	} {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return files
}
