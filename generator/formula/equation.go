package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Equation is one of the ways to estimate a maximum from repetitions to failure. All were read in reprints (second-hand).
type Equation string

const (
	Epley    Equation = "epley"    // 1985, poundage chart: w·(1 + n/30)
	Brzycki  Equation = "brzycki"  // 1993, JOPERD 64(1):88–90: w/(1.0278 − 0.0278·n); reprints limit it to fewer than 10
	Lombardi Equation = "lombardi" // 1989, Beginning Weight Training: w·n^0.10
	OConner  Equation = "oconner"  // 1989, Weight Training Today: w·(1 + 0.025·n)
	Wathen   Equation = "wathen"   // 1994, Essentials: 100·w/(48.8 + 53.8·e^(−0.075·n))
	Mayhew   Equation = "mayhew"   // 1992, J Appl Sport Sci Res 6:200–206, of the bench press: 100·w/(52.2 + 41.9·e^(−0.055·n))
	Lander   Equation = "lander"   // 1985, NSCA J 6(6):60–61: 100·w/(101.3 − 2.67123·n)
)

// Equations are all of them, Epley first.
var Equations = []Equation{Epley, Brzycki, Lombardi, OConner, Wathen, Mayhew, Lander}

// Words lets a file name an equation.
func (Equation) Words() []string {
	words := make([]string, len(Equations))
	for i, e := range Equations {
		words[i] = string(e)
	}
	return words
}

// equation is an equation in three directions: the maximum of 1 kg, the share that repetitions allow, the repetitions that a
// share allows; and each as a sum, of which the maximum begins with the load $1.
type equation struct {
	source                 basis.Said
	maximum                func(n float64) float64
	share                  func(n float64) float64 // in hundredths
	toFailure              func(p float64) float64 // p in hundredths; NaN or infinite where there is none
	maxSum, shareSum, nSum string                  // of $1 = w, $2 = n; of $1 = n; of $1 = 1RM, $2 = w
}

// equations holds every product inside a conversion, so that no processor fuses it with the sum that follows.
var equations = map[Equation]equation{
	Epley: {"Epley 1985, second-hand",
		func(n float64) float64 { return 1 + n/30 },
		func(n float64) float64 { return 100 / (1 + n/30) },
		func(p float64) float64 { return float64(30 * (100/p - 1)) },
		"$1 × (1 + $2 ÷ 30)", "100 ÷ (1 + $1 ÷ 30)", "max(1, 30 × ($1 ÷ $2 − 1))"},
	Brzycki: {"Brzycki 1993, second-hand",
		func(n float64) float64 { return 1 / (1.0278 - float64(0.0278*n)) },
		func(n float64) float64 { return 102.78 - float64(2.78*n) },
		func(p float64) float64 { return (102.78 - p) / 2.78 },
		"$1 ÷ (1.0278 − 0.0278 × $2)", "102.78 − 2.78 × $1", "max(1, (102.78 − 100 × $2 ÷ $1) ÷ 2.78)"},
	Lombardi: {"Lombardi 1989, second-hand",
		func(n float64) float64 { return math.Pow(n, 0.10) },
		func(n float64) float64 { return 100 / math.Pow(n, 0.10) },
		func(p float64) float64 { return math.Pow(100/p, 10) },
		"$1 × pow($2, 0.1)", "100 ÷ pow($1, 0.1)", "max(1, pow($1 ÷ $2, 10))"},
	OConner: {"O'Conner 1989, second-hand",
		func(n float64) float64 { return 1 + float64(0.025*n) },
		func(n float64) float64 { return 100 / (1 + float64(0.025*n)) },
		func(p float64) float64 { return float64(40 * (100/p - 1)) },
		"$1 × (1 + 0.025 × $2)", "100 ÷ (1 + 0.025 × $1)", "max(1, 40 × ($1 ÷ $2 − 1))"},
	Wathen: curve("Wathen 1994, second-hand", 48.8, 53.8, 0.075,
		"100 × $1 ÷ (48.8 + 53.8 × exp(−0.075 × $2))", "48.8 + 53.8 × exp(−0.075 × $1)",
		"max(1, −ln((100 × $2 ÷ $1 − 48.8) ÷ 53.8) ÷ 0.075)"),
	Mayhew: curve("Mayhew 1992, second-hand", 52.2, 41.9, 0.055,
		"100 × $1 ÷ (52.2 + 41.9 × exp(−0.055 × $2))", "52.2 + 41.9 × exp(−0.055 × $1)",
		"max(1, −ln((100 × $2 ÷ $1 − 52.2) ÷ 41.9) ÷ 0.055)"),
	Lander: {"Lander 1985, second-hand",
		func(n float64) float64 { return 100 / (101.3 - float64(2.67123*n)) },
		func(n float64) float64 { return 101.3 - float64(2.67123*n) },
		func(p float64) float64 { return (101.3 - p) / 2.67123 },
		"100 × $1 ÷ (101.3 − 2.67123 × $2)", "101.3 − 2.67123 × $1", "max(1, (101.3 − 100 × $2 ÷ $1) ÷ 2.67123)"},
}

// curve is an equation whose share falls toward a floor: floor + height·e^(−rate·n).
func curve(source basis.Said, floor, height, rate float64, maxSum, shareSum, nSum string) equation {
	share := func(n float64) float64 { return floor + float64(height*math.Exp(-float64(rate*n))) }
	return equation{source,
		func(n float64) float64 { return 100 / share(n) }, share,
		func(p float64) float64 { return -math.Log((p-floor)/height) / rate },
		maxSum, shareSum, nSum}
}

func (e Equation) find() (equation, error) {
	if q, ok := equations[e]; ok {
		return q, nil
	}
	return equation{}, errors.New("no equation is called " + string(e) + ": write epley, brzycki, lombardi, oconner, wathen, mayhew or lander")
}

// rule names a sum of the equation.
func (e Equation) rule(name basis.Said, sum func(equation) string) basis.Rule {
	q, err := e.find()
	if err != nil {
		return basis.Rule{}
	}
	return basis.Rule{Name: basis.Say("{a} ({b})", name, string(e)), Sum: sum(q), Source: q.source}
}

// repeated refuses repetitions to failure that no equation was studied with.
func repeated(n, most unit.Count, without basis.Said) error {
	switch {
	case !number(n) || n < 1:
		return basis.Say("no repetition: {a}", without)
	case n > most:
		return basis.Say("more than {a} repetitions to failure: {b}", float64(most), without)
	}
	return nil
}
