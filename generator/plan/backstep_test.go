package plan_test

import (
	"strings"
	"testing"
)

// The step up that the worksheet speaks of is the next setting of the machine, its add-on counted: from 20 kg of the stack it is
// 1.25 kg and no whole pin; from 36.25 kg the next pin; at 40 kg the stack ends.
func TestTheNextStepOfTheMachine(t *testing.T) {
	for load, want := range map[string]string{
		"20":    "repetitions first: one step up needs 15 to failure at this load", // 30 × (21.25 ÷ 20 × 1.4 − 1) = 14.6
		"36.25": "the step of the machine is too coarse",                           // 40: 16.3
		"10":    "the step of the machine is too coarse",                           // 11.25: 17.3
		"40":    "the machine ends here",
	} {
		text := strings.ReplaceAll(logOf("2026-04-01 left "+load+" 10,10,10 2", "2026-04-03 left "+load+" 10,10,10 2"), "leg-press-single", "knee-extension-machine")
		w := logger(map[string]string{"2026-04-05": text})
		w.files["programs/phases/settle.toml"] = strings.ReplaceAll(w.files["programs/phases/settle.toml"], "leg-press-single", "knee-extension-machine")
		p := w.plan(t)
		if len(p.CameBack) != 1 || len(p.CameBack[0].Lines) != 1 {
			t.Fatalf("%s kg: %+v", load, p.CameBack)
		}
		if got := p.CameBack[0].Lines[0].Step.String(); !strings.HasPrefix(got, want) {
			t.Errorf("%s kg: %q, want %q", load, got, want)
		}
	}
}
