package formula_test

import (
	"math"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

var nan, infinite = math.NaN(), math.Inf(1)

// What has no answer says why, in words that a therapist can read, and never gives a number.
func TestRefusals(t *testing.T) {
	for _, c := range refusals {
		t.Run(c.name, func(t *testing.T) {
			v, err := call(c.function, c.in...)
			switch {
			case c.says == "" && err != nil:
				t.Errorf("refused: %v", err)
			case c.says == "" && (math.IsNaN(v) || math.IsInf(v, 0)):
				t.Errorf("answered with %v", v)
			case c.says == "":
			case err == nil:
				t.Errorf("answered with %v; wanted a refusal that says %q", v, c.says)
			case !strings.Contains(err.Error(), c.says):
				t.Errorf("says %q; wanted %q", err, c.says)
			case err.Error() != strings.TrimRight(strings.ToLower(err.Error()[:1])+err.Error()[1:], "."):
				t.Errorf("%q: a reason starts low and has no full stop", err)
			}
		})
	}
}

// Wrapped as the other rooms do, without naming a type: the result keeps its sum, a refusal its reason.
func TestWrapped(t *testing.T) {
	typed := func(v unit.Newtons) basis.Num[unit.Newtons] { return basis.Typed(v, "", basis.Origin{}) }
	arm := basis.Typed(unit.Metres(0.31), "31 cm", basis.Origin{})
	best := basis.OfList("left.best", formula.ByBest, formula.Best, []basis.Num[unit.Newtons]{typed(318), typed(331), typed(325)})
	torque := basis.Of2("left.torque", formula.ByTorque, formula.Torque, best, arm)
	var untested basis.Num[unit.NewtonMetres]

	lsi := basis.Try2("lsi", formula.BySymmetry, formula.Symmetry, torque, torque)
	if v, ok := lsi.Value(); !ok || v != 100 || len(lsi.Step().From) != 2 {
		t.Errorf("symmetry of a leg with itself: %v %v", v, ok)
	}
	if got := basis.Try2("lsi", formula.BySymmetry, formula.Symmetry, torque, untested).Why(); got != "not tested" {
		t.Errorf("the untested leg says %q", got)
	}
	zero := basis.Typed(unit.NewtonMetres(0), "0", basis.Origin{})
	if got := basis.Try2("lsi", formula.BySymmetry, formula.Symmetry, torque, zero); got.OK() || !strings.Contains(got.Why().String(), "no symmetry") {
		t.Errorf("the leg of zero gives %v, says %q", got.OK(), got.Why())
	}
}

// Laws that hold for any pair of legs and any set.
func TestLaws(t *testing.T) {
	for involved := 20.0; involved < 400; involved += 37 {
		for other := 30.0; other < 400; other += 41 {
			raw, _ := call("Symmetry", involved, other)
			a, _ := call("PerKilogram", involved, 62)
			b, _ := call("PerKilogram", other, 62)
			if perKg, _ := call("Symmetry", a, b); math.Abs(perKg-raw) > 1e-9 {
				t.Errorf("body mass moves the symmetry of %v and %v from %v to %v", involved, other, raw, perKg)
			}
			if timed, _ := call("SymmetryTimed", other, involved); timed != raw {
				t.Errorf("symmetry of times is not the mirror at %v, %v", involved, other)
			}
			deficit, _ := call("Deficit", raw)
			if difference, _ := call("PercentDifference", raw); deficit != -difference {
				t.Errorf("deficit %v and difference %v do not mirror each other", deficit, difference)
			}
		}
	}
	for n := 1.0; n <= 15; n++ {
		for w := 2.5; w < 200; w += 12.5 {
			oneRM, _ := call("OneRM", w, n)
			allowed, _ := call("AllowedShare", n)
			if back, _ := call("WorkingLoad", oneRM, allowed); math.Abs(back-w) > 1e-9 {
				t.Errorf("%v kg × %v comes back as %v", w, n, back)
			}
			if back, err := call("ImpliedToFailure", oneRM, w); err != nil || math.Abs(back-n) > 1e-9 {
				t.Errorf("%v kg × %v allows %v repetitions (%v)", w, n, back, err)
			}
			if more, err := call("OneRM", w, n+1); err == nil && more <= oneRM {
				t.Errorf("%v kg × %v is no more than × %v", w, n+1, n)
			}
		}
	}
	// gravity is an even function of the angle, nothing at a right angle, half at 60°
	for θ := -15.0; θ <= 160; θ += 0.5 {
		got, _ := call("GravityAt", 1, θ)
		if want := math.Cos(θ * math.Pi / 180); math.Abs(got-want) > 2e-15 {
			t.Errorf("cos %v° is %v, not %v", θ, got, want)
		}
	}
	if g, _ := call("GravityAt", 8.7656, 90); g != 0 {
		t.Errorf("at a right angle gravity has an arm: %v", g)
	}
}

// The calculator of the tests is itself tried, for everything hangs on it.
func TestCalculator(t *testing.T) {
	for sum, want := range map[string]float64{
		"1 + 2 × 3":                                7,
		"(1 + 2) × 3":                              9,
		"10 − 4 − 3":                               3,
		"100 ÷ 4 ÷ 5":                              5,
		"max(1, 30 × (76 ÷ 76 − 1)) − 3":           -2,
		"min(3, 2, 5)":                             2,
		"mean(412, 420, 406)":                      412.0 + 2.0/3,
		"sd(2, 4)":                                 math.Sqrt2,
		"down(2.9) + down(3)":                      5,
		"cos(60)":                                  0.5,
		"pow(1 + 10 ÷ 100, 2)":                     1.21,
		"sqrt(2 + 7) + sum(1, 2, 3)":               9,
		"ln(exp(3)) − exp(0)":                      2,
		"max(1, −ln(1) ÷ 0.075)":                   1,
		"slope(1, 3, 2, 5, 4, 9)":                  2,
		"intercept(1, 3, 2, 5, 4, 9)":              1,
		"exp(slopeln(1, 0, exp(1), 1))":            math.E,
		"interceptln(1, 7, exp(1), 8)":             7,
		"slopemedian(0, 0, 1, 1, 2, 2, 3, 90)":     15.5,                   // of 1, 1, 1, 30, 44.5, 88
		"interceptmedian(0, 5, 1, 6, 2, 7, 3, 90)": 6.5 - 1.5*(1+85.0/3)/2, // slopes 1, 1, 1, 85/3, 42, 83
		"5 − (−3)":                                 8,
	} {
		if got, err := calculate(sum); err != nil || math.Abs(got-want) > 1e-12 {
			t.Errorf("%s = %v, %v; wanted %v", sum, got, err, want)
		}
	}
	for _, sum := range []string{"", "1 +", "(1", "1 2", "log(2)", "pow(2)", "ln(1, 2)", "$1 × 2", "1 * 2"} {
		if v, err := calculate(sum); err == nil {
			t.Errorf("%q gives %v; wanted an error", sum, v)
		}
	}
	if got := fill("$2 × $1 + mean($*)", []float64{-1, 2.5}); got != "2.5 × (−1) + mean((−1), 2.5)" {
		t.Errorf("filled in: %s", got)
	}
}
