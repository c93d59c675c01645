package unit

import "fmt"

// Allowance is what a limit allows of its kind: closed, a range, a grade of work, a share of body weight. An allowance
// that says nothing allows everything of its kind (a limit that is no limit). Steps of a schedule and a surgeon's
// instruction write it with the same keys.
type Allowance struct {
	Allowed  *bool      `key:"allowed" doc:"false: not at all; true: free" show:"false"`
	Range    *Reach     `key:"range" doc:"bend that is allowed, straightest first; 0 is straight" example:"[0, 70]"`
	Grade    Work       `key:"grade" doc:"hamstring work: up to and with this grade" show:"active"`
	Part     *Percent   `key:"part" doc:"weight-bearing: up to this share of body weight" show:"50"`
	PartMass *Kilograms `key:"part" doc:"weight-bearing: up to this weight on the leg" show:"30"`
	BothOnly bool       `key:"both_legs_only" doc:"bending under load: with both legs together, not on one"`
	Locked   *Degrees   `key:"locked" doc:"brace: locked at this bend" show:"0"`
	Night    *bool      `key:"night" doc:"brace: also worn at night"`
}

// Bends reports whether the kind limits a range of bend.
func (k Kind) Bends() bool {
	switch k {
	case PassiveBend, ActiveBend, LoadedBend, StraighteningUnderLoad:
		return true
	}
	return false
}

// Free reports whether the allowance limits nothing.
func (a Allowance) Free() bool {
	return a.Range == nil && a.Grade == "" && a.Part == nil && a.PartMass == nil && a.Locked == nil && !a.BothOnly && (a.Allowed == nil || *a.Allowed)
}

// Closed reports whether nothing of the kind is allowed.
func (a Allowance) Closed() bool {
	return a.Allowed != nil && !*a.Allowed || a.Grade == NoWork || a.Range != nil && a.Range.Empty()
}

// Misfit says what is wrong with an allowance of a kind, and what to write instead; empty where it fits.
func (a Allowance) Misfit(k Kind) (what, instead string) {
	says := 0
	for _, said := range []bool{a.Allowed != nil, a.Range != nil, a.Grade != "", a.Part != nil || a.PartMass != nil, a.Locked != nil} {
		if said {
			says++
		}
	}
	form := map[bool]string{true: "allowed or range_deg", false: "allowed"}[k.Bends()]
	switch k {
	case HamstringWork:
		form = "grade"
	case WeightBearing:
		form = "allowed, part_percent or part_kg"
	case Brace:
		form = "allowed, range_deg or locked_deg"
	}
	switch {
	case says == 0:
		return fmt.Sprintf("%s says nothing", k), "write " + form
	case says > 1:
		return fmt.Sprintf("%s says two things at once", k), "keep one of " + form
	case a.Range != nil && !k.Bends() && k != Brace, a.Grade != "" && k != HamstringWork,
		(a.Part != nil || a.PartMass != nil) && k != WeightBearing, a.Locked != nil && k != Brace:
		return fmt.Sprintf("that is no limit of %s", k), "write " + form
	}
	return "", ""
}
