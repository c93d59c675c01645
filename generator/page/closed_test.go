package page

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// What is not open names the limit that holds, in the client's words: on what, until when, and who said so. The program's own,
// where it is over by the day that the page names, says no more than that day.
func TestAClosedActivityNamesItsLimit(t *testing.T) {
	no, p := false, samplePlan()
	starts := p.Block.Starts
	run := func(lifts unit.Day, setBy, name string) plan.Window {
		return plan.Window{Side: p.Event.Side, Kind: unit.Running, Allow: unit.Allowance{Allowed: &no}, From: starts.AddWeeks(-1), Lifts: lifts, SetBy: setBy, Name: name, Wins: true}
	}
	meet := func(lifts unit.Day) plan.Window {
		w := run(lifts, "program", "acl-graft")
		w.Kind = unit.Contact
		return w
	}
	far, later := starts.AddWeeks(10), starts.AddWeeks(12)
	for _, c := range []struct {
		name      string
		kinds     []unit.Kind
		limits    []plan.Window
		notBefore unit.Day
		want      string
	}{
		{"none", []unit.Kind{unit.Running}, nil, far, ""},
		{"the program's, on that day", []unit.Kind{unit.Running}, []plan.Window{run(far, "program", "acl-graft")}, far, ""},
		{"one that ends before", []unit.Kind{unit.Running}, []plan.Window{run(far, "program", "acl-graft")}, later, ""},
		{"the longer of two", []unit.Kind{unit.Running}, []plan.Window{run(far, "program", "acl-graft"), run(later, "program", "acl-also")}, later, ""},
		{"the program's, beyond that day", []unit.Kind{unit.Running}, []plan.Window{run(later, "program", "acl-graft")}, far, "A limit on running holds until Mon 29 June 2026 at least."},
		{"the program's, the day has come", []unit.Kind{unit.Running}, []plan.Window{run(far, "program", "acl-graft")}, starts, "A limit on running holds until Mon 15 June 2026 at least."},
		{"the surgeon's", []unit.Kind{unit.Running}, []plan.Window{run(later, "surgeon", "Dr Auk")}, later, "A limit on running, set by your surgeon (Dr Auk), holds until then."},
		{"until further notice", []unit.Kind{unit.Running}, []plan.Window{run(unit.Day{}, "surgeon", "Dr Auk")}, far, "A limit on running, set by your surgeon (Dr Auk), has no end yet."},
		{"two kinds, one day", []unit.Kind{unit.Running, unit.Contact}, []plan.Window{run(later, "program", ""), meet(later)}, starts, "A limit on running and contact sport holds until Mon 29 June 2026 at least."},
		{"two kinds, two days", []unit.Kind{unit.Running, unit.Contact}, []plan.Window{run(far, "surgeon", "Dr Auk"), meet(later)}, starts,
			"A limit on running, set by your surgeon (Dr Auk), holds until Mon 15 June 2026 at least. A limit on contact sport holds until Mon 29 June 2026 at least."},
		{"the program's own, over by then, beside a surgeon's", []unit.Kind{unit.Running, unit.Contact}, []plan.Window{run(later, "surgeon", "Dr Auk"), meet(far)}, later,
			"A limit on running, set by your surgeon (Dr Auk), holds until then."},
	} {
		p.Limits = c.limits
		a := plan.ActivityState{Activity: &program.Activity{ID: "x", Title: "X", Kinds: c.kinds}, State: "closed", NotBefore: c.notBefore, Missing: []string{"x.limits"}}
		if got := (handout{p, sampleWords(t)}).held(a); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// What is missing stands once: among the dates where the activity has a day, else under not yet.
func TestWhatIsMissingStandsOnce(t *testing.T) {
	for name, p := range samples() {
		seen := map[string]int{}
		for _, part := range Handout(p, sampleWords(t)).Parts {
			for _, n := range part.Nodes {
				for _, f := range n.Facts {
					for _, a := range p.Activities {
						if a.Activity != nil && strings.Contains(textOf(f.Value), "Still missing") && (f.Label == a.Activity.Title || strings.HasPrefix(textOf(f.Value), a.Activity.Title+":")) {
							seen[a.Activity.Title]++
						}
					}
				}
			}
		}
		for title, n := range seen {
			if n > 1 {
				t.Errorf("%s: what is missing for %q stands %d times", name, title, n)
			}
		}
	}
}

// Rows that follow each other and say the same are one: the page names the day on which that really changes.
func TestARowThatGoesOnIsOne(t *testing.T) {
	p := samplePlan()
	starts := p.Block.Starts
	row := func(from, lifts unit.Day, to unit.Degrees, setBy string) plan.Window {
		return plan.Window{Side: p.Event.Side, Kind: unit.PassiveBend, Allow: unit.Allowance{Range: reach(0, to)}, From: from, Lifts: lifts, SetBy: setBy, Name: "x", Wins: true}
	}
	first := row(starts.AddWeeks(-4), starts.AddWeeks(1), 90, "program")
	for _, c := range []struct {
		name string
		next plan.Window
		want unit.Day
	}{
		{"the same in the next row", row(first.Lifts, starts.AddWeeks(3), 90, "program"), starts.AddWeeks(3)},
		{"wider in the next row", row(first.Lifts, starts.AddWeeks(3), 120, "program"), first.Lifts},
		{"a gap between", row(first.Lifts.AddDays(1), starts.AddWeeks(3), 90, "program"), first.Lifts},
		{"somebody else's", row(first.Lifts, starts.AddWeeks(3), 90, "surgeon"), first.Lifts},
		{"a row without days", row(first.Lifts, first.Lifts, 90, "program"), first.Lifts},
	} {
		p.Limits = []plan.Window{c.next, first}
		for _, b := range (handout{p, sampleWords(t)}).bans() {
			if b.kind == unit.PassiveBend && b.lifts != c.want {
				t.Errorf("%s: until %s, want %s", c.name, b.lifts, c.want)
			}
		}
	}
}
