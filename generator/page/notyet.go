package page

import (
	"reflect"
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// topics are the heads of the list, in the order of daily life, with the kinds that stand under each.
var topics = []topicKinds{
	{"walking", []unit.Kind{unit.WeightBearing}},
	{"brace", []unit.Kind{unit.Brace}},
	{"bending", []unit.Kind{unit.PassiveBend, unit.ActiveBend, unit.LoadedBend}},
	{"straightening", []unit.Kind{unit.StraighteningUnderLoad, unit.AddedWeight}},
	{"stairs", nil},
	{"hamstrings", []unit.Kind{unit.HamstringWork}},
	{"effort", []unit.Kind{unit.MaximalEffort}},
	{"kneeling", []unit.Kind{unit.Kneeling}},
	{"driving", nil},
	{"sport", []unit.Kind{unit.Impact, unit.Running, unit.Twisting, unit.Contact}},
}

// topicKinds is one head of the list.
type topicKinds struct {
	id    string
	kinds []unit.Kind
}

// ban is one thing to leave out, with the day on which that may change.
type ban struct {
	topic string
	side  unit.Side
	says  string
	allow unit.Allowance
	lifts unit.Day
	setBy string // surgeon, physician, therapist; "" of the program
	name  string
	kind  unit.Kind
	on    []unit.Kind
	reach *unit.Reach // of a range
}

// notYet is what daily life and sport must leave out for now.
func (h handout) notYet() Part {
	w := h.w
	bans := h.bans()
	facts := factual("bans")
	for _, t := range topics {
		facts.Facts = append(facts.Facts, h.banFacts(t.id, bans)...)
		facts.Facts = append(facts.Facts, h.stricter(t.id)...)
		facts.Facts = append(facts.Facts, h.dailyLife(t.id, bans)...)
	}
	facts.Facts = append(facts.Facts, h.school(bans)...)
	facts.Facts = append(facts.Facts, h.closedActivities()...)
	if len(facts.Facts) == 0 {
		return Part{}
	}
	lead := []Span{{Text: w.Say("not-yet.lead") + " "}}
	if len(h.Dates) > 0 {
		lead = append(lead, Span{Text: w.Say("not-yet.dates"), Href: "#dates"})
	}
	return h.part("not-yet", w.Say("not-yet.title"), spoken("lead", lead...), facts)
}

// bans are the limits in force on the block's first day that forbid something, in the order of topics.
func (h handout) bans() (bans []ban) {
	for _, t := range topics {
		for _, l := range h.Limits {
			if !l.Wins || !slices.Contains(t.kinds, l.Kind) || !inForce(l.From, l.Lifts, h.Block.Starts) {
				continue
			}
			if b := h.ban(t.id, l); b.says != "" {
				bans = h.addBan(bans, b)
			}
		}
	}
	return h.ofBothLegs(bans)
}

// ofBothLegs puts what is the same for both legs into one.
func (h handout) ofBothLegs(bans []ban) (gathered []ban) {
	for _, b := range bans {
		i := slices.IndexFunc(gathered, func(have ban) bool {
			return have.side == b.side.Opposite() && have.side != b.side && have.kind == b.kind && slices.Equal(have.on, b.on) && have.lifts == b.lifts &&
				have.setBy == b.setBy && have.name == b.name && reflect.DeepEqual(have.allow, b.allow)
		})
		if i < 0 {
			gathered = append(gathered, b)
			continue
		}
		gathered[i].side = unit.Both
		gathered[i].says = h.allows(unit.Both, b.kind, b.on, b.allow)
	}
	return gathered
}

func (h handout) ban(topic string, l plan.Window) ban {
	a := l.Allow
	if l.Gap {
		no := false
		a = unit.Allowance{Allowed: &no}
	}
	side := h.sideOf(l.Side)
	b := ban{topic: topic, side: side, says: h.allows(side, l.Kind, l.On, a), allow: a, lifts: l.Lifts, kind: l.Kind, on: l.On, reach: a.Range}
	by := saidBy(l)
	b.setBy, b.name = by[0], by[1]
	b.lifts = h.lastsUntil(b)
	return b
}

// banFacts are the bans of one topic, each with when it may change and who said so.
func (h handout) banFacts(topic string, bans []ban) (facts []Fact) {
	for _, b := range bans {
		if b.topic != topic || b.setBy == "" && h.saidByActivity(b.kind) {
			continue
		}
		value := []Span{{Text: b.says + " "}, {Text: h.mayChange(b), Em: true}}
		facts = append(facts, Fact{Label: h.ofOneLeg(h.w.Say("topic."+topic), b), Value: value})
	}
	return facts
}

// saidByActivity reports whether a closed activity below says more about the kind than the program's own limit does.
func (h handout) saidByActivity(kind unit.Kind) bool {
	return slices.ContainsFunc(h.Activities, func(a plan.ActivityState) bool {
		return a.Activity != nil && a.State != "open" && len(a.Activity.Kinds) == 1 && a.Activity.Kinds[0] == kind
	})
}

// mayChange says who set a ban, where a person did, and from which day on it may change, where no date of the page says so. That
// it stays until the therapist says so stands above all bans.
func (h handout) mayChange(b ban) string {
	w, by, day := h.w, "", ""
	if !b.lifts.IsZero() && !h.endDated(b) && !h.tightensBefore(b) {
		day = w.Say("not-yet.not-before", "day", w.Day(b.lifts))
	}
	if b.setBy != "" {
		by = w.Say("not-yet.set-by", "who", w.Say("set-by."+b.setBy), "name", b.name)
	}
	return joined(by, day)
}

// endDated reports whether the day on which a ban may change stands among the dates.
func (h handout) endDated(b ban) bool {
	return slices.ContainsFunc(h.Dates, func(d plan.DateLine) bool {
		return (d.Kind == "lifts" || d.Kind == "loosens") && d.On == b.lifts && d.What == string(b.kind) && (d.Title == "") == (len(b.on) == 0) &&
			(b.side == unit.Both || h.sideOf(d.Side) == b.side)
	})
}

// dailyLife is stairs and driving: no limit speaks of them. Walking and brace decide about both; and in the first weeks,
// where no limit speaks of walking and brace, what to do until the client knows.
func (h handout) dailyLife(topic string, bans []ban) []Fact {
	w := h.w
	with, careful := h.carefulWith(bans)
	switch {
	case topic == "walking" || topic == "brace":
		return h.untold(topic, bans)
	case topic == "stairs" && careful:
		return []Fact{fact(w.Say("topic.stairs"), h.stairs(with))}
	case topic == "driving" && (h.IsOpened("driving") || h.TooYoungToDrive()):
		return nil
	case topic == "driving" && !h.unhurt() && h.operated():
		return []Fact{fact(w.Say("topic.driving"), w.Say("not-yet.driving"))}
	case topic == "driving" && careful:
		return []Fact{fact(w.Say("topic.driving"), w.Say("not-yet.driving-told"))}
	}
	return nil
}

// stairs says how to climb them with the leg of a limit on walking, or of a brace.
func (h handout) stairs(b ban) string {
	key := "not-yet.stairs"
	switch {
	case b.topic == "walking" && closed(b.allow):
		key = "not-yet.stairs-none"
	case b.side == unit.Both:
		key = "not-yet.stairs-both"
	case b.topic == "walking":
		key = "not-yet.stairs-crutches"
	}
	return h.w.Say(key, "good", h.legIn(b.side.Opposite()), "leg", h.legIn(b.side))
}
