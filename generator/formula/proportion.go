package formula

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByProportion is the rule of Proportion.
var ByProportion = basis.Rule{Name: "so many of so many", Sum: "100 × $1 ÷ $2", Source: "definition"}

// Proportion returns k of n in hundredths: what a group did. It says nothing about one person.
//
// Source: definition; the counts of Wellsandt 2017 (JOSPT 47:334–338) are recomputed with it.
// Studied: whole counts. ProportionInterval says how little a small group tells.
// Refuses: an empty group; counts that are not whole; more of them than there are.
func Proportion(k, n unit.Count) (unit.Percent, error) {
	if err := counted(k, n); err != nil {
		return 0, err
	}
	return share(k, n), nil
}

// ProportionInterval returns the exact interval of a proportion (Clopper and Pearson) at a level such as 95: from quantiles
// of the beta distribution. 1 of 18 at 95 %: 0.14 to 27.29 %.
func ProportionInterval(k, n unit.Count, level unit.Percent) (Interval[unit.Percent], error) {
	if err := counted(k, n); err != nil {
		return Interval[unit.Percent]{}, err
	}
	if err := leveled(level); err != nil {
		return Interval[unit.Percent]{}, err
	}
	tail, i := (1-float64(level)/100)/2, Interval[unit.Percent]{0, 100}
	if k > 0 {
		i.Low = unit.Percent(100 * distuv.Beta{Alpha: float64(k), Beta: float64(n - k + 1)}.Quantile(tail))
	}
	if k < n {
		i.High = unit.Percent(100 * distuv.Beta{Alpha: float64(k + 1), Beta: float64(n - k)}.Quantile(1-tail))
	}
	return i, nil
}

func counted(k, n unit.Count) error {
	switch {
	case !positive(n) || float64(n) != math.Floor(float64(n)):
		return errors.New("nobody was counted: no proportion")
	case !number(k) || k < 0 || k > n || float64(k) != math.Floor(float64(k)):
		return errors.New("the count lies outside the group: no proportion")
	}
	return nil
}

// leveled refuses a level that is none: 50 to 99.9 % are in use.
func leveled(level unit.Percent) error {
	if !number(level) || level < 50 || level > 99.9 {
		return errors.New("a level lies between 50 and 99.9 %")
	}
	return nil
}
