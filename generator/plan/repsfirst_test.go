package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/unit"
)

// ranged is a client of logger whose slot asks 3 × 8 to 12 with 2 in reserve.
func ranged(sets ...string) who {
	w := logger(map[string]string{"2026-04-05": logOf(sets...)})
	w.files["programs/phases/settle.toml"] = strings.Replace(w.files["programs/phases/settle.toml"], "reps = 10\nreserve = 2\nweekly_percent = 2.5", "reps = 8\nreps_to = 12\nreserve = 2", 1)
	return w
}

// Rule 23: repetitions first, then load. The lift of 60 × 8 is a maximum of 76; 8 and 2 are 10 to failure, 75 %: 57, cut to 55. It is
// worked out for the fewest repetitions, stays through the block, and rises one step of the press, 2.5 kg, once all sets reach 12.
func TestRule23e_RepetitionsFirst(t *testing.T) {
	for _, row := range []struct {
		name, set string
		want      float64
		why       string
	}{
		{"from the lift", "", 55, "57 cut down"},
		{"all at the top", "55 12,12,12 2", 57.5, "one step: 57.5 needs 12.2 before 10, and 14 were shown"},
		{"more than the top", "55 13,12,14 2", 57.5, "one step, not two"},
		{"one set below it", "55 12,12,11 2", 55, "repetitions first"},
		{"at the bottom", "55 8,8,8 2", 55, "as asked"},
		{"a set short", "55 12,12 2", 55, "3 sets were asked"},
		{"too near failure", "55 12,12,12 1", 55, "the reserve was 2"},
		{"below the bottom", "55 7,7,6 2", 52.5, "7 and 2 are 71.5, of it 53.6"},
		{"stronger than thought", "55 10,10,10 0", 55, "no set reached the top"},
	} {
		sets := []string{}
		if row.set != "" {
			sets = append(sets, "2026-04-03 left "+row.set)
		}
		p := ranged(sets...).plan(t)
		if got, want := loads(p, "leg-press-single", unit.Left), strings.TrimSpace(strings.Repeat(fmt.Sprintf("%g ", row.want), 4)); got != want {
			t.Errorf("%s: %s, want %s (%s)", row.name, got, want, row.why)
		}
		if d := dose(p, "leg-press-single", unit.Left, 1); *d.Dose.Reps != 8 || d.Dose.RepsTo == nil || *d.Dose.RepsTo != 12 || float64(d.Implied.Or(0)) < 2-1e-9 {
			t.Errorf("%s: %+v, %g left", row.name, d.Dose, float64(d.Implied.Or(0)))
		}
		if ids := page.SharedIDs(p); len(ids) > 0 {
			t.Errorf("%s: ids of two numbers: %v", row.name, ids)
		}
	}
}

// A step that the top does not yet predict is not taken; nor one from a sore knee, nor one that nobody told of.
func TestRule23f_NoStepThatIsNotPredicted(t *testing.T) {
	w := ranged("2026-04-01 left 15 12,12,12 2", "2026-04-03 left 15 12,12,12 2")
	w.files["clinic.toml"] = strings.Replace(clinicText, "plates_kg = [20, 10, 5, 2.5, 1.25]", "plates_kg = [20, 10, 5, 2.5]", 1)
	w.tests = map[string]string{"2026-03-02": straightKnees, "2026-04-06": straightKnees}
	p := w.plan(t)
	// from 15 to 20: 30 × (20 ÷ 15 × (1 + 10 ÷ 30) − 1) is 23.3 to failure, and 14 were shown
	if got := put(dose(p, "leg-press-single", unit.Left, 1)); got != 15 {
		t.Errorf("a step of a third: %g, want 15", got)
	}
	if got := p.CameBack[0].Lines[0].Step; !strings.Contains(fmt.Sprint(got), "coarse") {
		t.Errorf("the worksheet says %q", got)
	}
	for _, knee := range [][]string{{}, {`{ "on": "2026-04-03", "pain": 4, "pain_am": 1, "kind": "ache" }`}} {
		w := ranged()
		w.files["clients/tern-04/logs/2026-04-05.json"] = logWith(knee, "2026-04-03 left 55 12,12,12 2")
		if got := put(dose(w.plan(t), "leg-press-single", unit.Left, 1)); got > 55 {
			t.Errorf("%v: %g, want no step", knee, got)
		}
	}
}

// A stack with an add-on goes from the add-on to the next pin: 35 and 1.25, then 40.
func TestRule23g_NextSetting(t *testing.T) {
	for set, want := range map[string]float64{"10 12,12,12": 10, "10 13,13,13": 11.25, "11.25 13,13,13": 11.25, "35 12,12,12": 36.25, "36.25 13,13,13": 40, "40 12,12,12": 40} {
		w := ranged()
		text := logOf("2026-04-01 left "+set+" 2", "2026-04-03 left "+set+" 2")
		w.files["clients/tern-04/logs/2026-04-05.json"] = strings.ReplaceAll(text, "leg-press-single", "knee-extension-machine")
		phase := strings.ReplaceAll(w.files["programs/phases/settle.toml"], "leg-press-single", "knee-extension-machine")
		w.files["programs/phases/settle.toml"] = phase
		w.tests = map[string]string{"2026-03-02": straightKnees, "2026-04-06": straightKnees}
		p := w.plan(t)
		if got := put(dose(p, "knee-extension-machine", unit.Left, 1)); got != want {
			t.Errorf("%s: %g, want %g (from 10 to 11.25 just 15 to failure are needed, from 11.25 to 15 more)", set, got, want)
		}
	}
}

// The therapist's own number of repetitions takes the place of the range.
func TestRule23h_TypedRepetitions(t *testing.T) {
	w := ranged()
	w.files["clients/tern-04/blocks/2.toml"] += "[[override]]\nexercise = \"leg-press-single\"\nreps = 9\nreason = \"wish\"\n"
	if d := dose(w.plan(t), "leg-press-single", unit.Left, 1); *d.Dose.Reps != 9 || d.Dose.RepsTo != nil {
		t.Errorf("%d to %v", *d.Dose.Reps, d.Dose.RepsTo)
	}
}

// A wave that names its own repetitions says the whole of them.
func TestRule23i_AWaveOfItsOwn(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.files = slotOf(`"leg-press-single"`, "sets = 3\nreps = 8\nreps_to = 12\nreserve = 2\nwave = [ { from_week = 2, reps = 6 } ]")
	if d := dose(w.plan(t), "leg-press-single", unit.Left, 2); *d.Dose.Reps != 6 || d.Dose.RepsTo != nil {
		t.Errorf("a wave of 6: %d to %v", *d.Dose.Reps, d.Dose.RepsTo)
	}
}
