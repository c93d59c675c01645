package formula

import (
	"errors"
	"math"

	"paceleaf/generator/unit"
)

// Point is one test of a series: the week since the event, and what was measured.
type Point[Q unit.Quantity] struct {
	Week  unit.Weeks
	Value Q
}

// Shape is how a line was laid through points.
type Shape string

const (
	Straight    Shape = "straight"  // least squares on the weeks
	Logarithmic Shape = "log-time"  // least squares on the natural logarithm of the weeks: gain slows with time
	Resistant   Shape = "resistant" // Theil–Sen: the median of all slopes
)

// Line is a line through the tests of one leg, or of one ratio: Intercept + Slope·x, where x is the week, or its natural
// logarithm where the shape is Logarithmic. It says what was and, with an interval, what could be; it opens nothing.
type Line[Q unit.Quantity] struct {
	Shape     Shape
	Intercept Q
	Slope     Q          // a week; a unit of the logarithm
	N         unit.Count // points
	First     unit.Weeks // week of the first point
	Last      unit.Weeks // week of the last point
	Residual  Q          // standard deviation about the line, with n − 2; zero for a resistant line
	Explained Ratio      // R²; zero for a resistant line
	MeanX     float64    // of x
	Sxx       float64    // sum of squares of x about its mean
	scatter   []Q        // of a resistant line: all its slopes, sorted
	weight    float64    // of a resistant line: the variance of Kendall's sum
}

// At returns the line's value in a week.
func (l Line[Q]) At(w unit.Weeks) Q { return l.Intercept + Q(float64(float64(l.Slope)*l.x(w))) }

// x is a week as the line counts it.
func (l Line[Q]) x(w unit.Weeks) float64 {
	if l.Shape == Logarithmic {
		return math.Log(float64(w))
	}
	return float64(w)
}

// week is x turned round.
func (l Line[Q]) week(x float64) unit.Weeks {
	if l.Shape == Logarithmic {
		return unit.Weeks(math.Exp(x))
	}
	return unit.Weeks(x)
}

// Margin returns by how much one new test in a week may lie off the line, to either side, at a level such as 95.
func (l Line[Q]) Margin(w unit.Weeks, level unit.Percent) (Q, error) {
	t, err := l.quantile(level)
	if err != nil {
		return 0, err
	}
	if !number(w) || l.Shape == Logarithmic && w <= 0 {
		return 0, errors.New("there is no such week: no interval")
	}
	return Q(PredictionMargin(t, Ratio(l.Residual), l.N, Ratio(l.x(w)), Ratio(l.MeanX), Ratio(l.Sxx))), nil
}

// Interval returns the prediction interval of one new test in a week.
func (l Line[Q]) Interval(w unit.Weeks, level unit.Percent) (Interval[Q], error) {
	m, err := l.Margin(w, level)
	if err != nil {
		return Interval[Q]{}, err
	}
	return Interval[Q]{l.At(w) - m, l.At(w) + m}, nil
}

// MeanInterval returns the interval of the line itself in a week, narrower than that of a new test.
func (l Line[Q]) MeanInterval(w unit.Weeks, level unit.Percent) (Interval[Q], error) {
	t, err := l.quantile(level)
	if err != nil {
		return Interval[Q]{}, err
	}
	if !number(w) || l.Shape == Logarithmic && w <= 0 {
		return Interval[Q]{}, errors.New("there is no such week: no interval")
	}
	d := l.x(w) - l.MeanX
	m := Q(float64(t) * float64(float64(l.Residual)*math.Sqrt(1/float64(l.N)+float64(d*d)/l.Sxx)))
	return Interval[Q]{l.At(w) - m, l.At(w) + m}, nil
}

// quantile is Student's t of the line, and the refusal of a line that has no error.
func (l Line[Q]) quantile(level unit.Percent) (Ratio, error) {
	switch {
	case l.Shape == Resistant:
		return 0, errors.New("a resistant line has no interval of this kind: see its slopes")
	case !positive(l.Residual) || float64(l.Residual) < 1e-9*math.Abs(float64(l.At(l.Last))):
		return 0, errors.New("the tests lie on the line to the last digit: no error to make an interval of; were they typed or worked out?")
	}
	return StudentT(level, l.N-2)
}
