package page

import (
	"cmp"
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// What calls for the therapist, most urgent first. The order is ours: common practice, no source.
const (
	callsNothing = iota
	callsNear    // a mark lies within the error of its test
	callsStay    // stay, step back
	callsStage   // the stage is not earned, or none is recorded
	callsRetest  // a visit is past without a test, or a test is out of date
	callsBlock   // the block is over, or there is none
	callsTold    // the client told of something that changes no page
	callsPause
	callsContact
)

// call is one thing that calls for the therapist.
type call struct {
	rank int
	says string
}

// calls are what a client needs the therapist for as of a day, most urgent first; a zero day judges no date.
func (s sheet) calls(r OverviewRow, today unit.Day) (list []call) {
	add := func(is bool, rank int, key string, pairs ...any) {
		if is {
			list = append(list, call{rank, s.say(key, pairs...)})
		}
	}
	acts := r.Action.Rank() > plan.NoAction.Rank()
	add(acts, callOf(r.Action), "call-action", "what", nonEmpty(": ", s.word("action", string(r.Action)), shortened(s.reason(r.Because))))
	add(r.Told != "", callsTold, "call-told", "what", shortened(s.reason(r.Told)))
	add(r.over(today), callsBlock, "call-block-over", "n", r.Block, "day", s.w.DayMonth(r.Ends))
	add(r.retestOverdue(today), callsRetest, "call-visit-past", "day", s.w.DayMonth(r.NextVisit))
	add(len(r.Stale) > 0, callsRetest, "call-stale", "what", strings.Join(s.measures(r.Stale), ", "))
	add(r.Ahead, callsStage, "call-stage-ahead")
	add(!r.Recorded, callsStage, "call-stage-none")
	near := r.near()
	add(len(near) > 0, callsNear, "call-near", "what", strings.Join(s.measures(near), ", "))
	slices.SortStableFunc(list, func(a, b call) int { return cmp.Compare(b.rank, a.rank) })
	return list
}

func callOf(a plan.Action) int {
	switch {
	case a.Rank() >= plan.Contact.Rank():
		return callsContact
	case a.Rank() >= plan.Pause.Rank():
		return callsPause
	}
	return callsStay
}

// need is the rank of the most urgent call.
func need(list []call) int {
	if len(list) == 0 {
		return callsNothing
	}
	return list[0].rank
}

// over reports whether the block has ended before today.
func (r OverviewRow) over(today unit.Day) bool { return !today.IsZero() && r.Ends.Before(today) }

// retestOverdue reports whether the booked visit is past and nothing has been tested since.
func (r OverviewRow) retestOverdue(today unit.Day) bool {
	return !today.IsZero() && !r.NextVisit.IsZero() && r.NextVisit.Before(today) && r.LastTest.Before(r.NextVisit)
}

// dueThisWeek reports whether a test is due within seven days: the booked visit, else the day after the block; what is
// overdue is due too.
func (r OverviewRow) dueThisWeek(today unit.Day) bool {
	due := r.NextVisit
	if due.IsZero() {
		due = r.Ends.AddDays(1)
	}
	return !today.IsZero() && due.Before(today.AddWeeks(1)) && r.LastTest.Before(due)
}

// near are the measures of missing marks that lie within the error of their test.
func (r OverviewRow) near() (measures []string) {
	for _, m := range r.Missing {
		if m.Near {
			measures = append(measures, m.Measure)
		}
	}
	return measures
}

// measures names measures in the therapist's words, each once.
func (s sheet) measures(ids []string) (names []string) {
	for _, id := range ids {
		name, key := id, strings.ReplaceAll(id, ".", "-")
		if known := s.word("measure", key); known != key {
			name = known
		}
		if !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}
