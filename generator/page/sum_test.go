package page

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/calculator"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

var inTest = basis.Origin{File: "tests/2026-04-06.toml", Key: "strength[0].left.peak_n[1]"}

func typedN(v float64, at string) basis.Num[unit.Newtons] {
	return basis.Typed(unit.Newtons(v), strconv.FormatFloat(v, 'f', -1, 64)+" N", basis.Origin{File: "tests/2026-04-06.toml", Key: at})
}

func torqueOf(force float64) basis.Num[unit.NewtonMetres] {
	arm := basis.Typed(unit.Metres(0.31), "31 cm", basis.Origin{File: "client.toml", Key: "setup.knee-extension.left.arm_cm"})
	return basis.Of2("knee-extension.left.torque", formula.ByTorque, formula.Torque, typedN(force, "strength[0].left.peak_n[1]"), arm)
}

var (
	byCut = basis.Rule{Name: "cut to step", Sum: "down($1 ÷ $2) × $2"}
	byAdd = basis.Rule{Name: "together", Sum: "$1 + $2"}
)

func cutTo(x, step unit.Kilograms) unit.Kilograms { return unit.CutTo(x, step) }

func TestSum(t *testing.T) {
	half := basis.Given("", basis.Rule{Name: "step"}, unit.Kilograms(2.5), "")
	third := basis.Given("press.estimate", basis.Rule{Name: "given"}, unit.Kilograms(76*100/(1+12.0/30)/100), "")
	refused := basis.Refused[unit.Percent]("knee-extension.lsi", formula.BySymmetry, "not tested")
	beyond := basis.Given("", basis.Rule{}, unit.Degrees(-3), "")
	for _, row := range []struct {
		name string
		step *basis.Step
		want string
		why  string
	}{
		{"formula", torqueOf(331).Step(), "knee-extension.left.torque = 331 N × 0.31 m = 102.61 N·m   (torque; definition of the moment of a force)", "the sum, its name, its source"},
		{"typed", basis.Typed(unit.Newtons(331), "331 N", inTest).Step(), "331 N — tests/2026-04-06.toml, strength[0].left.peak_n[1]", "file and key"},
		{"typed in another unit", basis.Typed(unit.Newtons(42.8*unit.NewtonsPerKgf), "42.8 kgf", inTest).Step(),
			"42.8 kgf = 419.72462 N (× 9.80665) — tests/2026-04-06.toml, strength[0].left.peak_n[1]", "the conversion can be redone"},
		{"typed in centimetres", basis.Typed(unit.Metres(0.31), "31 cm", basis.Origin{File: "client.toml", Key: "a"}).Step(), "31 cm = 0.31 m — client.toml, a", "moving the point needs no factor"},
		{"row of a day sheet", basis.Typed(unit.Count(8), "8", basis.Origin{File: "days/2026-04-06.csv", Line: 3, Key: "press.left"}).Named("press.left.reps").Step(),
			"press.left.reps = 8 — days/2026-04-06.csv:3, press.left", "a line that is known is printed"},
		{"cut", basis.Cut("press.load", byCut, cutTo, third, half).Step(), "press.load = down(54.2857143 kg ÷ 2.5 kg) × 2.5 kg = 52.5 kg   (54.2857 kg ↓ 52.5 kg; cut to step)", "nine digits go in, the value before stands there"},
		{"refused", refused.Step(), "knee-extension.lsi = — not tested   (symmetry; definition in Gokeler 2017)", "no number, a reason"},
		{"word", basis.Word("effusion", basis.Rule{Name: "sweep test"}, "trace", ""), "effusion = trace   (sweep test)", "a word is a value"},
		{"negative", basis.Of2("x", byAdd, func(a, b unit.Degrees) unit.Degrees { return a + b }, beyond, beyond).Step(), "x = (−3°) + (−3°) = −6°   (together)", "brackets, and a true minus"},
		{"tiny", basis.Given("x", basis.Rule{}, unit.Points(0.0000123), "").Step(), "x = 0.000012", "never a zero that is none"},
		{"none", nil, "", "nothing is nothing"},
	} {
		if got := Sum(row.step); got != row.want {
			t.Errorf("%s: %s\n got %s\nwant %s", row.name, row.why, got, row.want)
		}
	}
}

