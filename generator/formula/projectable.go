package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Tool rules of a projected week; no source. measurement.md of the evidence, 7.
const (
	// SpanLeast is the shortest span between the first and the last test of a projection.
	SpanLeast unit.Weeks = 6
	// SlopeDoubtedAbove points of symmetry a week the data are to be checked.
	SlopeDoubtedAbove unit.Percent = 3
	// FullDoubtedBefore this week (four months) a symmetry of 90 or more is to be checked.
	FullDoubtedBefore unit.Weeks = 17.4
	// fullSymmetry is the mark that FullDoubtedBefore speaks of.
	fullSymmetry unit.Percent = 90
)

// Projectable says why no week may be told for a mark; nil where one may, with its interval. It lays a straight line of its own.
//
// Source: tool rules, no source.
// Refuses: fewer than 3 tests; a span under 6 weeks; a line that does not rise; a line that is at the mark already.
func Projectable[Q unit.Quantity](points []Point[Q], mark Q) error {
	l, err := StraightLine(points)
	switch {
	case err != nil:
		return err
	case l.Last-l.First < SpanLeast:
		return errors.New("the tests span less than 6 weeks: no projected week")
	case !positive(l.Slope):
		return errors.New("the line does not rise: no projected week")
	case !number(mark):
		return errors.New("there is no mark: no projected week")
	case l.At(l.Last) >= mark:
		return errors.New("the line is at the mark already: nothing to project")
	}
	return nil
}

// DoubtOfProjection doubts a projected week: it lies further ahead than the tests reach back. symmetry adds the two doubts that
// speak of points of symmetry: a gain above 3 a week, and 90 before four months.
func DoubtOfProjection[Q unit.Quantity](l Line[Q], mark Q, symmetry bool) Doubt {
	w, err := l.Crosses(mark)
	switch {
	case err != nil:
		return basis.SaidBy(err)
	case symmetry && l.Shape != Logarithmic && float64(l.Slope) > float64(SlopeDoubtedAbove):
		return "more than 3 points a week: check the data"
	case symmetry && float64(mark) >= float64(fullSymmetry) && w < FullDoubtedBefore:
		return "90 before four months: check the data"
	case w-l.Last > l.Last-l.First:
		return "further ahead than the tests reach back: a long reach"
	}
	return ""
}
