package figure

import (
	"math"
	"strconv"
	"strings"
)

// The room of a chart: the size of the picture, and what lies above, below and beside the field in which values stand.
const (
	chartWide  = 300.0
	chartHigh  = 190.0
	overField  = 24.0
	underField = 40.0
	besideAxis = 8.0 // between the letters of the axis and the field
	nearEdge   = 8.0 // between the edge of the field and the first and last value
)

// layout is where things stand.
type layout struct {
	left, right, top, bottom float64 // of the field
	xs, ys                   scale
}

// scale turns values into places: from lies at, and a unit is per wide.
type scale struct {
	from, at, per float64
	ticks         []float64
	digits        int // behind the point, of the ticks
}

func (s scale) place(v float64) float64 { return s.at + float64((v-s.from)*s.per) }

func (l layout) x(v float64) float64 { return l.xs.place(v) }
func (l layout) y(v float64) float64 { return l.ys.place(v) }

// layout gives everything its room: letters first, the field gets the rest.
func (c Chart) layout() (l layout) {
	low, high := bounds(c.heights(), c.FromZero)
	ticks, digits := ticksOf(low, high, 5)
	l.top, l.bottom = overField, chartHigh-underField
	l.ys = scale{from: ticks[0], at: l.bottom, per: -(l.bottom - l.top) / (ticks[len(ticks)-1] - ticks[0]), ticks: ticks, digits: digits}
	l.left = widest(l.ys.labels()) + besideAxis
	l.right = chartWide - widest(c.names()) - 2*besideAxis
	first, last := c.across()
	most := int((l.right - l.left) / (widest([]string{tickText(first, 0), tickText(last, 0)}) + besideAxis))
	l.xs = scale{from: first, at: l.left + nearEdge, per: (l.right - l.left - 2*nearEdge) / (last - first)}
	l.xs.ticks = wholeTicks(first, last, min(most, 7))
	return l
}

// names are the texts at the ends of lines.
func (c Chart) names() (all []string) {
	for _, l := range c.Lines {
		if len(l.Spots) > 0 {
			all = append(all, l.Name)
		}
	}
	for _, m := range c.Marks {
		all = append(all, m.Name)
	}
	return all
}

// across is the stretch of weeks that is shown; never empty.
func (c Chart) across() (first, last float64) {
	first, last = math.Inf(1), math.Inf(-1)
	for _, l := range c.Lines {
		for _, s := range l.Spots {
			first, last = math.Min(first, s.X), math.Max(last, s.X)
		}
	}
	for _, end := range c.spellEnds() {
		first, last = math.Min(first, end), math.Max(last, end)
	}
	if c.Weeks != nil && c.Weeks.Open { // some room for what has no end
		last += float64((last - first) * 0.15)
	}
	if math.Floor(last)-math.Ceil(first) < 1 { // two whole weeks at least, so that the axis can be read
		first, last = math.Floor(first)-1, math.Ceil(last)+1
	}
	return first, last
}

// bounds are the lowest and highest value; equal ones get room, and zero is one of them where it must be.
func bounds(all []float64, zero bool) (low, high float64) {
	low, high = all[0], all[0]
	for _, v := range all {
		low, high = math.Min(low, v), math.Max(high, v)
	}
	if zero {
		low, high = math.Min(low, 0), math.Max(high, 0)
	}
	if low == high {
		low, high = low-1, high+1
	}
	return low, high
}

// ticksOf are round numbers, 1, 2 or 5 times a power of ten apart, that hold low and high between the first and the last; about as many as wanted.
func ticksOf(low, high float64, wanted int) (ticks []float64, digits int) {
	power := int(math.Floor(math.Log10((high - low) / float64(wanted))))
	for ; ; power++ {
		for _, n := range []float64{1, 2, 5} {
			step := float64(n * math.Pow10(power))
			if first, last := math.Floor(low/step+1e-9), math.Ceil(high/step-1e-9); last-first <= float64(wanted) {
				for k := first; k <= last; k++ {
					ticks = append(ticks, float64(k*n)*math.Pow10(power))
				}
				return ticks, max(0, -power)
			}
		}
	}
}

// wholeTicks are whole numbers between first and last, 1, 2 or 5 times a power of ten apart, at most so many; with five or more
// allowed there are always two where there is one step between the ends.
func wholeTicks(first, last float64, most int) (ticks []float64) {
	for power := 0; ; power++ {
		for _, n := range []float64{1, 2, 5} {
			step := float64(n * math.Pow10(power))
			from, to := math.Ceil(first/step-1e-9), math.Floor(last/step+1e-9)
			if to-from >= float64(max(most, 5)) {
				continue
			}
			for k := from; k <= to; k++ {
				ticks = append(ticks, float64(k*step))
			}
			return ticks
		}
	}
}

func (s scale) labels() (all []string) {
	for _, t := range s.ticks {
		all = append(all, tickText(t, s.digits))
	}
	return all
}

// tickText writes a tick with a true minus.
func tickText(v float64, digits int) string {
	text := strconv.FormatFloat(v, 'f', digits, 64)
	if strings.Trim(text, "-0.") == "" {
		return "0"
	}
	return strings.Replace(text, "-", "−", 1)
}

func widest(texts []string) (w float64) {
	for _, t := range texts {
		w = math.Max(w, wideOf(t))
	}
	return w
}

// axes draws the field: lines across at the ticks, numbers beside and below, the two names.
func (l layout) axes(p *sketch, unit, across string) {
	grid := ""
	for i, label := range l.ys.labels() {
		y := l.y(l.ys.ticks[i])
		grid += "M" + tenth(l.left) + " " + tenth(y) + "H" + tenth(l.right)
		p.write("c-y", l.left-besideAxis/2, y, label)
	}
	p.path("c-grid", grid)
	ticks := ""
	for i, label := range l.xs.labels() {
		x := l.x(l.xs.ticks[i])
		ticks += "M" + tenth(x) + " " + tenth(l.bottom) + "v4"
		p.write("c-x", x, l.bottom+12, label)
	}
	p.path("c-axis", "M"+tenth(l.left)+" "+tenth(l.bottom)+"H"+tenth(l.right)+ticks)
	p.write("c-unit", 0, 7, unit)
	p.write("c-across", math.Max(l.left, (l.left+l.right-wideOf(across))/2), l.bottom+30, across)
}

// spell shades the weeks of a span.
func (l layout) spell(p *sketch, s *Spell) {
	if s == nil {
		return
	}
	from, to := l.x(s.From)-1, l.x(s.To)+1
	if s.Open {
		to = l.right
	}
	p.path("c-weeks", "M"+tenth(from)+" "+tenth(l.top)+"H"+tenth(to)+"V"+tenth(l.bottom)+"H"+tenth(from)+"Z")
}
