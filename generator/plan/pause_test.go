package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// pausedWho is a left knee that is swollen 2+ on the block's first day.
func pausedWho(slots ...string) who {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.files = own(slots...)
	w.tests["2026-04-06"] = strings.Replace(w.tests["2026-04-06"], "effusion = \"trace\"", "effusion = \"2+\"", 1)
	return w
}

// Rule 27: of the paused knee range, quad sets and swelling care go on; what bends it again and again by its own muscles does not,
// be it without weight.
func TestRule27d_WhatMovesThePausedKneeRests(t *testing.T) {
	p := pausedWho(`"stationary-cycling"`, `"prone-curl-no-weight"`, `"hamstring-set"`, `"heel-prop"`, `"ankle-pump"`, `"straight-leg-raise"`).plan(t)
	for _, row := range []struct {
		exercise string
		side     unit.Side
		want     bool
		why      string
	}{
		{"stationary-cycling", unit.Both, false, "a bike moves both knees against a brake"},
		{"prone-curl-no-weight", unit.Left, false, "a curl is a curl"}, {"prone-curl-no-weight", unit.Right, true, "the other leg goes on"},
		{"hamstring-set", unit.Left, true, "nothing moves"}, {"heel-prop", unit.Left, true, "range"}, {"ankle-pump", unit.Left, true, "the knee is left alone"},
		{"straight-leg-raise", unit.Left, true, "the knee is held still"},
	} {
		if got := dose(p, row.exercise, row.side, 1) != nil; got != row.want {
			t.Errorf("%s, %s: prescribed %v, want %v (%s); %s", row.exercise, row.side, got, row.want, row.why, because(p, row.exercise, 1))
		}
	}
}

// Rule 27: gentle work of the paused knee is done every day, also where it stands in the place of hard work; the other leg keeps its days.
func TestRule27e_GentleWorkIsDaily(t *testing.T) {
	w := pausedWho(`"leg-press-single", "quad-set"`)
	p := w.plan(t)
	for _, r := range p.Prescriptions {
		want := "a"
		if r.Exercise.ID == "quad-set" {
			want = plan.GentleSession
		}
		if strings.Join(r.Sessions, " ") != want {
			t.Errorf("%s %s stands in %v, want %s", r.Exercise.ID, r.Side, r.Sessions, want)
		}
	}
	daily, days := 0, 0
	for _, s := range p.Sessions {
		if s.Session == plan.GentleSession && s.Daily {
			daily++
		} else {
			days++
		}
	}
	if daily != 7*w.weeks || days != 3*w.weeks {
		t.Errorf("%d days of gentle work and %d of the other leg in %d weeks", daily, days, w.weeks)
	}
	w.files["programs/phases/settle.toml"] += "[[session]]\nid = \"every\"\ndaily = true\nslots = [\"slot-1\"]\n"
	if p := w.plan(t); dose(p, "quad-set", unit.Left, 1) == nil || sessionsOf(p, "quad-set") != "a every" {
		t.Errorf("what is daily already stays as it is: %s", sessionsOf(p, "quad-set"))
	}
	calm := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	calm.files = own(`"quad-set"`)
	if got := sessionsOf(calm.plan(t), "quad-set"); got != "a" {
		t.Errorf("without a pause the program's own days hold, not %s", got)
	}
}

// Rule 27: a session in which the pause has left nothing to do is none.
func TestRule27f_AnEmptySessionHasNoDays(t *testing.T) {
	w := pausedWho(`"squat"`, `"quad-set"`)
	w.files["programs/phases/settle.toml"] = strings.Replace(w.files["programs/phases/settle.toml"], "slots = [\"slot-1\", \"slot-2\", ]",
		"slots = [\"slot-1\"]\n[[session]]\nid = \"b\"\nslots = [\"slot-2\"]", 1)
	for _, s := range w.plan(t).Sessions {
		if s.Session == "a" {
			t.Fatalf("squats rest for both legs, and their session still has the day %s", s.Day)
		}
	}
}

func sessionsOf(p *plan.Plan, exercise string) string {
	for _, r := range p.Prescriptions {
		if r.Exercise.ID == exercise {
			return strings.Join(r.Sessions, " ")
		}
	}
	return ""
}

