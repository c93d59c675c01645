package plan_test

import "testing"

// What goes by the clock or by a count is told to the therapist as it was told, and makes no load.
func TestWhatIsCountedCameBack(t *testing.T) {
	for _, row := range []struct{ name, sets, best string }{
		{"seconds, set by set", `"time_s": [30, 30, 25]`, "30, 30, 25 s on 2026-03-09"},
		{"minutes", `"time_min": [20]`, "20 min on 2026-03-09"},
		{"landings", `"foot_contacts": 60`, "60 landings on 2026-03-09"},
		{"rounds", `"rounds": 6`, "6 rounds on 2026-03-09"},
		{"times a day", `"times": 4`, "4 times on 2026-03-09"},
		{"a tick", "", ""},
	} {
		log := `{ "log": 1, "client": "tern-04", "block": 1, "done": [ { "on": "2026-03-09", "do": "leg-press-single", "left": { ` + row.sets + ` } } ] }`
		p := logger(map[string]string{"2026-04-05": log}).plan(t)
		if len(p.CameBack) != 1 || len(p.CameBack[0].Lines) != 1 {
			t.Errorf("%s: %+v", row.name, p.CameBack)
			continue
		}
		if l := p.CameBack[0].Lines[0]; l.BestSet.String() != row.best || l.Best.OK() {
			t.Errorf("%s: %q with an estimate of %v, want %q without", row.name, l.BestSet, l.Best.Or(0), row.best)
		}
	}
}
