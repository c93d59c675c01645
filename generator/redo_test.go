package generator_test

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"paceleaf/generator/calculator"
)

// redo works one printed step again: "id = sum = result unit   (remarks)". It reports whether there was a sum.
func redo(line string) (done bool, err error) {
	line, _, _ = strings.Cut(strings.ReplaceAll(strings.TrimSpace(line), "\u00a0", " "), "   (")
	parts := strings.Split(line, " = ")
	if len(parts) != 3 || strings.Contains(line, " — ") {
		return false, nil // a typed value, a word, or a number that was given
	}
	got, err := calculator.Work(parts[1])
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
