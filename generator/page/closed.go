package page

import (
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// What is not open yet of running, jumping and sport: from which day at the earliest, what is still missing, and which limit
// holds. What is missing stands once a page: beside the day among the dates, or here once the day has come.

// closedActivities are the activities of the program that are not open; the steps of sport after the next one stand in
// one line behind it. What has a day of its own among the dates is only named, in a line below the others.
func (h handout) closedActivities() (facts []Fact) {
	var dated []string
	for _, a := range h.Activities {
		if a.State == "open" || a.Activity == nil || h.laterStep(a.Activity.ID) {
			continue
		}
		steps := h.sportSteps()
		leads := len(steps) > 0 && steps[0].Activity.ID == a.Activity.ID
		switch {
		case h.dated(a) && leads:
			dated = append(dated, titles(steps)...)
		case h.dated(a):
			dated = append(dated, a.Activity.Title)
		default:
			facts = append(facts, fact(a.Activity.Title, h.activity(a)))
			if leads {
				facts = append(facts, fact(h.w.Say("activity.after"), h.laterSteps()))
			}
		}
	}
	if len(dated) == 0 {
		return facts
	}
	return append(facts, Fact{Label: h.w.Say("activity.also"), Value: []Span{{Text: h.w.Each(dated) + ". "},
		{Text: h.w.Say("activity.see-dates"), Href: "#dates"}}})
}

// activity says of one that has no day among the dates when it may begin at the earliest, and what is still missing.
func (h handout) activity(a plan.ActivityState) string {
	w, says := h.w, h.w.Say("activity.closed")
	switch {
	case a.State == "suspended":
		says = w.Say("activity.suspended")
	case !a.NotBefore.IsZero() && a.NotBefore.After(h.Block.Starts):
		says = w.Say("activity.not-before", "day", w.Day(a.NotBefore))
	}
	return joined(says, h.missing(a.Missing), h.held(a), w.Say("activity.only-after"))
}

// dated reports whether the activity has a line of its own among the dates.
func (h handout) dated(a plan.ActivityState) bool {
	return slices.ContainsFunc(h.Dates, func(d plan.DateLine) bool {
		return d.Kind == "not-before" && d.What == a.Activity.ID && d.On.After(h.Block.Starts) && !h.laterStep(d.What)
	})
}

// stillMissing is what is missing for the activity of a date: criteria, and the limit that holds.
func (h handout) stillMissing(d, before plan.DateLine) string {
	says := h.missingAs(d, before)
	for _, a := range h.Activities {
		if a.Activity != nil && a.Activity.ID == d.What && len(d.Missing) > 0 {
			return joined(says, h.held(a))
		}
	}
	return says
}

// held names the limits that still close an activity: on what, until when, and who set them where a person did.
func (h handout) held(a plan.ActivityState) string {
	var bans []ban
	for _, k := range a.Activity.Kinds {
		if b, holds := h.longest(k); holds && !b.saidBy(a, h.Block.Starts) {
			bans = append(bans, b)
		}
	}
	var says []string
	for i, b := range bans {
		if i > 0 && b.sameEnd(bans[i-1]) {
			continue
		}
		on := []string{h.limitOn(b)}
		for _, o := range bans[i+1:] {
			if !b.sameEnd(o) {
				break
			}
			on = append(on, h.limitOn(o))
		}
		says = append(says, h.holdsOn(h.w.Join(on), b, a.NotBefore))
	}
	return strings.Join(says, " ")
}

// saidBy reports whether the day of an activity says all that a limit does: it is the program's own and over by then.
func (b ban) saidBy(a plan.ActivityState, starts unit.Day) bool {
	return b.setBy == "" && !b.lifts.IsZero() && !b.lifts.After(a.NotBefore) && a.NotBefore.After(starts)
}

func (b ban) sameEnd(o ban) bool { return b.lifts == o.lifts && b.setBy == o.setBy && b.name == o.name }

// limitOn is what a limit is about, inside a sentence; the leg stands with it where it is not the event's own.
func (h handout) limitOn(b ban) string {
	return h.ofLeg(strings.ToLower(h.w.Say("kind."+string(b.kind))), b.side)
}

// holdsOn says until when a limit holds. A day is never a promise: until then at least.
func (h handout) holdsOn(what string, b ban, notBefore unit.Day) string {
	w, key := h.w, "activity.limit"
	if b.setBy != "" {
		what = w.Say("activity.limit-by", "what", what, "who", w.Say("set-by."+b.setBy), "name", b.name)
	}
	switch {
	case b.lifts.IsZero():
		key = "activity.limit-open"
	case b.lifts == notBefore && notBefore.After(h.Block.Starts):
		key = "activity.limit-then"
	}
	return w.Say(key, "what", what, "day", w.Day(b.lifts))
}

// longest is the limit that closes a kind on the block's first day for the longest time.
func (h handout) longest(k unit.Kind) (b ban, holds bool) {
	for _, l := range h.Limits {
		if !l.Wins || l.Kind != k || !l.Gap && !closed(l.Allow) || !inForce(l.From, l.Lifts, h.Block.Starts) {
			continue
		}
		now := h.ban("sport", l)
		if !holds || !b.lifts.IsZero() && (now.lifts.IsZero() || now.lifts.After(b.lifts)) {
			b, holds = now, true
		}
	}
	return b, holds
}

// joined puts sentences behind each other, without those that are empty.
func joined(sentences ...string) string {
	return strings.Join(slices.DeleteFunc(sentences, func(s string) bool { return s == "" }), " ")
}
