package page

import (
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// What stands in the way of a test on the form: a limit or a pause closes it; swelling and pain leave it to today's look; and a
// lift may have to keep some in reserve (rules 9, 28).

// closed says why a test is not made on the day: a limit, or a pause that nobody has ended.
func (r retest) closed(test plan.DueTest) string {
	if because := r.w.Reason(test.Closed); because != "" || r.p.Symptoms.Action.Rank() < plan.Pause.Rank() {
		return because
	}
	return r.say("retest-paused")
}

// ifCalm says on what a hop or a maximal test depends, where the newest look was not calm: today's look decides.
func (r retest) ifCalm(plan.DueTest) string {
	if r.restless == "" {
		return ""
	}
	return r.say("retest-if-calm", "why", r.reason(r.restless))
}

// easily says that a lift does not go to failure yet; one that may is a maximal test, and waits for a calm knee as any does.
func (r retest) easily(test plan.DueTest) string {
	if test.Easy == "" {
		return r.ifCalm(test)
	}
	return r.say("retest-easily", "why", r.reason(test.Easy))
}

// inOwn writes into the blank of the event's own leg what stands in the way of its test.
func (r retest) inOwn(t *Node, says string) {
	if says == "" {
		return
	}
	row := t.Rows[len(t.Rows)-1]
	for side, at := range map[unit.Side]int{unit.Left: 3, unit.Right: 5} {
		if e := r.p.Event; e != nil && (e.Side == side || e.Side == unit.Both) {
			row[at] = Cell{Spans: []Span{strong(says)}, Class: "not-yet"}
		}
	}
}
