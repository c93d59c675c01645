package figure

import (
	"fmt"
	"strings"
)

// written finds what is missing, and what is written in two ways.
func (j *judge) written() {
	p := j.pose
	if p.Start.Anchor == nil {
		j.wrong("start.anchor", "the body rests on nothing", `write anchor = { point = "foot", at = [0, 0] }`)
	}
	if p.Start.Near == nil {
		j.wrong("start.near", "the working leg is missing", "write near = { hip = …, knee = …, ankle = … }")
	}
	if p.Start.Far == nil && p.Work != BothWork {
		j.wrong("start.far", "the other leg is missing", `write far = { … }, or work = "both"`)
	}
	if p.Start.Arm == nil {
		j.wrong("start.arm", "the arms are missing", "write arm = { shoulder = …, elbow = … }")
	}
	if p.End == nil && p.Motion != Hold && !(p.gait() && p.Middle != nil) {
		j.wrong("end", "the movement has no end", `write [figure.end], or motion = "hold"`)
	}
	if p.Above > 0 && p.View != FromFront {
		j.wrong("from_above", "from the side nothing comes toward the reader", `take it out, or write view = "front"`)
	}
	for _, b := range j.bodies() {
		j.frame(b.key, b.body)
	}
	j.sameWay()
	j.places()
}

func (j *judge) frame(key string, b *Body) {
	for _, l := range b.legs() {
		if l.leg.ways() > 1 {
			j.wrong(key+"."+l.key, "the leg is placed in two ways", "keep one of flat, ball_on, heel_on, toward, ball_at, heel_at")
		}
		if (len(l.leg.BallAt) == 2 || len(l.leg.HeelAt) == 2) && (l.leg.Knee != nil || l.leg.Hip != nil) {
			j.wrong(key+"."+l.key, "hip or knee are written, and would be found from the foot", "take hip and knee out")
		}
	}
	if b.Arm != nil && len(b.Arm.HandAt) > 0 && b.Arm.HandOn != "" {
		j.wrong(key+".arm", "the hand is in two places", "keep hand_at or hand_on")
	}
}

// ways is in how many ways a leg is placed beyond its angles.
func (g Leg) ways() (n int) {
	for _, is := range []bool{g.Flat, g.BallOn != nil, g.HeelOn != nil, g.Toward != nil, len(g.BallAt) > 0, len(g.HeelAt) > 0} {
		if is {
			n++
		}
	}
	return n
}

// way names the one way in which a leg is placed.
func (g Leg) way() string {
	switch {
	case g.BallOn != nil:
		return "ball_on"
	case g.HeelOn != nil:
		return "heel_on"
	case g.Toward != nil:
		return "toward"
	case len(g.BallAt) > 0:
		return "ball_at"
	case len(g.HeelAt) > 0:
		return "heel_at"
	case g.Flat:
		return "flat"
	}
	return "hip"
}

// sameWay: what lies between two frames can be found only where both are written alike.
func (j *judge) sameWay() {
	m := movementOf(j.pose)
	if j.pose.Motion == Flight {
		return
	}
	if m.start.near.way() != m.end.near.way() {
		j.wrong("end.near", "the leg is written by %s, in the start by %s", "write both alike", m.end.near.way(), m.start.near.way())
	}
	if m.start.far.way() != m.end.far.way() {
		j.wrong("end.far", "the leg is written by %s, in the start by %s", "write both alike", m.end.far.way(), m.start.far.way())
	}
	if m.start.anchor != m.end.anchor {
		j.wrong("end.anchor", "the body rests on its %s, in the start on its %s", "let both frames rest on the same place", m.end.anchor, m.start.anchor)
	}
}

// places: everything that is put somewhere needs two numbers.
func (j *judge) places() {
	j.place("track_shift", j.pose.Shift, false)
	j.place("push", j.pose.Push, j.pose.Motion == Hold && j.pose.Track != "")
	if len(j.pose.Push) == 2 && (j.pose.Track == "" || (j.pose.Motion == Repeat || j.pose.Motion == Passive || j.pose.Motion == "")) {
		j.wrong("push", "nothing is pushed", "write track, and motion = \"hold\", \"flight\" or \"cycle\"")
	}
	for i, k := range j.pose.Kit {
		j.place(fmt.Sprintf("kit[%d].at", i), k.At, k.fixed())
		j.place(fmt.Sprintf("kit[%d].to", i), k.To, k.Kind == Rail)
	}
	for _, b := range j.bodies() {
		if b.body.Anchor != nil {
			j.place(b.key+".anchor.at", b.body.Anchor.At, true)
		}
		for _, l := range b.body.legs() {
			j.place(b.key+"."+l.key+".ball_at", l.leg.BallAt, false)
			j.place(b.key+"."+l.key+".heel_at", l.leg.HeelAt, false)
		}
		if b.body.Arm != nil {
			j.place(b.key+".arm.hand_at", b.body.Arm.HandAt, false)
		}
	}
	j.floor()
}

func (j *judge) place(key string, xy []float64, must bool) {
	if len(xy) != 2 && (must || len(xy) > 0) {
		j.wrong(key, "a place has two numbers", "write "+key[strings.LastIndex(key, ".")+1:]+" = [x, y]")
	}
}

func (j *judge) floor() {
	f := j.pose.Floor
	if f == nil {
		return
	}
	for _, list := range [][][]float64{f.Run, f.Cones, f.Other} {
		for _, xy := range list {
			j.place("floor_plan", xy, true)
		}
	}
	j.place("floor_plan.plant", f.Plant, false)
	if len(f.Run) == 1 {
		j.wrong("floor_plan.run", "a way has two corners or more", "write run = [[0, 0], [0, 40]]")
	}
	if len(f.Run)+len(f.Plant)+len(f.Other) == 0 {
		j.wrong("floor_plan", "the plan is empty", "write run = [[0, 0], [0, 40]], or plant = [0, 0]")
	}
}

// keyed is a frame or a leg with the key that it stands under.
type (
	keyedBody struct {
		key  string
		body *Body
	}
	keyedLeg struct {
		key string
		leg *Leg
	}
)

// bodies are the frames that are written.
func (j *judge) bodies() (written []keyedBody) {
	for _, b := range []keyedBody{{"start", j.pose.Start}, {"middle", j.pose.Middle}, {"end", j.pose.End}} {
		if b.body != nil {
			written = append(written, b)
		}
	}
	return written
}

func (b *Body) legs() (written []keyedLeg) {
	for _, l := range []keyedLeg{{"near", b.Near}, {"far", b.Far}} {
		if l.leg != nil {
			written = append(written, l)
		}
	}
	return written
}

// fixed reports whether a piece stands at a place of the room.
func (k Kit) fixed() bool {
	switch k.Kind {
	case Lever, Weight, Barbell, Dumbbell, FootPlate, Slider, Strap, Loop, Pads, BackPad, Ball, HipLine:
		return false
	}
	return true
}
