package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// rangeMeasures takes extension, flexion and flexion against the other knee from every day that has them; the newest stand.
// The two knees may have been measured on different days; the other knee changes little.
func (f *finder) rangeMeasures() {
	var straight, bent []Measure
	var flexed []basis.Num[unit.Degrees]
	var others []basis.Num[unit.Degrees] // as known on the day of each flexion
	var other basis.Num[unit.Degrees]
	for _, k := range f.Knees {
		mine, theirs := f.angled(k)
		if theirs.Flexion.OK() {
			other = theirs.Flexion
		}
		if k.On.Before(f.event.Date) {
			continue
		}
		if mine.Straight.OK() {
			straight = append(straight, withTool(measured("extension", mine.Straight, k.On), k))
		}
		if mine.Flexion.OK() {
			bent = append(bent, withTool(measured("flexion", mine.Flexion, k.On), k))
			flexed, others = append(flexed, mine.Flexion), append(others, other)
		}
	}
	f.series(straight)
	f.series(bent)
	if len(bent) == 0 {
		return
	}
	others[len(others)-1] = other // it may have been measured since
	var shares []Measure
	for i, m := range bent {
		ids := stem{thing: "flexion"}
		if i < len(bent)-1 {
			ids.when = "." + m.On.String()
		}
		share := basis.Try2(ids.id("", "symmetry"), formula.BySymmetry, formula.Symmetry[unit.Degrees], flexed[i], others[i])
		cut := tenth(ids.id("", "percent-of-other"), share)
		against := measured("flexion.percent-of-other", cut, m.On)
		against.Alike = m.Alike
		if i == len(bent)-1 {
			against = f.trusted(against, cut)
		}
		shares = append(shares, against)
	}
	f.series(shares)
}

func withTool(m Measure, k KneeDay) Measure {
	m.Alike = Alike{Tool: k.AngleBy}
	return m
}

// series files the values of one measure, oldest first: all in its history, the last as the newest.
func (f *finder) series(values []Measure) {
	for i, m := range values {
		if i == len(values)-1 {
			f.put(m)
			return
		}
		f.record(m)
	}
}
