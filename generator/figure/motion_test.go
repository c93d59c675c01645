package figure

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// moved is a picture as the script of the page moves it, read from its own text: the same sums as templates/script/motion.js.
type movedPicture struct {
	moves [][][]float64 // move, moment, numbers
	round bool
	knee  [3]string // the moves of the dots of hip, knee and ankle
	dots  []point
}

var (
	movesOf = regexp.MustCompile(` data-moves="([^"]*)"( data-round="")?`)
	dotOf   = regexp.MustCompile(`<circle class="f-joint" cx="([^"]*)" cy="([^"]*)" r="1.1"(?: data-by="(.)")?/>`)
)

func readMoves(t *testing.T, svg []byte) (p movedPicture) {
	t.Helper()
	table := movesOf.FindSubmatch(svg)
	if table == nil {
		return p
	}
	p.round = len(table[2]) > 0
	for _, m := range strings.Split(string(table[1]), ";") {
		var moments [][]float64
		for _, at := range strings.Split(m, ",") {
			var ns []float64
			for _, n := range strings.Fields(at) {
				ns = append(ns, number(t, n))
			}
			moments = append(moments, ns)
		}
		p.moves = append(p.moves, moments)
	}
	for i, d := range dotOf.FindAllSubmatch(svg, -1) {
		p.dots = append(p.dots, point{number(t, string(d[1])), number(t, string(d[2]))})
		p.knee[i] = string(d[3])
	}
	return p
}

// at puts a point where a move takes it at a time between two moments.
func (p movedPicture) at(name string, from point, time float64) point {
	i := strings.Index(moveNames, name) - 1
	if name == "" || i < 0 {
		return from
	}
	m := p.moves[i]
	get := func(k, n int) float64 {
		k %= len(m)
		switch {
		case n < len(m[k]):
			return m[k][n]
		case n == 3:
			return 1
		}
		return 0
	}
	k := int(time)
	mix := func(n int) float64 { return lerp(get(k, n), get(k+1, n), time-float64(k)) }
	v := from.sub(point{m[0][0], m[0][1]}).times(mix(3))
	by := get(k+1, 2) - get(k, 2)
	sin, cos := math.Sincos(radians(get(k, 2) + (by-360*math.Round(by/360))*(time-float64(k))))
	return point{mix(0) + v.X*cos - v.Y*sin, mix(1) + v.X*sin + v.Y*cos}
}

// over is how far beyond a range the knee is drawn at the worst of ten times between each two moments, and when.
func (p movedPicture) over(r unit.Reach) (worst, when float64) {
	worst = math.Inf(-1)
	for i := range 10 * (len(p.moves[0]) - 1) {
		at := float64(i) / 10
		var ps []point
		for k, d := range p.dots {
			ps = append(ps, p.at(p.knee[k], d, at))
		}
		b := bendOf(ps)
		if over := math.Max(float64(r.Straightest)-b, b-float64(r.MostBent)); over > worst {
			worst, when = over, at
		}
	}
	return worst, when
}

// A moving picture weighs no more than a still one may, and shows no bend that the limit forbids at any time of its way, not
// between its moments either.
func TestMotionStaysWithinTheLimit(t *testing.T) {
	moving, heaviest, worst := 0, 0, 0.0
	for _, e := range exercises(t) {
		for _, r := range append(limits(e.Range), unit.Reach{MostBent: -1}) {
			o := Options{ID: "f1", Title: "t", Describe: "d", Side: unit.Left, Range: &r, Moves: true}
			if r.MostBent < 0 {
				o.Range = nil
			}
			svg, err := Draw(e.Figure, o)
			if err != nil {
				t.Fatal(err)
			}
			heaviest = max(heaviest, len(svg))
			p := readMoves(t, svg)
			if moves := Moves(e.Figure); len(p.moves) > 0 && !moves || moves && (o.Range == nil || r == *e.Range) && len(p.moves) == 0 {
				t.Errorf("%s: %d moves, Moves says %v", e.id, len(p.moves), Moves(e.Figure))
			}
			if len(p.moves) == 0 || len(p.dots) != 3 {
				continue
			}
			moving++
			if o.Range == nil || e.Figure.View == FromFront {
				continue
			}
			over, at := p.over(r)
			worst = math.Max(worst, over)
			if over > 2 {
				t.Errorf("%s, %v: at moment %.1f the knee is drawn %.1f° beyond", e.id, r, at, over)
			}
		}
	}
	t.Logf("%d moving pictures, at most %d bytes, at most %.2f° beyond a limit on the way", moving, heaviest, worst)
	if heaviest > 8<<10 {
		t.Errorf("a moving picture weighs %d bytes, want at most %d", heaviest, 8<<10)
	}
	if moving < 200 {
		t.Errorf("only %d pictures move", moving)
	}
}

// At each moment every piece lies where a picture of that moment has it; from the front, where limbs are seen shortened and the
// trunk bends to the side, about there.
func TestMotionIsDrawnFromThePose(t *testing.T) {
	for _, e := range exercises(t) {
		if !Moves(e.Figure) {
			continue
		}
		m := movementOf(e.Figure)
		first, last, err := m.frames(e.Range)
		if err != nil {
			t.Fatal(err)
		}
		o := Options{Side: unit.Right, Range: e.Range}
		c := m.sheet(o)
		c.rings = true
		m.lay(c, first, last, last, e.Range)
		later := m.later(c, first, last, o)
		var all moves
		for i := range later[0] {
			var then []shape
			for _, l := range later {
				if len(l[i].path) > 0 && commands(l[i].path) != commands(c.shapes[i].path) {
					t.Fatalf("%s: shape %d has other commands at another moment", e.id, i)
				}
				then = append(then, l[i])
			}
			most := map[bool]float64{false: 2, true: 4}[e.Figure.View == FromFront]
			if off := all.off(c.shapes[i], then); off > most {
				t.Errorf("%s: a piece of %s is %.2f from its place", e.id, c.shapes[i].class, off)
			}
		}
		if n := len(all.all); n+1 >= len(moveNames) {
			t.Errorf("%s needs %s moves", e.id, strconv.Itoa(n))
		}
	}
}

// off is how far from its place the worst piece of a shape is put.
func (m *moves) off(s shape, then []shape) (worst float64) {
	names := m.by(s, then)
	for k, piece := range s.pieces() {
		if names == "" || names[k] == '-' {
			continue
		}
		var to [][]point
		for _, l := range then {
			to = append(to, l.pieces()[k])
		}
		worst = math.Max(worst, m.all[strings.IndexByte(moveNames, names[k])-1].misses(piece, to, math.Inf(1)))
	}
	return worst
}

func commands(path []byte) string {
	return regexp.MustCompile(`[-0-9. ]+`).ReplaceAllString(string(path), "")
}

// What cannot move says so.
func TestMovesSaysNo(t *testing.T) {
	for id, want := range map[string]bool{"squat": true, "plank": false, "box-jump": false, "stationary-cycling": true} {
		if got := Moves(byID(t, id).Figure); got != want {
			t.Errorf("%s moves: %v", id, got)
		}
	}
	if Moves(Pose{}) {
		t.Error("nothing moves")
	}
}
