package program

import (
	"fmt"
	"maps"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// What can be said of a program before any client meets it: what stands twice, what can never be met, what nobody will ever do.

func (r *reader) alone() {
	f := r.p.File
	r.twice(f.Phases, f.At, "phases", "phase", "a phase that stands twice is never reached the second time")
	r.twice(f.Limits, f.At, "limits", "limit file", "one is enough")
	seen := map[string]bool{}
	for _, a := range r.p.Activities {
		if seen[a.ID] {
			r.wrong(a.At.At("id"), fmt.Sprintf("activity %q stands twice", a.ID), "give each activity an id of its own")
		}
		seen[a.ID] = true
		r.reachable(a.Needs, "activity "+a.ID+" never opens")
	}
	for _, ph := range r.p.Phases {
		r.reachable(ph.Enter, "phase "+ph.ID+" is never reached")
		r.unused(ph)
	}
	if r.p.End != nil {
		r.reachable(r.p.End.Needs, "the end is never reached")
	}
	r.circles("easier", func(e *Exercise) string { return e.Easier })
	r.circles("harder", func(e *Exercise) string { return e.Harder })
}

// twice asks that a list names each id once.
func (r *reader) twice(ids []string, at basis.Origin, key, what, why string) {
	for i, id := range ids {
		if slices.Index(ids, id) < i {
			r.wrong(at.At(fmt.Sprintf("%s[%d]", key, i)), fmt.Sprintf("%s %q stands twice", what, id), "take one out: "+why)
		}
	}
}

// unused asks about slots that no session does.
func (r *reader) unused(ph *Phase) {
	for _, s := range ph.Slots {
		r.twice(s.Choose, s.At, "choose", "exercise", "the first that can be done is taken")
		if !slices.ContainsFunc(ph.Sessions, func(one Session) bool { return slices.Contains(one.Slots, s.ID) }) {
			r.faults.Add(source.Fault{File: s.At.File, Key: s.At.At("id").Key, Ask: true, What: fmt.Sprintf("no session does slot %q", s.ID),
				Instead: "name it in the slots of a [[session]], or take it away"})
		}
	}
}

// scales are the least and the most that a measure can be, where it has such ends.
var scales = map[string][2]float64{"pain": {0, 10}, "pain-next-morning": {0, 10}, "acl-rsi": {0, 100}, "acl-rsi-short": {0, 100}, "ikdc": {0, 100},
	"koos-pain": {0, 100}, "koos-symptoms": {0, 100}, "koos-adl": {0, 100}, "koos-sport": {0, 100}, "koos-qol": {0, 100}, "kos-adls": {0, 100},
	"lefs": {0, 80}, "tsk-11": {11, 44}, "tegner": {0, 10}, "extension": {-30, 90}, "flexion": {0, 170}, "quads-lag": {0, 90}}

// reachable asks that each criterion can be met, and all of a list together.
func (r *reader) reachable(list []Criterion, otherwise string) {
	floor, top := map[string]Mark{}, map[string]Mark{}
	for i := range list {
		c := &list[i]
		r.reachable(c.All, otherwise)
		for j := range c.Any {
			r.reachable(c.Any[j:j+1], otherwise)
		}
		sense, mark := c.Sense()
		if sense == "" || c.senses() != 1 {
			continue
		}
		least, most := span(c.Measure, mark)
		v := mark.rank()
		if sense == "at least" && v > most || sense == "above" && v >= most || sense == "at most" && v < least || sense == "below" && v <= least {
			r.wrong(c.At.At("measure"), fmt.Sprintf("%s cannot be %s %s: %s", c.Measure, sense, mark.Typed, otherwise), fmt.Sprintf("write a mark that %s can come to", c.Measure))
			continue
		}
		if !always(c.When) {
			continue
		}
		if up := sense == "at least" || sense == "above"; up {
			floor[c.Measure] = higher(floor[c.Measure], mark)
		} else {
			top[c.Measure] = lower(top[c.Measure], mark)
		}
		if low, high := floor[c.Measure], top[c.Measure]; low.Typed != "" && high.Typed != "" && low.rank() > high.rank() {
			r.wrong(c.At.At("measure"), fmt.Sprintf("%s is asked for at %s or more and at %s or less: %s", c.Measure, low.Typed, high.Typed, otherwise), "take one of the two out, or join them with any = […]")
		}
	}
}

// span is from where to where a measure goes; a grade of swelling from the first to the last.
func span(measure string, m Mark) (least, most float64) {
	if m.Grade != "" {
		return 0, float64(len(unit.GradeZero.Words()) - 1)
	}
	if ends, known := scales[measure]; known {
		return ends[0], ends[1]
	}
	return 0, 1e9 // a share, a length, a time: nothing below 0
}

// rank is a mark as a number, a grade by its order.
func (m Mark) rank() float64 {
	if m.Grade != "" {
		return float64(m.Grade.Rank())
	}
	return m.Number
}

func higher(a, b Mark) Mark {
	if a.Typed == "" || b.rank() > a.rank() {
		return b
	}
	return a
}

func lower(a, b Mark) Mark {
	if a.Typed == "" || b.rank() < a.rank() {
		return b
	}
	return a
}

// always reports whether a condition leaves nobody out.
func always(w When) bool {
	return len(w.Graft)+len(w.Also)+len(w.Sport) == 0 && w.GraftFrom == "" && w.Leg == "" && w.UnderAge == 0
}

// circles asks that the easier or harder neighbours lead somewhere: an exercise is not easier than itself.
func (r *reader) circles(key string, next func(*Exercise) string) {
	for _, id := range slices.Sorted(maps.Keys(r.p.Exercises)) {
		way := []string{id}
		for at := next(r.p.Exercises[id]); at != "" && r.p.Exercises[at] != nil; at = next(r.p.Exercises[at]) {
			if at == id {
				if id == slices.Min(way) { // told once, at its first file
					r.wrong(r.p.Exercises[id].At.At(key), fmt.Sprintf("%s goes in a circle: %s", key, arrows(append(way, id))), "take one "+key+" out")
				}
				break
			}
			if slices.Contains(way, at) {
				break // a circle that this one only leads into
			}
			way = append(way, at)
		}
	}
}

func arrows(ids []string) (way string) {
	for i, id := range ids {
		if i > 0 {
			way += " → "
		}
		way += id
	}
	return way
}
