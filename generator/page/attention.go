package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
)

// attention is what the therapist should look at before anything else: symptoms, flags, doubts.
func (d *desk) attention() Part {
	nodes := d.action()
	if h := d.p.Symptoms.Held; h != nil {
		nodes = append(nodes, factual("held", d.labelled("held", d.say("held", "day", d.w.Day(h.From), "who", d.therapist(h.By), "reason", h.Reason))))
	}
	quiet := len(nodes)
	if len(d.p.Symptoms.Signals) > 0 {
		nodes = append(nodes, d.signals())
	}
	if len(d.p.Flags) > 0 {
		table := d.table("flags", d.say("flags-caption"), "flag", "about", "says")
		for _, f := range d.p.Flags {
			table.row("", f.ID, d.reason(basis.Said(f.About)), d.reason(f.Says))
		}
		nodes = append(nodes, table)
	}
	if f := d.p.Found; f != nil && len(f.Doubts) > 0 {
		table := d.table("doubts", d.say("doubts-caption"), "id", "says")
		for _, doubt := range f.Doubts {
			table.row("", doubt.ID, d.reason(doubt.Says))
		}
		nodes = append(nodes, table)
	}
	if len(nodes) == quiet {
		nodes = append(nodes, d.note("no-flags"))
	}
	return d.part("attention", nodes...)
}

// action is the strictest signal, with its reason.
func (d *desk) action() []Node {
	s := d.p.Symptoms
	if s.Action.Rank() <= plan.NoAction.Rank() {
		return []Node{paragraph("lead", d.say("symptoms-none"))}
	}
	class := "lead"
	if urgency(s.Action) > 0 {
		class = "alert"
	}
	return []Node{paragraph(class, d.say("symptoms", "action", d.word("action", string(s.Action)))), factual("symptoms",
		d.labelled("because", nonEmpty("; ", d.word("level", s.Level), d.reason(s.Because))),
		d.labelled("exercises", nonEmpty(", ", s.Exercises...)),
		d.labelled("seen-on", d.w.Day(s.On)),
	)}
}

func (d *desk) signals() Node {
	table := d.table("signals", d.say("signals-caption"), "on", "action", "level", "why")
	for _, s := range d.p.Symptoms.Signals {
		table.row("", d.w.Day(s.On), d.word("action", string(s.Action)), nonEmpty(": ", d.word("level", s.Level), s.Exercise), d.reason(s.Because))
	}
	return table
}
