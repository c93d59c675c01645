package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/unit"
)

// daily is a client of logger whose block 1 asked a working weight of 40 kg (48 kg once: 83.3 % is 40), with logs of it.
func daily(knee []string, sets ...string) who {
	w := logger(map[string]string{"2026-04-05": logWith(knee, sets...)})
	phase := w.files["programs/phases/settle.toml"]
	w.files["programs/phases/settle.toml"] = strings.Replace(phase, "sets = 3\nreps = 10\nreserve = 2\nweekly_percent = 2.5", `method = "daily-adjusted"`, 1)
	w.tests["2026-03-02"] = straightKnees + lift("leg-press-single", "range_deg = [0, 90]", "moved 48 kg x 1+0", "90 kg x 8+0")
	return w
}

// The working weight of the next session is that of the fourth set, moved by the row of its repetitions (Knight 1979, second-hand):
// 42.5 kg six times gives 45, as in the loading plan, 3.1.
func TestMethodDailyAdjustedNextSession(t *testing.T) {
	start := []string{"2026-04-03 left 20 10", "2026-04-03 left 30 6", "2026-04-03 left 40 8"}
	for _, row := range []struct {
		name, fourth string
		want         string
		why          string
	}{
		{"6 times", "2026-04-03 left 42.5 6", "10×22.5 6×32.5 max×45", "row 5 to 6: up by 2.5; 75 % of it is 33.75, cut to 32.5"},
		{"5 times", "2026-04-03 left 42.5 5", "10×22.5 6×32.5 max×45", "the same row"},
		{"4 times", "2026-04-03 left 42.5 4", "10×20 6×30 max×42.5", "row 3 to 4: kept; half of it is 21.25"},
		{"3 times", "2026-04-03 left 42.5 3", "10×20 6×30 max×42.5", "the same row"},
		{"2 times", "2026-04-03 left 42.5 2", "10×17.5 6×27.5 max×37.5", "row 0 to 2: the largest listed fall, 5"},
		{"7 times", "2026-04-03 left 42.5 7", "10×22.5 6×32.5 max×45", "row 7 to 10: 2.5, the smallest listed rise"},
		{"10 times", "2026-04-03 left 42.5 10", "10×22.5 6×32.5 max×45", "the same row"},
		{"11 times", "2026-04-03 left 42.5 11", "10×20 6×30 max×42.5", "row 11 and more: 5 is more than a tenth of 42.5, so the load is kept"},
		{"13 times of 50", "2026-04-03 left 50 13", "10×27.5 6×40 max×55", "5 is a tenth of 50"},
	} {
		sets := append(start[:3:3], row.fourth)
		w := daily(calmKnees(sets), sets...)
		p := w.plan(t)
		if got := eachOf(dose(p, "leg-press-single", unit.Left, 1)); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.name, got, row.want, row.why)
		}
		if ids := page.SharedIDs(p); len(ids) > 0 {
			t.Errorf("%s: ids of two numbers: %v", row.name, ids)
		}
	}
}

// What the next session does not rise from: a sore knee, one that nobody told of, a session of three weeks ago, a newer lift.
func TestMethodDailyAdjustedHoldsBack(t *testing.T) {
	const fourth = "2026-04-03 left 42.5 6"
	for _, row := range []struct {
		name string
		w    who
		want string
	}{
		{"nobody told of the knee", daily([]string{}, fourth), "10×20 6×30 max×42.5"},
		{"a rise on a swollen knee", daily([]string{`{ "on": "2026-04-03", "pain": 1, "pain_am": 0, "kind": "ache", "swelling": "same" }`, `{ "on": "2026-03-20", "swelling": "more" }`}, fourth), "10×22.5 6×32.5 max×45"},
		{"cut short after the third set", daily(calmKnees([]string{fourth}), "2026-04-03 left 20 10", "2026-04-03 left 30 6", "2026-04-03 left 40 8"), "10×20 6×30 max×40"},
		{"three weeks ago", daily(calmKnees([]string{"2026-03-13 x"}), "2026-03-13 left 42.5 6"), "10×17.5 6×27.5 max×37.5"},
	} {
		if got := eachOf(dose(row.w.plan(t), "leg-press-single", unit.Left, 1)); got != row.want {
			t.Errorf("%s: %s, want %s", row.name, got, row.want)
		}
	}
	w := daily(calmKnees([]string{fourth}), fourth)
	w.tests["2026-04-06"] = straightKnees + lift("leg-press-single", "range_deg = [0, 90]", "moved 36 kg x 1+0", "90 kg x 8+0")
	if got := eachOf(dose(w.plan(t), "leg-press-single", unit.Left, 1)); got != "10×15 6×22.5 max×30" {
		t.Errorf("lifted this morning: %s, want 10×15 6×22.5 max×30: what is measured comes before what was logged", got)
	}
}
