package client

import (
	"fmt"
	"slices"
	"strings"
)

// Blocks follow each other, and an override says what it sets and why.

func (r *reader) blocks() {
	blocks := r.c.Blocks
	for i := range blocks {
		b := &blocks[i]
		r.therapist(b.By, b.At.At("by"))
		if b.Cuffed != nil {
			r.therapist(b.Cuffed.By, b.Cuffed.At.At("by"))
		}
		for _, o := range b.Overrides {
			r.override(o)
		}
		if b.NextVisit != nil && b.NextVisit.Before(b.Starts) {
			r.wrong(b.At.At("next_visit"), fmt.Sprintf("next_visit %s lies before the block's first day %s", b.NextVisit, b.Starts), "write the day of the visit after it")
		}
		if b.Shown != nil && b.Shown.After(b.Starts.AddWeeks(b.Weeks)) {
			r.ask(b.At.At("shown"), fmt.Sprintf("shown %s lies behind the block, which ends before %s", b.Shown, b.Starts.AddWeeks(b.Weeks)), "write the day on which somebody showed the exercises")
		}
		if i == 0 {
			continue
		}
		before := &blocks[i-1]
		if end := before.Starts.AddWeeks(before.Weeks); b.Starts.Before(end) && !before.Starts.IsZero() && !b.Starts.IsZero() {
			r.wrong(b.At.At("starts"), fmt.Sprintf("block %d begins %s, while block %d runs to %s", b.Number, b.Starts, before.Number, end.AddDays(-1)),
				fmt.Sprintf("begin on %s or later, or shorten block %d", end, before.Number))
		}
	}
}

// reasons are the words that an override's reason begins with.
var reasons = []string{"pain", "swelling", "travel", "equipment", "technique", "wish", "surgeon"}

func (r *reader) override(o Override) {
	if r.spoilt(o.At) {
		return
	}
	if o.Sets == nil && o.Reps == nil && o.Reserve == nil && !o.Plates.OK() && o.Range == nil && !o.Leave {
		r.wrong(o.At, "an override that sets nothing", "write sets, reps, reserve, plates_kg, range_deg or leave_out = true")
	}
	r.surgeonsWord(o)
	word, _, _ := strings.Cut(o.Reason, ":")
	if o.Reason != "" && !slices.Contains(reasons, strings.TrimSpace(word)) {
		r.wrong(o.At.At("reason"), fmt.Sprintf("reason %q does not begin with a known word", o.Reason),
			"begin with one of "+strings.Join(reasons, ", ")+"; more words after a colon")
	}
}
