package figure

import (
	"errors"
	"math"
	"strings"
)

// DateLine is a line of weeks with days on it.
type DateLine struct {
	ID       string    `json:"id"`
	Across   string    `json:"across"`
	Block    Spell     `json:"block"` // the weeks of the block: a thick bar
	Days     []LineDay `json:"days"`  // from left to right
	Title    string    `json:"-"`
	Describe string    `json:"-"`
}

// LineDay is a day on the line.
type LineDay struct {
	X     float64    `json:"x"`     // weeks
	Name  string     `json:"name"`  // 6 April
	Kinds []DateKind `json:"kinds"` // one shape each, over each other
}

// DateKind is the shape of a day.
type DateKind string

// The kinds of days.
const (
	LimitDay DateKind = "limit" // a limit may end or loosen: an open disc
	StartDay DateKind = "start" // not before: a diamond
	VisitDay DateKind = "visit" // a visit, or the end of the block: a square
)

// The rows of names over a line of dates.
const (
	rowHigh   = lettered + 3
	overLine  = 16.0 // between the line and the lowest row, where each day has one shape
	shapeHigh = 14.0
	// startOfLine leaves half the number of its first week room.
	startOfLine = 15.0
)

// Draw makes the picture. It fails where there is no day, a text is missing, or a number is none.
func (d DateLine) Draw() ([]byte, error) {
	if d.ID == "" || d.Title == "" || d.Describe == "" || len(d.Days) == 0 {
		return nil, errors.New("a line of dates needs an id, a title, a description and a day")
	}
	first, _, last := d.ends()
	if math.IsNaN(first+last) || math.Abs(first) > largest || math.Abs(last) > largest {
		return nil, errors.New("a week cannot be drawn")
	}
	xs := d.weeks()
	rows := d.rows(xs)
	top, shapes := 0.0, 1.0
	for i, r := range rows {
		top, shapes = max(top, float64(r)), max(shapes, float64(len(d.Days[i].Kinds)))
	}
	names := lettered + float64(top*rowHigh) // the middle of the lowest row
	axis := names + overLine + float64((shapes-1)*shapeHigh)
	p := &sketch{}
	p.open(d.ID, d.Title, d.Describe, chartWide, axis+underField)
	d.axis(p, xs, axis)
	d.flags(p, xs, axis, names, rows)
	return p.close(), nil
}

// room is how far to the right the last day may stand, so that each name still fits.
func (d DateLine) room() float64 {
	room := chartWide - nearEdge
	for _, day := range d.Days {
		room = math.Min(room, chartWide-wideOf(day.Name)-4)
	}
	return math.Max(room, chartWide/3)
}

// rows puts each name in a row over those to its right that it would lie on: so neither names nor stems cross.
func (d DateLine) rows(xs weekScale) []int {
	rows := make([]int, len(d.Days))
	for i := len(d.Days) - 1; i >= 0; i-- {
		ends := xs.place(d.Days[i].X) + wideOf(d.Days[i].Name) + besideAxis
		for k := i + 1; k < len(d.Days); k++ {
			if xs.place(d.Days[k].X) < ends {
				rows[i] = max(rows[i], rows[k]+1)
			}
		}
	}
	return rows
}

// flags are the days: a stem up to the name, and a shape on the line.
func (d DateLine) flags(p *sketch, xs weekScale, y, names float64, rows []int) {
	shapes := map[DateKind]*strings.Builder{LimitDay: {}, StartDay: {}, VisitDay: {}}
	stems := ""
	for i, day := range d.Days {
		x, up := xs.place(day.X), names-float64(float64(rows[i])*rowHigh)
		stems += "M" + tenth(x) + " " + tenth(y-4) + "V" + tenth(up-lettered/2)
		p.write("c-day", x+3, up-lettered/4, day.Name)
		for k, kind := range day.Kinds {
			if b := shapes[kind]; b != nil {
				b.WriteString(dayShape(kind, x, y-float64(float64(k)*shapeHigh)))
			}
		}
	}
	p.path("c-stem", stems)
	p.path("c-limit", shapes[LimitDay].String())
	p.path("c-start", shapes[StartDay].String())
	p.path("c-visit", shapes[VisitDay].String())
}

// dayShape is a disc, a diamond or a square.
func dayShape(kind DateKind, x, y float64) string {
	switch kind {
	case StartDay:
		return "M" + tenth(x) + " " + tenth(y-7) + "l6 7l-6 7l-6-7Z"
	case VisitDay:
		return "M" + tenth(x-4.5) + " " + tenth(y-4.5) + "h9v9h-9Z"
	}
	return "M" + tenth(x-5) + " " + tenth(y) + "a5 5 0 1 0 10 0a5 5 0 1 0-10 0Z"
}
