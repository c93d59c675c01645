package page

import (
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// sinceDesk is the desk of a plan that asks otherwise than the block before.
func sinceDesk(t *testing.T, changes ...plan.DoseChange) *desk {
	p := deskPlan()
	p.Since = &plan.SinceBlock{Block: &client.Block{Number: 2, Starts: civil("2026-03-09")}, Changes: changes}
	return &desk{sheet: sheet{deskWords(t)}, p: p}
}

func firstWeek(title string, side unit.Side, w plan.WeekDose) *plan.Prescription {
	w.Week = max(1, w.Week)
	return &plan.Prescription{Exercise: &program.Exercise{ID: title, Title: title}, Side: side, Weeks: []plan.WeekDose{w}}
}

// What is gone for one reason is one line only where it is gone for the same legs: the sheet may not take a leg's work from it.
func TestSinceGoneKeepsItsLegs(t *testing.T) {
	gone := func(title string, side unit.Side) plan.DoseChange {
		was := firstWeek(title, side, plan.WeekDose{})
		return plan.DoseChange{Exercise: was.Exercise, Side: side, Before: was, Because: "the stage asks for other work"}
	}
	d := sinceDesk(t, gone("Wall sit", unit.Left), gone("Bridge", unit.Left), gone("Bridge", unit.Right), gone("Step up", unit.Left))
	left, right := d.word("side", "left"), d.word("side", "right")
	for _, row := range []struct{ exercise, legs string }{{"Wall sit; Step up", left}, {"Bridge", left + ", " + right}} {
		i := slices.IndexFunc(d.sinceLines(), func(l sinceLine) bool { return l.exercise == row.exercise })
		if i < 0 {
			t.Fatalf("no line of %s: %+v", row.exercise, d.sinceLines())
		}
		want := d.say("since-line", "exercise", row.exercise, "what", d.say("since-leg", "leg", row.legs, "what", d.say("since-gone")))
		if short := d.sinceShort(); !slices.Contains(short, want) {
			t.Errorf("the first sheet says %q, not %q", short, want)
		}
	}
}

// Whatever makes two boxes differ is told, each with what it was and is.
func TestSinceSaysWhatIsOtherwise(t *testing.T) {
	seconds, longer := unit.Seconds(30), unit.Seconds(45)
	metres := func(v unit.Metres) basis.Num[unit.Metres] { return basis.Typed(v, "", basis.Origin{}) }
	for _, row := range []struct {
		name        string
		before, now plan.WeekDose
		want        string
	}{
		{"by the clock", plan.WeekDose{Dose: program.Dose{WorkFor: &seconds}}, plan.WeekDose{Dose: program.Dose{WorkFor: &longer}}, "45"},
		{"a held force", plan.WeekDose{}, plan.WeekDose{HoldAt: basis.Typed(unit.Newtons(80), "", basis.Origin{})}, "at 80 N"},
		{"a band", plan.WeekDose{Stretch: metres(1.2)}, plan.WeekDose{Stretch: metres(1.5)}, "1.5"},
		{"a cuff", plan.WeekDose{}, plan.WeekDose{Pressure: basis.Typed(unit.MillimetresOfMercury(120), "", basis.Origin{})}, "cuff at 120 mmHg"},
		{"sets that differ", plan.WeekDose{Each: []plan.SetDose{{Reps: n(10), Plates: kg(20)}}}, plan.WeekDose{Each: []plan.SetDose{{Reps: n(10), Plates: kg(25)}}}, "25"},
		{"later", plan.WeekDose{}, plan.WeekDose{Week: 3}, "only from week 3"},
		{"earlier", plan.WeekDose{Week: 3}, plan.WeekDose{Dose: program.Dose{Sets: n(2)}}, "in week 1, before from week 3: 2 sets"},
	} {
		was, is := firstWeek("Step up", unit.Left, row.before), firstWeek("Step up", unit.Left, row.now)
		d := sinceDesk(t, plan.DoseChange{Exercise: is.Exercise, Side: unit.Left, Before: was, Now: is})
		if got := strings.ReplaceAll(d.sinceLines()[0].what, "\u00a0", " "); !strings.Contains(got, row.want) {
			t.Errorf("%s: the worksheet says %q, and not %q", row.name, got, row.want)
		}
	}
}
