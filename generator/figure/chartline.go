package figure

import (
	"math"
	"slices"
	"strings"
)

// line draws what a leg gave: bands, then the line, then dots, a bar over what is a ceiling.
func (l layout) line(p *sketch, line Course) {
	if len(line.Spots) == 0 {
		return
	}
	kind, r, aside := "own", 4.0, 0.0
	if line.Other {
		kind, r = "other", 5.0 // so that it is seen round a filled dot in the same place
		aside = 3.5            // and its band beside the other's
	}
	var way, bands, bars strings.Builder
	var at []point
	for i, s := range line.Spots {
		o := point{l.x(s.X), l.y(s.Y)}
		at = append(at, o)
		command := "L"
		if i == 0 || s.Breaks {
			command = "M"
		}
		way.WriteString(command + tenth(o.X) + " " + tenth(o.Y))
		if s.Low != nil && s.High != nil {
			bands.WriteString("M" + tenth(o.X+aside) + " " + tenth(l.y(*s.Low)) + "V" + tenth(l.y(*s.High)))
		}
		if s.Ceiling {
			bars.WriteString("M" + tenth(o.X-6) + " " + tenth(o.Y-r-2.5) + "h12")
		}
	}
	p.path("c-band c-"+kind, bands.String())
	p.path("c-line c-"+kind, way.String())
	p.path("c-bar c-"+kind, bars.String())
	p.dots("c-dots c-"+kind, r, at)
}

// end is a text at the end of a line.
type end struct {
	text     string
	from     point   // where the line ends
	wants, y float64 // where its middle would stand, and where it stands
}

// apart is how far the middles of two texts must lie from each other.
const apart = lettered + 2

// ends writes the names of lines and marks at their ends, spread where they would lie on each other.
func (l layout) ends(p *sketch, c Chart) {
	var all []end
	for _, line := range c.Lines {
		if n := len(line.Spots); n > 0 {
			o := point{l.x(line.Spots[n-1].X), l.y(line.Spots[n-1].Y)}
			all = append(all, end{text: line.Name, from: point{o.X + 7, o.Y}, wants: o.Y})
		}
	}
	for _, m := range c.Marks {
		all = append(all, end{text: m.Name, from: point{l.right, l.y(m.At)}, wants: l.y(m.At)})
	}
	spread(all, l.top, l.bottom)
	lead, x := "", l.right+besideAxis
	for _, e := range all {
		if e.text == "" {
			continue
		}
		if math.Abs(e.y-e.from.Y) > 2 || x-e.from.X > 2*besideAxis {
			lead += "M" + tenth(e.from.X) + " " + tenth(e.from.Y) + "L" + tenth(x-2) + " " + tenth(e.y)
		}
		p.write("c-end", x, e.y, e.text)
	}
	p.path("c-lead", lead)
}

// spread moves texts up and down until none lies on another: each as near as may be to where it wants to stand, in the order of
// what they name.
func spread(all []end, top, bottom float64) {
	slices.SortStableFunc(all, func(a, b end) int {
		switch {
		case a.wants < b.wants:
			return -1
		case a.wants > b.wants:
			return 1
		}
		return 0
	})
	y := math.Inf(-1)
	for i := range all {
		y = math.Max(all[i].wants, y+apart)
		all[i].y = y
	}
	over := math.Max(0, y-bottom)
	y = bottom
	for i := len(all) - 1; i >= 0 && over > 0; i-- {
		all[i].y = math.Min(all[i].y, y)
		y = all[i].y - apart
	}
	if len(all) > 0 && all[0].y < top { // more than the field holds: from the top down, into the room below
		y = top
		for i := range all {
			all[i].y = math.Max(all[i].y, y)
			y = all[i].y + apart
		}
	}
}
