package page

import (
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// The sentence of the source and the caution stand on every worksheet after a reconstruction; a ratio only where the clinic asks, and
// never for whoever is unlike those who were studied. No page says a chance of one person.
func TestGroupsOnTheWorksheet(t *testing.T) {
	lsi := basis.Given("symmetry", basis.Rule{Name: "symmetry"}, unit.Percent(70), "")
	of := func(id string, by basis.Rule, f func(unit.Percent) (formula.Ratio, error)) basis.Num[formula.Ratio] {
		return basis.Try1(id, by, f, lsi)
	}
	told := plan.Groups{Linear: of("linear", formula.ByRelativeRateLinear, formula.RelativeRateLinear), Rate: of("rate", formula.ByRelativeRate, formula.RelativeRate),
		Low: of("low", formula.ByRelativeRateLow, formula.RelativeRateLow), High: of("high", formula.ByRelativeRateHigh, formula.RelativeRateHigh)}
	shown := told
	shown.Show = true
	for name, row := range map[string]struct {
		groups *plan.Groups
		want   []string
		not    []string
	}{
		"hidden":    {&told, []string{"Grindem 2016", "no forecast for this person", "The ratios are not printed"}, []string{"1.6", "1.8389"}},
		"shown":     {&shown, []string{"Grindem 2016", "no forecast for this person", "1.6", "1.8389", "1.2226 to 3.447", "rule of thumb", "from memory"}, nil},
		"unlike":    {&plan.Groups{Show: true, NotLike: "under 18"}, []string{"No ratio is told: under 18"}, []string{"rule of thumb"}},
		"elsewhere": {nil, nil, []string{"Grindem 2016"}},
	} {
		p := deskPlan()
		p.Groups = row.groups
		text := ""
		for _, part := range Worksheet(p, deskWords(t)).Parts {
			if part.ID == "groups" {
				text = said(View{Parts: []Part{part}})
			}
		}
		for _, want := range row.want {
			if !strings.Contains(text, want) {
				t.Errorf("%s: %q is not said in\n%s", name, want, text)
			}
		}
		for _, not := range row.not {
			if strings.Contains(text, not) {
				t.Errorf("%s: %q is said", name, not)
			}
		}
	}
}
