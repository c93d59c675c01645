package program

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Method is how the sets of a slot differ from one another.
type Method string

const (
	Steady        Method = "steady"         // all sets alike
	Rising        Method = "rising"         // 50, 75 and 100 % of the load (DeLorme & Watkins 1948, second-hand)
	Falling       Method = "falling"        // 100, 75 and 50 % of the load (Zinovieff 1951, second-hand)
	DailyAdjusted Method = "daily-adjusted" // the last set moves with what was done in the one before (Knight 1979, second-hand)
	CuffedMethod  Method = "cuffed"         // light, under a pressure cuff (Patterson 2019, second-hand)
	StimulatedBy  Method = "stimulated"     // with current (Nussbaum 2017)
)

// Words lets a file name a method.
func (Method) Words() []string {
	return []string{"steady", "rising", "falling", "daily-adjusted", "cuffed", "stimulated"}
}

// Cuffed is the dose of a cuffed slot: 30, 15, 15 and 15 repetitions. Source: Patterson 2019, second-hand; 30 % and 80 % after
// reconstruction: Hughes 2019.
type Cuffed struct {
	At       basis.Origin
	Load     unit.Percent `key:"load,required" doc:"share of the maximum" range:"20 40" show:"30"`
	Pressure unit.Percent `key:"pressure,required" doc:"share of the measured pressure that stops the flow" range:"40 80" show:"80"`
}

// Stimulated is the dose of a stimulated slot, within what was studied. Source: Nussbaum 2017, Table 7.
type Stimulated struct {
	At           basis.Origin
	Contractions int          `key:"contractions,required" doc:"how often the muscle is made to tighten" range:"12 15" show:"12"`
	On           unit.Seconds `key:"on,required" doc:"how long the current is on" range:"6 10" show:"10"`
	Off          unit.Seconds `key:"off,required" doc:"how long it is off" range:"12 50" show:"50"`
}

// MethodSets are the sets of a method that has a number of its own, and the repetitions of the first; 0: it has none.
func (m Method) MethodSets() (sets, reps int) {
	switch m {
	case Rising, Falling:
		return 3, 10
	case DailyAdjusted:
		return 4, 10
	case CuffedMethod:
		return 4, 30
	}
	return 0, 0
}

// method holds a slot's method against its other keys.
func (r *reader) method(s Slot) {
	sets, reps := s.Method.MethodSets()
	has := func(n *int, want int) bool { return n == nil || *n == want }
	switch {
	case sets > 0 && (!has(s.Sets, sets) || !has(s.Reps, reps) && s.Method != DailyAdjusted && s.Method != CuffedMethod):
		r.wrong(s.At.At("method"), fmt.Sprintf("method %q has %d sets, the first of %d repetitions", s.Method, sets, reps), "take sets and reps out, or write these")
	case (s.Method == CuffedMethod) != (s.Cuffed != nil):
		r.wrong(s.At.At("method"), "method cuffed and [cuffed] go together", `write method = "cuffed" and cuffed = { load_percent = 30, pressure_percent = 80 }`)
	case (s.Method == StimulatedBy) != (s.Stimulated != nil):
		r.wrong(s.At.At("method"), "method stimulated and [stimulated] go together", `write method = "stimulated" and stimulated = { contractions = 12, on_s = 10, off_s = 50 }`)
	case s.Method != "" && s.Method != Steady && (len(s.Waves) > 0 || s.OtherSets != nil):
		r.wrong(s.At.At("method"), "a method with waves or other_sets", "give each dose a slot of its own")
	case (s.Method == DailyAdjusted || s.Method == CuffedMethod) && (s.Reserve != nil || s.Reps != nil || s.WeeklyPercent > 0):
		r.wrong(s.At.At("method"), fmt.Sprintf("method %q has its own repetitions and its own way up", s.Method), "take reps, reserve and weekly_percent out")
	case s.OtherSets != nil && s.Legs == OperatedOnly:
		r.wrong(s.At.At("other_sets"), "the slot is for one leg only", "take other_sets out")
	}
}

// Filled is the slot's dose with what its method says of it.
func (s *Slot) Filled(d Dose) Dose {
	if s.Method == StimulatedBy && s.Stimulated != nil {
		one, n, on, off := 1, s.Stimulated.Contractions, s.Stimulated.On, s.Stimulated.Off
		return Dose{Sets: &one, Reps: &n, HoldFor: &on, Rest: &off}
	}
	sets, reps := s.Method.MethodSets()
	if sets > 0 {
		d.Sets = &sets
		if d.Reps == nil {
			d.Reps = &reps
		}
	}
	return d
}
