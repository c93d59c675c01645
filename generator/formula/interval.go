package formula

import "paceleaf/generator/unit"

// Interval is a span between two values of one quantity, both included. It has no middle: a span is printed as a span.
type Interval[Q unit.Quantity] struct{ Low, High Q }

// Holds reports whether the span includes a value, such as a mark.
func (i Interval[Q]) Holds(v Q) bool { return i.Low <= v && v <= i.High }
