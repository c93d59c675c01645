package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Rule 22: a ceiling grows only through weeks in which the exercise is done on this machine. After one week without it the last
// ceiling is repeated, after two or more it lies a step lower, and comes back the week after.
func TestRule22_AWeekAwayEarnsNothing(t *testing.T) {
	for _, row := range []struct{ name, from, until, want, why string }{
		{"never away", "2026-06-01", "2026-06-02", "52.5 55 55 57.5 57.5 60", "each week earns the next"},
		{"week 2", "2026-04-13", "2026-04-19", "52.5 - 52.5 55 55 57.5", "the ceiling of week 1 again"},
		{"week 3", "2026-04-20", "2026-04-26", "52.5 55 - 55 55 57.5", "the ceiling of week 2 again"},
		{"weeks 2 and 3", "2026-04-13", "2026-04-26", "52.5 - - 50 52.5 55", "a step lower, then that of week 1"},
		{"weeks 2 to 4", "2026-04-13", "2026-05-03", "52.5 - - - 50 52.5", "no more than one step"},
		{"week 1", "2026-04-06", "2026-04-12", "- 52.5 55 55 57.5 57.5", "nothing was earned yet"},
		{"weeks 1 and 2", "2026-04-06", "2026-04-19", "- - 50 52.5 55 55", "two weeks after the lift"},
	} {
		w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", away(row.from, row.until, "hotel"))
		if got := loads(w.plan(t), "leg-press-single", unit.Left); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.name, got, row.want, row.why)
		}
	}
}

// Rules 22 and 24: a load under the lightest weight of the machine is not grown into one that can be set: nobody has used the
// machine, so nobody has earned it. The easier choice stays for the whole block.
func TestRule22_NoGrowthIntoAMachine(t *testing.T) {
	w := pressed("knee-extension-machine", "5 kg x 10+0", "60 kg x 8+0", "")
	w.files = own(`"knee-extension-machine", "knee-extension-no-added-weight"`)
	p := w.plan(t)
	for week := 1; week <= 6; week++ {
		if got := chosen(p, "slot-1", unit.Left, week); got != "knee-extension-no-added-weight" {
			t.Errorf("week %d: %s: 5 × 10 allows 4.76, and the stack begins at 5", week, got)
		}
		if because := because(p, "knee-extension-machine", week); !strings.Contains(because, "lightest") {
			t.Errorf("week %d: %q", week, because)
		}
	}
	// a later week whose dose asks for less would be heavy enough, and is passed over too
	w.files["programs/phases/settle.toml"] = strings.Replace(w.files["programs/phases/settle.toml"], "weekly_percent = 2.5", "weekly_percent = 2.5\n[[slot.week]]\nfrom = 3\nreps = 6", 1)
	if p, _ = w.planned(t); p != nil && chosen(p, "slot-1", unit.Left, 4) == "knee-extension-machine" {
		t.Error("week 4 begins on a machine that weeks 1 to 3 could not set")
	}
}

// Rule 22: two weeks or more that were missed before the block take a step off, once; a lift of these weeks has measured the leg
// as it is.
func TestRule22_WeeksMissedBeforeTheBlock(t *testing.T) {
	full := func(days ...string) (sets []string) {
		for _, on := range days {
			sets = append(sets, on+" left 52.5 10,10,10 2")
		}
		return sets
	}
	first := full("2026-03-09", "2026-03-11", "2026-03-13")
	for _, row := range []struct {
		name, log, starts, lift string
		want, flags, why        string
	}{
		{"no log, no gap", "", "2026-04-06", "", "52.5 55 55 57.5", "", "what no log tells of is not called missed"},
		{"week 1 of 4 alone", logOf(first...), "2026-04-06", "", "50 52.5 55 55", "weeks-missed", "three weeks missed"},
		{"weeks 1 and 2", logOf(append(full("2026-03-16"), first...)...), "2026-04-06", "", "50 52.5 55 55", "weeks-missed", "two"},
		{"weeks 1 to 3", logOf(append(full("2026-03-27"), first...)...), "2026-04-06", "", "52.5 52.5 55 55", "", "one: the last is repeated"},
		{"a gap of a week", "", "2026-04-13", "", "52.5 55 55 57.5", "", "one"},
		{"a gap of two weeks", "", "2026-04-20", "", "50 52.5 55 55", "weeks-missed weeks-without-a-block", "two without a block"},
		{"lifted on the first day after it", "", "2026-04-20", "2026-04-20", "52.5 55 55 57.5", "weeks-without-a-block", "measured as it is"},
		{"lifted in the first of the missed weeks", logOf(first...), "2026-04-06", "2026-03-25", "52.5 55 55 57.5", "", "12 days before: measured as it is"},
	} {
		logs := map[string]string{}
		if row.log != "" {
			logs["2026-04-05"] = row.log
		}
		w := logger(logs)
		w.files["clients/tern-04/blocks/2.toml"] = fmt.Sprintf("starts = %s\nweeks = 4\nby = \"imbali\"\n", row.starts)
		delete(w.tests, "2026-04-06")
		w.tests[row.starts] = straightKnees
		if row.lift != "" {
			w.tests[row.lift] = w.tests["2026-03-02"]
		}
		p := w.plan(t)
		if got := loads(p, "leg-press-single", unit.Left); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.name, got, row.want, row.why)
		}
		if got := missedFlags(p); got != row.flags {
			t.Errorf("%s: flags %q, want %q (%s)", row.name, got, row.flags, row.why)
		}
	}
}

// missedFlags are the flags of a plan about weeks that were missed by the left leg or by all.
func missedFlags(p *plan.Plan) string {
	var ids []string
	for _, f := range p.Flags {
		if strings.HasPrefix(f.ID, "weeks-") && !strings.HasSuffix(f.About, ".right") {
			ids = append(ids, f.ID)
		}
	}
	return strings.Join(ids, " ")
}
