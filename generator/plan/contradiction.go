package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/unit"
)

// contradictions are days on which two instructions have no range in common.
func (l *limits) contradictions() (wrong []Mistake) {
	told := map[[2]*window]bool{}
	for _, w := range l.windows {
		if w.class != instructed {
			continue
		}
		for _, d := range append([]unit.Day{w.From}, l.turns(w.Kind, w.From)...) {
			a, b := l.noneInCommon(w, d)
			if a == nil || told[[2]*window{a, b}] {
				continue
			}
			told[[2]*window{a, b}] = true
			wrong = append(wrong, Mistake{At: b.At.At("range_deg"), What: fmt.Sprintf("%s and %s allow no common range of %s from %s", a.Name, b.Name, a.Kind, d),
				Instead: "ask which of the two holds, and end the other by lifts"})
		}
	}
	return wrong
}

// noneInCommon are two instructions of a window's kind that stand on a day and have no range in common; nil where there are none.
func (l *limits) noneInCommon(of *window, d unit.Day) (a, b *window) {
	var said []*window
	for _, w := range l.windows {
		if w.class == instructed && w.speaksOf(of.Kind, append(slices.Clone(of.On), of.Kind)) && w.covers(d) {
			said = append(said, w)
		}
	}
	said = latestOfEach(said)
	for i, a := range said {
		for _, b := range said[i+1:] {
			if a.Allow.Range != nil && b.Allow.Range != nil && a.Allow.Range.Meet(*b.Allow.Range).Empty() {
				return a, b
			}
		}
	}
	return nil, nil
}
