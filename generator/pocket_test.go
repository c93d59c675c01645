package generator_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"
)

// A pocket calculator with names, by the shunting-yard: it reads a printed sum and shares no code with what printed it.

// redo works one printed step again: "id = sum = result unit   (remarks)". It reports whether there was a sum.
func redo(line string) (done bool, err error) {
	line, _, _ = strings.Cut(strings.ReplaceAll(strings.TrimSpace(line), "\u00a0", " "), "   (")
	parts := strings.Split(line, " = ")
	if len(parts) != 3 || strings.Contains(line, " — ") {
		return false, nil // a typed value, a word, or a number that was given
	}
	got, err := work(parts[1])
	if err != nil {
		return true, err
	}
	text := strings.Fields(strings.ReplaceAll(parts[2], "−", "-"))[0]
	text = strings.TrimRight(text, "°%")
	want, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return true, fmt.Errorf("%q is no number", text)
	}
	_, decimals, _ := strings.Cut(text, ".")
	if math.Abs(got-want) > 0.5*math.Pow10(-len(decimals))+1e-7*math.Abs(want)+1e-9 {
		return true, fmt.Errorf("%s is %v, not %v", parts[1], got, want)
	}
	return true, nil
}

var precedence = map[string]int{"+": 1, "−": 1, "×": 2, "÷": 2, "neg": 3}

type pocket struct {
	values []float64
	signs  []string
	counts []int // arguments of each open bracket
}

func work(sum string) (v float64, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%q cannot be worked: %v", sum, r)
		}
	}()
	p := &pocket{}
	last := "("
	for _, tok := range words(sum) {
		switch {
		case tok == "(":
			p.signs, p.counts = append(p.signs, tok), append(p.counts, 1)
		case tok == ",":
			p.until("(")
			p.counts[len(p.counts)-1]++
		case tok == ")":
			p.until("(")
			p.signs = p.signs[:len(p.signs)-1]
			n := p.counts[len(p.counts)-1]
			p.counts = p.counts[:len(p.counts)-1]
			if len(p.signs) > 0 && unicode.IsLetter([]rune(p.signs[len(p.signs)-1])[0]) && p.signs[len(p.signs)-1] != "neg" {
				p.call(p.signs[len(p.signs)-1], n)
				p.signs = p.signs[:len(p.signs)-1]
			}
		case tok == "−" && (last == "(" || last == "," || precedence[last] > 0):
			p.signs = append(p.signs, "neg")
		case precedence[tok] > 0:
			for len(p.signs) > 0 && precedence[p.signs[len(p.signs)-1]] >= precedence[tok] {
				p.apply()
			}
			p.signs = append(p.signs, tok)
		case unicode.IsDigit(rune(tok[0])):
			f, err := strconv.ParseFloat(tok, 64)
			if err != nil {
				panic(err)
			}
			p.values = append(p.values, f)
		default:
			p.signs = append(p.signs, tok)
		}
		last = tok
	}
	for len(p.signs) > 0 {
		p.apply()
	}
	if len(p.values) != 1 {
		panic(fmt.Sprintf("%d values are left", len(p.values)))
	}
	return p.values[0], nil
}

func (p *pocket) until(open string) {
	for p.signs[len(p.signs)-1] != open {
		p.apply()
	}
}

func (p *pocket) pop() float64 {
	v := p.values[len(p.values)-1]
	p.values = p.values[:len(p.values)-1]
	return v
}

func (p *pocket) apply() {
	sign := p.signs[len(p.signs)-1]
	p.signs = p.signs[:len(p.signs)-1]
	b := p.pop()
	if sign == "neg" {
		p.values = append(p.values, -b)
		return
	}
	a := p.pop()
	p.values = append(p.values, map[string]float64{"+": a + b, "−": a - b, "×": a * b, "÷": a / b}[sign])
}

func (p *pocket) call(name string, n int) {
	args := slices.Clone(p.values[len(p.values)-n:])
	p.values = p.values[:len(p.values)-n]
	var v float64
	switch name {
	case "max":
		v = slices.Max(args)
	case "min":
		v = slices.Min(args)
	case "mean":
		for _, a := range args {
			v += a / float64(n)
		}
	case "sd":
		mean := 0.0
		for _, a := range args {
			mean += a / float64(n)
		}
		for _, a := range args {
			v += (a - mean) * (a - mean)
		}
		v = math.Sqrt(v / float64(n-1))
	case "down":
		v = math.Floor(args[0] + 1e-6) // a printed input has nine digits
	case "cos":
		v = math.Cos(args[0] * math.Pi / 180)
	case "pow":
		v = math.Pow(args[0], args[1])
	case "sqrt":
		v = math.Sqrt(args[0])
	case "exp":
		v = math.Exp(args[0])
	case "ln":
		v = math.Log(args[0])
	case "sum":
		for _, a := range args {
			v += a
		}
	default:
		v = fitted(name, args)
	}
	p.values = append(p.values, v)
}

