// Package calculator is a pocket calculator with names. Tests work the sums again with it that the pages print; it shares no
// code with what prints them, and no page is made with it.
package calculator

import (
	"fmt"
	"math"
	"math/big"
	"slices"
	"strings"
	"unicode"
)

// calculator works by the shunting-yard. Units are skipped; numbers are exact decimals, so that 80.7 ÷ 0.1 is 807.
type calculator struct {
	values []*big.Rat
	stack  []string // operators, functions, open brackets
	counts []int    // arguments of each open bracket
}

// Work is the value of a printed sum: numbers, units, + − × ÷, brackets, and the functions that our sums name. The error
// says what it could not read.
func Work(sum string) (v float64, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%q: %v", sum, r)
		}
	}()
	c := &calculator{}
	before := "("
	for _, tok := range tokens(sum) {
		c.take(tok, before)
		before = tok
	}
	for len(c.stack) > 0 {
		c.apply()
	}
	if len(c.values) != 1 {
		return 0, fmt.Errorf("%q leaves %d values", sum, len(c.values))
	}
	v, _ = c.values[0].Float64()
	return v, nil
}

// tokens takes a sum apart; a word that no bracket follows is a unit and is left out.
func tokens(sum string) (out []string) {
	rs := []rune(sum)
	for i := 0; i < len(rs); {
		j := i
		switch r := rs[i]; {
		case unicode.IsDigit(r):
			for j < len(rs) && (unicode.IsDigit(rs[j]) || rs[j] == '.') {
				j++
			}
			out = append(out, string(rs[i:j]))
		case unicode.IsLetter(r) || r == '°' || r == '%':
			for j < len(rs) && (unicode.IsLetter(rs[j]) || strings.ContainsRune("°%·/", rs[j])) {
				j++
			}
			if j < len(rs) && rs[j] == '(' {
				out = append(out, string(rs[i:j]))
			}
		case strings.ContainsRune("+−×÷(),", r):
			out, j = append(out, string(r)), i+1
		case r == ' ':
			j = i + 1
		default:
			panic(fmt.Sprintf("no sign of a calculator: %q", r))
		}
		i = j
	}
	return out
}

var ranks = map[string]int{"+": 1, "−": 1, "×": 2, "÷": 2, "neg": 3}

func (c *calculator) take(tok, before string) {
	switch {
	case unicode.IsDigit([]rune(tok)[0]):
		v, ok := new(big.Rat).SetString(tok)
		if !ok {
			panic("no number: " + tok)
		}
		c.values = append(c.values, v)
	case unicode.IsLetter([]rune(tok)[0]):
		c.stack = append(c.stack, tok)
	case tok == "(":
		c.stack, c.counts = append(c.stack, tok), append(c.counts, 1)
	case tok == ",":
		c.until()
		c.counts[len(c.counts)-1]++
	case tok == ")":
		c.close()
	case tok == "−" && strings.Contains("(,+−×÷", before):
		c.stack = append(c.stack, "neg")
	default:
		for len(c.stack) > 0 && ranks[c.stack[len(c.stack)-1]] >= ranks[tok] {
			c.apply()
		}
		c.stack = append(c.stack, tok)
	}
}

// until applies what stands above the open bracket.
func (c *calculator) until() {
	for c.stack[len(c.stack)-1] != "(" {
		c.apply()
	}
}

func (c *calculator) close() {
	c.until()
	c.stack = c.stack[:len(c.stack)-1]
	n := c.counts[len(c.counts)-1]
	c.counts = c.counts[:len(c.counts)-1]
	if len(c.stack) == 0 || !unicode.IsLetter([]rune(c.stack[len(c.stack)-1])[0]) || c.stack[len(c.stack)-1] == "neg" {
		return
	}
	name := c.stack[len(c.stack)-1]
	c.stack = c.stack[:len(c.stack)-1]
	args := append([]*big.Rat{}, c.values[len(c.values)-n:]...)
	c.values = append(c.values[:len(c.values)-n], function(name, args))
}

func (c *calculator) apply() {
	op := c.stack[len(c.stack)-1]
	c.stack = c.stack[:len(c.stack)-1]
	last := len(c.values) - 1
	b := c.values[last]
	if op == "neg" {
		c.values[last] = new(big.Rat).Neg(b)
		return
	}
	a, r := c.values[last-1], new(big.Rat)
	switch op {
	case "+":
		r.Add(a, b)
	case "−":
		r.Sub(a, b)
	case "×":
		r.Mul(a, b)
	case "÷":
		r.Quo(a, b)
	default:
		panic("no operator: " + op)
	}
	c.values = append(c.values[:last-1], r)
}

func function(name string, args []*big.Rat) *big.Rat {
	first, _ := args[0].Float64()
	switch name {
	case "max", "min":
		best := args[0]
		for _, a := range args {
			if a.Cmp(best) > 0 == (name == "max") {
				best = a
			}
		}
		return best
	case "mean":
		total := new(big.Rat)
		for _, a := range args {
			total.Add(total, a)
		}
		return total.Quo(total, big.NewRat(int64(len(args)), 1))
	case "sd":
		m, squares := function("mean", args), new(big.Rat)
		for _, a := range args {
			d := new(big.Rat).Sub(a, m)
			squares.Add(squares, d.Mul(d, d))
		}
		v, _ := squares.Quo(squares, big.NewRat(int64(len(args)-1), 1)).Float64()
		return new(big.Rat).SetFloat64(math.Sqrt(v))
	case "down":
		q := new(big.Int)
		q.Div(args[0].Num(), args[0].Denom()) // Euclidean, and the denominator is positive: the floor
		return new(big.Rat).SetInt(q)
	case "cos":
		return new(big.Rat).SetFloat64(math.Cos(first * math.Pi / 180))
	case "pow":
		e, _ := args[1].Float64()
		return new(big.Rat).SetFloat64(math.Pow(first, e))
	}
	return inFloats(name, args)
}

// inFloats are the keys that leave exact decimals behind.
func inFloats(name string, args []*big.Rat) *big.Rat {
	in, total := make([]float64, len(args)), new(big.Rat)
	for i, a := range args {
		in[i], _ = a.Float64()
		total.Add(total, a)
	}
	switch name {
	case "sum":
		return total
	case "sqrt":
		return new(big.Rat).SetFloat64(math.Sqrt(in[0]))
	case "exp":
		return new(big.Rat).SetFloat64(math.Exp(in[0]))
	case "ln":
		return new(big.Rat).SetFloat64(math.Log(in[0]))
	}
	return new(big.Rat).SetFloat64(fitted(name, in))
}

// fitted are the keys of a line: weeks and values in turn; …ln takes the logarithm of the weeks, …median the median of all slopes.
func fitted(name string, in []float64) float64 {
	var x, y, all []float64
	for i := 0; i+1 < len(in); i += 2 {
		week := in[i]
		if strings.HasSuffix(name, "ln") {
			week = math.Log(week)
		}
		for j := range x {
			if x[j] != week {
				all = append(all, (in[i+1]-y[j])/(week-x[j]))
			}
		}
		x, y = append(x, week), append(y, in[i+1])
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
	panic("no function: " + name)
}

func midst(a []float64) float64 {
	a = slices.Sorted(slices.Values(a))
	return (a[(len(a)-1)/2] + a[len(a)/2]) / 2
}
