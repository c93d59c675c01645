package plan_test

import (
	"testing"

	"paceleaf/generator/unit"
)

// Rule 12: of two knees operated on one day each does what a slot keeps for the operated leg, and each rests when the one
// swelling that was typed asks for a pause. A leg operated earlier is in another stage.
func TestRule12_TwoKneesOfOneDay(t *testing.T) {
	phase := "title = \"Own\"\naim = \"Try.\"\n[[slot]]\nid = \"kept\"\nchoose = [\"quad-set\"]\nsets = 3\nreps = 10\nlegs = \"operated\"\n" +
		"[[slot]]\nid = \"press\"\nchoose = [\"leg-press-single\"]\nsets = 3\nreps = 10\nlegs = \"operated\"\n[[session]]\nid = \"a\"\nslots = [\"kept\", \"press\"]\n"
	swollen := map[string]string{"2026-02-16": "effusion = \"2+\"\nleft.lacks_extension_deg = 0\n"}
	for _, row := range []struct {
		name, second      string // of the right knee
		tests             map[string]string
		setLeft, setRight bool
		pressRight        bool
		why               string
	}{
		{"the same day", operation("right", "2026-01-05"), nil, true, true, true, "each is an operated leg"},
		{"the same day, swollen", operation("right", "2026-01-05"), swollen, true, true, false, "nobody said which knee swelled"},
		{"a year earlier", operation("right", "2025-01-06"), nil, true, false, false, "another stage"},
		{"the day before", operation("right", "2026-01-04"), nil, true, false, false, "its own course"},
		{"only one", "", nil, true, false, false, "the other leg is not operated"},
	} {
		t.Run(row.name, func(t *testing.T) {
			files := bare(free, "", `"quad-set"`)
			files["programs/phases/settle.toml"] = phase
			p := who{other: "operated-too", starts: "2026-02-16", weeks: 1, more: row.second, tests: row.tests, files: files}.plan(t)
			left, right := dose(p, "quad-set", unit.Left, 1) != nil, dose(p, "quad-set", unit.Right, 1) != nil
			if left != row.setLeft || right != row.setRight {
				t.Errorf("quad set: left %v, right %v; want %v, %v: %s", left, right, row.setLeft, row.setRight, row.why)
			}
			if got := dose(p, "leg-press-single", unit.Right, 1) != nil; got != row.pressRight {
				t.Errorf("leg press right: %v, want %v: %s", got, row.pressRight, row.why)
			}
		})
	}
}
