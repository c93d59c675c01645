package page

import (
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// unlimited is the early sample without a word on walking or brace.
func unlimited() *plan.Plan {
	p := sampleEarly()
	p.Limits = slices.DeleteFunc(slices.Clone(p.Limits), func(l plan.Window) bool { return l.Kind == unit.WeightBearing || l.Kind == unit.Brace })
	return p
}

// ruledBy adds a limit in force from the event on.
func ruledBy(p *plan.Plan, kind unit.Kind, allowed bool) *plan.Plan {
	p.Limits = append(slices.Clone(p.Limits), plan.Window{Side: p.Event.Side, Kind: kind, Allow: unit.Allowance{Allowed: &allowed}, From: p.Event.Date, SetBy: "surgeon",
		Name: "Dr Auk", Wins: true, Touches: true})
	return p
}

func TestFirstWeeksAlwaysSayHowToWalk(t *testing.T) {
	w := sampleWords(t)
	const untold, brace, crutchesOnStairs = "Walk as your surgeon's note says. Until you know, use your crutches.", "Until you know, keep it on.", "Hold the rail and a crutch."
	late := unlimited()
	late.Event.Date = late.Block.Starts.AddWeeks(-firstWeeks)
	unasked := ruledBy(unlimited(), unit.Brace, true)
	unasked.Limits[len(unasked.Limits)-1].SetBy = "program"
	injured := unlimited()
	injured.Event.Kind = client.Injury
	for _, c := range []struct {
		name      string
		p         *plan.Plan
		want, not []string
		why       string
	}{
		{"no limit", unlimited(), []string{untold, brace, crutchesOnStairs}, nil, "day 6 without a word from the surgeon"},
		{"limit", ruledBy(unlimited(), unit.WeightBearing, false), []string{"Put no weight on your"}, []string{untold}, "the limit says it"},
		{"free", ruledBy(unlimited(), unit.WeightBearing, true), []string{"You may put your weight on your", "Keep your crutches until you walk without a limp.", "One step at a time, hold the rail."}, []string{untold, crutchesOnStairs}, "the surgeon has allowed it"},
		{"brace free", ruledBy(unlimited(), unit.Brace, true), []string{untold, "You need no brace."}, []string{brace, "Were you given a brace?"}, "the surgeon wants no brace"},
		{"brace not asked for", unasked, []string{"Were you given a brace? Wear it as you have been told. If not, you need none."}, []string{brace, "You need no brace."}, "no surgeon has said it"},
		{"injury", injured, []string{"Walk as you have been shown. Until you know, use your crutches."}, []string{"surgeon's note"}, "nobody has operated"},
		{"week 6", late, nil, []string{untold, brace}, "only in the first weeks"},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := said(Handout(c.p, w))
			for _, want := range c.want {
				if !strings.Contains(text, want) {
					t.Errorf("%q is missing: %s", want, c.why)
				}
			}
			for _, not := range c.not {
				if strings.Contains(text, not) {
					t.Errorf("%q is said: %s", not, c.why)
				}
			}
		})
	}
}
