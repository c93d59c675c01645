package formula_test

import (
	"fmt"

	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

type pt = formula.Point[unit.Percent]

func points(in []float64) (all []pt) {
	for i := 0; i+1 < len(in); i += 2 {
		all = append(all, pt{Week: unit.Weeks(in[i]), Value: unit.Percent(in[i+1])})
	}
	return all
}

// slopeOf puts a line on the shelf by its slope.
func slopeOf(fit func([]pt) (formula.Line[unit.Percent], error)) adapted {
	return adapted{f: func(in []float64) (float64, error) {
		l, err := fit(points(in))
		return float64(l.Slope), err
	}}
}

var shelfOfTrends = map[string]entry{
	"StraightLine":     {slopeOf(formula.StraightLine[unit.Percent]), formula.ByStraightLine},
	"LogTime":          {slopeOf(formula.LogTime[unit.Percent]), formula.ByLogTime},
	"TheilSen":         {slopeOf(formula.TheilSen[unit.Percent]), formula.ByTheilSen},
	"StudentT":         {formula.StudentT, formula.ByStudentT},
	"PredictionMargin": {formula.PredictionMargin, formula.ByPredictionMargin},
}

func fit(shape float64, in []float64) (formula.Line[unit.Percent], error) {
	switch shape {
	case words["straight"]:
		return formula.StraightLine(points(in))
	case words["log-time"]:
		return formula.LogTime(points(in))
	case words["resistant"]:
		return formula.TheilSen(points(in))
	}
	return formula.Line[unit.Percent]{}, fmt.Errorf("no line is called %v", shape)
}

// ofLine is a chain whose first input is the shape; extra further inputs come before the points.
func ofLine(extra int, get func(l formula.Line[unit.Percent], more []float64) (float64, error)) func([]float64) (float64, error) {
	return func(a []float64) (float64, error) {
		l, err := fit(a[0], a[1+extra:])
		if err != nil {
			return 0, err
		}
		return get(l, a[1:1+extra])
	}
}

type line = formula.Line[unit.Percent]

var chainsOfTrends = map[string]func(a []float64) (float64, error){
	"intercept": ofLine(0, func(l line, _ []float64) (float64, error) { return float64(l.Intercept), nil }),
	"slope":     ofLine(0, func(l line, _ []float64) (float64, error) { return float64(l.Slope), nil }),
	"residual":  ofLine(0, func(l line, _ []float64) (float64, error) { return float64(l.Residual), nil }),
	"explained": ofLine(0, func(l line, _ []float64) (float64, error) { return float64(l.Explained), nil }),
	"mean x":    ofLine(0, func(l line, _ []float64) (float64, error) { return l.MeanX, nil }),
	"Sxx":       ofLine(0, func(l line, _ []float64) (float64, error) { return l.Sxx, nil }),
	"squares left": ofLine(0, func(l line, _ []float64) (float64, error) {
		return float64(l.Residual) * float64(l.Residual) * float64(l.N-2), nil
	}),
	"at": ofLine(1, func(l line, m []float64) (float64, error) { return float64(l.At(unit.Weeks(m[0]))), nil }),
	// week, level
	"prediction low":  ofLine(2, interval(line.Interval, true)),
	"prediction high": ofLine(2, interval(line.Interval, false)),
	"mean line low":   ofLine(2, interval(line.MeanInterval, true)),
	"mean line high":  ofLine(2, interval(line.MeanInterval, false)),
	"crosses":         ofLine(1, func(l line, m []float64) (float64, error) { return bare(l.Crosses(unit.Percent(m[0]))) }),
	// mark, level
	"crossing low":  ofLine(2, func(l line, m []float64) (float64, error) { return crossing(l, m, true) }),
	"crossing high": ofLine(2, func(l line, m []float64) (float64, error) { return crossing(l, m, false) }),
	"slope low": ofLine(1, func(l line, m []float64) (float64, error) {
		i, err := l.SlopeInterval(unit.Percent(m[0]))
		return float64(i.Low), err
	}),
	"slope high": ofLine(1, func(l line, m []float64) (float64, error) {
		i, err := l.SlopeInterval(unit.Percent(m[0]))
		return float64(i.High), err
	}),
}

func interval(of func(line, unit.Weeks, unit.Percent) (formula.Interval[unit.Percent], error), low bool) func(line, []float64) (float64, error) {
	return func(l line, m []float64) (float64, error) {
		i, err := of(l, unit.Weeks(m[0]), unit.Percent(m[1]))
		if low {
			return float64(i.Low), err
		}
		return float64(i.High), err
	}
}

func crossing(l line, m []float64, low bool) (float64, error) {
	i, err := l.CrossingInterval(unit.Percent(m[0]), unit.Percent(m[1]))
	if low {
		return float64(i.Low), err
	}
	return float64(i.High), err
}
