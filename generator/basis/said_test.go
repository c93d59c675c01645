package basis_test

import (
	"errors"
	"fmt"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

func TestSaid(t *testing.T) {
	inner := basis.Say("pain {a}", 2.5)
	for _, row := range []struct {
		name string
		said basis.Said
		want string
	}{
		{"a constant", "left out", "left out"},
		{"a number and a unit's number", basis.Say("{a}° of {b}", unit.Degrees(70), 3), "70° of 3"},
		{"a text and a day", basis.Say("{a} on {b}", "gym", unit.Day{Year: 2026, Month: 4, Date: 6}), "gym on 2026-04-06"},
		{"a fragment in a fragment", basis.Say("{a}, again", basis.Say("{a} ({b})", inner, "tern-04")), "pain 2.5 (tern-04), again"},
		{"a word of a closed set", basis.Say("the {a} leg", unit.Left), "the left leg"},
		{"a refusal of a formula", basis.Say("no load: {a}", error(inner)), "no load: pain 2.5"},
		{"an error of anybody", basis.SaidBy(errors.New("no such week")), "no such week"},
		{"an error wrapped", basis.SaidBy(fmt.Errorf("here: %w", inner)), "pain 2.5"},
		{"a value that looks like a place", basis.Say("{a} and {b}", "{b}", "x"), "{b} and x"},
		{"a place without a value", basis.Say("{a} and {b}", "x"), "x and {b}"},
		{"some, one empty", basis.Listed("left out", "", inner), "left out; pain 2.5"},
		{"none", basis.Listed("", ""), ""},
		{"in commas", basis.Enumerated("effusion", "pain", "extension"), "effusion, pain, extension"},
	} {
		if got := row.said.String(); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestSaidCompares: two fragments are one where key and values are, so that they key a map and are told once.
func TestSaidCompares(t *testing.T) {
	one, again, other := basis.Say("pain {a}", 2), basis.Say("pain {a}", 2), basis.Say("pain {a}", 3)
	if one != again || one == other {
		t.Error("fragments do not compare by key and values")
	}
	key, values := basis.Say("the {a} leg, {b}", unit.Left, 2.5).Parts()
	if key != "the {a} leg, {b}" || len(values) != 2 || values[0].Said != "left" || values[1].Number != "2.5" {
		t.Errorf("%q %+v", key, values)
	}
}
