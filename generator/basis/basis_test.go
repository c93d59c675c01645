package basis

import (
	"errors"
	"slices"
	"testing"

	"paceleaf/generator/unit"
)

var product = Rule{Name: "torque", Sum: "$1 × $2"}

func torque(f unit.Newtons, arm unit.Metres) unit.NewtonMetres {
	return unit.NewtonMetres(float64(f) * float64(arm))
}

// Missing is never zero: what was not typed makes nothing, and the first reason is kept.
func TestMissingIsNeverZero(t *testing.T) {
	var none Num[unit.Newtons]
	arm := Typed(unit.Metres(0.31), "31 cm", Origin{File: "a.toml", Key: "arm_cm"})
	swollen := Refused[unit.Newtons]("knee.force", product, "swollen")
	zero := Typed(unit.Newtons(0), "0 N", Origin{File: "a.toml"})
	for _, row := range []struct {
		name string
		got  Num[unit.NewtonMetres]
		ok   bool
		why  string
	}{
		{"the zero Num", Of2("t", product, torque, none, arm), false, "not tested"},
		{"a refused one", Of2("t", product, torque, swollen, arm), false, "swollen"},
		{"both missing", Of2("t", product, torque, swollen, Num[unit.Metres]{}), false, "swollen"},
		{"a typed zero", Of2("t", product, torque, zero, arm), true, ""},
		{"a formula that refuses", Try2("t", product, func(unit.Newtons, unit.Metres) (unit.NewtonMetres, error) { return 99, errors.New("outside study") }, zero, arm), false, "outside study"},
		{"an empty list", OfList("t", product, func([]unit.Newtons) (unit.NewtonMetres, error) { return 99, nil }, nil), false, "not tested"},
		{"a list with a gap", OfList("t", product, func([]unit.Newtons) (unit.NewtonMetres, error) { return 99, nil }, []Num[unit.Newtons]{zero, swollen}), false, "swollen"},
	} {
		if row.got.OK() != row.ok || row.got.Why().String() != row.why {
			t.Errorf("%s: ok %v, %q; want %v, %q", row.name, row.got.OK(), row.got.Why(), row.ok, row.why)
		}
		if v, ok := row.got.Value(); !ok && v != 0 {
			t.Errorf("%s: a value leaks out of what does not exist: %v", row.name, v)
		}
		if !row.ok && row.got.Or(7) != 7 {
			t.Errorf("%s: Or gives %v", row.name, row.got.Or(7))
		}
	}
	if none.Named("x").OK() || none.On(unit.Day{Year: 2026, Month: 1, Date: 1}).Step() != nil {
		t.Error("naming nothing makes something")
	}
}

// A chain reaches down to what was typed, inputs first, each step once; naming a number leaves the first one alone.
func TestChain(t *testing.T) {
	force := Typed(unit.Newtons(331), "331 N", Origin{File: "a.toml", Key: "left.peak_n[1]"})
	named := force.Named("knee.trial-2")
	if force.ID() != "" || named.ID() != "knee.trial-2" {
		t.Errorf("naming changes the number itself: %q %q", force.ID(), named.ID())
	}
	double := Of2("knee.double", Rule{Name: "sum"}, func(a, b unit.Newtons) unit.Newtons { return a + b }, named, named)
	cut := Cut("knee.cut", Rule{Name: "cut"}, unit.CutTo[unit.Newtons], double, Given("step", Rule{}, unit.Newtons(50), "chosen"))
	var ids []string
	Walk(cut.Step(), func(s *Step) { ids = append(ids, s.ID) })
	if want := []string{"knee.trial-2", "knee.double", "step", "knee.cut"}; !slices.Equal(ids, want) {
		t.Errorf("%v, want %v", ids, want)
	}
	if s := cut.Step(); !s.Cut || s.Before != 662 || s.Value != 650 {
		t.Errorf("%+v", s)
	}
	if s := Cut("x", Rule{}, unit.CutTo[unit.Newtons], Num[unit.Newtons]{}, Given("step", Rule{}, unit.Newtons(50), "")).Step(); s.Cut || !s.Refuse {
		t.Errorf("a cut of nothing: %+v", s)
	}
	if at := (Origin{File: "a.toml", Key: "lift[0]"}).At("left"); at.Key != "lift[0].left" || (Origin{}).At("left").Key != "left" {
		t.Errorf("%+v", at)
	}
}
