package generator_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
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
	default:
		panic("no function " + name)
	}
	p.values = append(p.values, v)
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
