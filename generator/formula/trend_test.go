package formula_test

import (
	"math"
	"math/rand/v2"
	"path/filepath"
	"strings"
	"testing"

	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// The certified values of NIST StRD Norris to 1e-9, relative.
func TestNorris(t *testing.T) {
	l, err := formula.StraightLine(points(seriesNamed(t, "norris")))
	if err != nil || l.N != 36 {
		t.Fatal(err, l.N)
	}
	rss := float64(l.Residual) * float64(l.Residual) * 34
	for name, c := range map[string]struct{ got, certified float64 }{
		"intercept":           {float64(l.Intercept), -0.262323073774029},
		"slope":               {float64(l.Slope), 1.00211681802045},
		"residual SD":         {float64(l.Residual), 0.884796396144373},
		"R²":                  {float64(l.Explained), 0.999993745883712},
		"RSS":                 {rss, 26.6173985294224},
		"residual mean":       {rss / 34, 0.782864662630069},
		"regression SS":       {float64(l.Slope) * float64(l.Slope) * l.Sxx, 4255954.13232369},
		"F":                   {float64(l.Slope) * float64(l.Slope) * l.Sxx / (rss / 34), 5436385.54079785},
		"SD of the slope":     {float64(l.Residual) / math.Sqrt(l.Sxx), 0.429796848199937e-03},
		"SD of the intercept": {float64(l.Residual) * math.Sqrt(1.0/36+l.MeanX*l.MeanX/l.Sxx), 0.232818234301152},
	} {
		if off := math.Abs(c.got/c.certified - 1); off > 1e-9 {
			t.Errorf("%s is %.15g, certified %.15g: off by %.2g", name, c.got, c.certified, off)
		}
	}
}

// Every series is of pairs and names its source.
func TestSeries(t *testing.T) {
	files, _ := filepath.Glob(filepath.Join(published, "series", "*.txt"))
	for _, f := range files {
		name := strings.TrimSuffix(filepath.Base(f), ".txt")
		if _, err := formula.StraightLine(points(seriesNamed(t, name))); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	if len(files) < 4 {
		t.Errorf("%d series", len(files))
	}
}

// Why no week, no interval, or a doubt; "" where there is none.
func TestProjection(t *testing.T) {
	five := []float64{12, 58, 16, 66, 20, 71, 24, 77, 28, 81}
	for _, c := range []struct {
		name  string
		in    []float64
		mark  unit.Percent
		says  string // of Projectable
		doubt string // of DoubtOfProjection
	}{
		{"five tests that rise", five, 90, "", ""},
		{"two tests", five[:4], 90, "fewer than 3 tests", ""},
		{"three tests in five weeks", []float64{12, 58, 14, 61, 17, 64}, 90, "less than 6 weeks", ""},
		{"three tests in six weeks", []float64{12, 60, 15, 61, 18, 64}, 70, "", "long reach"},
		{"a leg that loses", []float64{12, 81, 18, 77, 24, 70}, 90, "does not rise", ""},
		{"a leg that stays", []float64{12, 70, 18, 70, 24, 70}, 90, "does not rise", ""},
		{"at the mark already", []float64{12, 80, 18, 88, 24, 95}, 90, "at the mark already", ""},
		{"no mark", five, unit.Percent(nan), "no mark", ""},
		{"no value", []float64{12, nan, 18, 70, 24, 75}, 90, "no value", ""},
		{"too fast to be true", []float64{12, 40, 16, 60, 20, 75}, 90, "", "more than 3 points a week"},
		{"90 before four months", []float64{4, 70, 8, 76, 12, 82}, 90, "", "before four months"},
		{"the mark far ahead", []float64{12, 58, 16, 60, 20, 61}, 90, "", "long reach"},
	} {
		err := formula.Projectable(points(c.in), c.mark)
		if (err == nil) != (c.says == "") || err != nil && !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v; wanted %q", c.name, err, c.says)
		}
		if err != nil {
			continue
		}
		l, err := formula.StraightLine(points(c.in))
		if d := formula.DoubtOfProjection(l, c.mark, true); err != nil || (d == "") != (c.doubt == "") || !strings.Contains(string(d), c.doubt) {
			t.Errorf("%s: doubt %q, %v; wanted %q", c.name, d, err, c.doubt)
		}
	}
}

// A line that has no error, or no slope to be sure of, gives no interval.
func TestNoInterval(t *testing.T) {
	exact, _ := formula.StraightLine(points([]float64{12, 60, 18, 70, 24, 80}))
	worked, _ := formula.StraightLine(points([]float64{12, 58.1, 18, 64.4, 24, 70.7, 31, 78.05})) // on a line but for the last bit
	if worked.Residual == 0 {
		t.Error("the tests that were worked out lie on their line without a remainder: try others")
	}
	flat, _ := formula.StraightLine(points([]float64{12, 70, 18, 64, 24, 72, 30, 70}))
	falls, _ := formula.StraightLine(points([]float64{12, 80, 18, 74, 24, 72}))
	resistant, _ := formula.TheilSen(points([]float64{12, 60, 18, 71, 24, 80}))
	late, _ := formula.StraightLine(points([]float64{10, 90, 18, 95, 26, 99.5}))
	few := func() error { _, err := resistant.SlopeInterval(99); return err }
	week := func(l line, mark unit.Percent) error { _, err := l.Crosses(mark); return err }
	span := func(l line, mark unit.Percent) error { _, err := l.CrossingInterval(mark, 95); return err }
	band := func(l line) error { _, err := l.Interval(30, 95); return err }
	level := func() error { _, err := late.Interval(30, 0.95); return err }
	slopes := func() error { _, err := exact.SlopeInterval(95); return err }
	for name, c := range map[string]struct {
		err  error
		says string
	}{
		"tests exactly on a line":        {band(exact), "to the last digit"},
		"tests that were worked out":     {band(worked), "to the last digit"},
		"their crossing":                 {span(exact, 90), "to the last digit"},
		"a slope that may be none":       {span(flat, 90), "may not rise at all"},
		"a line that falls":              {week(falls, 90), "does not rise"},
		"its interval":                   {span(falls, 90), "does not rise"},
		"a resistant line":               {band(resistant), "resistant line"},
		"three tests of a resistant one": {few(), "too few tests"},
		"a straight line's slopes":       {slopes(), "only a resistant line"},
		"a mark before the event":        {week(late, 60), "before the event"},
		"its interval before":            {span(late, 60), "no first or no last"},
		"no mark":                        {week(late, unit.Percent(nan)), "no mark"},
		"a level as a share":             {level(), "between 50 and 99.9"},
	} {
		if c.err == nil || !strings.Contains(c.err.Error(), c.says) {
			t.Errorf("%s: %v; wanted %q", name, c.err, c.says)
		}
	}
}

// Laws of lines: Fieller's weeks are those in which the interval of the line touches the mark; a prediction is wider than the line;
// weeks and values may be shifted; one wild test turns the resistant line less.
func TestLawsOfLines(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 11)) // a seed of its own: the same tests each run
	for range 300 {
		var in []float64
		for w := 8.0; w < 30; w += 2 + 4*random.Float64() {
			in = append(in, w, 50+1.2*w+2*random.NormFloat64())
		}
		l, err := formula.StraightLine(points(in))
		if err != nil {
			t.Fatal(err)
		}
		if span, err := l.CrossingInterval(95, 90); err == nil {
			low, _ := l.MeanInterval(span.Low, 90)
			high, _ := l.MeanInterval(span.High, 90)
			if math.Abs(float64(low.High-95)) > 1e-6 || math.Abs(float64(high.Low-95)) > 1e-6 {
				t.Errorf("%v: in weeks %v the line lies at %v and %v", in, span, low, high)
			}
			if w, _ := l.Crosses(95); !span.Holds(w) {
				t.Errorf("week %v lies outside %v", w, span)
			}
			if wider, err := l.CrossingInterval(95, 95); err == nil && (wider.Low > span.Low || wider.High < span.High) {
				t.Errorf("at 95 %v, narrower than %v at 90", wider, span)
			}
		}
		p, _ := l.Interval(40, 95)
		if m, _ := l.MeanInterval(40, 95); m.Low <= p.Low || m.High >= p.High {
			t.Errorf("one new test within %v, the line within %v", p, m)
		}
		shifted := append([]float64{}, in...)
		for i := range shifted {
			shifted[i] += 3
		}
		if s, _ := formula.StraightLine(points(shifted)); math.Abs(float64(s.Slope-l.Slope)) > 1e-9 {
			t.Errorf("a shift turns the line from %v to %v", l.Slope, s.Slope)
		}
	}
	good := []float64{8, 60, 12, 64, 16, 69, 20, 72, 24, 77, 28, 80, 32, 85}
	wild := append(append([]float64{}, good[:12]...), 32, 20)
	turn := func(fit func([]pt) (line, error)) float64 {
		a, _ := fit(points(good))
		b, _ := fit(points(wild))
		return math.Abs(float64(a.Slope - b.Slope))
	}
	if r, s := turn(formula.TheilSen[unit.Percent]), turn(formula.StraightLine[unit.Percent]); r > s/2 {
		t.Errorf("one wild test turns the resistant line by %v, the straight one by %v", r, s)
	}
}
