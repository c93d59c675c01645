package plan

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/program"
)

// What a plan leaves open of what a report of an exercise program has to say. Source: Slade 2016, Br J Sports Med 50:1428: sixteen
// items, nineteen scored lines, for 7, 14 and 16 are two each. The words of the lines are ours.

// CERTLine is one scored line: what the plan says of it, or why it is open.
type CERTLine struct {
	ID    string // 1 to 16b
	Open  bool
	Which basis.Said // of an open line: what is missing where it is not plain
}

// CERT are the nineteen lines of a plan, in their order. Nothing is called stated that no page says.
func (p *Plan) CERT() []CERTLine {
	line := func(id string, stated bool, which ...string) CERTLine {
		return CERTLine{ID: id, Open: !stated, Which: basis.Said(strings.Join(which, ", "))}
	}
	exercises := len(p.Prescriptions) > 0
	bare, restless := p.undescribed(), p.undosed()
	return []CERTLine{
		line("1", exercises),
		line("2", p.providerKnown(), p.Block.By),
		line("3", p.Block.Delivery != ""),
		line("4", p.Block.Supervised != ""),
		line("5", exercises && len(p.Sessions) > 0),
		line("6", p.Client.Goal != ""),
		line("7a", exercises && p.Block.Weeks > 1),
		line("7b", p.progresses()),
		line("8", exercises && len(bare) == 0, bare...),
		line("9", exercises),
		line("10", len(p.Program.ToldIn(p.Stage.Set)) > 0),
		line("11", len(p.Clinic.Phones) > 0 && p.Clinic.Emergency != ""),
		line("12", p.Client.Place != ""),
		line("13", exercises && len(restless) == 0 && len(p.Sessions) > 0, restless...),
		line("14a", true),
		line("14b", len(p.Limits) > 0 || slices.ContainsFunc(p.Prescriptions, func(r Prescription) bool { return r.OneRM.OK() })),
		line("15", p.Stage.Recorded),
		line("16a", exercises && len(p.Sessions) > 0),
		line("16b", len(p.CameBack) > 0),
	}
}

// providerKnown reports whether the therapist of the block has a role and a registration.
func (p *Plan) providerKnown() bool {
	for _, t := range p.Clinic.Therapists {
		if t.ID == p.Block.By {
			return t.Role != "" && t.Registration != ""
		}
	}
	return false
}

// progresses reports whether some exercise says how it grows: by weeks, waves, repetitions first or a ladder.
func (p *Plan) progresses() bool {
	return slices.ContainsFunc(p.Prescriptions, func(r Prescription) bool {
		s := r.Slot
		return s != nil && (s.WeeklyPercent > 0 || len(s.Waves) > 0 || r.Level > 0 || s.RepsTo != nil || s.Method == program.DailyAdjusted)
	})
}

// undescribed are the exercises that cannot be repeated from the page: without steps.
func (p *Plan) undescribed() (ids []string) {
	for _, r := range p.Prescriptions {
		if id := r.Exercise.ID; len(r.Exercise.Words.Steps) == 0 && !slices.Contains(ids, id) {
			ids = append(ids, id)
		}
	}
	return ids
}

// undosed are the exercises of several sets whose rest nobody says.
func (p *Plan) undosed() (ids []string) {
	for _, r := range p.Prescriptions {
		d := r.Weeks[0].Dose
		if id := r.Exercise.ID; d.Sets != nil && *d.Sets > 1 && d.Rest == nil && !slices.Contains(ids, id) {
			ids = append(ids, id)
		}
	}
	return ids
}