func TestResultNumber(t *testing.T) {
	for v, want := range map[float64]string{0: "0", 1000: "1000", 999.99996: "1000", 1234.5678: "1234.57", 1234567.8: "1234568", -3: "−3", 0.00004: "0.00004", 80.7: "80.7", 1.60078: "1.6008", -0.00001: "−0.00001"} {
		if got := resultNumber(v); got != want {
			t.Errorf("%v is written %s, not %s", v, got, want)
		}
	}
}

func TestChain(t *testing.T) {
	sum := basis.Of2("both.torque", byAdd, func(a, b unit.NewtonMetres) unit.NewtonMetres { return a + b }, torqueOf(331), torqueOf(331))
	got := Chain(sum.Step(), func(at basis.Origin) int { return len(at.File) })
	want := []string{
		"both.torque = 102.61 N·m + 102.61 N·m = 205.22 N·m   (together)",
		"  knee-extension.left.torque = 331 N × 0.31 m = 102.61 N·m   (torque; definition of the moment of a force)",
		"    331 N — tests/2026-04-06.toml:21, strength[0].left.peak_n[1]",
		"    31 cm = 0.31 m — client.toml:11, setup.knee-extension.left.arm_cm",
	}
	if !slices.Equal(got, want) {
		t.Errorf("result first, inputs below, each once, lines looked up:\n%s", strings.Join(got, "\n"))
	}
}

// redo evaluates a printed line and says whether the printed result is what its sum gives.
func redo(line string) error {
	text, _, _ := strings.Cut(strings.TrimLeft(line, " ›"), "   (")
	text, _, _ = strings.Cut(text, " — ")
	parts := strings.Split(text, " = ")
	if len(parts) < 2 {
		return nil
	}
	sum, result := parts[len(parts)-2], parts[len(parts)-1]
	if len(parts) == 2 && !strings.ContainsAny(sum, "0123456789") || len(parts) == 2 && strings.Contains(sum, ".") && !strings.Contains(sum, " ") {
		return nil // an id and a value: no arithmetic
	}
	if value, by, converted := strings.Cut(result, " (× "); converted {
		sum, result = sum+" × "+strings.TrimSuffix(by, ")"), value
	} else if strings.HasSuffix(sum, " cm") && strings.HasSuffix(result, " m") {
		sum += " ÷ 100"
	}
	number := strings.Replace(strings.Fields(strings.TrimSuffix(result, "°"))[0], "−", "-", 1)
	want, err := strconv.ParseFloat(number, 64)
	if err != nil {
		return fmt.Errorf("no result in %q: %v", line, err)
	}
	got, err := calculator.Work(sum)
	if err != nil {
		return err
	}
	_, decimals, _ := strings.Cut(number, ".")
	half := 0.5 * math.Pow10(-len(decimals))
	if math.Abs(got-want) > max(half*1.02, math.Abs(want)*1e-6) {
		return fmt.Errorf("%q gives %.12g", line, got)
	}
	return nil
}

func TestRedoFindsAWrongSum(t *testing.T) {
	for _, line := range []string{"x = 2 N × 3 m = 7 N·m", "x = down(54.2857143 kg ÷ 2.5 kg) × 2.5 kg = 55 kg   (cut)", "42.8 kgf = 400 N (× 9.80665) — f, k", "x = 1 + ÷ 2 = 3", "x = 100 × ? = 3"} {
		if redo(line) == nil {
			t.Errorf("%q was not caught", line)
		}
	}
}

