package page

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// The retest form is for the next measuring day: on paper, in the order of testing, last time's values and the set-ups
// beside the blanks, and which tests a limit does not allow yet. Rest and questions come first, what tires comes last
// (tool default). Nothing on it is a result.

// Retest is the form of one client for a day.
func Retest(p *plan.Plan, due plan.Due, on unit.Day, w *words.Words) View {
	r := retest{sheet: sheet{w}, p: p, restless: due.Restless()}
	v := View{Format: 1, Kind: "retest", Lang: w.Lang, Dir: w.Dir, Code: p.Client.Code,
		Title:   r.say("retest-window", "code", p.Client.Code, "day", w.Day(on)),
		Running: r.say("retest-running", "code", p.Client.Code, "knee", r.knee(), "day", w.Day(on))}
	head := r.part("retest-head", r.note("retest-note"), factual("retest",
		r.labelled("retest-client", p.Client.Code), r.labelled("retest-knee", r.knee()), r.labelled("retest-week", r.weekOn(on)),
		r.labelled("retest-by", strings.Repeat("_", 24))))
	head.Title = r.say("retest-title", "day", w.Day(on))
	v.Parts = []Part{head}
	for _, part := range []Part{
		r.part("retest-rest", r.questions(due.Day), r.bends(due.Day)),
		r.part("retest-forms", r.forms(due.Questionnaires)),
		r.part("retest-standing", r.tests(due.Standing, r.noSetUp, r.ifCalm)),
		r.part("retest-hops", r.tests(due.Hops, r.noSetUp, r.ifCalm)),
		r.part("retest-strength", r.tests(due.Strength, r.ofTest, r.ifCalm)),
		r.part("retest-lifts", r.tests(due.Lifts, r.ofLift, r.easily)),
	} {
		if part.Nodes = kept(part.Nodes); len(part.Nodes) > 0 {
			v.Parts = append(v.Parts, part)
		}
	}
	return v
}

type retest struct {
	sheet
	p        *plan.Plan
	restless basis.Said // why hops and maximal tests wait for today's look; empty where they need not
}

// knee is the event's knee in words.
func (r retest) knee() string {
	if r.p.Event == nil {
		return ""
	}
	return r.word("side", string(r.p.Event.Side))
}

func (r retest) weekOn(on unit.Day) string {
	if r.p.Event == nil {
		return ""
	}
	return fmt.Sprint(on.WeeksSince(r.p.Event.Date))
}

// questions are what is asked once, not of each leg.
func (r retest) questions(values []plan.DueValue) Node {
	t := r.table("retest", r.say("retest-questions"), "retest-what", "retest-last", "retest-today")
	for _, v := range values {
		if side, _ := sided(v.Key); side == "" {
			t.row("", r.nameOf(v.Key), r.last(v), "")
			leaveBlank(&t, 2)
		}
	}
	return t
}

// forms are the questionnaires: one score each.
func (r retest) forms(list []plan.DueTest) Node {
	t := r.table("retest", "", "retest-what", "retest-last", "retest-today")
	for _, q := range list {
		last := ""
		for _, v := range q.Values {
			last = r.last(v)
		}
		t.row("", r.named(q), last, "")
		leaveBlank(&t, 2)
	}
	return t
}

// bends is what is measured of each knee, without a load.
func (r retest) bends(values []plan.DueValue) Node {
	t := r.legs(r.say("retest-range"))
	var keys []string
	last := map[string]string{}
	for _, v := range values {
		side, key := sided(v.Key)
		if side == "" {
			continue
		}
		value := v.Last
		if key == "beyond_straight_deg" {
			key, value = "lacks_extension_deg", r.say("retest-beyond", "n", v.Last)
		}
		if side == unit.Left {
			keys = append(keys, key)
		}
		last[string(side)+key] = value
	}
	for _, key := range keys {
		t.row("", r.nameOf(key), "", last[string(unit.Left)+key], "", last[string(unit.Right)+key], "")
		leaveBlank(&t, 3, 5)
	}
	return t
}

// legs is a table with a place to write for each leg; the event's own is marked.
func (r retest) legs(title string) Node {
	t := r.table("retest", title, "retest-what", "retest-set-up", "retest-last-left", "retest-left", "retest-last-right", "retest-right")
	if e := r.p.Event; e != nil {
		for side, at := range map[unit.Side]int{unit.Left: 3, unit.Right: 5} {
			if e.Side == side || e.Side == unit.Both {
				t.Head[at] = r.say("retest-own", "leg", t.Head[at])
			}
		}
	}
	return t
}

