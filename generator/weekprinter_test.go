package generator_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// printedWeek is what a client of a phase reads in one week of it, and the plan behind it.
type printedWeek struct {
	plan *plan.Plan
	text string
}

// weekPrinter builds the clients of the tables, each once.
type weekPrinter struct {
	printer  *page.Printer
	programs map[string]*program.Program
	done     map[string]printedWeek
}

// of is the page of a week of a phase.
func (b *weekPrinter) of(t *testing.T, id, phase string, week int) printedWeek {
	t.Helper()
	key := fmt.Sprintf("%s/%s/%d", id, phase, week)
	if done, there := b.done[key]; there {
		return done
	}
	p := b.programs[id]
	if p == nil {
		p = shippedProgram(t, id)
		b.programs[id] = p
	}
	ph, i := p.Phase(phase)
	if ph == nil {
		t.Fatalf("program %s has no phase %s", id, phase)
	}
	w := at(p, i)
	w.since = laterOf(w.since, opensAt(p, ph))
	w.starts, w.weeks = w.since.AddWeeks(week-1), 2
	w.tests = soundTests() + lifts(p, ph)
	house, made := w.plan(t)
	md, err := b.printer.Markdown(page.Handout(made, house.Words()))
	if err != nil {
		t.Fatal(err)
	}
	done := printedWeek{made, strings.ReplaceAll(string(md), "\u00a0", " ")}
	b.done[key] = done
	return done
}

func laterOf(a, b unit.Day) unit.Day {
	if a.Before(b) {
		return b
	}
	return a
}

// opensAt is the first day on which all that a phase's first choices wait for may be open.
func opensAt(p *program.Program, ph *program.Phase) unit.Day {
	day := walkStart
	for _, s := range ph.Slots {
		for _, a := range p.Activities {
			if e := p.Exercises[s.Choose[0]]; e.Activity == a.ID {
				day = laterOf(day, floorOf(a.Needs))
			}
		}
	}
	return day
}

// lifts are tests of what one leg lifts, with three in reserve, of the phase's own machines.
func lifts(p *program.Program, ph *program.Phase) string {
	var b strings.Builder
	for _, id := range []string{"leg-press-single", "knee-extension-machine", "leg-curl-machine"} {
		if slices.ContainsFunc(ph.Slots, func(s program.Slot) bool { return s.Choose[0] == id }) {
			fmt.Fprintf(&b, "[[lift]]\nexercise = %q\nrange_deg = [0, 90]\nleft = \"120 kg x 8+3\"\nright = \"120 kg x 8+3\"\n", id)
		}
	}
	return b.String()
}
