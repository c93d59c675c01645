package page

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
)

func TestRetest(t *testing.T) {
	due := plan.Due{
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
