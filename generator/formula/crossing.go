package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of the week in which a line comes to a mark: level, slope, mark.
var (
	ByCrossing    = basis.Rule{Name: "week of the mark, straight line", Sum: "($3 − $1) ÷ $2", Source: "least squares, turned round"}
	ByLogCrossing = basis.Rule{Name: "week of the mark, log-time", Sum: "exp(($3 − $1) ÷ $2)", Source: "least squares on the logarithm of the weeks, turned round"}
)

// Crosses returns the week in which the line comes to a mark. It is never printed bare: CrossingInterval stands beside it.
// It refuses a slope that does not rise, a mark that is no number, and a week before the event.
func (l Line[Q]) Crosses(mark Q) (unit.Weeks, error) {
	x, err := l.crossing(mark)
	if err != nil {
		return 0, err
	}
	w := l.week(x)
	if !positive(w) {
		return 0, errors.New("the line was at the mark before the event: no week")
	}
	return w, nil
}

// CrossingRule returns the rule by which Crosses reckons; its inputs are Intercept, Slope and mark.
func (l Line[Q]) CrossingRule() basis.Rule {
	if l.Shape == Logarithmic {
		return ByLogCrossing
	}
	return ByCrossing
}

func (l Line[Q]) crossing(mark Q) (float64, error) {
	switch {
	case !number(mark):
		return 0, errors.New("there is no mark: no week")
	case !positive(l.Slope):
		return 0, errors.New("the line does not rise: no week")
	}
	return float64(mark-l.Intercept) / float64(l.Slope), nil
}

// CrossingInterval returns the interval of the week in which the line comes to a mark (Fieller): all weeks in which the
// interval of the line itself holds the mark. It refuses where the slope may be none at that level, for then there is no last week,
// and where the first week lies before the event.
func (l Line[Q]) CrossingInterval(mark Q, level unit.Percent) (Interval[unit.Weeks], error) {
	x, err := l.crossing(mark)
	if err != nil {
		return Interval[unit.Weeks]{}, err
	}
	t, err := l.quantile(level)
	if err != nil {
		return Interval[unit.Weeks]{}, err
	}
	// (b·d − e)² = t²s²·(1/n + d²/Sxx), solved for d = x − x̄, where e = b·(x_mark − x̄)
	b, ts := float64(l.Slope), float64(t)*float64(l.Residual)
	A := float64(b*b) - float64(ts*ts)/l.Sxx
	B := float64(b*b) * (x - l.MeanX)
	C := float64(float64(b*b)*float64((x-l.MeanX)*(x-l.MeanX))) - float64(ts*ts)/float64(l.N)
	if A <= 0 {
		return Interval[unit.Weeks]{}, errors.New("at this level the line may not rise at all: no last week")
	}
	root := math.Sqrt(math.Max(0, float64(B*B)-float64(A*C)))
	i := Interval[unit.Weeks]{l.week(l.MeanX + (B-root)/A), l.week(l.MeanX + (B+root)/A)}
	if !positive(i.Low) || !number(i.High) {
		return Interval[unit.Weeks]{}, errors.New("the interval of the week has no first or no last week")
	}
	return i, nil
}
