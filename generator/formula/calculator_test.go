package formula_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
)

// calculate works out a sum as a therapist with a pocket calculator would: the writing of basis.Rule, nothing more.
func calculate(sum string) (v float64, err error) {
	c := &calculator{rest: []rune(sum)}
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%s: %v", sum, r)
		}
	}()
	v = c.sum()
	if c.while(unicode.IsSpace); len(c.rest) > 0 {
		return 0, fmt.Errorf("%s: left over: %s", sum, string(c.rest))
	}
	return v, nil
}

// fill puts the inputs of a step into the sum of its rule: $1, $2, …, and $* for all of them.
// An item that was not answered (NaN) is no input.
func fill(sum string, in []float64) string {
	in = slices.DeleteFunc(slices.Clone(in), math.IsNaN)
	all := make([]string, len(in))
	for i, x := range in {
		all[i] = strconv.FormatFloat(x, 'f', -1, 64)
		if x < 0 {
			all[i] = "(" + strings.Replace(all[i], "-", "−", 1) + ")"
		}
	}
	sum = strings.ReplaceAll(sum, "$*", strings.Join(all, ", "))
	for i := len(all); i > 0; i-- { // $12 before $1
		sum = strings.ReplaceAll(sum, "$"+strconv.Itoa(i), all[i-1])
	}
	return sum
}

type calculator struct{ rest []rune }

func (c *calculator) next(r rune) bool {
	c.while(unicode.IsSpace)
	if len(c.rest) > 0 && c.rest[0] == r {
		c.rest = c.rest[1:]
		return true
	}
	return false
}

func (c *calculator) must(r rune) {
	if !c.next(r) {
		panic(fmt.Sprintf("%q is missing before %q", r, string(c.rest)))
	}
}

func (c *calculator) while(f func(rune) bool) string {
	n := 0
	for n < len(c.rest) && f(c.rest[n]) {
		n++
	}
	s := string(c.rest[:n])
	c.rest = c.rest[n:]
	return s
}

func (c *calculator) sum() float64 {
	v := c.product()
	for {
		switch {
		case c.next('+'):
			v += c.product()
		case c.next('−'):
			v -= c.product()
		default:
			return v
		}
	}
}

func (c *calculator) product() float64 {
	v := c.atom()
	for {
		switch {
		case c.next('×'):
			v *= c.atom()
		case c.next('÷'):
			v /= c.atom()
		default:
			return v
		}
	}
}

// atom is a number, a bracket or a named key.
func (c *calculator) atom() float64 {
	if c.next('−') {
		return -c.atom()
	}
	if c.next('(') {
		v := c.sum()
		c.must(')')
		return v
	}
	if name := c.while(unicode.IsLetter); name != "" {
		c.must('(')
		args := []float64{c.sum()}
		for c.next(',') {
			args = append(args, c.sum())
		}
		c.must(')')
		return key(name, args)
	}
	digits := c.while(func(r rune) bool { return unicode.IsDigit(r) || r == '.' })
	v, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		panic(fmt.Sprintf("no number before %q", string(c.rest)))
	}
	return v
}

// key is a named key of the calculator.
func key(name string, a []float64) float64 {
	want := map[string]int{"down": 1, "cos": 1, "pow": 2, "sqrt": 1, "exp": 1, "ln": 1}[name]
	if want != 0 && len(a) != want {
		panic(fmt.Sprintf("%s wants %d numbers", name, want))
	}
	switch name {
	case "max":
		v := a[0]
		for _, x := range a {
			v = max(v, x)
		}
		return v
	case "min":
		v := a[0]
		for _, x := range a {
			v = min(v, x)
		}
		return v
	case "mean":
		return total(a) / float64(len(a))
	case "sd":
		m, squares := key("mean", a), 0.0
		for _, x := range a {
			squares += (x - m) * (x - m)
		}
		return math.Sqrt(squares / float64(len(a)-1))
	case "down":
		return math.Floor(a[0])
	case "cos":
		return math.Cos(a[0] * math.Pi / 180)
	case "pow":
		return math.Pow(a[0], a[1])
	case "sqrt":
		return math.Sqrt(a[0])
	case "exp":
		return math.Exp(a[0])
	case "ln":
		return math.Log(a[0])
	case "sum":
		return total(a)
	}
	return statistics(name, a)
}

// statistics are the keys that take weeks and values in turn.
func statistics(name string, a []float64) float64 {
	var x, y []float64
	for i := 0; i+1 < len(a); i += 2 {
		x, y = append(x, a[i]), append(y, a[i+1])
	}
	switch name {
	case "slopeln", "interceptln":
		for i := range x {
			x[i] = math.Log(x[i])
		}
		return squaresKey(strings.TrimSuffix(name, "ln"), x, y)
	case "slope", "intercept":
		return squaresKey(name, x, y)
	case "slopemedian":
		return slopeMedian(x, y)
	case "interceptmedian":
		return middle(y) - slopeMedian(x, y)*middle(x)
	}
	panic("no such key: " + name)
}

func total(a []float64) (v float64) {
	for _, x := range a {
		v += x
	}
	return v
}

func squaresKey(name string, x, y []float64) float64 {
	mx, my, sxy, sxx := key("mean", x), key("mean", y), 0.0, 0.0
	for i := range x {
		sxy += (x[i] - mx) * (y[i] - my)
		sxx += (x[i] - mx) * (x[i] - mx)
	}
	if name == "slope" {
		return sxy / sxx
	}
	return my - sxy/sxx*mx
}

func slopeMedian(x, y []float64) float64 {
	var all []float64
	for i := range x {
		for j := range i {
			if x[i] != x[j] {
				all = append(all, (y[i]-y[j])/(x[i]-x[j]))
			}
		}
	}
	return middle(all)
}

func middle(a []float64) float64 {
	a = slices.Sorted(slices.Values(a))
	return (a[(len(a)-1)/2] + a[len(a)/2]) / 2
}
