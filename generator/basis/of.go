package basis

import "paceleaf/generator/unit"

// Of1 to Of4 wrap a plain function. Where an input is missing the result is refused with that input's reason.

func Of1[A, Q unit.Quantity](id string, by Rule, f func(A) Q, a Num[A]) Num[Q] {
	return Try1(id, by, func(a A) (Q, error) { return f(a), nil }, a)
}

func Of2[A, B, Q unit.Quantity](id string, by Rule, f func(A, B) Q, a Num[A], b Num[B]) Num[Q] {
	return Try2(id, by, func(a A, b B) (Q, error) { return f(a, b), nil }, a, b)
}

func Of3[A, B, C, Q unit.Quantity](id string, by Rule, f func(A, B, C) Q, a Num[A], b Num[B], c Num[C]) Num[Q] {
	return make1(id, by, func() (Q, error) { return f(a.value, b.value, c.value), nil },
		input{a.step, a.OK(), a.Why()}, input{b.step, b.OK(), b.Why()}, input{c.step, c.OK(), c.Why()})
}

func Of4[A, B, C, D, Q unit.Quantity](id string, by Rule, f func(A, B, C, D) Q, a Num[A], b Num[B], c Num[C], d Num[D]) Num[Q] {
	return make1(id, by, func() (Q, error) { return f(a.value, b.value, c.value, d.value), nil },
		input{a.step, a.OK(), a.Why()}, input{b.step, b.OK(), b.Why()}, input{c.step, c.OK(), c.Why()}, input{d.step, d.OK(), d.Why()})
}

// Try1 to Try4 wrap a function that may refuse; its error becomes the reason.

func Try1[A, Q unit.Quantity](id string, by Rule, f func(A) (Q, error), a Num[A]) Num[Q] {
	return make1(id, by, func() (Q, error) { return f(a.value) }, input{a.step, a.OK(), a.Why()})
}

func Try2[A, B, Q unit.Quantity](id string, by Rule, f func(A, B) (Q, error), a Num[A], b Num[B]) Num[Q] {
	return make1(id, by, func() (Q, error) { return f(a.value, b.value) },
		input{a.step, a.OK(), a.Why()}, input{b.step, b.OK(), b.Why()})
}

func Try3[A, B, C, Q unit.Quantity](id string, by Rule, f func(A, B, C) (Q, error), a Num[A], b Num[B], c Num[C]) Num[Q] {
	return make1(id, by, func() (Q, error) { return f(a.value, b.value, c.value) },
		input{a.step, a.OK(), a.Why()}, input{b.step, b.OK(), b.Why()}, input{c.step, c.OK(), c.Why()})
}

func Try4[A, B, C, D, Q unit.Quantity](id string, by Rule, f func(A, B, C, D) (Q, error), a Num[A], b Num[B], c Num[C], d Num[D]) Num[Q] {
	return make1(id, by, func() (Q, error) { return f(a.value, b.value, c.value, d.value) },
		input{a.step, a.OK(), a.Why()}, input{b.step, b.OK(), b.Why()}, input{c.step, c.OK(), c.Why()}, input{d.step, d.OK(), d.Why()})
}

// OfList wraps a function of many numbers of one kind: a best, a mean, a spread. An empty list is not tested.
func OfList[A, Q unit.Quantity](id string, by Rule, f func([]A) (Q, error), list []Num[A]) Num[Q] {
	if len(list) == 0 {
		return Refused[Q](id, by, "not tested")
	}
	values := make([]A, len(list))
	inputs := make([]input, len(list))
	for i, n := range list {
		values[i], inputs[i] = n.value, input{n.step, n.OK(), n.Why()}
	}
	return make1(id, by, func() (Q, error) { return f(values) }, inputs...)
}

// Input is a Num of any quantity, as one of many inputs.
type Input interface {
	OK() bool
	Why() Said
	Step() *Step
}

// OfAny wraps a function of inputs of several kinds, such as weeks and values in turn; f reads them itself and is called only
// where all are there.
func OfAny[Q unit.Quantity](id string, by Rule, f func() (Q, error), inputs ...Input) Num[Q] {
	all := make([]input, len(inputs))
	for i, n := range inputs {
		all[i] = input{n.Step(), n.OK(), n.Why()}
	}
	return make1(id, by, f, all...)
}

// Cut wraps the one rounding: what cut makes of n, with the value before it kept in the step. Further inputs, such as
// the step of the machine, follow n in the sum.
func Cut[Q, S unit.Quantity](id string, by Rule, cut func(Q, S) Q, n Num[Q], step Num[S]) Num[Q] {
	r := Of2(id, by, cut, n, step)
	return r.with(func(s *Step) { s.Before, s.Cut = float64(n.value), r.OK() })
}

type input struct {
	step *Step
	ok   bool
	why  Said
}

func make1[Q unit.Quantity](id string, by Rule, f func() (Q, error), inputs ...input) Num[Q] {
	from := make([]*Step, 0, len(inputs))
	for _, in := range inputs {
		if in.step != nil {
			from = append(from, in.step)
		}
	}
	for _, in := range inputs {
		if !in.ok {
			return Refused[Q](id, by, in.why, from...)
		}
	}
	v, err := f()
	if err != nil {
		return Refused[Q](id, by, SaidBy(err), from...)
	}
	return Num[Q]{v, &Step{ID: id, By: by, From: from, Value: float64(v), Unit: v.Unit()}}
}

// Walk calls visit for every step below s and for s itself, inputs first, each step once.
func Walk(s *Step, visit func(*Step)) {
	walk(s, map[*Step]bool{}, visit)
}

func walk(s *Step, seen map[*Step]bool, visit func(*Step)) {
	if s == nil || seen[s] {
		return
	}
	seen[s] = true
	for _, f := range s.From {
		walk(f, seen, visit)
	}
	visit(s)
}
