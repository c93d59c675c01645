package formula_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Every equation: a single is the load; the maximum grows with repetitions and with the load; share and repetitions are its exact
// inverses; Epley is OneRM.
func TestLawsOfEquations(t *testing.T) {
	for e := range formula.Equations {
		for n := 1.0; n <= 15; n++ {
			oneRM, err := call("OneRMBy", float64(e), 40, n)
			if err != nil {
				t.Fatal(err)
			}
			if n == 1 && oneRM != 40 {
				t.Errorf("%v: a single of 40 makes %v", formula.Equations[e], oneRM)
			}
			if more, err := call("OneRMBy", float64(e), 40, n+1); err == nil && more <= oneRM {
				t.Errorf("%v: × %v is no more than × %v", formula.Equations[e], n+1, n)
			}
			if heavier, _ := call("OneRMBy", float64(e), 50, n); heavier <= oneRM {
				t.Errorf("%v: 50 kg × %v is no more than 40 kg", formula.Equations[e], n)
			}
			allowed, _ := call("AllowedShareBy", float64(e), n)
			if math.Abs(oneRM*allowed/100-40) > 0.002 { // Brzycki's and Lander's two forms are printed to so many digits
				t.Errorf("%v: 40 kg × %v comes back as %v", formula.Equations[e], n, oneRM*allowed/100)
			}
			if back, err := call("ImpliedToFailureBy", float64(e), oneRM, 40); n > 1 && (err != nil || math.Abs(back-n) > 1e-6) {
				t.Errorf("%v: 40 kg of %v allows %v, not %v (%v)", formula.Equations[e], oneRM, back, n, err)
			}
		}
	}
	for n := 1.0; n <= 15; n++ {
		a, _ := call("OneRM", 40, n)
		b, _ := call("OneRMBy", words["epley"], 40, n)
		c, _ := call("BackEstimate", 40, max(1, n-2), n-max(1, n-2))
		if a != b || math.Abs(a-c) > 1e-9 {
			t.Errorf("40 kg × %v is %v, by Epley %v, logged %v", n, a, b, c)
		}
	}
}

// What the trade says must rise or fall does; and gravity and its parts agree however they are reckoned.
func TestLawsOfRates(t *testing.T) {
	for lsi := 60.0; lsi < 120; lsi++ {
		rate, _ := call("RelativeRate", lsi)
		linear, _ := call("RelativeRateLinear", lsi)
		low, _ := call("RelativeRateLow", lsi)
		high, _ := call("RelativeRateHigh", lsi)
		next, _ := call("RelativeRate", lsi+1)
		if next > rate || low > rate || high < rate || linear > rate+1e-12 || lsi >= 90 && rate != 1 {
			t.Errorf("at %v the rate is %v (%v to %v), linear %v, one point higher %v", lsi, rate, low, high, linear, next)
		}
	}
	for month := 5.0; month < 24; month += 0.5 {
		rate, _ := call("RelativeRateByMonth", month)
		if later, _ := call("RelativeRateByMonth", month+0.5); later > rate || month >= 9 && rate != 1 {
			t.Errorf("month %v: %v, half a month later %v", month, rate, later)
		}
	}
}

// Same-day body mass never changes a symmetry, and neither does a device that multiplies both legs; H:Q is no monotone thing and
// is held to nothing.
func TestLawsOfLegs(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 5))
	for range 500 {
		a, b, mass := 20+300*random.Float64(), 20+300*random.Float64(), 40+80*random.Float64()
		raw, _ := call("Symmetry", a, b)
		x, _ := call("PerKilogram", a, mass)
		y, _ := call("PerKilogram", b, mass)
		if perKg, _ := call("Symmetry", x, y); math.Abs(perKg-raw) > 1e-9 {
			t.Errorf("body mass moves %v to %v", raw, perKg)
		}
		worse, _ := call("WorseToBetter", a, b)
		turned, _ := call("WorseToBetter", b, a)
		if worse != turned || worse > 100 || math.Abs(worse-min(raw, 1e4/raw)) > 1e-9 {
			t.Errorf("worse to better of %v and %v: %v and %v; symmetry %v", a, b, worse, turned, raw)
		}
		θ := 75 * random.Float64()
		moment, _ := call("LimbMomentWeighed", a, 0.33, θ)
		direct, _ := call("GravityFromWeighed", a, 0.33, θ, 60)
		if via, _ := call("GravityAt", moment, 60); math.Abs(via-direct) > 1e-9 {
			t.Errorf("gravity of a weighed leg is %v, by its moment %v", direct, via)
		}
		sem := 1 + 9*random.Float64()
		ninety, _ := call("MDC90", sem)
		ninetyFive, _ := call("MDC95", sem)
		low, _ := call("BandLow", a, sem)
		high, _ := call("BandHigh", a, sem)
		if ninety >= ninetyFive || high-low >= 2*ninetyFive || math.Abs(low+high-2*a) > 1e-9 {
			t.Errorf("SEM %v: %v, %v, band %v to %v", sem, ninety, ninetyFive, low, high)
		}
		slope := 1 + 88*random.Float64()
		force, _ := call("AngledPress", mass, slope)
		if back, _ := call("AngledMass", force, slope); math.Abs(back-mass) > 1e-9 {
			t.Errorf("%v kg at %v° come back as %v", mass, slope, back)
		}
	}
}

