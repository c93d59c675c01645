package figure

import (
	"math"
	"strings"

	"paceleaf/generator/unit"
)

// A moving picture is the still one and how its pieces go. Each piece of an outline (a capsule of the thigh, the head, a rod)
// keeps its shape or nearly so: what the page holds is where it lies, turned by how much, at a few moments. The picture's
// data-moves has them, and each element's data-by tells by a letter a piece which of them it follows. A script of the page
// (templates/script/motion.js) goes through the moments on the press of a button; without it, or where its reader asked for
// less motion, the picture stands still. Nothing moves by itself. While it moves its range is hidden: that is drawn for one place of the
// knee.

// Moves reports whether there are frames between the first and the last: a hold has none, and a flight's are not drawn.
func Moves(p Pose) bool { return p.Drawn() && p.Motion != Hold && p.Motion != Flight }

// beats is into how many pieces a movement is cut, and outline how far a piece may lie from where it is drawn, in hundredths
// of stature; chosen: less is not seen.
const (
	beats   = 4
	outline = 0.35
)

// later are the same shapes at the moments of the movement: from its end back to its start, and of a whole turn past it
// to where it came from.
func (m movement) later(still *canvas, first, last frame, o Options) (all [][]shape) {
	n := beats
	if still.round {
		n = 2*beats - 1
	}
	for i := range n {
		t := 1 - float64(i+1)/beats
		now := mixed(first, last, t, m.axle)
		switch {
		case m.pose.gait():
			now = m.step(float64(i+1)*2/beats, o.Range)
		case still.round:
			now = m.round(first, last, float64(i+1)/beats)
		}
		c := still.moment()
		m.lay(c, first, last, now, o.Range)
		all = append(all, c.shapes)
	}
	return all
}

// forgiven is how far a knee may be drawn beyond its limit on the way, in degrees: a crank's knee is found, not given; chosen.
const forgiven = 1.0

// keeps reports whether no moment between the frames leaves the limit: where a foot and a shoulder stay on their places, the
// knee may bend further halfway than at either end. Such a picture stands still.
func (m movement) keeps(first, last frame, r *unit.Reach) bool {
	if r == nil || m.pose.View == FromFront {
		return true
	}
	for i := range 2*beats + 1 {
		t := float64(i) / (2 * beats)
		now := mixed(first, last, t, m.axle)
		if m.pose.gait() {
			now = m.step(4*t, r)
		}
		b := bendIn(now)
		if b < float64(r.Straightest)-forgiven || b > float64(r.MostBent)+forgiven {
			return false
		}
	}
	return true
}

// round is a moment of a turn that begins at the last frame: 1 is the first, 2 the last again.
func (m movement) round(first, last frame, t float64) frame {
	if t <= 1 {
		return mixed(last, first, t, m.axle)
	}
	return mixed(first, last, t-1, m.axle)
}

// moves are the ways of the pieces of a picture, each kept once.
type moves struct{ all []move }

// move is one way: the middle of the piece that showed it, and what happens to it at each later moment.
type move struct {
	middle point
	at     []turn
}

// turn is a piece turned by an angle (of two moments the script goes the short way round), stretched, with its middle put somewhere.
type turn struct {
	to             point
	degree, larger float64
	along, across  float64 // the same as what a way along the piece becomes: cosine and sine, stretched
}

func (t *turn) of(p, middle point) point {
	v := p.sub(middle)
	return t.to.add(point{float64(v.X*t.along) - float64(v.Y*t.across), float64(v.X*t.across) + float64(v.Y*t.along)})
}

// letters that name a move; one that stands still has the first.
const moveNames = "-abcdefghijklmnopqrstuvwxyz"

// by names the move of each piece of a shape; nothing where the whole stands still. later is the shape at each later moment.
func (m *moves) by(s shape, later []shape) string {
	var names strings.Builder
	then := make([][]point, len(later))
	for i, piece := range s.pieces() {
		for k, l := range later {
			then[k] = l.piece(i)
		}
		names.WriteByte(moveNames[m.find(piece, then)])
	}
	if strings.Trim(names.String(), "-") == "" {
		return ""
	}
	return names.String()
}

// find is the number of a move that takes a piece where it goes; 0 if it stays.
func (m *moves) find(piece []point, then [][]point) int {
	if stands(piece, then) {
		return 0
	}
	best, off := len(m.all), outline
	for i, v := range m.all {
		if by := v.misses(piece, then, off); by < off {
			best, off = i, by
		}
	}
	if best == len(m.all) && best+1 < len(moveNames) {
		m.all = append(m.all, moveOf(piece, then))
	}
	return best + 1
}

func stands(piece []point, then [][]point) bool {
	for _, to := range then {
		for i := range piece {
			if to[i].sub(piece[i]).length() > outline/2 {
				return false
			}
		}
	}
	return true
}

// misses is how far from its place a move puts the worst point of a piece; it stops looking beyond enough.
func (v move) misses(piece []point, then [][]point, enough float64) (worst float64) {
	for k := range v.at {
		for i, p := range piece {
			if worst = max(worst, v.at[k].of(p, v.middle).sub(then[k][i]).length()); worst >= enough {
				return worst
			}
		}
	}
	return worst
}

// moveOf fits a move to a piece: least squares over its points.
func moveOf(piece []point, then [][]point) move {
	v := move{middle: middleOf(piece)}
	for _, to := range then {
		t := turn{to: middleOf(to), larger: 1, along: 1}
		var along, across, size float64
		for i := range piece {
			a, b := piece[i].sub(v.middle), to[i].sub(t.to)
			along, across, size = along+a.dot(b), across+a.across().dot(b), size+a.dot(a)
		}
		if size > 0 {
			t.degree = degrees(math.Atan2(across, along))
			t.larger = math.Hypot(along, across) / size
			t.along, t.across = along/size, across/size
		}
		v.at = append(v.at, t)
	}
	return v
}

func middleOf(ps []point) (sum point) {
	for _, p := range ps {
		sum = sum.add(p)
	}
	return sum.times(1 / float64(len(ps)))
}

// String is what a script reads: move after move, each a list of moments, each x, y, degrees and what it is stretched by.
func (m moves) String() string {
	var all []string
	for _, v := range m.all {
		one := tenth(v.middle.X) + " " + tenth(v.middle.Y)
		for _, t := range v.at {
			one += "," + tenth(t.to.X) + " " + tenth(t.to.Y) + " " + tenth(t.degree)
			if math.Abs(t.larger-1) > 0.015 {
				one += " " + hundredth(t.larger)
			}
		}
		all = append(all, one)
	}
	return strings.Join(all, ";")
}
