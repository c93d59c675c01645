package page

import (
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// The first weeks say what a knee needs besides exercises, and nothing that a limit forbids.
func TestFirstWeeksSayHowToCare(t *testing.T) {
	const wound, straight = "Keep it clean and dry until it has closed.", "knee straight. Put nothing under it."
	late := unlimited()
	late.Event.Date = late.Block.Starts.AddWeeks(-firstWeeks)
	injured := unlimited()
	injured.Event.Kind = client.Injury
	injured.Client.Events = []client.Event{*injured.Event}
	bent := unlimited()
	bent.Limits = append(bent.Limits, plan.Window{Side: bent.Event.Side, Kind: unit.Brace, Allow: unit.Allowance{Locked: deg(20)}, From: bent.Event.Date, SetBy: "surgeon", Name: "Dr Auk", Wins: true})
	kept := unlimited()
	kept.Limits = append(kept.Limits, plan.Window{Side: kept.Event.Side, Kind: unit.PassiveBend, Allow: unit.Allowance{Range: reach(10, 90)}, From: kept.Event.Date, SetBy: "surgeon", Name: "Dr Auk", Wins: true})
	for _, c := range []struct {
		name            string
		p               *plan.Plan
		wound, straight bool
		why             string
	}{
		{"operated", unlimited(), true, true, "day 6"},
		{"injured", injured, false, true, "no operation, no wound"},
		{"brace locked bent", bent, true, false, "the surgeon keeps it at 20"},
		{"not quite straight", kept, true, false, "a limit ends at 10"},
		{"week 6", late, false, false, "the first weeks are over"},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := said(Handout(c.p, sampleWords(t)))
			if strings.Contains(text, wound) != c.wound || strings.Contains(text, straight) != c.straight {
				t.Errorf("wound %v, straight %v: %s", strings.Contains(text, wound), strings.Contains(text, straight), c.why)
			}
		})
	}
}
