package page

import (
	html "html/template"

	"paceleaf/generator/figure"
	"paceleaf/generator/unit"
)

// Drawing is what a figure shows, as data: the view holds it, so that a signature is over what is drawn and not over the
// hand that draws it.
type Drawing struct {
	ID    string      `json:"id"` // unique on its page
	Pose  figure.Pose `json:"pose"`
	Side  unit.Side   `json:"side"`
	Range *unit.Reach `json:"range,omitempty"` // in degrees; without it no range is drawn
	Shows string      `json:"shows,omitempty"` // the movement in words, for who does not see it; the steps tell it to the eye
	Play  string      `json:"-"`               // says on its button that it will move; without it nothing moves
	Halt  string      `json:"-"`               // and that it will stand still
	svg   []byte
}

// pictured is a figure: its picture, and below it in a line whose leg it is and how far the knee goes. The ear gets that line from
// the picture, with the movement in words; Markdown has the line alone. named is the name of the picture. It fails where the
// pose cannot show the range.
func pictured(named, title, says string, d Drawing) (Node, error) {
	d.ID = anchor(d.ID)
	svg, err := figure.Draw(d.Pose, figure.Options{ID: d.ID, Title: oneLine(named), Describe: d.describe(says), Side: d.Side, Range: d.Range, Moves: d.Play != ""})
	if err != nil {
		return Node{}, err
	}
	d.svg = svg
	return Node{Kind: "figure", Title: title, Says: says, Drawing: &d}, nil
}

// describe is what the ear gets of a picture: the movement, then its line.
func (d Drawing) describe(says string) string { return oneLine(nonEmpty(" ", d.Shows, says)) }

// Picture is the drawing as HTML. It is trusted as it is: the figure room writes every letter of it and escapes both texts.
func (n Node) Picture() html.HTML {
	switch {
	case n.Chart != nil:
		return html.HTML(n.Chart.svg)
	case n.Drawing != nil:
		return html.HTML(n.Drawing.svg)
	}
	return ""
}

// Caption is what a figure shows, in words.
func (n Node) Caption() []Span {
	return tidySpans([]Span{{Text: n.Title, Strong: true}, {Text: " " + n.Says}})
}
