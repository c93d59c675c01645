package plan_test

import (
	"testing"

	"paceleaf/generator/unit"
)

// Rows about the place where a tendon was taken bind the leg that gave it, on the shipped schedules: hamstrings are left
// alone for four weeks there and nowhere else.
func TestGraftFrom(t *testing.T) {
	curl := own(`"prone-curl-no-weight"`)
	for _, row := range []struct {
		name, graft, other, starts string
		left, right                string // the left knee is the operated one
		why                        string
	}{
		{"from the same leg", "hamstring", "sound", "2026-01-12", "none", "free", "week 1: the operated leg gave its hamstrings"},
		{"from the other leg", "hamstring", "donor", "2026-01-12", "free", "none", "week 1: the other leg gave them"},
		{"from the other leg, later", "hamstring", "donor", "2026-02-09", "free", "free", "week 5: both may bend without a load"},
		{"from a donor", "allograft", "sound", "2026-01-12", "free", "free", "no tendon of this client was taken"},
		{"another tendon", "patellar-tendon", "sound", "2026-01-12", "free", "free", "no hamstring was taken"},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := who{graft: row.graft, other: row.other, starts: row.starts, weeks: 1, files: curl}.plan(t)
			for side, want := range map[unit.Side]string{unit.Left: row.left, unit.Right: row.right} {
				got := "free"
				if dose(p, "prone-curl-no-weight", side, 1) == nil {
					got = "none"
				}
				if got != want {
					t.Errorf("%s: %s, want %s (%s; %s)", side, got, want, row.why, because(p, "prone-curl-no-weight", 1))
				}
			}
		})
	}
}

// The same for kneeling, after a tendon at the kneecap was taken.
func TestGraftFromKneeling(t *testing.T) {
	for _, row := range []struct {
		other       string
		left, right bool // may not kneel
	}{{"sound", true, false}, {"donor", false, true}} {
		p := who{graft: "patellar-tendon", other: row.other, starts: "2026-01-12", weeks: 1}.plan(t)
		got := map[unit.Side]bool{}
		for _, w := range windows(p, unit.Kneeling, "program") {
			got[w.Side] = got[w.Side] || w.Allow.Closed()
		}
		if got[unit.Left] != row.left || got[unit.Right] != row.right {
			t.Errorf("%s: kneeling is closed for %v: the knee is sore where the tendon was taken", row.other, got)
		}
	}
}

// Both knees on one day, each with the tendons of the other: each leg is a donor.
func TestGraftFromEachOther(t *testing.T) {
	w := who{other: "operated-too", starts: "2026-01-12", weeks: 1, files: own(`"prone-curl-no-weight"`),
		more: "[[event]]\nkind = \"operation\"\nprocedure = \"acl-reconstruction\"\ndate = 2026-01-05\nside = \"right\"\ngraft = \"hamstring\"\ngraft_from = \"left\"\n"}
	w = w.edited("graft = \"hamstring\"\ngraft_from = \"left\"\n[[event]]", "graft = \"hamstring\"\ngraft_from = \"right\"\n[[event]]")
	p := w.plan(t)
	for _, side := range []unit.Side{unit.Left, unit.Right} {
		if d := dose(p, "prone-curl-no-weight", side, 1); d != nil {
			t.Errorf("%s: both legs gave hamstrings a week ago", side)
		}
	}
}