// Rule 24: in the first weeks a weight is found only with the therapist, so a week away in them asks for none: the slot takes
// its next choice. Later the client looks alone.
func TestRule24e_NoWeightIsFoundAloneInTheFirstWeeks(t *testing.T) {
	for _, row := range []struct{ name, date, place, want, why string }{
		{"week 3, away", "2026-03-16", "heavy", "mini-squat", "there is no therapist to find it with"},
		{"week 3, at home", "2026-03-16", "", "leg-press-single", "the page says: only together"},
		{"week 13, away", "2026-01-05", "heavy", "leg-press-single", "by then the client may look alone"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{date: row.date, starts: "2026-04-06", weeks: 1, files: own(`"leg-press-single", "mini-squat"`), tests: map[string]string{"2026-04-06": straightKnees}}
			w.more = limit("added-weight", "allowed = true", row.date, "", "surgeon", "Dr Auk", row.date) + limit("weight-bearing", "allowed = true", row.date, "", "surgeon", "Dr Auk", row.date)
			if row.place != "" {
				w.more += away("2026-04-06", "2026-04-12", row.place)
			}
			p := w.plan(t)
			chosen := ""
			for _, r := range p.Prescriptions {
				if r.Side != unit.Right {
					chosen = r.Exercise.ID
				}
			}
			if chosen != row.want {
				t.Errorf("%s, want %s (%s); %s", chosen, row.want, row.why, because(p, "leg-press-single", 1))
			}
		})
	}
}

// Rules 9 and 28: a hop or a maximal test waits for today's look where the newest one was not calm, and where nobody looked.
func TestRule28d_RestlessTests(t *testing.T) {
	for _, row := range []struct{ look, want, why string }{
		{"effusion = \"trace\"\npain_worst = 2\n", "", "calm"},
		{"effusion = \"1+\"\npain_worst = 0\n", "effusion was 1+ at the last look", "impact asks for a trace"},
		{"effusion = \"zero\"\npain_worst = 4\npain_next_morning = 1\n", "pain was 4 at the last look", ""},
		{"effusion = \"trace\"\neffusion_method = \"patellar-tap\"\npain_worst = 0\n", "effusion was trace at the last look, which may have missed up to 1+", "the kneecap tap sees no less"},
		{"effusion = \"zero\"\nleft.lacks_extension_deg = 9\npain_worst = 0\n", "effusion was zero at the last look, which may have missed up to 3+", "the sweep of a bent knee is none"},
		{"effusion = \"trace\"\n", "pain was not asked since the event", "missing is never calm"},
		{"pain_worst = 0\n", "swelling was not looked at since the event", "missing is never calm"},
	} {
		w := who{starts: "2026-04-06", tests: map[string]string{"2025-12-01": calm, "2026-04-01": row.look}}
		p := w.plan(t)
		due := plan.DueTests(p.Clinic, p.Program, p.Client, day("2026-05-04"))
		if got := due.Restless().String(); got != row.want {
			t.Errorf("%q: %q, want %q (%s)", row.look, got, row.want, row.why)
		}
	}
}

// Rule 9: a lift that may be made does not go to failure before maximal effort is open.
func TestRule09h_ALiftKeepsSomeInReserve(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	p := w.plan(t)
	for on, easy := range map[string]bool{"2025-12-15": true, "2026-01-12": false} {
		found := false
		for _, l := range plan.DueTests(p.Clinic, p.Program, p.Client, day(on)).Lifts {
			if found = found || l.ID == "leg-press-single"; l.ID == "leg-press-single" && (l.Easy != "") != easy {
				t.Errorf("%s: %q; week 12 is 29 December", on, l.Easy)
			}
		}
		if !found {
			t.Errorf("%s: the press is not due", on)
		}
	}
}

// Rule 27: time ends no pause, so nothing new begins for that knee in a later week; the other leg's later work does.
func TestRule27g_NothingNewBeginsInAPause(t *testing.T) {
	w := pausedWho(`"heel-slide"`)
	w.more += limit("passive-bend", "allowed = false", "2025-10-06", "2026-04-13", "surgeon", "Dr Auk", "2025-10-06")
	for _, row := range []struct {
		look string
		want bool
		why  string
	}{{"effusion = \"2+\"", false, "the limit lifts in week 2, the pause does not"}, {"effusion = \"trace\"", true, "without a pause it begins then"}} {
		w.tests["2026-04-06"] = strings.NewReplacer("effusion = \"2+\"", row.look, "effusion = \"trace\"", row.look).Replace(w.tests["2026-04-06"])
		p := w.plan(t)
		if got := dose(p, "heel-slide", unit.Left, 2) != nil; got != row.want || dose(p, "heel-slide", unit.Left, 1) != nil {
			t.Errorf("%s: in week 2 %v, want %v (%s); %s", row.look, got, row.want, row.why, because(p, "heel-slide", 2))
		}
		if dose(p, "heel-slide", unit.Right, 1) == nil {
			t.Error("the other leg has neither a limit nor a pause")
		}
	}
}

