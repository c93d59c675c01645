package page

import (
	"encoding/json"
	"strings"
	"testing"

	"paceleaf/generator/plan"
)

func pausedPlan() *plan.Plan {
	p := deskPlan()
	p.Dropped = []plan.Dropped{
		{Slot: "press", Exercise: "step-up", Side: "left", Week: 1, Because: "pause: effusion 2+ on 2026-04-06", Paused: true},
		{Slot: "press", Exercise: "step-up", Side: "left", Week: 2, Because: "pause: effusion 2+ on 2026-04-06", Paused: true},
		{Slot: "curl", Exercise: "leg-curl-band", Side: "left", Week: 1, Because: "no band at this place"},
	}
	p.Symptoms.Action = plan.Pause
	return p
}

func TestWhyOfWhatIsPaused(t *testing.T) {
	for _, c := range []struct{ id, want, not, why string }{
		{"step-up.left.w1.load", "PAUSED; pause: effusion 2+ on 2026-04-06", "week 2", "the week that was asked for"},
		{"step-up.left.w1.load", "waits for a later test day", "", "what ends the pause"},
		{"step-up", "week 2: PAUSED", "", "an exercise alone is all its weeks"},
		{"leg-curl-band.left", "passed over; no band at this place", "waits", "what is not paused waits for nothing"},
	} {
		text, ok := WhyText(pausedPlan(), c.id, nil)
		if !ok || !strings.Contains(text, c.want) || c.not != "" && strings.Contains(text, c.not) {
			t.Errorf("%s (%s): %v\n%s", c.id, c.why, ok, text)
		}
	}
	for id, why := range map[string]string{"step-up.right.w1.load": "the other leg is not paused", "step-up.left.w3.load": "no such week", "step": "a part of a name is no exercise",
		"step-up.left.w1.moved": "a quantity that nobody lists"} {
		if text, ok := WhyText(pausedPlan(), id, nil); ok {
			t.Errorf("%s is answered, although %s:\n%s", id, why, text)
		}
	}
}

func TestWhyOfAContactNamesTheClinician(t *testing.T) {
	p := pausedPlan()
	p.Symptoms.Action = plan.Contact
	if text, _ := WhyText(p, "step-up", nil); !strings.Contains(text, "waits for the responsible clinician") {
		t.Error(text)
	}
}

func TestWhyJSONOfWhatIsPaused(t *testing.T) {
	data, ok := WhyJSON(pausedPlan(), "step-up.left.w1.load", nil)
	var got struct {
		Format  int
		Dropped []struct{ Because string }
	}
	if err := json.Unmarshal(data, &got); err != nil || !ok || got.Format != 1 || len(got.Dropped) != 1 {
		t.Errorf("%v %v %s", err, ok, data)
	}
}

func TestWhyListsInGroups(t *testing.T) {
	text, _ := WhyText(pausedPlan(), "", nil)
	last := -1
	for _, want := range []string{"Paused:\n", "step-up.left ", "Criteria of stages and activities:\n", "Newest findings:\n", "Steps of these, and earlier tests:\n"} {
		at := strings.Index(text, want)
		if at <= last {
			t.Errorf("%q stands at %d, after %d", want, at, last)
		}
		last = at
	}
	if n := strings.Count(text, "\nstep-up.left "); n != 1 {
		t.Errorf("a pause is listed %d times", n)
	}
	if t.Failed() {
		t.Log(text)
	}
}
