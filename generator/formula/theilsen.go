package formula

import (
	"errors"
	"math"
	"slices"

	"gonum.org/v1/gonum/stat/distuv"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of the slope and of the level of a resistant line; inputs are week and value, point by point.
var (
	ByTheilSen      = basis.Rule{Name: "gain a week, resistant line", Sum: "slopemedian($*)", Source: "Sen 1968"}
	ByTheilSenLevel = basis.Rule{Name: "level of week 0, resistant line", Sum: "interceptmedian($*)", Source: "Sen 1968; med(y) − b·med(x) is chosen"}
)

// TheilSen lays the line through the tests whose slope is the median of the slopes between all pairs, so that one bad test does
// not turn it: b = med((yⱼ − yᵢ)/(xⱼ − xᵢ)), a = med(y) − b·med(x).
//
// Source: Sen 1968, JASA 63:1379. Of two rules for the intercept this one is chosen; the other, med(y − b·x), gives 6 in Sen's
// example where this gives 4.
// Studied: as a description, beside StraightLine.
// Refuses: as StraightLine.
func TheilSen[Q unit.Quantity](points []Point[Q]) (Line[Q], error) {
	if err := series(points); err != nil {
		return Line[Q]{}, err
	}
	l := Line[Q]{Shape: Resistant}.spanned(points)
	var x []unit.Weeks
	var y []Q
	for i, p := range points {
		x, y = append(x, p.Week), append(y, p.Value)
		for _, q := range points[:i] {
			if p.Week != q.Week {
				l.scatter = append(l.scatter, Q(float64(p.Value-q.Value)/float64(p.Week-q.Week)))
			}
		}
	}
	slices.Sort(l.scatter)
	l.Slope = median(l.scatter)
	l.Intercept = median(y) - Q(float64(l.Slope)*float64(median(x)))
	l.MeanX, l.weight = float64(mean(x)), kendall(x)
	return l, nil
}

// kendall is the variance of Kendall's sum, less for weeks that stand more than once (Sen 1968, eq. 2.6).
func kendall(x []unit.Weeks) float64 {
	term := func(n int) float64 { return float64(n * (n - 1) * (2*n + 5)) }
	times := map[unit.Weeks]int{}
	for _, w := range x {
		times[w]++
	}
	total := term(len(x))
	for _, n := range times { // whole numbers: the order does not matter
		total -= term(n)
	}
	return total / 18
}

// SlopeInterval returns the interval of the slope of a resistant line at a level such as 95: the slopes of Sen's ranks, by the
// normal approximation, each rank taken outward. Sen's example at 93: 3.71 to 4.38.
func (l Line[Q]) SlopeInterval(level unit.Percent) (Interval[Q], error) {
	if l.Shape != Resistant {
		return Interval[Q]{}, errors.New("only a resistant line has slopes to rank")
	}
	if err := leveled(level); err != nil {
		return Interval[Q]{}, err
	}
	z := distuv.UnitNormal.Quantile(1 - (1-float64(level)/100)/2)
	n := len(l.scatter)
	rank := int(math.Floor((float64(n) - float64(z*math.Sqrt(l.weight))) / 2))
	if rank < 1 {
		return Interval[Q]{}, errors.New("too few tests for an interval of the slope")
	}
	return Interval[Q]{l.scatter[rank-1], l.scatter[n-rank]}, nil
}

// median is the middle value, or the mean of the two.
func median[Q ~float64](values []Q) Q {
	sorted := slices.Clone(values)
	slices.Sort(sorted)
	n := len(sorted)
	if n%2 == 1 {
		return sorted[n/2]
	}
	return (sorted[n/2-1] + sorted[n/2]) / 2
}
