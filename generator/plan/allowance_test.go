package plan

import (
	"testing"

	"paceleaf/generator/unit"
)

// Rule 6c: of two shares of body weight the smaller stands, and of two weights on the leg, in whichever order they are met.
func TestRule06c_TheSmallerPartOfWeight(t *testing.T) {
	for _, row := range []struct {
		name       string
		a, b, want float64
	}{
		{"the stricter first", 20, 50, 20},
		{"the stricter last", 50, 20, 20},
		{"alike", 20, 20, 20},
	} {
		a, b := unit.Percent(row.a), unit.Percent(row.b)
		share := stricter(unit.Allowance{Part: &a}, unit.Allowance{Part: &b})
		if share.Part == nil || float64(*share.Part) != row.want {
			t.Errorf("%s: share %v, want %g", row.name, share.Part, row.want)
		}
		x, y := unit.Kilograms(row.a), unit.Kilograms(row.b)
		weight := stricter(unit.Allowance{PartMass: &x}, unit.Allowance{PartMass: &y})
		if weight.PartMass == nil || float64(*weight.PartMass) != row.want {
			t.Errorf("%s: weight %v, want %g", row.name, weight.PartMass, row.want)
		}
	}
	part := unit.Percent(20)
	if one := stricter(unit.Allowance{}, unit.Allowance{Part: &part}); one.Part == nil || *one.Part != 20 {
		t.Error("a share met with nothing stays")
	}
}
