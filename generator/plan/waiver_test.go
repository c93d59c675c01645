package plan_test

import (
	"fmt"
	"strings"
	"testing"
)

// Rule 16: a worn knee that never straightens, and a step that brings nothing that lands, may be waived by name; a step with
// jumps may not, nor may any step once the knee was operated on.
func TestRule16_AStepWithoutImpactMayBeWaived(t *testing.T) {
	const operated = "[[event]]\nkind = \"operation\"\nprocedure = \"arthroscopy\"\ndate = 2026-03-01\nside = \"left\"\n"
	for _, row := range []struct {
		program, criterion, more string
		may                      bool
		why                      string
	}{
		{"knee-osteoarthritis", "worn-strong.effusion", "", true, "weights, no landing"},
		{"knee-osteoarthritis", "worn-strong.pain", "", true, "likewise"},
		{"knee-osteoarthritis", "worn-strong.effusion", operated, false, "the knee heals from an operation"},
		{"knee-osteoarthritis", "end.pain", "", false, "the end is no step"},
		{"patellar-tendon-staged", "tendon-load.pain", "", true, "heavy and slow"},
		{"patellar-tendon-staged", "tendon-jumps.pain", "", false, "jumps"},
		{"return-to-running", "running.effusion", "", false, "an activity"},
	} {
		client := fmt.Sprintf("program = %q\nplace = \"gym\"\ntraining_days = [\"mon\", \"wed\", \"fri\"]\nother_leg = \"sound\"\nborn = \"1970-01\"\n"+
			"[[event]]\nkind = \"start\"\ndate = 2026-01-05\nside = \"left\"\n%s", row.program, row.more+waived(row.criterion))
		_, faults := who{starts: "2026-04-06", files: map[string]string{"clients/tern-04/client.toml": client}}.planned(t)
		said := fmt.Sprint(faults.Wrong())
		if strings.Contains(said, "there is no criterion") {
			t.Errorf("%s: %s", row.criterion, said)
		}
		if may := !strings.Contains(said, row.criterion+" cannot be waived"); may != row.may {
			t.Errorf("%s of %s may be waived is %v (%s): %s", row.criterion, row.program, may, row.why, said)
		}
	}
}

// Rules 16 and 28: a knee that lacks 9° for good gets out of its first stage by another look, or by a waiver.
func TestRule28_AKneeThatNeverStraightensGetsOn(t *testing.T) {
	client := "program = \"knee-osteoarthritis\"\nplace = \"gym\"\ntraining_days = [\"mon\", \"thu\"]\nother_leg = \"sound\"\nborn = \"1970-01\"\n" +
		"[[event]]\nkind = \"start\"\ndate = 2026-01-05\nside = \"left\"\n[[stage]]\nid = \"worn-move\"\nfrom = 2026-01-05\nby = \"imbali\"\n"
	for _, row := range []struct{ look, waived, want, why string }{
		{"effusion = \"zero\"\n", "", "not tested", "the sweep test says nothing of a bent knee"},
		{"effusion = \"2+\"\n", "", "not met", "but what it saw is there"},
		{"effusion = \"zero\"\n", waived("worn-strong.effusion"), "waived", "the therapist's word"},
		{"effusion = \"zero\"\neffusion_method = \"patellar-tap\"\n", "", "met", "a tap misses 1+ at most, and 1+ is allowed"},
		{"effusion = \"2+\"\neffusion_method = \"patellar-tap\"\n", "", "not met", ""},
	} {
		looked := map[string]string{"2026-04-06": "pain_worst = 2\nleft.lacks_extension_deg = 9\n" + row.look}
		p := who{starts: "2026-04-06", tests: looked, files: map[string]string{"clients/tern-04/client.toml": client + row.waived}}.plan(t)
		if c := criterion(t, p, "worn-strong.effusion"); string(c.State) != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.look, c.State, row.want, row.why)
		}
	}
}
