package figure

import (
	"bytes"
	"html"
	"math"
)

// The picture is at least this wide, so that bodies are equally large on every page, and at least this high.
const (
	leastWide = 150.0
	leastHigh = 78.0
	margin    = 4.0
)

// usualPicture is room for a picture, in bytes.
const usualPicture = 8 << 10

// svg prints the sheet. later are the shapes of later moments.
func (c *canvas) svg(o Options, later [][]shape) []byte {
	c.grow(point{(c.low.X + c.top.X) / 2, 0}, 1.2)
	low, top := c.out(c.low), c.out(c.top)
	w := math.Max(leastWide, c.top.X-c.low.X+2*margin)
	h := math.Max(leastHigh, c.top.Y-c.low.Y+2*margin)
	x, y := (low.X+top.X)/2-w/2, low.Y+margin-h
	by, table := c.moving(later)
	var b bytes.Buffer
	b.Grow(usualPicture)
	b.WriteString(`<svg class="fig" id="` + o.ID + `" role="img" aria-labelledby="` + o.ID + `-t ` + o.ID + `-d" viewBox="` + tenth(x) + ` ` + tenth(y) + ` ` + tenth(w) + ` ` + tenth(h) + `"` + table + `>`)
	b.WriteString(`<title id="` + o.ID + `-t">` + html.EscapeString(o.Title) + `</title><desc id="` + o.ID + `-d">` + html.EscapeString(o.Describe) + `</desc>`)
	b.WriteString(`<path class="f-floor" d="M` + tenth(x+5) + ` .7H` + tenth(x+w-5) + `"/>`)
	for i, s := range c.shapes {
		s.appendTo(&b, by[i])
	}
	b.WriteString(`</svg>`)
	return b.Bytes()
}

// moving names the moves of each shape, and gives the attribute that holds them. What is drawn last, arrows and labels, is not
// among the later shapes, and stands still.
func (c *canvas) moving(later [][]shape) (by []string, table string) {
	by = make([]string, len(c.shapes))
	if len(later) == 0 {
		return by, ""
	}
	var all moves
	then := make([]shape, len(later))
	for i := range later[0] {
		if c.stays(i) {
			continue
		}
		for k, l := range later {
			then[k] = l[i]
		}
		by[i] = all.by(c.shapes[i], then)
	}
	table = ` data-moves="` + all.String() + `"`
	if c.round {
		table += ` data-round=""`
	}
	return by, table
}
