package figure

import "math"

// A line of dates is of a block of some weeks and of days up to a year later. On one scale the block would be a dot and its days
// would lie on each other: so what comes long after it has a scale of its own, beyond two strokes that break the line.

// weekScale is where weeks stand on the line. Those after until stand on the second scale where there is one.
type weekScale struct {
	near, late scale
	until      float64
	broken     bool
}

func (w weekScale) place(week float64) float64 {
	if w.broken && week > w.until {
		return w.late.place(week)
	}
	return w.near.place(week)
}

// How a line is broken; chosen by looking.
const (
	soonAfter  = 1.0 // weeks after the block that still belong to it: the next visit
	breakFrom  = 2.0 // times as long as the near part the rest must be to have its own scale
	nearShare  = 0.5 // of the room that the near part gets, at most
	breakRoom  = 14.0
	perTick    = 24.0 // room of the number of a week
	breakSlant = 3.0
)

// Broken reports whether the weeks after the block stand on a scale of their own.
func (d DateLine) Broken() bool {
	first, until, last := d.ends()
	return last-until > breakFrom*(until-first)
}

// ends are the first week of the line, the last of its near part, and the last.
func (d DateLine) ends() (first, until, last float64) {
	first, until = d.Block.From, d.Block.To
	last = until
	for _, day := range d.Days {
		first, last = math.Min(first, day.X), math.Max(last, day.X)
		if day.X <= d.Block.To+soonAfter {
			until = math.Max(until, day.X)
		}
	}
	return first, until, last
}

// weeks puts the weeks of the line where they stand, the first at startOfLine and the last where its name has room.
func (d DateLine) weeks() weekScale {
	first, until, last := d.ends()
	right := d.room()
	if !d.Broken() {
		if math.Floor(last)-math.Ceil(first) < 1 {
			first, last = math.Floor(first)-1, math.Ceil(last)+1
		}
		return weekScale{near: stretch(first, last, startOfLine, right)}
	}
	if until-first < 1 {
		until = first + 1
	}
	soon, from := 0.0, last
	for _, day := range d.Days {
		if day.X <= until {
			soon++
		} else {
			from = math.Min(from, day.X)
		}
	}
	if last-from < 1 {
		from, last = last-1, last+1
	}
	middle := lerp(startOfLine, right, math.Min(nearShare, 0.25+float64(soon/float64(2*len(d.Days)))))
	return weekScale{near: stretch(first, until, startOfLine, middle-breakRoom), late: stretch(from, last, middle+breakRoom, right), until: until, broken: true}
}

// stretch is the scale on which two weeks stand at two places, with as many numbers as there is room for.
func stretch(from, to, left, right float64) scale {
	s := scale{from: from, at: left, per: (right - left) / (to - from)}
	s.ticks = fewer(wholeTicks(from, to, 7), int((right-left)/perTick)+1)
	return s
}

// fewer leaves every second out until there are at most so many.
func fewer(ticks []float64, most int) []float64 {
	for len(ticks) > max(most, 1) {
		var half []float64
		for i := 0; i < len(ticks); i += 2 {
			half = append(half, ticks[i])
		}
		ticks = half
	}
	return ticks
}

// axis draws the line with its numbers and, where it is broken, two strokes.
func (d DateLine) axis(p *sketch, xs weekScale, y float64) {
	line := "M2 " + tenth(y)
	if xs.broken {
		gap := xs.late.at - breakRoom
		line += "H" + tenth(gap-breakSlant) + "M" + tenth(gap+breakSlant) + " " + tenth(y)
		strokes := ""
		for _, x := range []float64{gap - breakSlant, gap + breakSlant} {
			strokes += "M" + tenth(x-breakSlant) + " " + tenth(y+6) + "l" + tenth(2*breakSlant) + "-12"
		}
		p.path("c-break", strokes)
	}
	ticks, end := "", math.Max(xs.place(d.Days[len(d.Days)-1].X), xs.place(d.Block.To))
	for _, s := range []scale{xs.near, xs.late} {
		for i, label := range s.labels() {
			x := s.place(s.ticks[i])
			ticks += "M" + tenth(x) + " " + tenth(y) + "v6"
			p.write("c-x", x, y+15, label)
			end = math.Max(end, x)
		}
	}
	p.path("c-axis", line+"H"+tenth(end+6)+ticks)
	from, to := xs.place(d.Block.From), xs.place(d.Block.To)
	p.path("c-block", "M"+tenth(from)+" "+tenth(y-2.5)+"H"+tenth(to)+"V"+tenth(y+2.5)+"H"+tenth(from)+"Z")
	p.write("c-across", nearEdge, y+32, d.Across)
}
