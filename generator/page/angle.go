package page

import (
	"paceleaf/generator/plan"
	"strconv"
	"strings"

	"paceleaf/generator/figure"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// landmarks name a bend without a number: each holds up to and with its angle. Chosen so that a person can check them
// by eye against straight and a right angle. "A right angle" holds from 90° to 3° beyond and never below it: who may bend to 86°
// and is told of a right angle would go 4° too far.
var landmarks = []struct {
	upTo unit.Degrees
	key  string
}{
	{0, "beyond"}, {14, "nearly-straight"}, {34, "soft"}, {54, "half"}, {69, "well-bent"}, {84, "short-of-right"},
	{belowRight, "nearly-right"}, {93, "right"}, {114, "past-right"}, {129, "deep"}, {180, "fullest"},
}

// belowRight is the last bend, of those written to a hundredth, that is less than a right angle.
const belowRight unit.Degrees = 89.99

// degrees writes a bend as a number, never to whole degrees: a limit of 72.6° is not 73.
func (h handout) degrees(d unit.Degrees) string {
	return h.w.Say("angle.deg", "deg", h.w.Number(float64(d), 2))
}

// bend writes a bend with its landmark: 70° (a little short of a right angle).
func (h handout) bend(d unit.Degrees) string {
	if d == 0 {
		return h.w.Say("angle.straight")
	}
	for _, l := range landmarks {
		if d <= l.upTo {
			return h.w.Say("angle.bend", "deg", h.degrees(d), "mark", h.w.Say("landmark."+l.key))
		}
	}
	return h.degrees(d)
}

// end is the end of a range that a measurement made as narrow as it is; "" where limits or nature did.
type end string

const (
	straightEnd end = "straight"
	bentEnd     end = "bent"
)

// measuredEnd reads from a dose which end of its range was measured.
func measuredEnd(d plan.WeekDose) end {
	key, _ := d.RangeBy.Parts()
	switch {
	case key == "":
		return ""
	case strings.Contains(key, "lacks"):
		return straightEnd
	}
	return bentEnd
}

// inRange says through which range to move and what must not be passed. Where an exercise for range ends a little beyond what
// the knee does now, it says so: that end is an aim, not a ban.
func (h handout) inRange(e *program.Exercise, r unit.Reach, bends *unit.Degrees, measured end) string {
	w := h.w
	from, to := h.bend(r.Straightest), h.bend(r.MostBent)
	if e.Isometric() || r.Arc() == 0 {
		switch {
		case r.Arc() == 0 && r.MostBent == 0:
			return w.Say("range.hold-straight")
		case r.Arc() == 0:
			return w.Say("range.hold", "at", to)
		}
		return w.Say("range.hold-between", "from", from, "to", to)
	}
	says := h.through(e, r)
	if e.Range == nil {
		return says
	}
	switch {
	case r.Straightest <= e.Range.Straightest:
	case measured == straightEnd: // what the knee can do is told as that: nobody has forbidden more
		says += " " + w.Say("range.as-straight")
	default:
		says += " " + w.Say("range.no-straighter", "at", h.degrees(r.Straightest))
	}
	switch {
	case r.MostBent >= e.Range.MostBent:
	case measured == bentEnd && bends == nil:
		says += " " + w.Say("range.as-bent")
	case bends != nil && *bends < r.MostBent:
		says += " " + w.Say("range.a-little-further", "now", h.degrees(*bends), "at", h.degrees(r.MostBent))
	default:
		says += " " + w.Say("range.no-deeper", "at", h.degrees(r.MostBent))
	}
	return says
}

// lacksStraight reports whether a leg, or either of both, could not be straightened when it was last measured.
func (h handout) lacksStraight(side unit.Side) bool {
	var left, right unit.Degrees
	if h.Found == nil {
		return false
	}
	for _, k := range h.Found.Knees {
		if v, ok := k.Left.Straight.Value(); ok {
			left = v
		}
		if v, ok := k.Right.Straight.Value(); ok {
			right = v
		}
	}
	return side != unit.Right && left > 0 || side != unit.Left && right > 0
}

// laterRange is the range of a later week: how far the knee bends now has been said in the first.
func (h handout) laterRange(p plan.Prescription, d plan.WeekDose) string {
	says := h.rangeOf(p, d)
	if d.Bends == nil || d.Range == nil {
		return says
	}
	at := h.degrees(d.Range.MostBent)
	return strings.Replace(says, h.w.Say("range.a-little-further", "now", h.degrees(*d.Bends), "at", at), h.w.Say("range.a-little-further-later", "at", at), 1)
}

// through says how a knee goes through a range. Of a walk or a jump nobody moves it from here to there: it may bend so far.
func (h handout) through(e *program.Exercise, r unit.Reach) string {
	from, to := h.bend(r.Straightest), h.bend(r.MostBent)
	switch {
	case byTheWay(e) && e.Figure.Hidden:
		return h.w.Say("range.up-to", "to", to)
	case byTheWay(e):
		return h.w.Say("range.between", "from", from, "to", to)
	case e.Chain == program.OpenChain && r.Straightest > 0:
		return h.w.Say("range.move", "from", to, "to", from)
	}
	return h.w.Say("range.move", "from", from, "to", to)
}

// byTheWay reports whether the knee bends while its owner does something else: walks, runs, pedals, jumps. Its picture is of a
// flight or of a turn, or of one moment of what does not hold still.
func byTheWay(e *program.Exercise) bool {
	switch e.Figure.Motion {
	case figure.Flight, figure.Cycle:
		return true
	case figure.Hold:
		return !e.Isometric()
	}
	return false
}

// pin names the hole that stops the movement; nothing where the machine has none.
func (h handout) pin(hole int, at unit.Degrees) string {
	if hole == 0 {
		return ""
	}
	return h.w.Say("range.pin", "pin", strconv.Itoa(hole), "at", h.degrees(at))
}