// Rules 2 and 6: a letter that holds from a day within the block is a date, and a flag; one that loosens is no such.
func TestRule06j_ALetterWithinTheBlock(t *testing.T) {
	for _, row := range []struct{ allow, kind, why string }{{"range_deg = [0, 45]", "tightens", "stricter than 0 to 90"}, {"allowed = true", "", "as free as before"}} {
		w := who{date: "2025-10-06", starts: "2026-04-06", weeks: 4, tests: map[string]string{"2026-04-06": straightKnees}}
		w.more = limit("loaded-bend", "range_deg = [0, 90]", "2025-10-06", "", "surgeon", "Dr Auk", "2025-10-06") + limit("loaded-bend", row.allow, "2026-04-15", "2026-06-01", "surgeon", "Dr Auk", "2026-04-14")
		p := w.plan(t)
		kind, flagged := "", false
		for _, d := range p.Dates {
			if d.On == day("2026-04-15") && d.Kind == "tightens" {
				kind = d.Kind
			}
		}
		for _, f := range p.Flags {
			flagged = flagged || f.ID == "limit-tightens"
		}
		if kind != row.kind || flagged != (row.kind != "") {
			t.Errorf("%s: %q, flagged %v (%s)", row.allow, kind, flagged, row.why)
		}
	}
}

// Rule 27: range goes on in a pause and does not grow; without one it grows as the program says.
func TestRule27h_RangeDoesNotGrowInAPause(t *testing.T) {
	for _, row := range []struct {
		swelling string
		want     int
	}{{"2+", 5}, {"trace", 8}} {
		w := pausedWho(`"heel-prop"`)
		w.tests["2026-04-06"] = strings.Replace(w.tests["2026-04-06"], "effusion = \"2+\"", "effusion = \""+row.swelling+"\"", 1)
		w.files["programs/phases/settle.toml"] = strings.Replace(w.files["programs/phases/settle.toml"], "sets = 3\nreps = 10\nreserve = 2\nweekly_percent = 2.5",
			"minutes = 5\n[[slot.wave]]\nfrom_week = 28\nminutes = 8", 1)
		p := w.plan(t)
		if first, last := dose(p, "heel-prop", unit.Left, 1), dose(p, "heel-prop", unit.Left, w.weeks); *first.Dose.Minutes != 5 || *last.Dose.Minutes != row.want {
			t.Errorf("swelling %s: %d and %d minutes, want 5 and %d", row.swelling, *first.Dose.Minutes, *last.Dose.Minutes, row.want)
		}
	}
}

// Rule 27: two slots that come to the same gentle exercise ask for it once a day, not twice.
func TestRule27i_GentleWorkIsAskedOnce(t *testing.T) {
	n := 0
	for _, r := range pausedWho(`"leg-press-single", "quad-set"`, `"knee-extension-machine", "quad-set"`).plan(t).Prescriptions {
		if r.Exercise.ID == "quad-set" && r.Side == unit.Left {
			n++
		}
	}
	if n != 1 {
		t.Errorf("the thigh squeeze stands %d times", n)
	}
	w := pausedWho(`"leg-press-single", "quad-set"`, `"quad-set"`)
	w.files["programs/phases/settle.toml"] = strings.Replace(w.files["programs/phases/settle.toml"], "slots = [\"slot-1\", \"slot-2\", ]",
		"slots = [\"slot-1\"]\n[[session]]\nid = \"every\"\ndaily = true\nslots = [\"slot-2\"]", 1)
	for _, r := range w.plan(t).Prescriptions {
		if r.Exercise.ID == "quad-set" && r.Side == unit.Left && r.Slot.ID != "slot-2" {
			t.Errorf("the program's own daily line stays, not that of %s", r.Slot.ID)
		}
	}
}
