package plan

import (
	"fmt"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Last time's values, as they were typed.

// typed is a value as it was written, without its unit: the key carries that. A value typed in another unit than the
// key's first is left out rather than passed off as it.
func typed[Q unit.Quantity](n basis.Num[Q]) string {
	s := n.Step()
	if s == nil || s.Typed == "" {
		return ""
	}
	number, symbol, _ := strings.Cut(s.Typed, " ")
	if endings := n.Endings(); symbol != "" && len(endings) > 0 && endings[0].Symbol != symbol {
		return ""
	}
	return strings.TrimSuffix(number, "°")
}

func quoted(s string) string {
	if s == "" {
		return ""
	}
	return fmt.Sprintf("%q", s)
}

func listed[Q unit.Quantity](trials []basis.Num[Q]) string {
	values := make([]string, 0, len(trials))
	for _, t := range trials {
		if v := typed(t); v != "" {
			values = append(values, v)
		}
	}
	if len(values) == 0 {
		return ""
	}
	return "[" + strings.Join(values, ", ") + "]"
}
