package client

import (
	"fmt"
	"math"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// What trials of one leg, and two legs beside each other, rarely are. All of it is asked, nothing is refused: these are tool
// rules without a source. What they speak of opens no more and no less than before.

const (
	askedAlike   = 3    // trials that are alike to the last digit
	askedAbove   = 1.50 // symmetry: a slip of unit or side, more often than a knee
	askedBelow   = 0.10
	likeBefore   = 0.10 // how near a leg lies to the other leg of the test before, where the legs were swapped,
	unlikeBefore = 0.15 // and how far from its own
)

// sides are the trials of one test, leg by leg.
type sides struct {
	test, kind  string // kind keeps newtons, torques, distances apart
	at          basis.Origin
	left, right []float64
	lower       bool // less is better
}

// sidesOf are the tests of a day that have trials.
func (d *TestDay) sidesOf() (all []sides) {
	for i := range d.Strength {
		s := &d.Strength[i]
		at := s.At.At("test")
		all = append(all, sides{s.Test, "force " + s.Gauge, at, numbersOf(s.Left.Peak), numbersOf(s.Right.Peak), false},
			sides{s.Test, "torque " + s.Gauge, at, numbersOf(s.Left.Torque), numbersOf(s.Right.Torque), false})
	}
	for i := range d.Hops {
		h := &d.Hops[i]
		at := h.At.At("test")
		all = append(all, sides{"hop-" + h.Test, "distance", at, numbersOf(h.Left.Distance), numbersOf(h.Right.Distance), false},
			sides{"hop-" + h.Test, "time", at, numbersOf(h.Left.Time), numbersOf(h.Right.Time), true})
	}
	return slices.DeleteFunc(all, func(s sides) bool { return len(s.left)+len(s.right) == 0 })
}

func numbersOf[Q unit.Quantity](trials []basis.Num[Q]) (list []float64) {
	for _, t := range trials {
		if v, ok := t.Value(); ok {
			list = append(list, float64(v))
		}
	}
	return list
}

// suspiciousTrials asks about trials and about pairs of legs that are possible but rarely true.
func (c *Client) suspiciousTrials(operated unit.Side) (faults source.Faults) {
	before := map[string]sides{}
	for i := range c.Tests {
		for _, s := range c.Tests[i].sidesOf() {
			ask := func(what, instead string) {
				faults.Add(source.Fault{File: s.at.File, Line: s.at.Line, Key: s.at.Key, Ask: true, What: s.test + ": " + what, Instead: instead})
			}
			s.askTrials(ask)
			s.askPair(operated, ask)
			key := s.test + s.kind
			if last, known := before[key]; known {
				s.askSwapped(last, ask)
			}
			before[key] = s
		}
	}
	return faults
}

func (s sides) askTrials(ask func(what, instead string)) {
	const one = "add a trial, if there was one: how far trials lie apart cannot be told from one"
	if len(s.left) == 1 && len(s.right) == 1 {
		ask("each leg has one trial only", one)
		return
	}
	for _, leg := range []struct {
		name   string
		trials []float64
	}{{"left", s.left}, {"right", s.right}} {
		switch n := len(leg.trials); {
		case n == 1:
			ask(fmt.Sprintf("the %s leg has one trial only", leg.name), one)
		case n >= askedAlike && slices.Max(leg.trials) == slices.Min(leg.trials):
			ask(fmt.Sprintf("the %d trials of the %s leg are alike to the last digit", n, leg.name), "see whether one was typed and copied")
		}
	}
}

// askPair asks about a symmetry that a slip makes more often than a knee.
func (s sides) askPair(operated unit.Side, ask func(what, instead string)) {
	mine, other := s.score()
	if (operated == unit.Right) != s.lower {
		mine, other = other, mine
	}
	if mine == 0 || other == 0 || operated == unit.Both {
		return
	}
	if share := mine / other; share > askedAbove || share < askedBelow {
		ask(fmt.Sprintf("the operated leg has %.0f %% of the other", math.Floor(100*share)), "see whether unit and side are right")
	}
}

// askSwapped asks where each leg is like the other leg of the test before, and unlike itself.
func (s sides) askSwapped(last sides, ask func(what, instead string)) {
	left, right := s.score()
	wasLeft, wasRight := last.score()
	if left == 0 || right == 0 || wasLeft == 0 || wasRight == 0 {
		return
	}
	apart := func(a, b float64) float64 { return math.Abs(a-b) / b }
	if apart(left, wasRight) < likeBefore && apart(right, wasLeft) < likeBefore && apart(left, wasLeft) > unlikeBefore && apart(right, wasRight) > unlikeBefore {
		ask("each leg is like the other leg of the test before, and unlike itself", "see whether left and right were swapped")
	}
}

// score is the best trial of each leg; 0 where there is none.
func (s sides) score() (left, right float64) {
	top := slices.Max[[]float64]
	if s.lower {
		top = slices.Min[[]float64]
	}
	if len(s.left) > 0 {
		left = top(s.left)
	}
	if len(s.right) > 0 {
		right = top(s.right)
	}
	return left, right
}
