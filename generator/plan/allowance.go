package plan

import "paceleaf/generator/unit"

// stricter is what both allowances allow.
func stricter(a, b unit.Allowance) unit.Allowance {
	if a.Closed() || b.Closed() {
		no := false
		return unit.Allowance{Allowed: &no}
	}
	m := unit.Allowance{Range: a.Range, Grade: a.Grade, Part: lower(a.Part, b.Part), PartMass: lower(a.PartMass, b.PartMass), Locked: a.Locked, Night: a.Night, BothOnly: a.BothOnly || b.BothOnly}
	switch {
	case a.Range != nil && b.Range != nil:
		both := a.Range.Meet(*b.Range)
		m.Range = &both
	case b.Range != nil:
		m.Range = b.Range
	}
	if b.Grade != "" && (a.Grade == "" || b.Grade.Rank() < a.Grade.Rank()) {
		m.Grade = b.Grade
	}
	if b.Locked != nil && (a.Locked == nil || *b.Locked < *a.Locked) {
		m.Locked = b.Locked
	}
	if b.Night != nil && (m.Night == nil || *b.Night) {
		m.Night = b.Night
	}
	return m
}

func lower[Q ~float64](a, b *Q) *Q {
	if a == nil || b != nil && *b < *a {
		return b
	}
	return a
}

func sameAllowance(a, b unit.Allowance) bool {
	return sameAs(a.Range, b.Range) && sameAs(a.Part, b.Part) && sameAs(a.PartMass, b.PartMass) && sameAs(a.Locked, b.Locked) &&
		a.BothOnly == b.BothOnly && a.Grade == b.Grade && a.Closed() == b.Closed()
}

func sameAs[T comparable](a, b *T) bool { return a == b || a != nil && b != nil && *a == *b }

// wider reports whether b allows something that a did not.
func wider(a, b unit.Allowance) bool {
	return !sameAllowance(stricter(a, b), b)
}
