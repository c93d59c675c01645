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
	rings [][]point // of a path that may move: what it goes through, piece by piece
}

// pieces are the points of each piece of a shape.
func (s shape) pieces() [][]point {
	if s.r > 0 {
		return [][]point{{s.at}}
	}
	return s.rings
}

// piece is one of them.
func (s shape) piece(i int) []point {
	if s.r > 0 {
		return []point{s.at}
	}
	return s.rings[i]
}

// appendTo writes the shape as SVG. by names the moves of its pieces, if it moves.
func (s shape) appendTo(b *bytes.Buffer, by string) {
	if by != "" {
		by = ` data-by="` + by + `"`
	}
	switch {
	case s.text != "":
		b.WriteString(`<text class="` + s.class + `" x="` + tenth(s.at.X) + `" y="` + tenth(s.at.Y) + `">` + s.text + `</text>`)
	case s.r > 0:
		b.WriteString(`<circle class="` + s.class + `" cx="` + hundredth(s.at.X) + `" cy="` + hundredth(s.at.Y) + `" r="` + tenth(s.r) + `"` + by + `/>`)
	default:
		b.WriteString(`<path class="` + s.class + `" d="`)
		b.Write(s.path)
		b.WriteString(`"` + by + `/>`)
	}
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