// fitted are the keys of a line: weeks and values in turn; …ln takes the logarithm of the weeks, …median the median of all slopes.
func fitted(name string, args []float64) float64 {
	var x, y, all []float64
	for i := 0; i+1 < len(args); i += 2 {
		week := args[i]
		if strings.HasSuffix(name, "ln") {
			week = math.Log(week)
		}
		for j := range x {
			if x[j] != week {
				all = append(all, (args[i+1]-y[j])/(week-x[j]))
			}
		}
		x, y = append(x, week), append(y, args[i+1])
	}
	n := float64(len(x))
	var sx, sy, sxx, sxy float64
	for i := range x {
		sx, sy, sxx, sxy = sx+x[i], sy+y[i], sxx+x[i]*x[i], sxy+x[i]*y[i]
	}
	slope := (n*sxy - sx*sy) / (n*sxx - sx*sx)
	switch strings.TrimSuffix(name, "ln") {
	case "slope":
		return slope
	case "intercept":
		return (sy - slope*sx) / n
	case "slopemedian":
		return midst(all)
	case "interceptmedian":
		return midst(y) - midst(all)*midst(x)
	}
	panic("no function " + name)
}

func midst(a []float64) float64 {
	a = slices.Sorted(slices.Values(a))
	return (a[(len(a)-1)/2] + a[len(a)/2]) / 2
}

// words takes a sum apart; a word that no bracket follows is a unit and is left out.
func words(sum string) (out []string) {
	rs := []rune(sum)
	for i := 0; i < len(rs); {
		j := i
		switch {
		case unicode.IsDigit(rs[i]):
			for j < len(rs) && (unicode.IsDigit(rs[j]) || rs[j] == '.') {
				j++
			}
			out = append(out, string(rs[i:j]))
		case strings.ContainsRune("+−×÷(),", rs[i]):
			j++
			out = append(out, string(rs[i:j]))
		case rs[i] == ' ':
			j++
		default:
			for j < len(rs) && !strings.ContainsRune(" +−×÷(),", rs[j]) {
				j++
			}
			if j < len(rs) && rs[j] == '(' {
				out = append(out, string(rs[i:j]))
			}
		}
		i = j
	}
	return out
}

// The pocket calculator is itself tried with the keys that no shipped page shows yet.
func TestPocketKeys(t *testing.T) {
	for sum, want := range map[string]float64{
		"1.96 × sqrt(2) × 3.49 %":                                                               1.96 * math.Sqrt2 * 3.49,
		"100 × 40 kg ÷ (48.8 + 53.8 × exp(−0.075 × 8))":                                         4000 / (48.8 + 53.8*math.Exp(-0.6)),
		"max(1, −ln((100 × 40 kg ÷ 80 kg − 48.8) ÷ 53.8) ÷ 0.075)":                              -math.Log(1.2/53.8) / 0.075,
		"sum(1, 2, 3) + exp(ln(2))":                                                             8,
		"slope(12 weeks, 58 %, 16 weeks, 66 %, 20 weeks, 71 %, 24 weeks, 77 %, 28 weeks, 81 %)": 1.425,
		"intercept(12, 58, 16, 66, 20, 71, 24, 77, 28, 81)":                                     42.1,
		"slopemedian(1, 9, 2, 15, 3, 19, 4, 20, 10, 45, 12, 55, 18, 78)":                        4,
		"interceptmedian(1, 9, 2, 15, 3, 19, 4, 20, 10, 45, 12, 55, 18, 78)":                    4,
	} {
		if got, err := work(sum); err != nil || math.Abs(got-want) > 1e-9 {
			t.Errorf("%s = %v, %v; wanted %v", sum, got, err, want)
		}
	}
	if got, err := work("exp((90 − interceptln(12, 58, 16, 66, 20, 71, 24, 77, 28, 81)) ÷ slopeln(12, 58, 16, 66, 20, 71, 24, 77, 28, 81))"); err != nil || math.Abs(got-39.218) > 5e-4 {
		t.Errorf("log-time comes to 90 in week %v, %v; wanted 39.218", got, err)
	}
}
