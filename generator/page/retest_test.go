package page

import (
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

func TestRetest(t *testing.T) {
	due := plan.Due{LastSwelling: unit.GradeTrace, LastPain: basis.Given("pain", basis.Rule{}, unit.Points(2), ""),
		Day:            []plan.DueValue{{Key: "mass_kg", Last: "64.1"}, {Key: "pain_kind", Last: `"ache"`}, {Key: "left.flexion_deg", Last: "128"}, {Key: "right.flexion_deg"}},
		Strength:       []plan.DueTest{{ID: "knee-extension", LastOn: testDay, Values: []plan.DueValue{{Key: "left.peak_n", Last: "[318, 331]"}, {Key: "right.peak_n", Last: "[402]"}}}},
		Hops:           []plan.DueTest{{ID: "single", Closed: "impact is closed until 4 May", Values: []plan.DueValue{{Key: "left.distance_cm"}, {Key: "right.distance_cm"}}}},
		Questionnaires: []plan.DueTest{{ID: "acl-rsi", LastOn: testDay, Values: []plan.DueValue{{Key: "score", Last: "58"}}}},
	}
	v := Retest(deskPlan(), due, testDay.AddWeeks(4), deskWords(t))
	text := said(v)
	last := -1
	for _, row := range []struct{ want, why string }{
		{"Retest form, Mon 4 May 2026", "the day that it is for"},
		{"Body mass, kg | 64.1", "last time's value beside the blank"},
		{"sharp, catching, giving way | ache", "without the quotes of the file"},
		{"Flexion, degrees | – | 128 |  | –", "each leg; never measured is said"},
		{"ACL-RSI (last Mon 6 April) | 58", "questionnaires before what tires"},
		{"single hop (never tested) | – | – | NOT YET: impact is closed until 4 May | – | ", "the index leg's blank is closed, the other leg's is not"},
		{"Knee extension, force of each trial (last Mon 6 April) | none on file: write it down | 318, 331 |  | 402", "a set-up that nobody typed is asked for"},
	} {
		at := strings.Index(text, row.want)
		if at <= last {
			t.Errorf("%q stands at %d after %d: %s", row.want, at, last, row.why)
		}
		last = at
	}
	if t.Failed() {
		t.Log(text)
	}
	lawHolds(t, samplePrinter(t), v)
}

// TestRetestInOtherUnits: what was typed in other units than the first of its key stands under its own, and a knee that goes beyond
// straight is not left blank.
func TestRetestInOtherUnits(t *testing.T) {
	due := plan.Due{
		Day:      []plan.DueValue{{Key: "mass_lb", Last: "170"}, {Key: "left.lacks_extension_deg", Last: "0"}, {Key: "right.beyond_straight_deg", Last: "2"}},
		Strength: []plan.DueTest{{ID: "knee-extension", LastOn: testDay, Values: []plan.DueValue{{Key: "left.peak_lbf", Last: "[62, 66]"}, {Key: "right.peak_lbf", Last: "[98]"}}}},
		Hops:     []plan.DueTest{{ID: "single", Values: []plan.DueValue{{Key: "left.distance_in"}, {Key: "right.distance_in"}}}},
	}
	text := said(Retest(deskPlan(), due, testDay.AddWeeks(4), deskWords(t)))
	for _, row := range []struct{ want, why string }{
		{"Body mass, lb | 170", "170 kg would be another person"},
		{"Lacks extension, degrees | – | 0 |  | 2 beyond straight", "one row for both keys of the straight end"},
		{"62, 66 lbf", "62 N is no thigh"},
		{"98 lbf", "each leg"},
	} {
		if !strings.Contains(text, row.want) {
			t.Errorf("no %q: %s\n%s", row.want, row.why, text)
		}
	}
	if strings.Contains(text, "– in") {
		t.Error("a unit stands where nothing was measured")
	}
}

// Rules 9 and 28: after a look that was not calm hops and maximal tests wait for today's; a lift may have to keep some in reserve; what
// a limit or a pause closes says so instead.
func TestRetestWaitsForACalmKnee(t *testing.T) {
	due := func(swelling unit.Grade) plan.Due {
		values := []plan.DueValue{{Key: "left"}, {Key: "right"}}
		return plan.Due{LastSwelling: swelling, LastPain: basis.Given("pain", basis.Rule{}, unit.Points(2), ""), Hops: []plan.DueTest{{ID: "single", Values: values}}, Strength: []plan.DueTest{{ID: "knee-extension", Closed: "a limit", Values: values}},
			Lifts: []plan.DueTest{{ID: "leg-press-single", Easy: "week 12", Values: values}, {ID: "leg-curl", Values: values}}}
	}
	paused := deskPlan()
	paused.Symptoms.Action = plan.Pause
	for _, row := range []struct {
		name     string
		p        *plan.Plan
		swelling unit.Grade
		want     []string
		not      string
		waits    int
	}{
		{"swollen", deskPlan(), unit.Grade1, []string{"ONLY IF CALM TODAY", "effusion was 1+", "NOT YET: a limit", "NOT TO FAILURE, leave 3: week 12"}, "NOT YET: the knee is paused", 2},
		{"calm", deskPlan(), unit.GradeTrace, []string{"NOT YET: a limit", "NOT TO FAILURE"}, "ONLY IF CALM TODAY", 0},
		{"never looked at", deskPlan(), "", []string{"ONLY IF CALM TODAY", "swelling was not looked at"}, "NOT YET: the knee is paused", 2},
		{"paused", paused, unit.Grade2, []string{"NOT YET: the knee is paused"}, "ONLY IF CALM TODAY", 0},
	} {
		text := said(Retest(row.p, due(row.swelling), testDay.AddWeeks(4), deskWords(t)))
		for _, want := range row.want {
			if !strings.Contains(text, want) {
				t.Errorf("%s: does not say %q", row.name, want)
			}
		}
		if strings.Contains(text, row.not) {
			t.Errorf("%s: says %q", row.name, row.not)
		}
		if got := strings.Count(text, "ONLY IF CALM TODAY"); got != row.waits {
			t.Errorf("%s: %d tests wait for a calm knee, want %d: the hop, and the lift that may go to failure", row.name, got, row.waits)
		}
	}
}
