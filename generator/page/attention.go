package page

import "paceleaf/generator/plan"

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
	return []Node{paragraph(class, d.say("symptoms", "action", d.word("action", string(s.Action)))),
		paragraph("note", d.say("symptoms-because", "why", nonEmpty("; ", d.word("level", s.Level), nonEmpty(", ", s.Exercises...), d.reason(s.Because)), "day", d.nearDay(s.On)))}
}

// attention is every flag, doubt and signal in full; the first sheet has them in short.
func (d *desk) attention() Part {
	signals := d.table("signals", d.say("signals-caption"), "on", "action", "level", "why")
	for _, s := range d.p.Symptoms.Signals {
		signals.row("", d.nearDay(s.On), d.word("action", string(s.Action)), nonEmpty(": ", d.word("level", s.Level), s.Exercise), d.reason(s.Because))
	}
	flags := d.table("flags", d.say("flags-caption"), "flag", "says", "about")
	for _, l := range d.flagsOf(func(string) bool { return true }) {
		flags.row("", l.id, d.reason(l.says), nonEmpty(", ", l.about...))
	}
	if len(signals.Rows)+len(flags.Rows) == 0 {
		return Part{}
	}
	return d.folded("attention", d.say("attention-line", "flags", len(flags.Rows), "signals", len(signals.Rows)), signals, flags)
}
