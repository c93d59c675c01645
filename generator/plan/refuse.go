package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Tests obey limits too (rules 9): a value of the operated leg from inside a forbidding window is refused, as if it had
// not been tested. Against a shipped limit a reason typed on the test day admits it; against an instruction nothing does.
// The tested range of a lift is the limit in force unless the day says otherwise.

// Isometric tests of maximal effort at 60 to 90 degrees are admitted from week 6 on. Common practice, no source.
const isometricFromWeek = 6

var isometricReach = unit.Reach{Straightest: 60, MostBent: 90}

// refusedTest is the reason of a value that was typed and is not used.
const refusedTest = "refused: {a}"

// refused reports whether a reason is one of these.
func refused(reason basis.Said) bool {
	key, _ := reason.Parts()
	return key == refusedTest
}

// toFailureBelow is the reserve under which a set counts as maximal effort: before it is open, lifts keep 2 to 3.
const toFailureBelow unit.Count = 2

// refusals returns the client with refused tests taken out, and a question for each.
func (k knees) refusals(p *program.Program, c *client.Client) (*client.Client, []Mistake) {
	kept := *c
	kept.Tests = slices.Clone(c.Tests)
	var asked []Mistake
	for _, side := range k.sides() {
		t := tester{limits: k.of[side], p: p, c: c}
		if t.limits != k.main() && len(t.windows) == 0 {
			continue // a free leg
		}
		for i := range kept.Tests {
			if d := &kept.Tests[i]; !d.On.Before(t.event.Date) {
				t.day = d
				t.strength()
				t.lifts()
				t.hops()
				t.reaches()
			}
		}
		asked = append(asked, t.asked...)
	}
	return &kept, asked
}

// tester refuses the tests of one leg.
type tester struct {
	*limits
	p     *program.Program
	c     *client.Client
	day   *client.TestDay
	asked []Mistake

	instructed bool // the last refusal was by an instruction
}

// closed says why a test that names these kinds, through this range, may not be made on the day; empty where it may.
func (t *tester) closed(kinds []unit.Kind, work unit.Work, reach *unit.Reach, isometricAt *unit.Degrees) basis.Said {
	for _, k := range kinds {
		r := t.rule(k, kinds, t.day.On)
		if k == unit.MaximalEffort && t.isometricAdmitted(r, isometricAt) {
			continue
		}
		closed := r.allow.Closed() || r.allow.Part != nil || r.allow.PartMass != nil || r.allow.Grade != "" && work.Rank() > r.allow.Grade.Rank() ||
			r.allow.Range != nil && reach != nil && !reach.Within(*r.allow.Range)
		if closed && !t.admitted(r) {
			t.instructed = instructs(r)
			return basis.Say("{a} was not open on {b} ({c})", k, t.day.On, r.setBy())
		}
	}
	return ""
}

// isometricAdmitted lets a held maximal pull near a right angle pass a shipped limit from week 6 on.
func (t *tester) isometricAdmitted(r ruling, at *unit.Degrees) bool {
	return at != nil && !instructs(r) && t.day.On.WeeksSince(t.event.Date) >= isometricFromWeek &&
		*at >= isometricReach.Straightest && *at <= isometricReach.MostBent
}

// admitted reports whether a typed reason admits the test: only against shipped limits.
func (t *tester) admitted(r ruling) bool { return t.day.Reason != "" && !instructs(r) }

func instructs(r ruling) bool {
	return slices.ContainsFunc(r.by, func(w *window) bool { return w.class != shipped && r.binds(w) })
}

func (t *tester) ask(key, what string, why basis.Said) {
	instead := `write reason = "…" on the test day if it was made on purpose`
	if t.instructed {
		instead = "see whether the day and the instruction are right: against an instruction no reason helps"
	}
	t.asked = append(t.asked, Mistake{At: t.day.At.At(key), Ask: true, What: what + ": " + why.String() + ": the value is not used", Instead: instead})
}

func (t *tester) strength() {
	tests := slices.Clone(t.day.Strength)
	for i := range tests {
		s := &tests[i]
		have := t.c.Conditions(s)
		var at *unit.Degrees
		reach := unit.Reach{Straightest: 0, MostBent: 90} // isokinetic: the arc is not typed, so the whole of it must be open
		if angle, ok := have.Angle.Value(); ok && have.Mode != client.IsokineticMode {
			at, reach = &angle, unit.Reach{Straightest: angle, MostBent: angle}
		}
		why := t.closed(strengthKinds(s.Test), unit.Resisted, &reach, at)
		if why == "" {
			continue
		}
		pull := &s.Left
		if t.side == unit.Right {
			pull = &s.Right
		}
		if len(pull.Peak)+len(pull.Torque) == 0 {
			continue
		}
		*pull = client.Pull{At: pull.At, NotTested: basis.Say(refusedTest, why)}
		t.ask(fmt.Sprintf("strength[%d]", i), s.Test+", "+string(t.side)+" leg", why)
	}
	t.day.Strength = tests
}

// strengthKinds are the kinds of limit that a test of force names.
func strengthKinds(test string) []unit.Kind {
	switch test {
	case "knee-extension":
		return []unit.Kind{unit.MaximalEffort, unit.StraighteningUnderLoad, unit.ActiveBend, unit.PassiveBend}
	case "knee-flexion":
		return []unit.Kind{unit.MaximalEffort, unit.HamstringWork, unit.ActiveBend, unit.PassiveBend}
	}
	return []unit.Kind{unit.MaximalEffort}
}

func (t *tester) lifts() {
	lifts := slices.Clone(t.day.Lifts)
	for i := range lifts {
		lift := &lifts[i]
		e := t.p.Exercises[lift.Exercise]
		if e == nil {
			continue
		}
		if lift.Range == nil {
			if left := t.permits(e, []unit.Day{t.day.On}); left.allowed {
				lift.Range = left.reach
			}
		}
		for _, leg := range []*client.Set{t.set(lift), &lift.Both} {
			if why := t.liftClosed(e, lift, *leg); why != "" && leg.Done() {
				*leg = client.Set{At: leg.At, NotTested: basis.Say(refusedTest, why)}
				t.ask(fmt.Sprintf("lift[%d]", i), lift.Exercise, why)
			}
		}
	}
	t.day.Lifts = lifts
}

func (t *tester) set(lift *client.Lift) *client.Set {
	if t.side == unit.Left {
		return &lift.Left
	}
	return &lift.Right
}

func (t *tester) liftClosed(e *program.Exercise, lift *client.Lift, s client.Set) basis.Said {
	kinds := spokenOf(e)
	if s.Reserve.OK() && s.Reserve.Or(0) < toFailureBelow && !slices.Contains(kinds, unit.MaximalEffort) {
		kinds = append(kinds, unit.MaximalEffort)
	}
	return t.closed(kinds, e.Work, lift.Range, nil)
}

// hopKinds are the kinds of limit that a hop names.
var hopKinds = []unit.Kind{unit.Impact, unit.MaximalEffort, unit.WeightBearing}

func (t *tester) hops() {
	why := t.closed(hopKinds, "", nil, nil)
	if why == "" {
		return
	}
	hops := slices.Clone(t.day.Hops)
	for i := range hops {
		leg := &hops[i].Left
		if t.side == unit.Right {
			leg = &hops[i].Right
		}
		if len(leg.Distance)+len(leg.Time)+len(leg.Count) > 0 {
			*leg = client.HopSide{At: leg.At, NotTested: basis.Say(refusedTest, why)}
			t.ask(fmt.Sprintf("hop[%d]", i), "hop-"+hops[i].Test, why)
		}
	}
	t.day.Hops = hops
}