// tests are rows of one kind of test, each with its set-up.
func (r retest) tests(list []plan.DueTest, setUp func(id string) string, but func(plan.DueTest) string) Node {
	t := r.legs("")
	for _, test := range list {
		last := map[unit.Side]string{}
		for _, v := range test.Values {
			side, _ := sided(v.Key)
			last[side] = r.last(v) + ownUnit(v)
		}
		left, right := last[unit.Left], last[unit.Right]
		if one := last[""]; one != "" {
			left = one // with both legs together
		}
		t.row("", r.named(test), setUp(test.ID), left, "", right, "")
		leaveBlank(&t, 3, 5)
		if closed := r.closed(test); closed != "" {
			r.inOwn(&t, r.say("retest-not-yet", "why", closed))
		} else {
			r.inOwn(&t, but(test))
		}
	}
	return t
}

// leaveBlank leaves cells of the last row empty, to write in.
func leaveBlank(t *Node, cells ...int) {
	row := t.Rows[len(t.Rows)-1]
	for _, i := range cells {
		row[i] = Cell{Class: "blank"}
	}
}

// sided parts left.flexion_deg into the leg and the key.
func sided(key string) (unit.Side, string) {
	for _, side := range []unit.Side{unit.Left, unit.Right} {
		if key == string(side) {
			return side, ""
		}
		if rest, ok := strings.CutPrefix(key, string(side)+"."); ok {
			return side, rest
		}
	}
	return "", key
}

// last is what was typed last; a word of a closed set is said in the words of the page.
func (r retest) last(v plan.DueValue) string { return r.reason(basis.Said(unquoted(v.Last))) }

// ownUnit is the unit of last time's trials, where it is not the one that the row is read in.
func ownUnit(v plan.DueValue) string {
	ending := v.Key[strings.LastIndexByte(v.Key, '_')+1:]
	if v.Last == "" || !slices.Contains([]string{"lbf", "kgf", "in", "m"}, ending) {
		return ""
	}
	return " " + ending
}

func unquoted(value string) string { return strings.Trim(value, `"[]`) }

// nameOf is a key of a test day in words.
func (r retest) nameOf(key string) string {
	return r.word("retest-key", strings.ReplaceAll(key, "_", "-"))
}

// named is a test with the day on which it was last made.
func (r retest) named(test plan.DueTest) string {
	when := r.say("retest-never")
	if !test.LastOn.IsZero() {
		when = r.say("retest-on", "day", r.w.DayMonth(test.LastOn))
	}
	return r.testName(test.ID) + " (" + when + ")"
}

// testName is a test, hop or questionnaire in words, or the title of an exercise.
func (r retest) testName(id string) string {
	if e := r.p.Program.Exercises[id]; e != nil {
		return e.Title
	}
	hop := "hop-" + id + "-lsi"
	if name := r.word("measure", hop); name != hop {
		return name
	}
	if name := r.word("measure", id); name != id {
		return name
	}
	return r.word("retest-test", id)
}

func (r retest) noSetUp(string) string { return "" }

// ofTest is the set-up of a test of force, as typed in client.toml.
func (r retest) ofTest(id string) string {
	s, ok := r.p.Client.Setups[id]
	if !ok {
		return r.say("retest-no-set-up")
	}
	gauge := s.Gauge
	for _, g := range r.p.Clinic.Gauges {
		if g.ID == s.Gauge {
			gauge = g.Kind + " (" + g.ID + ")"
		}
	}
	return nonEmpty(dot, gauge, r.reason(basis.Said(s.Mode)), typedOf(s.Angle), r.arm("left", s.Left.Arm), r.arm("right", s.Right.Arm))
}

func (r retest) arm(side string, arm basis.Num[unit.Metres]) string {
	if text := typedOf(arm); text != "" {
		return r.say("retest-arm", "leg", r.word("side", side), "arm", text)
	}
	return ""
}

// ofLift is the set-up of an exercise at its machine.
func (r retest) ofLift(id string) string {
	s, ok := r.p.Client.Setups[id]
	if !ok {
		return r.say("retest-no-set-up")
	}
	h := handout{r.p, r.w}
	return cmp.Or(nonEmpty(dot, s.Device, h.floorSetUp(&s)), r.say("retest-no-set-up"))
}

// typedOf is a value as a person typed it, with its unit.
func typedOf[Q unit.Quantity](n basis.Num[Q]) string {
	if s := n.Step(); s != nil {
		return s.Typed
	}
	return ""
}
