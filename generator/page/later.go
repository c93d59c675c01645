package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// later lists the weeks after the first of the box: ceilings, or not at all. Weeks that say the same stand together. Where
// the page has said in which weeks an exercise is done, those at another place are not named again.
func (h handout) later(p plan.Prescription, said bool) Node {
	list, all := Node{Kind: "list", Class: "later"}, h.stretches(p, said)
	if h.onlySame(all) {
		return Node{} // said once, above all boxes
	}
	for _, s := range all {
		label := h.w.Say("later.weeks", "n", len(s.weeks), "weeks", h.numbers(s.weeks))
		list.Items = append(list.Items, []Span{strong(label), {Text: " " + s.says}})
	}
	return list
}

// onlySame reports whether the later weeks of a box ask for nothing but what it says.
func (h handout) onlySame(all []stretch) bool {
	return len(all) == 1 && all[0].says == h.w.Say("later.same")
}

// stretches are the weeks after the first of the box, those that say the same together.
func (h handout) stretches(p plan.Prescription, said bool) (all []stretch) {
	if h.pausedThroughout() {
		return h.laterPaused(p)
	}
	before := p.Weeks[0]
	for _, week := range h.Weeks {
		d, chosen := doseOf(p, week.Number)
		if week.Number == p.Weeks[0].Week || !chosen && said && h.elsewhere(p, week.Number) {
			continue
		}
		says, last := h.leftOut(p, week.Number), len(all)-1
		if chosen {
			says = h.ceiling(p, before, d)
			if !d.Plates.OK() && h.sameBox(p, before, d) { // a weight is said in digits for each week
				says = h.again(all, says)
			}
			before = d
		}
		if last >= 0 && all[last].says == says {
			all[last].weeks = append(all[last].weeks, week.Number)
			continue
		}
		all = append(all, stretch{[]int{week.Number}, says})
	}
	return all
}

// again is what a week says that asks for nothing new: as the week before it, or as the box where there was none.
func (h handout) again(all []stretch, says string) string {
	switch last := len(all) - 1; {
	case last < 0:
		return h.w.Say("later.same")
	case all[last].says == h.w.Say("later.not"):
		return says
	default:
		return all[last].says
	}
}

// sameBox reports whether two weeks ask for the same in every word.
func (h handout) sameBox(p plan.Prescription, a, b plan.WeekDose) bool {
	return slices.Equal(h.work(p, a), h.work(p, b)) && h.eachLoads(p, a) == h.eachLoads(p, b) && a.FindYourWeight == b.FindYourWeight &&
		slices.Equal(h.manner(a), h.manner(b)) && h.rangeOf(p, a) == h.rangeOf(p, b)
}

// stretch is some weeks that say the same.
type stretch struct {
	weeks []int
	says  string
}

// numbers writes weeks: 2, 2 and 3, 2 to 4.
func (h handout) numbers(weeks []int) string {
	texts := make([]string, len(weeks))
	for i, week := range weeks {
		texts[i] = strconv.Itoa(week)
	}
	if n := len(weeks); n > 2 && weeks[n-1]-weeks[0] == n-1 {
		return h.w.Say("later.span", "from", texts[0], "to", texts[n-1])
	}
	return h.w.Join(texts)
}

func doseOf(p plan.Prescription, week int) (plan.WeekDose, bool) {
	i := slices.IndexFunc(p.Weeks, func(d plan.WeekDose) bool { return d.Week == week })
	if i < 0 {
		return plan.WeekDose{}, false
	}
	return p.Weeks[i], true
}

// ceiling is what a later week may come to: amount and load always, the rest where it has changed since the last.
func (h handout) ceiling(p plan.Prescription, before, d plan.WeekDose) string {
	parts := h.work(p, d)
	if each := h.eachLoads(p, d); each != "" && each != h.eachLoads(p, before) {
		parts = append(parts, each)
	}
	if d.FindYourWeight {
		parts = append(parts, h.w.Say("load.find"))
	}
	parts = append(parts, h.newManner(before, d)...)
	says := h.w.Say("later.up-to", "what", strings.Join(parts, dot))
	if now := h.rangeOf(p, d); now != "" && now != h.rangeOf(p, before) {
		says += " " + h.laterRange(p, d)
		if wider(before.Range, d.Range) {
			says = joined(says, h.w.Say("later.told"), h.untilOpened(p, before)) // a date alone opens nothing
		}
	}
	return says
}

// newManner is what is new in how hard and how rested; all of it where something falls away.
func (h handout) newManner(before, d plan.WeekDose) []string {
	had, now := h.manner(before), h.manner(d)
	if len(now) < len(had) {
		return now
	}
	return slices.DeleteFunc(now, func(part string) bool { return slices.Contains(had, part) })
}

// wider reports whether a range lets the knee go further than the one before it.
func wider(before, now *unit.Reach) bool {
	return before != nil && now != nil && !now.Within(*before)
}