// TestSumsCanBeRedone holds the law of the page over random chains: every printed sum gives its printed result.
func TestSumsCanBeRedone(t *testing.T) {
	redone := 0
	for seed := range uint64(3000) {
		r := rand.New(rand.NewPCG(seed, 7))
		for _, line := range Chain(randomChain(r), nil) {
			if err := redo(line); err != nil {
				t.Fatalf("seed %d: %v", seed, err)
			}
			redone++
		}
	}
	if redone < 3000 {
		t.Errorf("only %d lines were redone: is the law still looking?", redone)
	}
}

// randomChain is the walk of a lift from trials to load, with random numbers in random units.
func randomChain(r *rand.Rand) *basis.Step {
	id := func(s string) string { return fmt.Sprintf("%s-%d", s, r.IntN(1000)) }
	typed := func(lo, hi float64, decimals int) basis.Num[unit.Newtons] {
		v := math.Round((lo+r.Float64()*(hi-lo))*math.Pow10(decimals)) / math.Pow10(decimals)
		text := strconv.FormatFloat(v, 'f', -1, 64)
		switch r.IntN(3) {
		case 0:
			return basis.Typed(unit.Newtons(v*unit.NewtonsPerKgf), text+" kgf", inTest)
		case 1:
			return basis.Typed(unit.Newtons(v*unit.NewtonsPerLbf), text+" lbf", inTest)
		}
		return basis.Typed(unit.Newtons(v), text+" N", inTest)
	}
	var trials []basis.Num[unit.Newtons]
	for range 2 + r.IntN(3) {
		trials = append(trials, typed(20, 90, r.IntN(3)))
	}
	score := basis.OfList(id("best"), formula.ByBest, formula.Best[unit.Newtons], trials)
	if r.IntN(2) == 0 {
		score = basis.OfList(id("mean"), formula.ByMeanOf, formula.MeanOf[unit.Newtons], trials)
	}
	cm := float64(200+r.IntN(250)) / 10
	arm := basis.Typed(unit.Metres(cm*0.01), fmt.Sprintf("%g cm", cm), inTest)
	angle := basis.Typed(unit.Degrees(r.IntN(90)), "", inTest)
	torque := basis.Of2(id("torque"), formula.ByTorque, formula.Torque, score, arm)
	weight := basis.Of2(id("weight"), formula.ByGravityAt, formula.GravityAt, torque, angle)
	corrected := basis.Of2(id("corrected"), formula.ByFlexionCorrected, formula.FlexionCorrected, torque, weight)
	spread := basis.OfList(id("spread"), formula.BySpread, formula.Spread[unit.Newtons], trials)
	share := basis.Try2(id("lsi"), formula.BySymmetry, formula.Symmetry[unit.NewtonMetres], torque, basis.Of2(id("sum"), byAdd, func(a, b unit.NewtonMetres) unit.NewtonMetres { return a + b }, torque, corrected))
	tenth := basis.Given("", basis.Rule{Name: "a tenth"}, unit.Percent(0.1), "")
	cut := basis.Cut(id("tenth"), byCut, func(x, step unit.Percent) unit.Percent { return unit.CutTo(x, step) }, share, tenth)
	steps := []float64{0.1, 0.5, 1, 1.25, 2.5, 5}
	step := basis.Given("", basis.Rule{Name: "step"}, unit.Kilograms(steps[r.IntN(len(steps))]), "")
	load := basis.Of2(id("load"), basis.Rule{Name: "working load", Sum: "$1 × $2 ÷ 100"}, func(a unit.Percent, b unit.Percent) unit.Kilograms {
		return unit.Kilograms(float64(a) * float64(b) / 100)
	}, spread, cut)
	ceiling := basis.Of2(id("ceiling"), basis.Rule{Name: "ceiling", Sum: "$1 × pow(1 + 2.5 ÷ 100, $2)"}, func(a unit.Kilograms, b unit.Count) unit.Kilograms {
		return unit.Kilograms(float64(a) * math.Pow(1.025, float64(b)))
	}, load, basis.Given("", basis.Rule{}, unit.Count(r.IntN(6)), ""))
	return basis.Cut(id("cut"), byCut, cutTo, ceiling, step).Step()
}
