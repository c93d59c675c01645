package figure

import (
	"errors"

	"paceleaf/generator/unit"
)

// Options say for whom a pose is drawn.
type Options struct {
	ID       string      // unique on its page; the ids of the picture begin with it
	Title    string      // name of the exercise and the side, in words
	Describe string      // one sentence: where it starts, what moves, where it ends
	Side     unit.Side   // the working leg; both is drawn as right
	Range    *unit.Reach // the bend that is allowed; nil draws the whole pose without a range
	Moves    bool        // with what a script of the page needs to move it, where [Moves] says that it can
}

// Draw makes the picture as one svg element, without a style sheet: see [Style]. It fails where the pose is missing, a
// text or the id is, or the range has nothing of the pose.
func Draw(p Pose, o Options) ([]byte, error) {
	switch {
	case !p.Drawn():
		return nil, errors.New("the exercise has no pose")
	case o.ID == "" || o.Title == "" || o.Describe == "":
		return nil, errors.New("a figure needs an id, a title and a description")
	}
	m := movementOf(p)
	first, last, err := m.frames(o.Range)
	if err != nil {
		return nil, err
	}
	c := m.sheet(o)
	c.rings = o.Moves && Moves(p) && m.keeps(first, last, o.Range)
	m.lay(c, first, last, last, o.Range)
	if !c.rings {
		return c.svg(o, nil), nil
	}
	c.round = m.pose.gait() || m.pose.Motion == Cycle && whole(o.Range, m)
	return c.svg(o, m.later(c, first, last, o)), nil
}

// whole reports whether a range leaves all of a movement: only then a crank goes all the way round.
func whole(r *unit.Reach, m movement) bool {
	lo, hi := m.natural()
	return r == nil || float64(r.Straightest) <= lo+slackBend && float64(r.MostBent) >= hi-slackBend
}

// sheet is an empty sheet for a leg.
func (m movement) sheet(o Options) *canvas {
	return &canvas{mirror: o.Side == unit.Left, shapes: make([]shape, 0, 48), hard: make(obstacles, 0, 96), soft: make(obstacles, 0, 96)}
}

// moment is an empty sheet for a later moment of a picture.
func (c *canvas) moment() *canvas {
	return &canvas{mirror: c.mirror, rings: true, still: c, shapes: make([]shape, 0, len(c.shapes))}
}

// lay puts everything on one sheet: what is behind, the start, the range, the body at now, the arrow, the labels.
func (m movement) lay(c *canvas, first, last, now frame, r *unit.Reach) {
	if m.pose.View == FromFront {
		m.drawFront(c, first, last, now, r)
	} else {
		m.drawSide(c, first, last, now, r)
	}
	if m.pose.Floor != nil && c.still == nil {
		m.pose.Floor.draw(c)
	}
}

func (m movement) drawFront(c *canvas, first, last, now frame, r *unit.Reach) {
	c.avoid(&c.soft)
	c.stay(func() { m.frontBehind(c, first, r) })
	s := solveFront(now)
	c.avoid(&c.hard)
	c.front(s, m.pose.Work)
	for _, k := range m.pose.Kit {
		k.onBoth(c, s)
	}
	if c.still != nil {
		return
	}
	m.tilted(c, solveFront(first))
	c.into = nil
	m.arrow(c, first, last)
	if r != nil && !m.pose.Hidden {
		m.fromBeside(c, value(last.near.Knee), 0, *r)
	}
}

// tilted is the line through the hips where the movement begins.
func (m movement) tilted(c *canvas, was frontal) {
	for _, k := range m.pose.Kit {
		if k.Kind == HipLine {
			c.hipLine("f-out", was)
		}
	}
}

func (m movement) drawSide(c *canvas, first, last, now frame, r *unit.Reach) {
	c.avoid(&c.soft)
	c.stay(func() { m.sideBehind(c, first, last, r) })
	s := solve(now)
	c.avoid(&c.hard)
	c.farSide(s, m.pose.Work)
	c.torso(s)
	apart := m.pose.CloseUp == Ranges
	shown := r != nil && !m.pose.Hidden && !apart
	var w wedge
	c.stay(func() {
		if shown {
			c.avoid(nil)
			w = m.wedgeAt(solve(last).near, *r)
			w.draw(c)
			c.avoid(&c.hard)
		}
	})
	m.pedals(c, s)
	c.nearLeg(s.near, m.pose.Work)
	for _, k := range m.pose.Kit {
		k.moving(c, s)
	}
	c.part("f-body", func(d *trace) { d.arm(s.arm) })
	if c.still != nil {
		return
	}
	c.into = nil
	m.arrow(c, first, last)
	if shown {
		w.labels(c)
	}
	switch {
	case apart && r != nil:
		m.fromBeside(c, s.near.bend, s.near.thigh, *r)
	case m.pose.CloseUp != "" && !apart:
		c.closeUp(s.near, m.pose.CloseUp)
	}
}

// stays is how far the ankle of the other leg may go and still count as at rest, in hundredths of stature; chosen.
const stays = 6

// frontBehind is the frames before the last, then what one lies on, which is nearer to the reader than where one began.
func (m movement) frontBehind(c *canvas, first frame, r *unit.Reach) {
	if m.pose.Motion != Hold {
		c.frontGhost(solveFront(first))
	}
	if m.middle != nil {
		c.frontGhost(solveFront(softened(*m.middle, r)))
	}
	for _, k := range m.pose.Kit {
		k.furniture(c, point{})
	}
}

// sideBehind is furniture, then the frames before the last.
func (m movement) sideBehind(c *canvas, first, last frame, r *unit.Reach) {
	under := hipOf(last) // what is as high as the seat comes down takes the lower of both frames
	if h := hipOf(first); h.Y < under.Y {
		under = h
	}
	for _, k := range m.pose.Kit {
		if k.Kind == Bike {
			k.bikeFrame(c)
		}
		k.furniture(c, under)
	}
	if m.pose.gait() {
		return
	}
	if m.pose.Motion != Hold {
		s := solve(first)
		c.ghost(s, m.pose.Motion == Flight || s.far.ankle.sub(solve(last).far.ankle).length() > stays)
		c.joints("f-was", s.near)
	}
	if m.middle != nil {
		c.ghost(solve(softened(*m.middle, r)), true)
	}
}

func (m movement) pedals(c *canvas, s skeleton) {
	for _, k := range m.pose.Kit {
		if k.Kind == Bike {
			k.cranks(c, s)
		}
	}
}
