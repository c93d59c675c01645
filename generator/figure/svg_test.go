package figure

import (
	"encoding/xml"
	"math"
	"strings"
	"testing"
)

// drawing is a finished picture, read again from its own text as a stranger would.
type drawing struct {
	ViewBox  string `xml:"viewBox,attr"`
	Role     string `xml:"role,attr"`
	Labelled string `xml:"aria-labelledby,attr"`
	Title    named  `xml:"title"`
	Desc     named  `xml:"desc"`
	Paths    []struct {
		Class string `xml:"class,attr"`
		D     string `xml:"d,attr"`
	} `xml:"path"`
	Dots []struct {
		Class string  `xml:"class,attr"`
		X     float64 `xml:"cx,attr"`
		Y     float64 `xml:"cy,attr"`
		R     float64 `xml:"r,attr"`
	} `xml:"circle"`
	Texts []struct {
		Class string  `xml:"class,attr"`
		X     float64 `xml:"x,attr"`
		Y     float64 `xml:"y,attr"`
		Text  string  `xml:",chardata"`
	} `xml:"text"`
}

type named struct {
	ID   string `xml:"id,attr"`
	Text string `xml:",chardata"`
}

func parsed(t *testing.T, svg []byte) (d drawing) {
	t.Helper()
	if err := xml.Unmarshal(svg, &d); err != nil {
		t.Fatalf("%v\n%s", err, svg)
	}
	return d
}

// joints are hip, knee and ankle of a leg, by the class of their dots.
func (d drawing) joints(class string) (ps []point) {
	for _, c := range d.Dots {
		if c.Class == class {
			ps = append(ps, point{c.X, c.Y})
		}
	}
	return ps
}

// bendOf measures a bend from three dots with a plain cosine.
func bendOf(ps []point) float64 {
	u, v := ps[0].sub(ps[1]), ps[2].sub(ps[1])
	return 180 - math.Acos(clamp((u.X*v.X+u.Y*v.Y)/(math.Hypot(u.X, u.Y)*math.Hypot(v.X, v.Y)), -1, 1))*180/math.Pi
}

// polygons flattens a path of M, L, A, C and Z to closed rings.
func polygons(t *testing.T, d string) (rings [][]point) {
	t.Helper()
	r := pathReader{t: t, text: d}
	var ring []point
	for {
		command := r.command()
		switch command {
		case 0:
			return append(rings, ring)
		case 'M':
			if len(ring) > 2 {
				rings = append(rings, ring)
			}
			ring = []point{r.point()}
		case 'L':
			ring = append(ring, r.point())
		case 'A':
			rx, ry, turn := r.number(), r.number(), r.number()
			large, sweep := r.number(), r.number()
			ring = append(ring, arcTo(ring[len(ring)-1], r.point(), rx, ry, turn, large == 1, sweep == 1)...)
		case 'C':
			a, b, c, e := ring[len(ring)-1], r.point(), r.point(), r.point()
			for i := 1; i <= 8; i++ {
				k := float64(i) / 8
				ab, bc, ce := between(a, b, k), between(b, c, k), between(c, e, k)
				ring = append(ring, between(between(ab, bc, k), between(bc, ce, k), k))
			}
		case 'Z':
		default:
			t.Fatalf("command %q in %q", command, d)
		}
	}
}

type pathReader struct {
	t    *testing.T
	text string
}

func (r *pathReader) command() byte {
	r.text = strings.TrimLeft(r.text, " ")
	if r.text == "" {
		return 0
	}
	c := r.text[0]
	r.text = r.text[1:]
	return c
}

func (r *pathReader) number() float64 {
	r.text = strings.TrimLeft(r.text, " ")
	i := 0
	for i < len(r.text) && (i == 0 && r.text[i] == '-' || r.text[i] == '.' || r.text[i] >= '0' && r.text[i] <= '9') {
		i++
	}
	v := number(r.t, r.text[:i])
	r.text = r.text[i:]
	return v
}

func (r *pathReader) point() point {
	x := r.number()
	return point{x, r.number()}
}

// arcTo is the centre form of SVG's arc (SVG 2, B.2.4), in 12 steps.
func arcTo(a, b point, rx, ry, turn float64, large, sweep bool) (out []point) {
	sin, cos := math.Sincos(turn * math.Pi / 180)
	dx, dy := (a.X-b.X)/2, (a.Y-b.Y)/2
	x, y := cos*dx+sin*dy, -sin*dx+cos*dy
	if k := x*x/(rx*rx) + y*y/(ry*ry); k > 1 {
		rx, ry = rx*math.Sqrt(k), ry*math.Sqrt(k)
	}
	q := math.Sqrt(math.Max(0, (rx*rx*ry*ry-rx*rx*y*y-ry*ry*x*x)/(rx*rx*y*y+ry*ry*x*x)))
	if large == sweep {
		q = -q
	}
	cx, cy := q*rx*y/ry, -q*ry*x/rx
	from, to := math.Atan2((y-cy)/ry, (x-cx)/rx), math.Atan2((-y-cy)/ry, (-x-cx)/rx)
	if sweep && to < from {
		to += 2 * math.Pi
	}
	if !sweep && to > from {
		to -= 2 * math.Pi
	}
	for i := 1; i <= 12; i++ {
		s, c := math.Sincos(from + (to-from)*float64(i)/12)
		px, py := cx+rx*c, cy+ry*s
		out = append(out, point{cos*px - sin*py + (a.X+b.X)/2, sin*px + cos*py + (a.Y+b.Y)/2})
	}
	return out
}

// inside counts how often a ring winds round p.
func inside(rings [][]point, p point) bool {
	winds := 0
	for _, ring := range rings {
		for i, a := range ring {
			b := ring[(i+1)%len(ring)]
			side := (b.X-a.X)*(p.Y-a.Y) - (p.X-a.X)*(b.Y-a.Y)
			switch {
			case a.Y <= p.Y && b.Y > p.Y && side > 0:
				winds++
			case a.Y > p.Y && b.Y <= p.Y && side < 0:
				winds--
			}
		}
	}
	return winds != 0
}
