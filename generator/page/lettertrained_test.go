package page

import (
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// trainedPart is what a letter says of the training.
func trainedPart(t *testing.T, p *plan.Plan) string {
	t.Helper()
	v := Letter(p, deskWords(t))
	v.Parts = slices.DeleteFunc(v.Parts, func(p Part) bool { return p.ID != "letter-trained" })
	return said(v)
}

// asks is a prescription of an exercise without load, from a week on.
func asks(e *program.Exercise, side unit.Side, week int) plan.Prescription {
	return plan.Prescription{Exercise: e, Side: side, Weeks: []plan.WeekDose{{Week: week, Dose: program.Dose{Sets: ptr(3)}}}}
}

// TestLetterTellsEachLeg: a surgeon who never sees the handout must not take the load of one leg for the other's, nor what comes later for what
// is done now.
func TestLetterTellsEachLeg(t *testing.T) {
	p := letterPlan()
	p.Prescriptions[0].Device = &client.Device{ID: "press", Carriage: basis.Typed(unit.Kilograms(45), "45 kg", basis.Origin{})}
	raise, squat, hinge := &program.Exercise{ID: "raise", Title: "Heel raise"}, &program.Exercise{ID: "squat", Title: "Squat"}, &program.Exercise{ID: "hinge", Title: "Hip hinge"}
	press := p.Prescriptions[0].Exercise
	p.Prescriptions = append(p.Prescriptions, asks(raise, unit.Left, 1), asks(raise, unit.Right, 1), asks(squat, unit.Both, 1), asks(hinge, unit.Left, 3), asks(press, unit.Left, 2), asks(press, unit.Right, 2))
	text := trainedPart(t, p)
	now, later, _ := strings.Cut(text, "Later, if opened and earned:")
	for _, row := range []struct{ in, want, why string }{
		{now, "Leg press, one leg (left leg only: 50 kg beside the carriage of 45 kg)", "one leg, and what the machine weighs beside what is put on"},
		{now, "Heel raise (each leg)", "two legs that are asked for the same"},
		{now, "Squat (both legs together)", "two legs at once"},
		{later, "Hip hinge (left leg only: from week 3)", "what begins later, with its week"},
		{later, "Leg press, one leg (right leg only: from week 2)", "the same exercise begins later for the other leg; on another machine it is nothing new"},
	} {
		if !strings.Contains(row.in, row.want) {
			t.Errorf("not in its place: %q (%s)\n%s", row.want, row.why, text)
		}
	}
	if strings.Contains(now, "Hip hinge") {
		t.Errorf("what begins in week 3 stands in the first week:\n%s", text)
	}
}

// paused is a left knee swollen 2+ on the day, that bent 9° further the week before.
func paused() *plan.Plan {
	p := letterPlan()
	p.Found.Knees = []finding.KneeDay{{On: testDay.AddDays(-7), Effusion: unit.GradeTrace}, {On: testDay, Effusion: unit.Grade2}}
	p.Symptoms = plan.Symptoms{Action: plan.Pause, Level: "block", On: testDay, Because: "effusion 2+",
		Signals: []plan.Signal{{Action: plan.Pause, Level: "block", On: testDay, Code: "effusion", Because: "effusion 2+"}}}
	p.Changes = []plan.Change{{Measure: "flexion", Before: finding.Measure{On: testDay.AddDays(-7)}, Now: finding.Measure{On: testDay}, Delta: &basis.Step{Value: -9, Unit: "°"}, Verdict: plan.NotKnown}}
	return p
}

// TestLetterOfAPause: what rests and what goes on is told apart, and the swelling is a question.
func TestLetterOfAPause(t *testing.T) {
	p, set := paused(), &program.Exercise{ID: "quad-set", Title: "Thigh squeeze"}
	p.Prescriptions = append(p.Prescriptions[1:], asks(set, unit.Left, 1))
	text := trainedPart(t, p)
	for _, want := range []string{"Loaded work and impact of the left knee are paused.", "for the other leg only: Leg curl (right leg only: weight to be found).", "for the paused knee, without load: Thigh squeeze (left leg only)."} {
		if !strings.Contains(text, want) {
			t.Errorf("the letter of a pause does not say %q:\n%s", want, text)
		}
	}
}

// TestSwellingIsAQuestion: on the letter and on the worksheet alike, and only where swelling pauses the knee.
func TestSwellingIsAQuestion(t *testing.T) {
	visit := civil("2026-04-10")
	for _, row := range []struct {
		name   string
		change func(*plan.Plan)
		want   string // "": no question
	}{
		{"new", func(p *plan.Plan) { p.Block.NextVisit = &visit }, "Ask: new swelling 2+ on Mon 6 April; the knee bends 9° less than on Mon 30 March. Loaded work and impact of this knee are paused; we look again on Fri 10 April. Do you want to see the client?"},
		{"again", func(p *plan.Plan) { p.Found.Knees[0].Effusion = unit.Grade3 }, "Ask: swelling still 2+ on Mon 6 April"},
		{"no visit", func(p *plan.Plan) { p.Block.NextVisit = nil }, "the day on which we look again is not booked"},
		{"bends as before", func(p *plan.Plan) { p.Changes = nil }, "new swelling 2+ on Mon 6 April. Loaded"},
		{"a pause for pain", func(p *plan.Plan) { p.Symptoms.Signals[0].Code = "pain-morning-unknown" }, ""},
		{"no pause", func(p *plan.Plan) { p.Symptoms.Signals[0].Action = plan.Stay }, ""},
	} {
		p := paused()
		row.change(p)
		for _, text := range []string{said(Letter(p, deskWords(t))), said(Worksheet(p, deskWords(t)))} {
			if row.want == "" && strings.Contains(text, "Do you want to see the client?") || !strings.Contains(text, row.want) {
				t.Errorf("%s: not %q", row.name, row.want)
			}
		}
	}
}
