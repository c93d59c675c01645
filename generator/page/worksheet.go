package page

import (
	"cmp"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// Worksheet is the page that the therapist decides by; it never leaves the desk. Its first sheet is the decision; all that this rests on
// stands below, part by part, folded on a screen and printed on paper. Every number on it can be redone by hand from the page itself,
// down to the file and key in which the first of them was typed.
func Worksheet(p *plan.Plan, w *words.Words) View {
	d := &desk{sheet: sheet{w}, p: p, tests: chain{say: w.Reason}}
	code := p.Client.Code
	v := View{
		Format: 1, Kind: "worksheet", Lang: w.Lang, Dir: w.Dir, Code: code,
		Title:   d.say("worksheet-window", "code", code, "block", p.Block.Number),
		Draft:   d.say("draft"),
		Running: d.say("worksheet-running", "code", code, "day", w.Day(p.AsOf)),
		Parts: []Part{d.deskHead(), d.decide(), d.asked(), d.bothLegs(), d.changes(), d.cameBack(), d.prescribed(), d.weighed(), d.deviations(), d.deskDates(), d.groups(),
			d.attention(), d.cert(), d.named(), d.howEach()},
	}
	v.Parts = slices.DeleteFunc(v.Parts, func(p Part) bool { return len(kept(p.Nodes)) == 0 })
	return v
}

// desk is a worksheet in the making.
type desk struct {
	sheet
	p     *plan.Plan
	tests chain // sums that stand on the page already
}

func (d *desk) deskHead() Part {
	p, e := d.p, d.p.Event
	head := d.part("desk-head", factual("who",
		d.labelled("event", nonEmpty(", ", d.event(), weekSince(d, e))),
		d.labelled("other-leg", d.word("other-leg", string(p.Client.OtherLeg))),
		d.labelled("program", p.Program.Title),
		d.labelled("stage", d.stage()),
		d.labelled("earned", phaseTitle(p.Stage.Earned)),
		d.labelled("block", d.say("block", "number", p.Block.Number, "weeks", p.Block.Weeks, "from", d.w.Day(p.Block.Starts), "until", d.w.Day(blockEnd(p)))),
		d.labelled("next-visit", d.visitDay()),
		d.labelled("measure", d.remeasure()),
		d.labelled("asked-by", d.therapist(p.Block.By)),
		d.labelled("delivery", nonEmpty(", ", d.word("delivery", string(p.Block.Delivery)), d.word("supervised", string(p.Block.Supervised)))),
	), d.note("on-paper", "year", d.p.AsOf.Year))
	head.Title = d.say("worksheet-title", "code", p.Client.Code, "block", p.Block.Number)
	return head
}

// nearDay is a day without its year, where that is the year of the page.
func (d *desk) nearDay(on unit.Day) string {
	if on.Year == d.p.AsOf.Year {
		return d.w.DayMonth(on)
	}
	return d.w.Day(on)
}

// folded is a part that a screen shows when its line is touched, and paper always. The line says what is inside.
func (d *desk) folded(id, line string, nodes ...Node) Part {
	if len(kept(nodes)) == 0 {
		return Part{}
	}
	return d.part(id, fold("inside", line, nodes...))
}

// onScreen is a part that paper has only where it has been opened: what stands behind the numbers, not what one decides by.
func (d *desk) onScreen(id, line string, nodes ...Node) Part {
	if len(kept(nodes)) == 0 {
		return Part{}
	}
	return d.part(id, fold("sums", line, nodes...))
}

func (d *desk) visitDay() string {
	if d.p.Block.NextVisit == nil {
		return d.say("not-booked")
	}
	return d.w.Day(*d.p.Block.NextVisit)
}

func weekSince(d *desk, e *plan.Event) string {
	if e == nil {
		return ""
	}
	return d.say("week-since", "n", d.p.Stage.WeeksSince)
}

func (d *desk) event() string {
	e := d.p.Event
	if e == nil {
		return ""
	}
	parts := []string{d.word("event", string(e.Kind)), d.word("event", e.Procedure), d.reason(basis.Said(e.Graft))}
	for _, also := range e.Also {
		parts = append(parts, d.word("event", also))
	}
	what := nonEmpty(", ", parts...)
	return d.say("event", "what", what, "side", d.word("side", string(e.Side)), "day", d.w.Day(e.Date))
}

func (d *desk) stage() string {
	s := d.p.Stage
	key := "stage-taken"
	switch {
	case s.Recorded && s.Ahead:
		key = "stage-ahead"
	case s.Recorded:
		key = "stage-recorded"
	}
	return d.say(key, "stage", phaseTitle(s.Set), "day", d.w.Day(s.Since))
}

// therapist is the name behind an id of clinic.toml.
func (d *desk) therapist(id string) string {
	if d.p.Clinic != nil {
		for _, t := range d.p.Clinic.Therapists {
			if t.ID == id {
				return nonEmpty(", ", t.Name, t.Role, t.Registration)
			}
		}
	}
	return id
}

// called is the bare name behind an id of clinic.toml.
func (d *desk) called(id string) string {
	name, _, _ := strings.Cut(d.therapist(id), ", ")
	return name
}

// sides are the legs in the order of the page: the one of the event first.
func (d *desk) sides() []unit.Side {
	if d.p.Event != nil && d.p.Event.Side == unit.Right {
		return []unit.Side{unit.Right, unit.Left}
	}
	return []unit.Side{unit.Left, unit.Right}
}

// leg names a leg by side and role.
func (d *desk) leg(s unit.Side) string {
	role := "leg-other"
	switch {
	case s == unit.Both || d.p.Event == nil || d.p.Event.Side == unit.Both:
		role = "leg-plain"
	case s == d.p.Event.Side && d.p.Event.Kind == "operation":
		role = "leg-operated"
	case s == d.p.Event.Side:
		role = "leg-index"
	case d.p.Client.OtherLeg == unit.Donor:
		role = "leg-donor"
	case d.p.Client.OtherLeg == unit.OperatedToo:
		role = "leg-operated-too"
	}
	return d.say(role, "side", d.word("side", string(s)))
}

// signature is where the therapist signs, and a guardian of somebody under 18.
func (d *desk) signature() Node {
	guardian := ""
	if d.p.Young() {
		guardian = d.say("guardian-signs", "who", cmp.Or(d.p.Client.Guardian, d.say("no-guardian")), "line", d.say("to-fill"))
	}
	return group("sign-off", d.say("part-sign-off"), 3, factual("signature", d.labelled("signed-by", d.say("to-fill")), d.labelled("signed-on", d.say("to-fill")),
		d.labelled("guardian", guardian)), d.note("sign-off"))
}
