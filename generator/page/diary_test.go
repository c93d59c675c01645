package page

import (
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
)

// TestTheDiaryAsksForAWeightBesideRepetitionsOnly: a log has no place for the weight of a hold.
func TestTheDiaryAsksForAWeightBesideRepetitionsOnly(t *testing.T) {
	reps := program.Dose{Sets: n(3), Reps: n(8)}
	timed := program.Dose{Sets: n(3), WorkFor: sec(40)}
	for _, row := range []struct {
		name string
		week plan.WeekDose
		want string
	}{
		{"repetitions with a weight", plan.WeekDose{Week: 1, Dose: reps, Plates: kg(20)}, "kg"},
		{"repetitions, and the weight is to be found", plan.WeekDose{Week: 1, Dose: reps, FindYourWeight: true}, "kg"},
		{"repetitions without a weight", plan.WeekDose{Week: 1, Dose: reps}, ""},
		{"a method of several weights", plan.WeekDose{Week: 1, Each: []plan.SetDose{{Reps: n(10), Plates: kg(10)}}, Plates: kg(20)}, "kg"},
		{"by the clock, and the weight is to be found", plan.WeekDose{Week: 1, Dose: timed, FindYourWeight: true}, ""},
		{"by the clock with a weight", plan.WeekDose{Week: 1, Dose: timed, Plates: kg(20)}, ""},
	} {
		h := handout{samplePlan(), sampleWords(t)}
		p := h.Prescriptions[0]
		p.Device, p.Weeks = nil, []plan.WeekDose{row.week}
		h.Prescriptions = []plan.Prescription{p}
		for _, m := range h.diary().Moves {
			if got := m.Legs[0].Load; got != row.want || len(m.Legs[0].Asked) != 1 {
				t.Errorf("%s: weighed in %q, want %q; asks %v", row.name, got, row.want, m.Legs[0].Asked)
			}
		}
	}
}
