package program

import (
	"fmt"
	"strconv"

	"paceleaf/generator/unit"
)

// KeyEndings are the units in which a mark may be written, besides the bare key.
func (*Mark) KeyEndings() []unit.Ending { return MarkEndings }

// KeyWords are the grades of swelling: they have no unit.
func (*Mark) KeyWords(e unit.Ending) []string {
	if e.Name != "" {
		return nil
	}
	return unit.GradeZero.Words()
}

// FromKeyed fills the mark from a number with the unit that its key names, or from a grade of swelling.
func (m *Mark) FromKeyed(e unit.Ending, value any) error {
	switch v := value.(type) {
	case float64:
		m.Number, m.Typed = float64(v*e.Factor), strconv.FormatFloat(v, 'f', -1, 64)
	case int64:
		m.Number, m.Typed = float64(float64(v)*e.Factor), strconv.FormatInt(v, 10)
	case string:
		if unit.Grade(v).Rank() < 0 || e.Name != "" {
			return fmt.Errorf("%q is neither a number nor a grade; write a number, or one of zero, trace, 1+, 2+, 3+", v)
		}
		m.Grade, m.Typed = unit.Grade(v), v
	default:
		return fmt.Errorf("a mark is a number or a grade; write a number, or one of zero, trace, 1+, 2+, 3+")
	}
	m.Unit = e.Symbol
	if e.Symbol != "" && m.Grade == "" {
		m.Typed += " " + e.Symbol
	}
	return nil
}

// Sense returns which comparison the criterion asks for, and its mark; an empty sense where it asks for none.
func (c *Criterion) Sense() (sense string, mark Mark) {
	for _, s := range []struct {
		sense string
		mark  *Mark
	}{{"at least", c.AtLeast}, {"above", c.Above}, {"at most", c.AtMost}, {"below", c.Below}} {
		if s.mark != nil {
			return s.sense, *s.mark
		}
	}
	return "", Mark{}
}

// Choices are the criteria that a criterion is made of: of any-of, or of all-of.
func (c *Criterion) Choices() []Criterion {
	if len(c.All) > 0 {
		return c.All
	}
	return c.Any
}

// senses counts the comparisons written.
func (c *Criterion) senses() (n int) {
	for _, m := range []*Mark{c.AtLeast, c.Above, c.AtMost, c.Below} {
		if m != nil {
			n++
		}
	}
	return n
}
