package formula_test

import (
	"path/filepath"
	"strings"
	"testing"
)

// Each check from outside that was asked for has its name here, with the cells that hold it: file and beginning of the cell's id, and
// how many there must be. TestPublished checks them all; this one says that none is left out, and runs one of them by its name:
// go test ./generator/formula -run 'TestOutsideChecks/Reid'.
func TestOutsideChecks(t *testing.T) {
	for _, check := range []struct {
		name  string
		cells map[string]int // "file id-prefix": how many at least
	}{
		{"loading plan 10: equations", map[string]int{"equations-maximum epley.to-3": 1, "equations-maximum brzycki.to-3": 1, "equations-maximum brzycki.whole-numbers": 1,
			"equations-maximum lombardi.60-by-5": 1, "equations-maximum wathen.reps-10": 1, "equations-maximum mayhew.reps-10": 1, "equations-maximum lander.reps-10": 1,
			"equations-maximum oconner.reps-10": 1}},
		{"loading plan 10: a single is the maximum", map[string]int{"equations-maximum epley.single": 1, "equations-maximum brzycki.single": 1, "equations-maximum lombardi.single": 1,
			"equations-maximum oconner.single": 1, "equations-maximum wathen.single": 1, "equations-maximum mayhew.single": 1, "equations-maximum lander.single": 1}},
		{"loading plan 10: load of 10 with 2 in reserve", map[string]int{"two-legs-one-press involved.load": 1, "reserve-and-steps back.60-by-10-at-2": 1}},
		{"loading plan 10: DAPRE", map[string]int{"schemes dapre.fourth-7": 1, "schemes dapre.walk-next": 1, "schemes dapre.walk-tonnage": 1}},
		{"loading plan 10: APRE-3 of 300 lb", map[string]int{"schemes apre-3.lb-7": 1}},
		{"loading plan 10: chart", map[string]int{"charts max-60.load-8": 1, "load-chart max-60.reps-8": 1}},
		{"loading plan 10: cuff", map[string]int{"doses-and-weeks cuff.load": 1, "doses-and-weeks cuff.80": 1, "doses-and-weeks cuff.tonnage": 1}},
		{"loading plan 10: machines", map[string]int{"machines sled.newtons": 1, "machines ankle.30-to-2": 1, "machines isometric.kanada-45": 1, "charts reynolds.120": 1,
			"machines band.150": 1, "machines squat.plagenhoef": 1, "machines a-side": 1}},
		{"loading plan 10: legs and steps", map[string]int{"two-legs-one-press symmetry": 1, "reserve-and-steps needed.50-52.5": 1}},
		{"Foster", map[string]int{"doses-and-weeks week": 2, "doses-and-weeks monotony": 2, "doses-and-weeks strain": 3}},
		{"DeLorme", map[string]int{"schemes delorme.": 4}},
		{"Oxford", map[string]int{"schemes oxford.": 4}},
		{"NIST Norris", map[string]int{"trends norris.": 10}}, // to 1e-9 relative: TestNorris
		{"R cars", map[string]int{"trends cars.mean-": 2, "trends cars.prediction-": 2, "trends cars.at-10": 1}},
		{"Sen 1968", map[string]int{"trends sen.": 6}},
		{"Reid 2007", map[string]int{"error-and-counts reid.": 12}},
		{"Wellsandt", map[string]int{"error-and-counts wellsandt.": 4}},
		{"KOOS 2012", map[string]int{"questionnaires koos.": 13}},
	} {
		t.Run(check.name, func(t *testing.T) {
			for where, atLeast := range check.cells {
				file, id, _ := strings.Cut(where, " ")
				source, cells := read(t, filepath.Join(published, file+".csv"))
				found := 0
				for _, c := range cells {
					if strings.HasPrefix(c.id, id) {
						found++
						c.check(t, file)
					}
				}
				if found < atLeast {
					t.Errorf("%s: %d cells %q…, want %d", file, found, id, atLeast)
				}
				t.Logf("%d cells %s of %s.csv; %s", found, id, file, source)
			}
		})
	}
}
