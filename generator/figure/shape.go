package figure

import (
	"bytes"
	"strconv"
)

// shape is one element of the picture. Its numbers are in the picture's own units: y goes down, left legs are mirrored.
type shape struct {
	class string
	path  []byte  // of a path
	at    point   // of a dot or a text
	r     float64 // of a dot
	text  string
}

// appendTo writes the shape as SVG. later are the same shape at later moments, if it moves.
func (s shape) appendTo(b *bytes.Buffer, later []shape) {
	switch {
	case s.text != "":
		b.WriteString(`<text class="` + s.class + `" x="` + tenth(s.at.X) + `" y="` + tenth(s.at.Y) + `">` + s.text + `</text>`)
	case s.r > 0:
		b.WriteString(`<circle class="` + s.class + `" cx="` + hundredth(s.at.X) + `" cy="` + hundredth(s.at.Y) + `" r="` + tenth(s.r) + `"`)
		closed(b, "circle", s.turns(later))
	default:
		b.WriteString(`<path class="` + s.class + `" d="`)
		b.Write(s.path)
		b.WriteString(`"`)
		closed(b, "path", s.turns(later))
	}
}

func closed(b *bytes.Buffer, tag, inside string) {
	if inside == "" {
		b.WriteString("/>")
		return
	}
	b.WriteString(">" + inside + "</" + tag + ">")
}

// tenth and hundredth print a number with at most so many decimals.
func tenth(v float64) string     { return rounded(v, 1) }
func hundredth(v float64) string { return rounded(v, 2) }

func rounded(v float64, digits int) string {
	b := strconv.AppendFloat(nil, v, 'f', digits, 64)
	b = bytes.TrimRight(b, "0")
	b = bytes.TrimSuffix(b, []byte("."))
	if string(b) == "-0" || len(b) == 0 {
		return "0"
	}
	return string(b)
}
