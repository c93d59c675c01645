package plan

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// A program judged without any client: what its criteria measure, and whether anybody could ever do what its slots ask.

// Unmeasured are the criteria and goals of a program whose measure no test gives: they would stand in the way for ever.
func Unmeasured(p *program.Program) (wrong []Mistake) {
	var look func(list []program.Criterion)
	look = func(list []program.Criterion) {
		for i := range list {
			c := &list[i]
			if c.Measure != "" && !measurable(p, c.Measure) {
				wrong = append(wrong, Mistake{At: c.At.At("measure"), What: fmt.Sprintf("no test gives %q", c.Measure), Instead: likeMeasure(p, c.Measure)})
			}
			look(c.Choices())
		}
	}
	for _, ph := range p.Phases {
		look(ph.Enter)
	}
	for _, a := range p.Activities {
		look(a.Needs)
	}
	if p.End != nil {
		look(p.End.Needs)
	}
	for _, g := range p.Goals {
		if !measurable(p, g.Measure) {
			wrong = append(wrong, Mistake{At: g.At.At("measure"), What: fmt.Sprintf("no test gives %q", g.Measure), Instead: likeMeasure(p, g.Measure)})
		}
	}
	return wrong
}

// The quantities of each kind of test, as package finding names them.
var (
	ofStrength = []string{"lsi", "preop-ratio", "nm-per-kg"}
	ofHop      = []string{"lsi", "percent-of-height"}
	ofReach    = []string{"composite", "anterior-difference", "anterior", "posteromedial", "posterolateral"}
)

// measurable reports whether some test gives a measure. A plain name was held against its list when the program was read.
func measurable(p *program.Program, measure string) bool {
	test, quantity, dotted := strings.Cut(measure, ".")
	switch {
	case !dotted:
		return true
	case client.IsStrengthTest(test):
		return slices.Contains(ofStrength, quantity)
	case client.IsHop(test):
		return slices.Contains(ofHop, quantity)
	case test == "flexion":
		return quantity == "percent-of-other"
	case test == client.YBalanceTest:
		return slices.Contains(ofReach, quantity)
	case finding.IsRatioTest(test):
		return quantity == "percent"
	case test == client.RiseTest, test == finding.BatteryTest, p.Exercises[test] != nil && p.Exercises[test].Side == program.OneLeg:
		return quantity == "lsi"
	}
	return false
}

// likeMeasure says what to write for a measure that no test gives.
func likeMeasure(p *program.Program, measure string) string {
	test, _, _ := strings.Cut(measure, ".")
	switch {
	case client.IsStrengthTest(test):
		return "write " + test + "." + strings.Join(ofStrength, " or "+test+".")
	case client.IsHop(test):
		return "write " + test + "." + strings.Join(ofHop, " or "+test+".")
	}
	return "write test.quantity, as in knee-extension.lsi, knee-flexion.nm-per-kg, hop-single.lsi, flexion.percent-of-other or leg-press-single.lsi"
}

// longestSearch is for how many weeks after the event a slot is searched for something that may be done. Chosen: three years.
const longestSearch = 156

// Unfillable asks about slots that nothing can fill: by the limits of the program, in no week after the event of somebody without
// any instruction or further procedure; or by what the places of the clinic have.
func Unfillable(p *program.Program, places []client.Place) (asked []Mistake) {
	if slices.ContainsFunc(p.Limits, halfWritten) {
		return nil // cannot be laid out on days; its own mistakes are told
	}
	event := &client.Event{Kind: client.Operation, Procedure: p.CountsFrom, Date: unit.Day{Year: 2024, Month: 1, Date: 1}, Side: unit.Left}
	k := gatherKnees(p, &client.Client{}, event, event.Date)
	for _, ph := range p.Phases {
		for i := range ph.Slots {
			s := &ph.Slots[i]
			if why := k.never(p, s, event.Date.AddWeeks(earliest(ph))); why != "" {
				asked = append(asked, Mistake{At: s.At.At("choose"), Ask: true, What: fmt.Sprintf("the limits of the program never allow anything of slot %q (%s)", s.ID, why),
					Instead: "add a choice that they allow, or mend the limit"})
			}
			if needs := lacking(p, s, places); needs != "" {
				asked = append(asked, Mistake{At: s.At.At("choose"), Ask: true, What: fmt.Sprintf("no place of the clinic has what slot %q needs: %s", s.ID, needs),
					Instead: "add a choice without a device, or the device to clinic.toml"})
			}
		}
	}
	return asked
}

// halfWritten reports whether a limit has no rows, or one without a week.
func halfWritten(l program.Limit) bool {
	return len(l.Steps) == 0 || slices.ContainsFunc(l.Steps, func(s program.Step) bool { return s.Week == nil })
}

// earliest is the first week in which a phase may begin.
func earliest(ph *program.Phase) (week int) {
	for _, c := range ph.Enter {
		if c.EarliestWeek != nil {
			week = max(week, *c.EarliestWeek)
		}
	}
	return week
}

// never says why the limits allow no choice of a slot in any week from a day on; empty where they allow one in some week.
func (k knees) never(p *program.Program, s *program.Slot, from unit.Day) (why string) {
	for _, id := range s.Choose {
		e := p.Exercises[id]
		if e == nil {
			continue
		}
		side := unit.Left
		if e.Side == program.BothLegs {
			side = unit.Both
		}
		for w := range longestSearch {
			left := k.permits(e, daysFrom(from.AddWeeks(w), 7), side)
			if left.allowed {
				return ""
			}
			why = id + ": " + left.because.String()
		}
	}
	return why
}

// lacking are the devices for want of which no place can do any choice of a slot; empty where one can.
func lacking(p *program.Program, s *program.Slot, places []client.Place) string {
	var needs []string
	for _, id := range s.Choose {
		e := p.Exercises[id]
		if e == nil || slices.Contains(e.Needs, "") {
			return "" // another mistake comes first
		}
		for i := range places {
			if _, lacks := deviceFor(e, &places[i], nil); lacks == "" {
				return ""
			}
		}
		var kinds []string
		for _, n := range e.Needs {
			kinds = append(kinds, string(n))
		}
		needs = append(needs, id+" ("+strings.Join(kinds, ", ")+")")
	}
	return strings.Join(needs, ", ")
}
