package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Deload is a lighter week of a phase, planned beforehand: less is done so that the next weeks can ask for more.
type Deload struct {
	At          basis.Origin
	Weeks       []int         `key:"weeks,required,lone" doc:"weeks of the phase" range:"1 104" show:"[4, 8]"`
	SetsPercent unit.Percent  `key:"sets" doc:"share of the sets that stays, at least one; of rounds, landings or minutes where a dose has no sets" range:"10 100" show:"60"`
	LoadPercent unit.Percent  `key:"load" doc:"share of the load that stays" range:"50 100" show:"90"`
	Source      string        `key:"source" doc:"key of the bibliography" show:"acsm-2009"`
	Standing    unit.Standing `key:"standing" doc:"how far the source may be trusted"`
	Note        string        `key:"note" doc:"why it is as it is; the worksheet prints it" show:"the week before the tests" said:"desk"`
}

// DeloadIn is the lighter week that a week of the phase is; nil where it is none.
func (p *Phase) DeloadIn(phaseWeek int) *Deload {
	for i := range p.Deloads {
		for _, w := range p.Deloads[i].Weeks {
			if w == phaseWeek {
				return &p.Deloads[i]
			}
		}
	}
	return nil
}

// Lighter is what a lighter week leaves of a dose: the first of sets, rounds, landings and minutes that the dose counts, cut
// down, and never none.
func (d *Deload) Lighter(dose Dose) Dose {
	if d.SetsPercent == 0 {
		return dose
	}
	for _, n := range []**int{&dose.Sets, &dose.Rounds, &dose.Contacts, &dose.Minutes} {
		if *n != nil {
			less := max(1, int(float64(**n)*float64(d.SetsPercent)/100))
			*n = &less
			return dose
		}
	}
	return dose
}

func (r *reader) deloads(ph *Phase) {
	seen := map[int]bool{}
	for _, d := range ph.Deloads {
		r.vouched(d.Source, d.Standing, d.At)
		if d.SetsPercent == 0 && d.LoadPercent == 0 {
			r.wrong(d.At, "the lighter week does not say what is less", "write sets_percent, load_percent or both")
		}
		for _, w := range d.Weeks {
			if seen[w] {
				r.wrong(d.At.At("weeks"), "a week stands in two lighter weeks", "keep it in one of them")
			}
			seen[w] = true
		}
	}
}
