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
	Moves    bool        // with later frames, started by a script of the page; larger, and only where Moves says so
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
	c := m.draw(first, last, last, o)
	if !o.Moves || !Moves(p) {
		return c.svg(o, nil), nil
	}
	return c.svg(o, m.later(first, last, o)), nil
}

// draw lays everything on one sheet: what is behind, the start, the range, the body at now, the arrow, the labels.
func (m movement) draw(first, last, now frame, o Options) *canvas {
	c := &canvas{mirror: o.Side == unit.Left}
	if m.pose.View == FromFront {
		m.drawFront(c, first, last, now, o.Range)
	} else {
		m.drawSide(c, first, last, now, o.Range)
	}
	if m.pose.Floor != nil {
		m.pose.Floor.draw(c, point{c.top.X + 12, 4})
	}
	return c
}

func (m movement) drawFront(c *canvas, first, last, now frame, r *unit.Reach) {
	c.into = &c.soft
	if m.pose.Motion != Hold {
		c.frontGhost(solveFront(first))
	}
	if m.middle != nil {
		c.frontGhost(solveFront(softened(*m.middle, r)))
	}
	for _, k := range m.pose.Kit { // what one lies on is nearer to the reader than where one began
		k.furniture(c, point{})
	}
	s := solveFront(now)
	c.into = &c.hard
	c.front(s, m.pose.Work)
	for _, k := range m.pose.Kit {
		k.onBoth(c, s)
	}
	c.into = nil
	m.arrow(c, first, last)
}

func (m movement) drawSide(c *canvas, first, last, now frame, r *unit.Reach) {
	m.behind(c, first, last, r)
	s := solve(now)
	c.into = &c.hard
	c.farSide(s, m.pose.Work)
	c.torso(s)
	shown := r != nil && !m.pose.Hidden
	var w wedge
	if shown {
		c.into = nil
		w = m.wedgeAt(solve(last).near, *r)
		w.draw(c)
		c.into = &c.hard
	}
	m.pedals(c, s)
	c.nearLeg(s.near, m.pose.Work)
	for _, k := range m.pose.Kit {
		k.moving(c, s)
	}
	c.part("f-body", func(d *trace) { d.arm(s.arm) })
	c.into = nil
	m.arrow(c, first, last)
	if shown {
		w.labels(c)
	}
	if m.pose.CloseUp != "" {
		c.closeUp(s.near, m.pose.CloseUp)
	}
}

// behind is what stands behind the body: furniture, then the frames before the last.
func (m movement) behind(c *canvas, first, last frame, r *unit.Reach) {
	c.into = &c.soft
	under := solve(last).hip // what is as high as the seat comes down takes the lower of both frames
	if h := solve(first).hip; h.Y < under.Y {
		under = h
	}
	for _, k := range m.pose.Kit {
		if k.Kind == Bike {
			k.bikeFrame(c)
		}
		k.furniture(c, under)
	}
	both := m.pose.Work == BothWork
	if m.pose.Motion != Hold {
		s := solve(first)
		c.ghost(s, both || m.pose.Motion == Flight)
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
