package page

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The writing of sums knows no language: names, numbers, units and five signs, so that the terminal and the worksheet
// print the same line and a pocket calculator can redo it.
//
//	knee-extension.left.torque = 331 N × 0.31 m = 102.61 N·m   (torque; definition of the moment of a force)
//	331 N — tests/2026-04-06.toml, strength[0].left.peak_n[1]
//	42.8 kgf = 419.72462 N (× 9.80665) — tests/2026-04-06.toml, strength[0].left.peak_kgf[0]
//	leg-press.left.w1.load = down(54.2857143 kg ÷ 2.5 kg) × 2.5 kg = 52.5 kg   (54.2857 kg ↓ 52.5 kg; cut to step)
//	knee-extension.lsi = — not tested   (symmetry; definition in Gokeler 2017)

// Sum prints one step as a sum that can be redone by hand.
func Sum(s *basis.Step) string { return (&chain{}).sum(s) }

// Chain prints a step and all below it: the result first, what it was made of indented below, each step once.
// line looks up the line of a typed value; it may be nil.
func Chain(s *basis.Step, line func(basis.Origin) int) []string {
	return (&chain{line: line}).of(s)
}

// chain prints steps that have not been printed before.
type chain struct {
	line func(basis.Origin) int
	say  func(basis.Said) string // nil: in English, as the terminal does
	seen map[string]bool
}

func (c *chain) of(s *basis.Step) (lines []string) {
	if c.seen == nil {
		c.seen = map[string]bool{}
	}
	return c.below(s, 0, nil)
}

func (c *chain) below(s *basis.Step, depth int, lines []string) []string {
	if s == nil {
		return lines
	}
	text := c.sum(s)
	if c.seen[text] {
		return lines
	}
	c.seen[text] = true
	lines = append(lines, strings.Repeat("  ", depth)+text)
	for _, from := range s.From {
		lines = c.below(from, depth+1, lines)
	}
	return lines
}

// words says a fragment of the core.
func (c *chain) words(said basis.Said) string {
	if c.say == nil {
		return said.String()
	}
	return c.say(said)
}

func (c *chain) sum(s *basis.Step) string {
	if s == nil {
		return ""
	}
	s = c.inWords(s)
	var b strings.Builder
	if s.ID != "" {
		b.WriteString(s.ID + " = ")
	}
	switch {
	case s.Refuse:
		b.WriteString("— " + c.words(s.Reason))
		b.WriteString(remarks(c.words(s.By.Name), c.words(s.By.Source), s.On.String()))
	case s.Typed != "":
		b.WriteString(asTyped(s) + " — " + standsAt(s.At, c.line))
		b.WriteString(remarks(s.On.String(), c.words(s.Reason)))
	default:
		if sum := filled(s); sum != "" && sum != outcome(s) {
			b.WriteString(sum + " = ")
		}
		b.WriteString(outcome(s))
		if s.At.File != "" {
			b.WriteString(" — " + standsAt(s.At, c.line))
		}
		b.WriteString(remarks(beforeCut(s), c.words(s.By.Name), c.words(s.By.Source), s.On.String(), c.words(s.Reason)))
	}
	return b.String()
}

// calendar are the units that are words and no symbols.
var calendar = []string{unit.Weeks(0).Unit(), unit.Months(0).Unit()}

// inWords is a step with its units and values that are words, and those of its inputs, in the words of the page.
func (c *chain) inWords(s *basis.Step) *basis.Step {
	if c.say == nil || s == nil {
		return s
	}
	worded := func(s *basis.Step) *basis.Step {
		if s == nil || s.Text == "" && !slices.Contains(calendar, s.Unit) {
			return s
		}
		said := *s
		said.Unit, said.Text = c.words(basis.Said(s.Unit)), c.words(basis.Said(s.Text))
		return &said
	}
	made := *worded(s)
	made.From = make([]*basis.Step, len(s.From))
	for i, from := range s.From {
		made.From[i] = worded(from)
	}
	return &made
}

// remarks puts what is not empty into brackets at the end of a line.
func remarks(all ...string) string {
	var kept []string
	for _, r := range all {
		if r != "" {
			kept = append(kept, r)
		}
	}
	if len(kept) == 0 {
		return ""
	}
	return "   (" + strings.Join(kept, "; ") + ")"
}

// filled is the sum of the rule with the inputs in their places; empty where the step is no arithmetic.
func filled(s *basis.Step) string {
	var b strings.Builder
	sum := s.By.Sum
	for i := 0; i < len(sum); i++ {
		switch {
		case sum[i] != '$' || i+1 == len(sum):
			b.WriteByte(sum[i])
		case sum[i+1] == '*':
			b.WriteString(allInputs(s.From))
			i++
		default:
			n := 0
			for i+1 < len(sum) && '0' <= sum[i+1] && sum[i+1] <= '9' {
				n = 10*n + int(sum[i+1]-'0')
				i++
			}
			b.WriteString(inputNumber(s.From, n))
		}
	}
	return b.String()
}

func allInputs(from []*basis.Step) string {
	all := make([]string, len(from))
	for i := range from {
		all[i] = inputNumber(from, i+1)
	}
	return strings.Join(all, ", ")
}

// inputNumber is the nth input, from 1, as a sum writes it: a negative one in brackets.
func inputNumber(from []*basis.Step, n int) string {
	if n < 1 || n > len(from) {
		return "?"
	}
	s := from[n-1]
	switch {
	case s.Refuse:
		return "—"
	case s.Text != "":
		return s.Text
	}
	text := withUnit(significant(s.Value, inputDigits), s.Unit)
	if s.Value < 0 {
		return "(" + text + ")"
	}
	return text
}

// outcome is what came out of a step: a word, or a number with its unit.
func outcome(s *basis.Step) string {
	switch {
	case s == nil || s.Refuse:
		return "—"
	case s.Text != "":
		return s.Text
	case s.Cut || s.Typed != "":
		return withUnit(significant(s.Value, inputDigits), s.Unit)
	}
	return withUnit(resultNumber(s.Value), s.Unit)
}

// beforeCut shows a cut that changed something: before ↓ after.
func beforeCut(s *basis.Step) string {
	if !s.Cut {
		return ""
	}
	before, after := withUnit(resultNumber(s.Before), s.Unit), outcome(s)
	if before == after {
		return ""
	}
	return before + " ↓ " + after
}
