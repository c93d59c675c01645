package page

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// A surgeon who reads the letter knows of each limit when it holds: one that begins within the block is not in force yet, and days
// between two windows are free.
func TestLetterSaysWhenALimitHolds(t *testing.T) {
	row := func(from, lifts string) plan.Window {
		w := plan.Window{Kind: unit.Kneeling, Allow: unit.Allowance{Allowed: ptr(false)}, From: civil(from), SetBy: "surgeon", Name: "Dr Auk", Route: "phone", Said: civil("2026-03-30"), Wins: true, Touches: true}
		if lifts != "" {
			w.Lifts = civil(lifts)
		}
		return w
	}
	for _, c := range []struct {
		name   string
		limits []plan.Window
		want   []string
	}{
		{"in force", []plan.Window{row("2026-03-30", "2026-04-13")}, []string{"until Mon 13 April"}},
		{"from the block's first day", []plan.Window{row("2026-04-06", "2026-04-13")}, []string{"until Mon 13 April"}},
		{"later", []plan.Window{row("2026-04-13", "2026-04-27")}, []string{"from Mon 13 April, until Mon 27 April"}},
		{"later, without an end", []plan.Window{row("2026-04-13", "")}, []string{"from Mon 13 April, until further notice"}},
		{"one after the other", []plan.Window{row("2026-03-30", "2026-04-13"), row("2026-04-13", "2026-04-27")}, []string{"until Mon 27 April"}},
		{"one over the other", []plan.Window{row("2026-03-30", "2026-04-13"), row("2026-04-06", "2026-04-27")}, []string{"until Mon 27 April"}},
		{"one within the other", []plan.Window{row("2026-03-30", ""), row("2026-04-13", "2026-04-27")}, []string{"until further notice"}},
		{"free days between", []plan.Window{row("2026-03-30", "2026-04-13"), row("2026-04-20", "2026-04-27")}, []string{"until Mon 13 April", "from Mon 20 April, until Mon 27 April"}},
		{"free days between, then on", []plan.Window{row("2026-03-30", "2026-04-13"), row("2026-04-20", "2026-04-27"), row("2026-04-27", "")}, []string{"until Mon 13 April", "from Mon 20 April, until further notice"}},
	} {
		p := letterPlan()
		p.Limits = c.limits
		l := &letter{desk{sheet: sheet{deskWords(t)}, p: p}}
		text := said(View{Parts: []Part{l.limitsKept()}})
		var got []string
		for _, line := range strings.Split(text, "\n") {
			if _, after, found := strings.Cut(line, l.allows(c.limits[0])+", "); found {
				when, _, _ := strings.Cut(after, " (")
				got = append(got, when)
			}
		}
		if strings.Join(got, "; ") != strings.Join(c.want, "; ") {
			t.Errorf("%s: %q, want %q\n%s", c.name, got, c.want, text)
		}
	}
}