// A table of changes never rises by more than 10 %, never falls for more repetitions, and of an equal set asks for no less.
func TestLawsOfSchemes(t *testing.T) {
	for _, scheme := range []string{"DAPREFourth", "DAPRENext"} {
		for load := 5.0; load < 150; load += 2.5 {
			before := 0.0
			for reps := 0.0; reps < 20; reps++ {
				v, err := call(scheme, load, reps, 0)
				if err != nil {
					continue
				}
				if v < before || v > load*1.1+1e-9 || v <= 0 {
					t.Errorf("%s of %v kg × %v: %v after %v", scheme, load, reps, v, before)
				}
				before = v
			}
		}
	}
}

// The list of questionnaires: each scores, its worst and best answers give its worst and best score, and its bounds hold between.
func TestQuestionnaires(t *testing.T) {
	random := rand.New(rand.NewPCG(2, 9))
	for _, q := range formula.Questionnaires {
		if again, ok := formula.QuestionnaireByID(q.ID); !ok || again.Name != q.Name || q.Source == "" || q.Missing == "" {
			t.Errorf("%s is not found, or lacks a source or a rule of missing items", q.ID)
		}
		var lowest, highest formula.Items
		for i := range q.Items {
			lowest, highest = append(lowest, formula.Answered(q.Low)), append(highest, formula.Answered(q.Most(i)))
		}
		a, errA := q.Score(lowest)
		b, errB := q.Score(highest)
		if errA != nil || errB != nil || min(a, b) != min(q.Worst, q.Best) || max(a, b) != max(q.Worst, q.Best) {
			t.Errorf("%s reaches from %v to %v (%v, %v), not from %v to %v", q.ID, a, b, errA, errB, q.Worst, q.Best)
		}
		for range 50 {
			var some formula.Items
			for i := range q.Items {
				steps := int((q.Most(i) - q.Low) / q.Step)
				some = append(some, formula.Answered(q.Low+q.Step*unit.Points(random.IntN(steps+1))))
			}
			for gone := 0; gone <= q.Items; gone++ { // take answers away one by one: a score of its range, or none
				v, err := q.Score(some)
				if answered := len(some.Given()); (err == nil) != (answered >= q.Least) || err == nil && !q.Covers(v) {
					t.Errorf("%s with %d of %d answered: %v, %v", q.ID, answered, q.Items, v, err)
				}
				if err == nil {
					in := make([]float64, 0, len(some))
					for _, p := range some.Given() {
						in = append(in, float64(p))
					}
					if got, err := calculate(fill(q.Rule(some).Sum, in)); err != nil || math.Abs(got-float64(v)) > 1e-9 {
						t.Errorf("%s: the sum %s gives %v (%v), the formula %v", q.ID, q.Rule(some).Sum, got, err, v)
					}
				}
				if gone < q.Items {
					some[gone] = formula.Answer{}
				}
			}
		}
	}
	if _, ok := formula.QuestionnaireByID("koos"); ok {
		t.Error("koos has no score of all five subscales")
	}
}

// What may be worked out and is still not to be believed, says so.
func TestDoubts(t *testing.T) {
	newtons := func(x ...unit.Newtons) []unit.Newtons { return x }
	for name, c := range map[string]struct {
		doubt formula.Doubt
		says  string // "" where there is none
	}{
		"legs alike":                {formula.DoubtOfSymmetry(92), ""},
		"one leg in kilograms":      {formula.DoubtOfSymmetry(9.4), "unit and side"},
		"legs swapped":              {formula.DoubtOfSymmetry(151), "swapped"},
		"no symmetry":               {formula.DoubtOfSymmetry(unit.Percent(nan)), "no number"},
		"three trials":              {formula.DoubtOfTrials(newtons(412, 420, 405)), ""},
		"one trial":                 {formula.DoubtOfTrials(newtons(412)), "one trial only"},
		"three identical trials":    {formula.DoubtOfTrials(newtons(412, 412, 412)), "alike to the last digit"},
		"two identical trials":      {formula.DoubtOfTrials(newtons(412, 412)), ""},
		"trials too far apart":      {formula.DoubtOfTrials(newtons(330, 420, 405)), "more than 10 %"},
		"a trial of zero":           {formula.DoubtOfTrials(newtons(412, 0, 405)), "no value above zero"},
		"no trial":                  {formula.DoubtOfTrials(newtons()), "no trial"},
		"kilograms read as newtons": {formula.DoubtOfForce(42.8), "kilograms of force"},
		"newtons":                   {formula.DoubtOfForce(420), ""},
		"ten to failure":            {formula.DoubtOfMaximum(10), ""},
		"eleven to failure":         {formula.DoubtOfMaximum(11), "more than 10"},
		"repetitions of no number":  {formula.DoubtOfMaximum(unit.Count(nan)), "more than 10"},
	} {
		if (c.doubt == "") != (c.says == "") || !strings.Contains(string(c.doubt), c.says) {
			t.Errorf("%s: %q; wanted %q", name, c.doubt, c.says)
		}
	}
}
