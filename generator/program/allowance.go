package program

import "fmt"

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
	return a.Range == nil && a.Grade == "" && a.Part == nil && a.PartMass == nil && a.Locked == nil && (a.Allowed == nil || *a.Allowed)
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
