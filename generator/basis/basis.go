// Package basis keeps where a number came from: a value and the chain of steps behind it, down to the file and key in
// which a person typed the first of them. It computes nothing and formats nothing.
//
// Formulas stay plain functions; where they are called they are wrapped:
//
//	torque := basis.Of2("knee-extension.left.torque", formula.ByTorque, formula.Torque, force, arm)
//
// A Num cannot exist without its Step. A missing input makes a missing result with the reason; the zero Num is
// "not tested". So nothing that was not measured can ever be taken for a zero.
package basis

import "paceleaf/generator/unit"

// Origin is the place of a typed value: a file, named relative to the clinic's folder, and the key in it
// (strength[0].left.peak_n). Line is known at once only for day sheets; for TOML it is looked up when it is asked for.
type Origin struct {
	File string `json:"file"`
	Key  string `json:"key,omitempty"`
	Line int    `json:"line,omitempty"`
}

// At returns the origin of a key below this one.
func (o Origin) At(key string) Origin {
	if o.Key != "" {
		key = o.Key + "." + key
	}
	o.Key = key
	return o
}

// Rule says how a step was made: its name, the sum in which $1, $2, … stand for the inputs in order ($* for all of
// them, comma between), and where the rule is published. An empty Sum is a step that is no arithmetic (a choice, a word).
//
// The writing of sums is the one of a pocket calculator with names: + − × ÷ ( ) and max(), min(), sum(), mean(), sd(), down(), cos(),
// pow(), sqrt(), exp(), ln(). down(x) is the largest whole number not above x; cos takes degrees. The keys of its statistics take weeks
// and values in turn: slope(), intercept(); slopeln(), interceptln() of the logarithm of the weeks; slopemedian(), interceptmedian().
type Rule struct {
	Name   Said
	Sum    string
	Source Said
}

// Step is one link of the chain.
type Step struct {
	ID     string   // thing[.side][.when].quantity; empty only for a value that has not been named yet
	By     Rule     // how it was made
	From   []*Step  // of what, in the order of the sum
	Value  float64  // what came out; meaningless where Refused is set or Text holds the value
	Unit   string   // symbol of the unit
	Before float64  // of a cut: the value before it
	Cut    bool     // Before holds
	Text   string   // a value that is a word: an effusion grade, a day
	At     Origin   // of a typed value: where it stands
	Typed  string   // of a typed value: as it was written, with its unit ("42.8 kgf")
	On     unit.Day // the day it was measured, where that matters
	Reason Said     // why it is so, in words that are no sum: who set a limit, why a test is missing
	Refuse bool     // there is no value; Reason says why
}

// Num is a number and its step. The zero Num has none: it was not tested.
type Num[Q unit.Quantity] struct {
	value Q
	step  *Step
}

// OK reports whether there is a value.
func (n Num[Q]) OK() bool { return n.step != nil && !n.step.Refuse }

// Value returns the value; it is meaningful only where ok.
func (n Num[Q]) Value() (v Q, ok bool) { return n.value, n.OK() }

// Or returns the value, or instead where there is none.
func (n Num[Q]) Or(instead Q) Q {
	if n.OK() {
		return n.value
	}
	return instead
}

// Step returns the link behind the number; nil for the zero Num.
func (n Num[Q]) Step() *Step { return n.step }

// ID returns the id of the step, or "".
func (n Num[Q]) ID() string {
	if n.step == nil {
		return ""
	}
	return n.step.ID
}

// Why returns the reason of a missing value: what was refused, or "not tested".
func (n Num[Q]) Why() Said {
	switch {
	case n.OK():
		return ""
	case n.step == nil:
		return "not tested"
	}
	return n.step.Reason
}

// Named returns the same number under an id: a typed value gets its id where it is first used.
func (n Num[Q]) Named(id string) Num[Q] { return n.with(func(s *Step) { s.ID = id }) }

// On returns the same number with the day of its measurement.
func (n Num[Q]) On(d unit.Day) Num[Q] { return n.with(func(s *Step) { s.On = d }) }

// Because returns the same number with a reason beside its sum.
func (n Num[Q]) Because(reason Said) Num[Q] { return n.with(func(s *Step) { s.Reason = reason }) }

func (n Num[Q]) with(change func(*Step)) Num[Q] {
	if n.step == nil {
		return n
	}
	s := *n.step
	change(&s)
	return Num[Q]{n.value, &s}
}

// ByTyped is the rule of a value that a person typed.
var ByTyped = Rule{Name: "typed"}

// Typed is a value that stands in a file: written there as the text typed, worth v.
func Typed[Q unit.Quantity](v Q, typed string, at Origin) Num[Q] {
	return Num[Q]{v, &Step{By: ByTyped, Value: float64(v), Unit: v.Unit(), At: at, Typed: typed}}
}

// SetTyped fills a Num from a file; only the walker of package source calls it. See Typed.
func (n *Num[Q]) SetTyped(v float64, typed string, at Origin) { *n = Typed(Q(v), typed, at) }

// Endings lets the walker ask a Num for the key endings of its quantity; nil where the quantity may not be typed.
func (n *Num[Q]) Endings() []unit.Ending {
	if m, ok := any(n.value).(unit.Measured); ok {
		return m.Endings()
	}
	return nil
}

// Given is a number that a rule or a program states, with the rule as its reason: a dose, a floor, a step of a machine.
func Given[Q unit.Quantity](id string, by Rule, v Q, reason Said) Num[Q] {
	return Num[Q]{v, &Step{ID: id, By: by, Value: float64(v), Unit: v.Unit(), Reason: reason}}
}

// Refused is a number that does not exist, with the reason and what it would have been made of.
func Refused[Q unit.Quantity](id string, by Rule, reason Said, from ...*Step) Num[Q] {
	var zero Q
	return Num[Q]{zero, &Step{ID: id, By: by, Unit: zero.Unit(), Reason: reason, Refuse: true, From: present(from)}}
}

// Word is a step whose value is a word, such as a grade of swelling or a day.
func Word(id string, by Rule, text string, reason Said, from ...*Step) *Step {
	return &Step{ID: id, By: by, Text: text, Reason: reason, From: present(from)}
}

func present(from []*Step) (kept []*Step) {
	for _, s := range from {
		if s != nil {
			kept = append(kept, s)
		}
	}
	return kept
}
