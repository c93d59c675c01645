package program_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/program"
)

// A slot may ask for a part of the movement and for another speed; a wave may widen the part.
func TestPartAndSpeedOfASlot(t *testing.T) {
	slot := "sets = 3\nreps = 10\nrange_deg = [10, 60]\nlift_s = 3\n[[slot.wave]]\nfrom_week = 3\nrange_deg = [10, 90]\n"
	p, faults := made(t, map[string]string{"phases/one.toml": strings.Replace(phase, "sets = 3\nreps = 10\n", slot, 1),
		"exercises/kick.toml": exercise + "range_deg = [0, 90]\nlift_s = 2\nhold_s = 1\nlower_s = 4\n"})
	if len(faults.Wrong()) > 0 {
		t.Fatal(faults)
	}
	s := &p.Phases[0].Slots[0]
	for week, want := range map[int]float64{1: 60, 2: 60, 3: 90, 9: 90} {
		if got := float64(s.RangeIn(week).MostBent); got != want {
			t.Errorf("week %d: to %g, want %g", week, got, want)
		}
	}
	lift, hold, lower := s.Speed(p.Exercises["kick"])
	if got := fmt.Sprint(lift, hold, lower); got != "3 1 4" {
		t.Errorf("speed %s, want the slot's 3 up and the exercise's own 1 and 4", got)
	}
	var none *program.Slot
	if lift, _, _ := none.Speed(p.Exercises["kick"]); lift != 2 {
		t.Errorf("without a slot the exercise's own speed holds, not %g", float64(lift))
	}
	if (&program.Slot{}).RangeIn(1) != nil {
		t.Error("a slot that asks for no part has one")
	}
}

// A page says the speed of an exercise once: two slots of a phase may not ask two.
func TestTwoSpeedsOfOneExercise(t *testing.T) {
	second := "[[slot]]\nid = \"t\"\nchoose = [\"kick\"]\nsets = 3\nreps = 10\n%s[[session]]"
	for line, want := range map[string]string{"": `slots "s" and "t" ask two speeds of kick; write the same`, "lift_s = 3\n": ""} {
		text := strings.Replace(strings.Replace(phase, "reps = 10\n", "reps = 10\nlift_s = 3\n", 1), "[[session]]", fmt.Sprintf(second, line), 1)
		_, faults := made(t, map[string]string{"phases/one.toml": text})
		if wrong := faults.Wrong(); want == "" && len(wrong) > 0 || want != "" && (len(wrong) != 1 || !strings.Contains(wrong.Error(), want)) {
			t.Errorf("with %q: %v, want %q", line, wrong, want)
		}
	}
}
