package plan

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Last time's values, as they were typed, under the key whose unit they were typed in. What was never typed stands under the
// unit in which the clinic works.

// imperial are the endings that a clinic of units = "imperial" types in.
var imperial = []string{"lb", "in", "lbf"}

// keyed is a key with the ending of its unit: that of the value typed last, else the clinic's.
func keyed[Q unit.Quantity](d *duer, name string, values ...basis.Num[Q]) string {
	var none basis.Num[Q]
	endings := none.Endings()
	if len(endings) == 0 || endings[0].Name == "" {
		return name
	}
	ending := endings[0]
	if own := slices.IndexFunc(endings, func(e unit.Ending) bool { return slices.Contains(imperial, e.Name) }); own >= 0 && d.clinic.Units == client.Imperial {
		ending = endings[own]
	}
	for _, v := range values {
		if typed := slices.IndexFunc(endings, func(e unit.Ending) bool { return e.Symbol == symbol(v) }); typed >= 0 {
			ending = endings[typed]
		}
	}
	return name + "_" + ending.Name
}

// newest is a key of the day itself with the value that was typed for it last.
func newest[Q unit.Quantity](d *duer, name string, of func(*client.TestDay) basis.Num[Q]) DueValue {
	var last basis.Num[Q]
	for _, t := range d.days {
		if v := of(t); typed(v) != "" {
			last = v
		}
	}
	return DueValue{Key: keyed(d, name, last), Last: typed(last)}
}

// newestWord is the same of a word.
func newestWord(d *duer, name string, of func(*client.TestDay) string) (v DueValue) {
	v.Key = name
	for _, t := range d.days {
		if word := of(t); word != "" {
			v.Last = quoted(word)
		}
	}
	return v
}

// typed is a value as it was written, without its unit: the key carries that.
func typed[Q unit.Quantity](n basis.Num[Q]) string {
	s := n.Step()
	if s == nil {
		return ""
	}
	number, _, _ := strings.Cut(s.Typed, " ")
	return strings.TrimSuffix(number, "°")
}

// symbol is the unit in which a value was written; empty where nothing was.
func symbol[Q unit.Quantity](n basis.Num[Q]) string {
	s := n.Step()
	if s == nil {
		return ""
	}
	if strings.HasSuffix(s.Typed, "°") {
		return "°"
	}
	_, unitOf, _ := strings.Cut(s.Typed, " ")
	return unitOf
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

// ofLegs is a list of trials of each leg, under one key.
func ofLegs[Q unit.Quantity](d *duer, name string, left, right []basis.Num[Q]) []DueValue {
	key := keyed(d, name, append(slices.Clone(left), right...)...)
	return []DueValue{{Key: "left." + key, Last: listed(left)}, {Key: "right." + key, Last: listed(right)}}
}
