package plan_test

import (
	"fmt"
	"testing"

	"paceleaf/generator/plan"
)

// Rules 29 and 30: what the client told of one session of the block changes no page, for its flare plan says what to do, and is
// never silent either: the worksheet flags it, and the overview calls. What is calm, was looked at since, or changes the page
// is not told twice.
func TestRule30g_OneReportWithinTheBlockIsNotSilent(t *testing.T) {
	const calm, sharp, more, much = `"pain": 1, "pain_am": 0, "kind": "ache", "swelling": "same"`, `"pain": 1, "pain_am": 0, "kind": "giving-way", "swelling": "same"`,
		`"pain": 1, "pain_am": 0, "kind": "ache", "swelling": "more"`, `"pain": 1, "pain_am": 0, "kind": "ache", "swelling": "much more"`
	for _, row := range []struct {
		name, on, told, look string
		flagged              bool
		action               plan.Action
		why                  string
	}{
		{"calm", "2026-04-14", calm, "", false, plan.NoAction, "nothing to hear"},
		{"giving way", "2026-04-14", sharp, "", true, plan.NoAction, "a sign to stop and call: never silent"},
		{"more swollen", "2026-04-14", more, "", true, plan.NoAction, "one evening holds no four weeks"},
		{"looked at since", "2026-04-14", more, "2026-04-16", false, plan.NoAction, "the test day puts it aside"},
		{"much more swollen", "2026-04-14", much, "", false, plan.Pause, "the page itself changes"},
		{"on its first day", "2026-04-06", sharp, "", false, plan.StepBack, "the page of the block already holds it"},
	} {
		t.Run(row.name, func(t *testing.T) {
			tests := map[string]string{"2026-03-30": sign{0, 0, "ache", "zero"}.text()}
			if row.look != "" {
				tests[row.look] = sign{0, 0, "ache", "zero"}.text()
			}
			w := who{starts: "2026-04-06", weeks: 4, tests: tests, files: own(`"quad-set"`)}
			w.files["clients/tern-04/logs/"+row.on+".json"] = fmt.Sprintf(`{"log": 1, "client": "tern-04", "block": 1, "done": [], "knee": [{"on": %q, %s}]}`, row.on, row.told)
			p := w.plan(t)
			flagged := false
			for _, f := range p.Flags {
				flagged = flagged || f.ID == "told-in-block"
			}
			if flagged != row.flagged || p.Symptoms.Action != row.action {
				t.Errorf("flagged %v, action %q: %s", flagged, p.Symptoms.Action, row.why)
			}
		})
	}
}
