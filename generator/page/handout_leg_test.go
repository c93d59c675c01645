package page

import (
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// inWords is the handout of a plan as Markdown, with plain spaces.
func inWords(t *testing.T, p *plan.Plan) string {
	t.Helper()
	text, err := samplePrinter(t).Markdown(Handout(p, sampleWords(t)))
	if err != nil {
		t.Fatal(err)
	}
	return strings.ReplaceAll(string(text), "\u00a0", " ")
}

// TestLimitOfOneLegNamesIt: a line without a leg forbids what the other leg's box asks for, so it names its own.
func TestLimitOfOneLegNamesIt(t *testing.T) {
	weights := func(p *plan.Plan, kinds ...unit.Kind) {
		for i := range p.Prescriptions {
			if p.Prescriptions[i].Side == unit.Right {
				p.Prescriptions[i].Exercise.Kinds = kinds
			}
		}
	}
	for _, row := range []struct {
		name   string
		change func(p *plan.Plan)
		says   []string
		not    []string
		why    string
	}{
		{"the other leg presses", func(p *plan.Plan) { weights(p, unit.LoadedBend) },
			[]string{"**Bending, LEFT leg** With weight on your leg, bend only to 70°", "**Most important** LEFT leg: With weight", "**Straightening** With the foot free"}, nil, "the press bends under weight, and does not straighten a free foot"},
		{"the other leg kicks", func(p *plan.Plan) { weights(p, unit.StraighteningUnderLoad) },
			[]string{"**Straightening, LEFT leg** With the foot free", "**Bending** With weight"}, []string{"**Most important** LEFT leg"}, "each line by its own kind of work"},
		{"the other leg rests", func(p *plan.Plan) {
			weights(p, unit.LoadedBend)
			p.Prescriptions = p.Prescriptions[1:]
		}, []string{"**Bending** With weight"}, []string{"**Bending, LEFT leg**"}, "nothing to be mixed up with"},
		{"without weight", func(p *plan.Plan) {
			weights(p, unit.LoadedBend)
			for i := range p.Prescriptions[0].Weeks {
				p.Prescriptions[0].Weeks[i].Plates = kgMissing
			}
		}, []string{"**Bending** With weight"}, []string{"**Bending, LEFT leg**"}, "only a weight contradicts the line"},
		{"both legs limited alike", func(p *plan.Plan) {
			weights(p, unit.LoadedBend)
			both := p.Limits[0]
			both.Side = unit.Right
			p.Limits = append(p.Limits, both)
		}, []string{"**Bending, BOTH legs**"}, []string{"**Bending, LEFT leg**"}, "one line for both stays one line"},
		{"all-out effort", func(p *plan.Plan) {
			no := false
			weights(p)
			p.Limits = append(p.Limits, plan.Window{Kind: unit.MaximalEffort, Allow: unit.Allowance{Allowed: &no}, From: p.Block.Starts, SetBy: "program", Wins: true})
		}, []string{"**All-out effort, LEFT leg** Never train"}, []string{"Kneeling, LEFT leg"}, "of every weight of the other leg; the line on kneeling names its knee"},
	} {
		p := samplePlan()
		row.change(p)
		text := inWords(t, p)
		for _, want := range row.says {
			if !strings.Contains(text, want) {
				t.Errorf("%s: the page does not say %q: %s", row.name, want, row.why)
			}
		}
		for _, not := range row.not {
			if strings.Contains(text, not) {
				t.Errorf("%s: the page says %q: %s", row.name, not, row.why)
			}
		}
	}
}

var kgMissing = plan.WeekDose{}.Plates

// TestNumberAbroadStandsOnTop: whoever needs help away looks at the first line, and the number at home does not answer there.
func TestNumberAbroadStandsOnTop(t *testing.T) {
	for _, row := range []struct {
		number, from, until string
		want                string
		why                 string
	}{
		{"112", "2026-04-20", "2026-04-24", " · away, 20 April to 24 April 112 · Clinic", "with its days, before the clinic's own"},
		{"999", "2026-04-20", "2026-04-24", "", "the same number need not stand twice"},
		{"", "2026-04-20", "2026-04-24", "", "none is known"},
		{"112", "2026-05-04", "2026-05-10", "", "after the block"},
		{"112", "2026-03-30", "2026-04-06", " · away, 30 March to 6 April 112 · Clinic", "its last day is the block's first"},
	} {
		p := samplePlan()
		p.Client.Away = []client.Away{{From: day(row.from), Until: day(row.until), Place: "hotel", Emergency: row.number}}
		top := strings.ReplaceAll(textOf(handout{p, sampleWords(t)}.help().Spans), "\u00a0", " ")
		if row.want == "" && strings.Contains(top, "away") || !strings.Contains(top, row.want) {
			t.Errorf("%s until %s: %q, want %q: %s", row.number, row.until, top, row.want, row.why)
		}
	}
}

// TestNoSportNoStepsOfSport: who does no sport waits for no match. Running, jumping and every limit stay.
func TestNoSportNoStepsOfSport(t *testing.T) {
	for _, row := range []struct {
		sport unit.Sport
		shown bool
		why   string
	}{
		{unit.NoSport, false, "nobody waits for what nobody wants"},
		{"contact", true, "the steps of this sport"},
		{"", true, "nobody has said that there is none"},
	} {
		p := sampleYoung()
		no := false
		p.Client.Sport = row.sport
		contact := program.Activity{ID: "contact", Title: "Contact", Sport: true, Kinds: []unit.Kind{unit.Contact}}
		for i := range p.Activities {
			if p.Activities[i].Activity.ID == "contact" {
				p.Activities[i].Activity = &contact
			}
		}
		p.Limits = append(p.Limits, plan.Window{Kind: unit.Contact, Allow: unit.Allowance{Allowed: &no}, From: p.Block.Starts, SetBy: "program", Wins: true})
		steps, dates := len(p.Activities), len(p.Dates)
		text := inWords(t, p)
		for _, step := range []string{"Part of training", "A whole match"} {
			if strings.Contains(text, step) != row.shown {
				t.Errorf("sport %q: %q on the page: %v, want %v: %s", row.sport, step, !row.shown, row.shown, row.why)
			}
		}
		if !strings.Contains(text, "Jumping") {
			t.Errorf("sport %q: jumping is gone, and it is no step of sport", row.sport)
		}
		if !row.shown && !strings.Contains(text, "No sport where others may run into you.") {
			t.Errorf("sport %q: the limit on contact went with the step that spoke for it", row.sport)
		}
		if len(p.Activities) != steps || len(p.Dates) != dates {
			t.Errorf("sport %q: the plan itself was changed; the worksheet prints the steps", row.sport)
		}
	}
}

// TestShortSourceIsNoSentence: a client's page names a work by who and when; what we wrote in place of a title stays with colleagues.
func TestShortSourceIsNoSentence(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	for _, row := range []struct {
		s    program.Source
		want string
		why  string
	}{
		{program.Source{By: "Adams D, Logerstedt DS", Title: "Current concepts", Year: 2012}, "Adams 2012", "the first author"},
		{program.Source{Title: "Article that prints the Dutch statement (its own title was not noted)", In: "Journal of Athletic Training 56(10):1132", Year: 2021}, "Journal of Athletic Training 2021", "the journal"},
		{program.Source{By: "Krych AJ", Title: "Review of cartilage (its own title was not noted)", Year: 2020}, "Krych 2020", "an author comes first"},
		{program.Source{Title: "Case report after knee replacement, PMC1 (its own title was not noted)"}, "Case report after knee replacement", "neither author nor journal"},
		{program.Source{Title: "Three programmes after repair", In: "clinic pages 1 to 3"}, "Three programmes after repair", "a title that was noted"},
	} {
		if got := h.shortly(row.s); got != row.want {
			t.Errorf("%q, want %q: %s", got, row.want, row.why)
		}
	}
}
