package figure

import (
	"fmt"
	"math"

	"paceleaf/generator/unit"
)

// movement is a pose ready to be asked for any moment of it: 0 is the start, 1 the end.
type movement struct {
	pose       Pose
	start, end frame
	middle     *frame
	axle       *point
}

func movementOf(p Pose) movement {
	both := p.Work == BothWork
	m := movement{pose: p, start: frameOf(p.Start, frame{above: p.Above}, both)}
	m.end = frameOf(p.End, m.start, both)
	if p.Middle != nil {
		f := frameOf(p.Middle, m.start, both)
		m.middle = &f
	}
	for _, k := range p.Kit {
		if k.Kind == Bike {
			at := pointOf(k.At)
			m.axle = &at
		}
	}
	return m
}

func (m movement) at(t float64) frame { return mixed(m.start, m.end, t, m.axle) }

// bend is the bend of the working knee at a moment.
func (m movement) bend(t float64) float64 {
	if f := m.at(t); f.near.Knee != nil || m.pose.View == FromFront {
		return value(f.near.Knee)
	}
	return bendIn(m.at(t))
}

// natural is the range that the pose itself goes through.
func (m movement) natural() (lo, hi float64) {
	a, b := m.bend(0), m.bend(1)
	return math.Min(a, b), math.Max(a, b)
}

// bends reports whether the working knee is what moves.
func (m movement) bends() bool {
	lo, hi := m.natural()
	return hi-lo > slackBend
}

// slackBend forgives the last digits of a found angle, in degrees.
const slackBend = 0.01

// halvings find a bend to a thousandth of a degree.
const halvings = 18

// moment finds when the knee has a bend; the bend must lie between those of start and end.
func (m movement) moment(bend float64) float64 {
	from, to := m.bend(0), m.bend(1)
	if math.Abs(from-to) < slackBend {
		return 1
	}
	lo, hi := 0.0, 1.0
	for range halvings {
		t := (lo + hi) / 2
		if b := m.bend(t); (b < bend) == (from < to) {
			lo = t
		} else {
			hi = t
		}
	}
	return (lo + hi) / 2
}

// within returns the first and last moment that a range allows.
func (m movement) within(r *unit.Reach) (first, last float64, err error) {
	if r == nil {
		return 0, 1, nil
	}
	lo, hi := m.natural()
	want := [2]float64{float64(r.Straightest), float64(r.MostBent)}
	if want[0] > want[1] {
		return 0, 0, fmt.Errorf("the range [%g, %g] is empty", want[0], want[1])
	}
	if want[0] > hi+slackBend || want[1] < lo-slackBend {
		return 0, 0, fmt.Errorf("the range [%g, %g] has nothing of the pose, which goes from %.1f to %.1f", want[0], want[1], lo, hi)
	}
	first, last = 0, 1
	if b := m.bend(0); b < want[0] || b > want[1] {
		first = m.moment(clamp(b, want[0], want[1]))
	}
	if b := m.bend(1); b < want[0] || b > want[1] {
		last = m.moment(clamp(b, want[0], want[1]))
	}
	return first, last, nil
}

// frames are the start and the end that a range leaves. A hold has one: its end. A flight bends each of its own; so does
// a movement whose range is not shown, since its knee is not what moves it.
func (m movement) frames(r *unit.Reach) (first, last frame, err error) {
	switch {
	case m.pose.gait():
		f := m.step(0, r)
		return f, f, nil
	case m.pose.Motion == Flight || m.pose.View == FromFront && !m.bends():
		return softened(m.start, r), softened(m.end, r), nil
	case m.pose.Hidden && m.end.near.Knee != nil:
		return eased(m.start, r), eased(m.end, r), nil
	case m.pose.Hidden:
		m = m.stepped(r)
	}
	a, b, err := m.within(r)
	if err != nil {
		return frame{}, frame{}, err
	}
	if m.pose.Motion == Hold {
		a = b
	}
	return m.at(a), m.at(b), nil
}

// Beside reports whether a pose shows the knee and its range in a window of its own, from the side, and whether the knee bends
// on the way or only stays within the range.
func Beside(p Pose) (shown, bends bool) {
	if !p.Drawn() || p.Hidden || p.View != FromFront && p.CloseUp != Ranges {
		return false, false
	}
	return true, movementOf(p).bends()
}

// Ends tells the bend of the working knee in the first and the last frame that Draw would draw, in degrees, and an error where
// the range cannot be drawn. ok is false where the pose shows no range. Of a pose from the front whose knee only stays within
// the range these are the ends of the range: see [Beside].
func Ends(p Pose, r *unit.Reach) (first, last unit.Degrees, ok bool, err error) {
	if !p.Drawn() || r == nil || p.Hidden {
		return 0, 0, false, nil
	}
	m := movementOf(p)
	a, b, err := m.frames(r)
	switch {
	case err != nil:
		return 0, 0, false, err
	case p.View == FromFront && !m.bends():
		return r.Straightest, r.MostBent, true, nil
	case p.View == FromFront:
		return unit.Degrees(value(a.near.Knee)), unit.Degrees(value(b.near.Knee)), true, nil
	}
	return unit.Degrees(bendIn(a)), unit.Degrees(bendIn(b)), true, nil
}
