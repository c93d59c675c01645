package figure

import (
	"errors"
	"fmt"
	"math"
)

// Chart is what a chart shows, as data. Higher is always drawn higher up; a page that wants less to be better turns the sign.
type Chart struct {
	ID       string   `json:"id"`              // unique on its page; the ids of the picture begin with it
	Unit     string   `json:"unit"`            // stands over the axis on the left
	Across   string   `json:"across"`          // stands under the axis below: weeks since the operation
	FromZero bool     `json:"from_zero"`       // the axis begins at zero: a force is never cut off
	Lines    []Course `json:"lines"`           // the leg of the event first
	Marks    []Level  `json:"marks,omitempty"` // heights to be reached
	Weeks    *Spell   `json:"weeks,omitempty"` // a stretch of weeks that is shaded
	Title    string   `json:"-"`               // name of the picture
	Describe string   `json:"-"`               // the same in words, for those who do not see it
}

// Course is what one leg gave over time.
type Course struct {
	Name  string `json:"name"`  // stands at its end
	Other bool   `json:"other"` // dashed with open dots; else solid with filled ones
	Spots []Spot `json:"spots"` // from left to right
}

// Spot is one value. A value that does not exist has no spot; what comes after it breaks the line.
type Spot struct {
	X       float64  `json:"x"` // weeks
	Y       float64  `json:"y"`
	Low     *float64 `json:"low,omitempty"` // ends of the error band; nil: not known
	High    *float64 `json:"high,omitempty"`
	Breaks  bool     `json:"breaks,omitempty"`  // no line comes here from the spot before
	Ceiling bool     `json:"ceiling,omitempty"` // the most that may be, not what is due: a bar lies over the dot
}

// Level is a height with its name.
type Level struct {
	At   float64 `json:"at"`
	Name string  `json:"name"`
}

// Spell is a stretch of weeks. Open has no end.
type Spell struct {
	From float64 `json:"from"`
	To   float64 `json:"to"`
	Open bool    `json:"open,omitempty"`
}

// Draw makes the picture as one svg element, without a style sheet: see [Style]. It fails where nothing was measured, a
// text or the id is missing, or a number is none.
func (c Chart) Draw() ([]byte, error) {
	if err := c.wrong(); err != nil {
		return nil, err
	}
	l := c.layout()
	p := &sketch{}
	p.open(c.ID, c.Title, c.Describe, chartWide, chartHigh)
	l.spell(p, c.Weeks)
	l.axes(p, c.Unit, c.Across)
	for _, m := range c.Marks {
		p.path("c-mark", "M"+tenth(l.left)+" "+tenth(l.y(m.At))+"H"+tenth(l.right))
	}
	for i := range c.Lines { // the event's leg lies on top
		l.line(p, c.Lines[len(c.Lines)-1-i])
	}
	l.ends(p, c)
	return p.close(), nil
}

// wrong says why a chart cannot be drawn.
func (c Chart) wrong() error {
	if c.ID == "" || c.Title == "" || c.Describe == "" {
		return errors.New("a chart needs an id, a title and a description")
	}
	var all []float64
	for _, l := range c.Lines {
		for _, s := range l.Spots {
			all = append(all, s.X)
		}
	}
	if len(all) == 0 {
		return errors.New("nothing was measured")
	}
	for _, v := range append(append(all, c.heights()...), c.spellEnds()...) {
		if math.IsNaN(v) || math.Abs(v) > largest {
			return fmt.Errorf("%g cannot be drawn", v)
		}
	}
	return nil
}

// largest is a number beyond which nothing is a measurement; chosen, so that no sum of ticks runs over.
const largest = 1e6

// heights are all values that must find room.
func (c Chart) heights() (all []float64) {
	for _, l := range c.Lines {
		for _, s := range l.Spots {
			all = append(all, s.Y)
			for _, end := range []*float64{s.Low, s.High} {
				if end != nil {
					all = append(all, *end)
				}
			}
		}
	}
	for _, m := range c.Marks {
		all = append(all, m.At)
	}
	return all
}

func (c Chart) spellEnds() []float64 {
	switch {
	case c.Weeks == nil:
		return nil
	case c.Weeks.Open:
		return []float64{c.Weeks.From}
	}
	return []float64{c.Weeks.From, c.Weeks.To}
}
