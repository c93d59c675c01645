package page

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
)

// Of flags of one kind the first sheet has the last, unless each asks for a call or a question of its own.
func TestFlaggedTellsEachCall(t *testing.T) {
	for _, row := range []struct {
		id   string
		all  bool
		more string
		why  string
	}{
		{"limit-tightens", true, "", "two limits that tighten are two calls by two days"},
		{"ask-surgeon", true, "", "two questions"},
		{"reference-rose", false, "(1 more alike, below)", "one look shows both"},
	} {
		p := deskPlan()
		p.Found = nil
		p.Flags = []plan.Flag{{ID: row.id, About: "deep-squat", Says: "by the first day"}, {ID: row.id, About: "kneeling", Says: "by the second day"}}
		d := &desk{sheet: sheet{deskWords(t)}, p: p}
		text := strings.Join(d.flagged(func(string) bool { return true }), "\n")
		if strings.Contains(text, "by the first day") != row.all || !strings.Contains(text, "by the second day") || !strings.Contains(text, row.more) || row.all && strings.Contains(text, "more alike") {
			t.Errorf("%s: %q (%s)", row.id, text, row.why)
		}
	}
}
