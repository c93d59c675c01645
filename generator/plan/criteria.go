package plan

import (
	"fmt"
	"math"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// defaultWithin is how old, in weeks, a test may be where neither criterion nor program says so. Tool default.
const defaultWithin = 6

// judge weighs criteria as of a day.
type judge struct {
	p     *program.Program
	c     *client.Client
	event *client.Event
	found *finding.Findings
	asOf  unit.Day
}

// weigh weighs the criteria of a phase or an activity that apply to the client.
func (j judge) weigh(of string, rules []program.Criterion) (list []Criterion) {
	ids := map[string]int{}
	for i := range rules {
		if !applies(rules[i].When, j.c, j.event, j.asOf) {
			continue
		}
		c := j.one(of, &rules[i], i)
		if ids[c.ID]++; ids[c.ID] > 1 {
			c.ID = fmt.Sprintf("%s-%d", c.ID, ids[c.ID])
		}
		list = append(list, c)
	}
	return list
}

func (j judge) one(of string, rule *program.Criterion, place int) Criterion {
	c := Criterion{Of: of, Rule: rule}
	switch {
	case len(rule.All) > 0:
		c.ID, c.Together = fmt.Sprintf("%s.all-%d", of, place+1), true
		j.allOf(&c)
	case len(rule.Any) > 0:
		c.ID = fmt.Sprintf("%s.any-%d", of, place+1)
		j.anyOf(&c)
	case rule.Measure == "":
		c.ID, c.Measure = of+".time", "time"
		j.floor(&c)
	default:
		c.ID, c.Measure = of+"."+rule.Measure, rule.Measure
		c.Sense, c.Wanted = rule.Sense()
		j.measure(&c)
	}
	if w := j.waiver(c); w != nil && c.State != Met {
		c.State, c.Waived = Waived, w
	}
	return c
}

// waiver returns the therapist's waiver of a criterion by name.
func (j judge) waiver(c Criterion) *client.Waived {
	for i := range j.c.Waived {
		if w := &j.c.Waived[i]; w.Criterion == c.ID && j.mayWaive(c) && waives(w, j.c, j.event, j.asOf) {
			return w
		}
	}
	return nil
}

// waivable reports whether a measure may be waived everywhere: swelling, pain and extension before any impact may not (rules 16).
func waivable(measure string) bool {
	switch measure {
	case "effusion", "pain", "pain-next-morning", "extension":
		return false
	}
	return true
}

// waivable reports whether a criterion, and each that it is made of, may be waived.
func (c Criterion) waivable() bool {
	for _, choice := range c.Any {
		if !choice.waivable() {
			return false
		}
	}
	return waivable(c.Measure)
}

// floor weighs a floor in time.
func (j judge) floor(c *Criterion) {
	c.Sense = "at least"
	switch r := c.Rule; {
	case r.EarliestWeek != nil:
		c.NotBefore = j.event.Date.AddWeeks(*r.EarliestWeek)
		c.Wanted = program.Mark{Number: float64(*r.EarliestWeek), Unit: "weeks", Typed: fmt.Sprintf("%d weeks", *r.EarliestWeek)}
		c.Found = timeStep(c.ID, float64(j.asOf.WeeksSince(j.event.Date)), "weeks", j.event)
	default:
		c.NotBefore = j.event.Date.AddMonths(*r.EarliestMonth)
		c.Wanted = program.Mark{Number: float64(*r.EarliestMonth), Unit: "months", Typed: fmt.Sprintf("%d months", *r.EarliestMonth)}
		c.Found = timeStep(c.ID, float64(j.asOf.MonthsSince(j.event.Date)), "months", j.event)
	}
	c.On = j.asOf
	c.State = Met
	if j.asOf.Before(c.NotBefore) {
		c.State = NotMet
	}
}

var byCalendar = basis.Rule{Name: "full weeks or months since the event", Source: "rules of the calendar: week n begins on day 7n; months are clamped"}

func timeStep(id string, v float64, u string, event *client.Event) *basis.Step {
	date := basis.Word("event.date", basis.ByTyped, event.Date.String(), "")
	date.At = event.At.At("date")
	return &basis.Step{ID: id, By: byCalendar, Value: v, Unit: u, From: []*basis.Step{date}}
}

// measure weighs a value: missing, too old, doubtful, or compared.
func (j judge) measure(c *Criterion) {
	m := j.governing(c.Measure)
	c.Found, c.On = m.Value, m.On
	switch {
	case !m.OK:
		c.State, c.Reason = NotTested, m.Reason
		c.Optional = c.Rule.OnlyIfTested && !refused(m.Reason) // what was tested and refused is asked for
	case m.On.AddWeeks(j.within(c.Rule)).Before(j.asOf):
		c.State = OutOfDate
	case len(m.Doubts) > 0:
		c.State, c.Doubt = NotMet, basis.Listed(m.Doubts...)
	case m.Unit != c.Wanted.Unit && c.Wanted.Grade == "":
		c.State, c.Reason = NotMet, basis.Say("the mark is in \"{a}\", the value in \"{b}\"", c.Wanted.Unit, m.Unit)
	case unseenMark(m, c.Sense, c.Wanted):
		c.State, c.Reason = NotTested, m.HiddenBy
	case reaches(m, c.Sense, c.Wanted):
		c.State = Met
	default:
		c.State = NotMet
	}
	j.nearness(c, m)
}

// nearness says whether the mark lies within the test's error band. Near opens nothing and closes nothing; where no error
// has been published for a test that was made so, it is not known.
func (j judge) nearness(c *Criterion, m finding.Measure) {
	if !m.OK || m.Grade != "" || c.Wanted.Grade != "" || m.Unit != c.Wanted.Unit {
		return
	}
	e := errorOf(j.p.Errors, m)
	if e.Low == nil || e.High == nil {
		return
	}
	c.Band = float64(e.High.Value-e.Low.Value) / 2
	near := math.Abs(m.Number-c.Wanted.Number) <= c.Band
	c.Near, c.NearBy = &near, e.Rule
}

func (j judge) within(r *program.Criterion) int {
	switch {
	case r.WithinWeeks != nil:
		return *r.WithinWeeks
	case j.p.WithinWeeks != nil:
		return *j.p.WithinWeeks
	}
	return defaultWithin
}

// ByLower is the choice of the lower of symmetry and the pre-operative ratio.
var ByLower = basis.Rule{Name: "the lower of symmetry and pre-operative ratio governs", Sum: "min($1, $2)", Source: "after Wellsandt 2017: symmetry alone flatters"}

// governing is the value that a criterion compares: for a symmetry with a pre-operative value of the other leg, the
// lower of the two (rules 13).
func (j judge) governing(name string) finding.Measure {
	m := j.found.Measure(name)
	if compares(name) && !j.c.SoundOther() && j.event.Side != unit.Both {
		return j.unsound(m)
	}
	test, isSymmetry := strings.CutSuffix(name, ".lsi")
	if !isSymmetry {
		return m
	}
	preop := j.found.Measure(test + ".preop-ratio")
	if !m.OK || !preop.OK || preop.On != m.On {
		return m
	}
	m.Value = &basis.Step{ID: test + ".governing", By: ByLower, From: []*basis.Step{m.Value, preop.Value}, Value: min(m.Number, preop.Number), Unit: m.Unit, On: m.On}
	m.Number = min(m.Number, preop.Number)
	return m
}

// reaches compares; a grade by its order.
func reaches(m finding.Measure, sense string, mark program.Mark) bool {
	found, wanted := m.Number, mark.Number
	if mark.Grade != "" {
		if m.Grade.Rank() < 0 {
			return false
		}
		found, wanted = float64(m.Grade.Rank()), float64(mark.Grade.Rank())
	} else if m.Grade != "" {
		return false // a grade is not a number
	}
	switch sense {
	case "at least":
		return found >= wanted
	case "above":
		return found > wanted
	case "at most":
		return found <= wanted
	case "below":
		return found < wanted
	}
	return false
}

// unseenMark reports whether a look at swelling found little enough, and could not have seen more (rules 28).
func unseenMark(m finding.Measure, sense string, mark program.Mark) bool {
	return m.OK && m.Hidden != "" && reaches(m, sense, mark) && !reaches(m.AtWorst(), sense, mark)
}

// missing are the ids of the criteria that are not passed.
func missing(list []Criterion) (ids []string) {
	for _, c := range list {
		if !c.Passed() {
			ids = append(ids, c.ID)
		}
	}
	return ids
}
