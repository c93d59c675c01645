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

// Worksheet is the page that the therapist decides by; it never leaves the desk. Every number on it can be redone by hand
// from the page itself, down to the file and key in which the first of them was typed.
func Worksheet(p *plan.Plan, w *words.Words) View {
	d := &desk{sheet: sheet{w}, p: p, tests: chain{say: w.Reason}}
	code := p.Client.Code
	v := View{
		Format: 1, Kind: "worksheet", Lang: w.Lang, Dir: w.Dir, Code: code,
		Title:   d.say("worksheet-window", "code", code, "block", p.Block.Number),
		Draft:   d.say("draft"),
		Running: d.say("worksheet-running", "code", code, "day", w.Day(p.AsOf)),
		Parts: []Part{d.deskHead(), d.attention(), d.asked(), d.goals(), d.cameBack(), d.charts(), d.bothLegs(), d.changes(), d.trends(), d.groups(), d.prescribed(), d.passedOver(), d.weighed(), d.deviations(),
			d.deskDates(), d.named(), d.cert(), d.signOff(), d.earlier(), d.typedIn()},
	}
	v.Parts = slices.DeleteFunc(v.Parts, func(p Part) bool { return len(kept(p.Nodes)) == 0 })
	return v
}

// desk is a worksheet in the making.
type desk struct {
	sheet
	p     *plan.Plan
	tests chain // sums of tests that stand on the page already
}

func (d *desk) deskHead() Part {
	p, e := d.p, d.p.Event
	head := d.part("desk-head", factual("who",
		d.labelled("code", p.Client.Code),
		d.labelled("program", p.Program.Title),
		d.labelled("event", d.event()),
		d.labelled("other-leg", d.word("other-leg", string(p.Client.OtherLeg))),
		d.labelled("block", d.say("block", "number", p.Block.Number, "weeks", p.Block.Weeks, "from", d.w.Day(p.Block.Starts), "until", d.w.Day(blockEnd(p)))),
		d.labelled("as-of", d.w.Day(p.AsOf)),
		d.labelled("week", weekSince(d, e)),
		d.labelled("stage", d.stage()),
		d.labelled("earned", phaseTitle(p.Stage.Earned)),
		d.labelled("measure", d.remeasure()),
		d.labelled("asked-by", d.therapist(p.Block.By)),
		d.labelled("delivery", nonEmpty(", ", d.word("delivery", string(p.Block.Delivery)), d.word("supervised", string(p.Block.Supervised)))),
	), d.note("on-paper"), d.note("how-to-read"))
	head.Title = d.say("worksheet-title", "code", p.Client.Code, "block", p.Block.Number)
	return head
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
	what := nonEmpty(", ", append([]string{d.word("event", string(e.Kind)), e.Procedure, d.reason(basis.Said(e.Graft))}, e.Also...)...)
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

func (d *desk) signOff() Part {
	guardian := ""
	if d.p.Young() {
		guardian = d.say("guardian-signs", "who", cmp.Or(d.p.Client.Guardian, d.say("no-guardian")), "line", d.say("to-fill"))
	}
	return d.part("sign-off", d.note("sign-off"), factual("signature", d.labelled("signed-by", d.say("to-fill")), d.labelled("signed-on", d.say("to-fill")),
		d.labelled("guardian", guardian)))
}

// typedIn lists every typed value behind the plan, in the order of files and keys; the trials of one list on one line.
func (d *desk) typedIn() Part {
	table := d.table("typed", d.say("typed-caption"), "file", "key", "typed", "kept")
	last := basis.Origin{}
	for _, s := range trailOf(d.p).typed() {
		at := s.At
		if i := strings.LastIndexByte(at.Key, '['); i > 0 && strings.HasSuffix(at.Key, "]") {
			at.Key = at.Key[:i]
		}
		typed, kept := cmp.Or(s.Typed, s.Text), d.outcome(s)
		if n := len(table.Rows) - 1; n >= 0 && at == last {
			row := table.Rows[n]
			row[2].Spans, row[3].Spans = plain(textOf(row[2].Spans)+", "+typed), plain(textOf(row[3].Spans)+", "+kept)
			continue
		}
		table.row("", standsAt(basis.Origin{File: at.File, Line: at.Line}, nil), at.Key, typed, kept)
		last = at
	}
	return d.part("typed", table)
}
