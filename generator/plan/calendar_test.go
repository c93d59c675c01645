package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

func sessions(p *plan.Plan) string {
	var list []string
	for _, s := range p.Sessions {
		list = append(list, s.Day.String()[5:]+s.Session)
	}
	return strings.Join(list, " ")
}

// Sessions take the training days in turn, across blocks: the turn counts from the day the stage was recorded.
func TestRule26_SessionsInTurnAcrossBlocks(t *testing.T) {
	for _, row := range []struct{ starts, want, why string }{
		{"2026-03-02", "03-02a 03-04b 03-06a", "the stage begins"},
		{"2026-03-09", "03-09b 03-11a 03-13b", "an odd number of days came before"},
		{"2026-03-16", "03-16a 03-18b 03-20a", ""},
		{"2026-03-23", "03-23b 03-25a 03-27b", ""},
		{"2026-03-10", "03-11a 03-13b 03-16a", "a block that begins on a Tuesday goes on in turn"},
		{"2026-03-30", "03-30a 04-01b 04-03a", "across the change to summer time"},
	} {
		p := who{starts: row.starts, weeks: 1, stages: "rebuild 2026-03-02"}.plan(t)
		if got := sessions(p); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.starts, got, row.want, row.why)
		}
	}
}

// Rule 26: heavy days of one muscle lie at least 48 h apart: closer ones are flagged.
func TestRule26_HeavyDays(t *testing.T) {
	for days, want := range map[string]bool{`["mon", "wed", "fri"]`: false, `["mon", "tue"]`: true, `["sun", "mon"]`: true, `["mon", "thu", "sat"]`: false} {
		got := false
		for _, f := range (who{starts: "2026-06-01", stages: "rebuild 2026-03-02", days: days}).plan(t).Flags {
			got = got || f.ID == "heavy-days-too-close"
		}
		if got != want {
			t.Errorf("%s: flagged %v, want %v", days, got, want)
		}
	}
}

// Rule 3: a week with a day away is spent with what is there; what it lacks is passed over.
func TestRule03_AwayWeek(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "[[away]]\nfrom = 2026-04-19\nuntil = 2026-04-20\nplace = \"hotel\"\n")
	w.files = own(`"leg-press-single", "split-squat"`)
	p := w.plan(t)
	if got := loads(p, "leg-press-single", unit.Left); got != "52.5 - - 50 52.5 55" {
		t.Errorf("%s: weeks 2 and 3 each have a day away, and after two weeks without it begins a step lower", got)
	}
	if got := chosen(p, "slot-1", unit.Left, 2); got != "split-squat" {
		t.Errorf("away: %s", got)
	}
	if why := because(p, "leg-press-single", 2); why != "hotel has no angled-leg-press" {
		t.Errorf("%q", why)
	}
}

// Dates: limits that loosen or lift are told once, with what holds from then.
func TestRule18_DatesOfLimits(t *testing.T) {
	p := who{starts: "2026-02-09", stages: "activate 2026-01-26", block: "next_visit = 2026-03-09\n"}.plan(t)
	var got []string
	for _, d := range p.Dates {
		if d.What == "straightening-under-load" || d.Kind == "visit" || d.Kind == "ends" {
			got = append(got, d.On.String()[5:]+" "+d.Kind)
		}
	}
	if want := "02-16 loosens, 02-23 loosens, 03-02 lifts, 03-08 ends, 03-09 visit"; strings.Join(got, ", ") != want {
		t.Errorf("%v, want %s", got, want)
	}
}

// Rule 22: waves change the dose by weeks of the phase, not of the block.
func TestRule22_WavesCountPhaseWeeks(t *testing.T) {
	files := own(`"squat"`)
	files["programs/phases/settle.toml"] = strings.Replace(files["programs/phases/settle.toml"], "weekly_percent = 2.5\n", "[[slot.wave]]\nfrom_week = 3\nreps = 15\n", 1)
	p := who{date: "2025-10-06", starts: "2026-04-06", weeks: 3, files: files, stages: "settle 2026-03-30"}.plan(t)
	for week, want := range map[int]int{1: 10, 2: 15, 3: 15} {
		if got := *dose(p, "squat", unit.Both, week).Dose.Reps; got != want {
			t.Errorf("week %d of the block is week %d of the phase: %d repetitions, want %d", week, week+1, got, want)
		}
	}
}

// Rule 3: a week away on another mat is still one slot: what both legs do together is not done by the other leg again.
func TestRule03_AwayOnAnotherMat(t *testing.T) {
	w := who{date: "2025-10-06", starts: "2026-04-06", weeks: 2, files: own(`"bridge", "prone-curl-no-weight"`),
		more: "[[away]]\nfrom = 2026-04-13\nuntil = 2026-04-14\nplace = \"second\"\n"}
	w.files["clinic.toml"] = clinicText + "[[place]]\nid = \"second\"\n[[place.device]]\nid = \"rug\"\nkind = \"mat\"\n"
	p := w.plan(t)
	for week := 1; week <= 2; week++ {
		if dose(p, "prone-curl-no-weight", unit.Right, week) != nil {
			t.Errorf("week %d: bridge for both legs, and a curl for the other", week)
		}
	}
}

// Rule 26: running every other day and at most four times a week (Delaware running table, Ann Joint 2018;3:40).
func TestRule26_RunningDays(t *testing.T) {
	for days, want := range map[string]string{`["mon", "wed", "fri"]`: "", `["mon", "tue"]`: "running-days-too-close", `["sun", "mon"]`: "running-days-too-close"} {
		w := who{date: "2025-10-06", starts: "2026-04-06", days: days, tests: map[string]string{"2026-03-02": straightKnees},
			more: "[[opened]]\nid = \"running\"\nfrom = 2026-03-02\nby = \"imbali\"\n", files: own(`"running-levels"`)}
		got := ""
		for _, f := range w.plan(t).Flags {
			if f.ID == "running-days-too-close" || f.ID == "too-many-runs" {
				got = f.ID
			}
		}
		if got != want {
			t.Errorf("%s: %q, want %q", days, got, want)
		}
	}
}
