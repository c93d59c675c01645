package plan

import (
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

func given[Q unit.Quantity](v Q) basis.Num[Q] { return basis.Typed(v, "", basis.Origin{}) }

// Whatever a box of the first week says is part of what it asks; a number that is missing is not the number 0.
func TestSameDose(t *testing.T) {
	seconds, longer, ten, eight := unit.Seconds(30), unit.Seconds(45), 10, 8
	of := func(change func(w *WeekDose)) *Prescription {
		w := WeekDose{Week: 1, Dose: program.Dose{WorkFor: &seconds}, Each: []SetDose{{Plates: given(unit.Kilograms(20)), Reps: &ten}}}
		change(&w)
		return &Prescription{Weeks: []WeekDose{w}}
	}
	for _, row := range []struct {
		name   string
		change func(w *WeekDose)
		same   bool
	}{
		{"nothing", func(*WeekDose) {}, true},
		{"another rest", func(w *WeekDose) { w.Dose.Rest = &seconds }, true},
		{"a longer set by the clock", func(w *WeekDose) { w.Dose.WorkFor = &longer }, false},
		{"a force to hold", func(w *WeekDose) { w.HoldAt = given(unit.Newtons(80)) }, false},
		{"how long to pull a band", func(w *WeekDose) { w.Stretch = given(unit.Metres(1.2)) }, false},
		{"the pressure of a cuff", func(w *WeekDose) { w.Pressure = given(unit.MillimetresOfMercury(120)) }, false},
		{"the load of one set", func(w *WeekDose) { w.Each[0].Plates = given(unit.Kilograms(15)) }, false},
		{"the repetitions of one set", func(w *WeekDose) { w.Each[0].Reps = &eight }, false},
		{"one set more", func(w *WeekDose) { w.Each = append(w.Each, SetDose{}) }, false},
		{"0 kg where there was no load", func(w *WeekDose) { w.Plates = given(unit.Kilograms(0)) }, false},
		{"a later week", func(w *WeekDose) { w.Week = 3 }, false},
	} {
		if got := sameDose(of(func(*WeekDose) {}), of(row.change)); got != row.same {
			t.Errorf("%s: the same is %v, want %v", row.name, got, row.same)
		}
	}
}

// Two slots may both have fallen back to one exercise: each is held against its own slot of the block before.
func TestPrescribedBySlot(t *testing.T) {
	sit := &program.Exercise{ID: "wall-sit"}
	of := func(slot string) Prescription {
		return Prescription{Exercise: sit, Side: unit.Left, Slot: &program.Slot{ID: slot}}
	}
	before := &Plan{Prescriptions: []Prescription{of("warm-up"), of("quadriceps")}}
	for _, row := range []struct{ slot, want, why string }{
		{"quadriceps", "quadriceps", "its own slot"},
		{"warm-up", "warm-up", "its own slot"},
		{"strength", "warm-up", "a stage of other slots: the first"},
	} {
		now := of(row.slot)
		if got := before.prescribed(&now); got == nil || got.Slot.ID != row.want {
			t.Errorf("%s is held against %+v, want %s: %s", row.slot, got, row.want, row.why)
		}
	}
	if got := before.prescribed(&Prescription{Exercise: sit, Side: unit.Left}); got != &before.Prescriptions[0] {
		t.Errorf("of no slot: %+v", got)
	}
}
