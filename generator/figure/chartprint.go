package figure

import (
	"bytes"
	"html"
)

// sketch writes a chart. Its units are pixels of a column on a phone: y goes down, text is never smaller than lettered.
type sketch struct{ b bytes.Buffer }

// lettered is the size of all letters of a chart that is 300 wide: 12.3 pixels in a column of 284, the narrowest on a phone of 360.
const lettered = 13.0

func (p *sketch) open(id, title, describe string, w, h float64) {
	id = html.EscapeString(id)
	p.b.WriteString(`<svg class="fig chart" id="` + id + `" role="img" aria-labelledby="` + id + `-t ` + id + `-d" viewBox="0 0 ` + tenth(w) + ` ` + tenth(h) + `">`)
	p.b.WriteString(`<title id="` + id + `-t">` + html.EscapeString(title) + `</title><desc id="` + id + `-d">` + html.EscapeString(describe) + `</desc>`)
}

func (p *sketch) close() []byte {
	p.b.WriteString("</svg>")
	return p.b.Bytes()
}

// path writes a path; an empty one is left out.
func (p *sketch) path(class, d string) {
	if d != "" {
		p.b.WriteString(`<path class="` + class + `" d="` + d + `"/>`)
	}
}

// dots writes discs of one kind.
func (p *sketch) dots(class string, r float64, at []point) {
	p.b.WriteString(`<g class="` + class + `">`)
	for _, o := range at {
		p.b.WriteString(`<circle cx="` + tenth(o.X) + `" cy="` + tenth(o.Y) + `" r="` + tenth(r) + `"/>`)
	}
	p.b.WriteString("</g>")
}

// write puts letters with their middle at the height y; the class says on which side of x they stand.
func (p *sketch) write(class string, x, y float64, text string) {
	if text != "" {
		p.b.WriteString(`<text class="` + class + `" x="` + tenth(x) + `" y="` + tenth(y+lettered*0.35) + `">` + html.EscapeString(text) + `</text>`)
	}
}

// wideOf is about how wide a text is: never less than it is in a common face of the page, so that what is given this room has enough.
func wideOf(text string) (w float64) {
	for _, r := range text {
		switch {
		case r >= 'A' && r <= 'Z':
			w += 0.76
		case r == ' ' || r == '.' || r == ',' || r == 'i' || r == 'l' || r == 'j' || r == '·':
			w += 0.38
		case r == 'm' || r == 'w' || r == '%' || r > 0x2fff:
			w += 1
		default:
			w += 0.62
		}
	}
	return float64(w * lettered)
}
