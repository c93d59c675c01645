package plan

import (
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Retest is when the next measurement is due.
type Retest struct {
	EveryWeeks int
	Last       unit.Day // newest day on which strength, a lift, a hop, a reach or a questionnaire was measured; zero: none since the event
	Due        unit.Day
}

// retest says when the program asks for the next measurement; nil where it does not say. Without one since the event it is due so
// many weeks after the event.
func (p *Plan) retest(tested *client.Client) *Retest {
	every := p.Program.RetestIn(p.Stage.Set)
	if every == 0 {
		return nil
	}
	r := Retest{EveryWeeks: every}
	for i := range tested.Tests {
		d := &tested.Tests[i]
		if measures(d) && !d.On.Before(p.Event.Date) && !d.On.After(p.AsOf) && d.On.After(r.Last) {
			r.Last = d.On
		}
	}
	from := r.Last
	if from.IsZero() {
		from = p.Event.Date
	}
	r.Due = from.AddWeeks(every)
	return &r
}

// measures reports whether a test day measured more than how the knee feels.
func measures(d *client.TestDay) bool {
	return len(d.Strength)+len(d.Lifts)+len(d.Hops)+len(d.Questionnaires) > 0
}

// EndState is how far the end of the program has come, in its last phase.
type EndState struct {
	Criteria  []Criterion
	Missing   []string // ids of criteria that are not passed
	NotBefore unit.Day // the latest floor in time; zero where there is none
}

// end weighs the end of the program; nil before the last phase, and where the program says none.
func (j judge) end(s StageState) *EndState {
	if j.p.End == nil || s.Next != nil {
		return nil
	}
	e := EndState{Criteria: j.weigh("end", j.p.End.Needs)}
	e.Missing, e.NotBefore = missing(e.Criteria), floorOf(flat(e.Criteria))
	return &e
}
