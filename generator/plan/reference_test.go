package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/plan"
)

func reference(from string) string {
	return fmt.Sprintf("[[reference]]\nuse = \"pre-operative\"\nfrom = %s\nby = \"imbali\"\nreason = \"the other leg gave the graft\"\n", from)
}

// Rule 12: where the other leg is no sound reference, what it did before the operation stands in its place, once the
// therapist has confirmed that, and not before.
func TestRule12_AConfirmedReference(t *testing.T) {
	force := func(left, right string) string { return pull("knee-extension", left, right) }
	before := map[string]string{"2026-01-02": calm + "left.flexion_deg = 140\nright.flexion_deg = 140\n" + force("[400]", "[400]")}
	asks := `[[activity]]
id = "running"
kinds = ["running"]
[[activity.needs]]
measure = "knee-extension.lsi"
at_least_percent = 80
standing = "tool default"
[[activity.needs]]
measure = "flexion.percent-of-other"
at_least_percent = 90
standing = "tool default"
[[activity.needs]]
measure = "hop-single.lsi"
at_least_percent = 80
only_if_tested = true
standing = "tool default"
`
	hop := "[[hop]]\ntest = \"single\"\nleft.distance_cm = [100]\nright.distance_cm = [100]\n"
	for _, row := range []struct {
		name, more, other string
		before            map[string]string
		left, right       string // force today
		bend              string
		force, range_     plan.State
		says, why         string
	}{
		{"not confirmed", "", "donor", before, "[340]", "[340]", "135", plan.NotMet, plan.NotMet, "only once a [[reference]] says so", "85 % of what it was, and nobody has said that this counts"},
		{"confirmed", reference("2026-05-01"), "donor", before, "[340]", "[340]", "135", plan.Met, plan.Met, "", "340 of 400 N, 135 of 140°"},
		{"confirmed, short of the mark", reference("2026-05-01"), "donor", before, "[319]", "[300]", "125", plan.NotMet, plan.NotMet, "", "79.7 and 89.2, whatever today's other leg does"},
		{"confirmed later", reference("2026-06-02"), "donor", before, "[340]", "[340]", "135", plan.NotMet, plan.NotMet, "only once a [[reference]] says so", "as of the block's first day"},
		{"confirmed before the operation", reference("2026-01-04"), "donor", before, "[340]", "[340]", "135", plan.NotMet, plan.NotMet, "only once a [[reference]] says so", "said of another state of the knee"},
		{"nothing from before", reference("2026-05-01"), "donor", nil, "[340]", "[340]", "135", plan.NotMet, plan.NotMet, "nothing of the other leg from before", "missing never passes"},
		{"other leg operated before that", reference("2026-05-01") + operation("right", "2025-11-03"), "operated-too", before, "[340]", "[340]", "135", plan.NotMet, plan.NotMet, "from after its own operation", "an operated leg's value is no reference"},
		{"far too strong", reference("2026-05-01"), "donor", before, "[460]", "[340]", "135", plan.NotMet, plan.Met, "above 110", "115 %: the reference is in doubt"},
		{"sound", "", "sound", nil, "[340]", "[400]", "135", plan.Met, plan.Met, "", "symmetry as ever"},
	} {
		t.Run(row.name, func(t *testing.T) {
			tests := map[string]string{"2026-06-01": calm + "left.flexion_deg = " + row.bend + "\nright.flexion_deg = 140\n" + force(row.left, row.right) + hop}
			for on, text := range row.before {
				tests[on] = text
			}
			w := who{other: row.other, starts: "2026-06-01", weeks: 1, more: row.more + setups, tests: tests, files: bare(free, asks, `"quad-set"`)}
			p := w.plan(t)
			lsi, bend := criterion(t, p, "running.knee-extension.lsi"), criterion(t, p, "running.flexion.percent-of-other")
			if lsi.State != row.force || bend.State != row.range_ {
				t.Errorf("force %s (%s), range %s (%s); want %s, %s: %s", lsi.State, lsi.Doubt, bend.State, bend.Doubt, row.force, row.range_, row.why)
			}
			if !strings.Contains(lsi.Doubt.String(), row.says) {
				t.Errorf("%q does not say %q", lsi.Doubt, row.says)
			}
			if c := criterion(t, p, "running.hop-single.lsi"); row.other != "sound" && c.Passed() {
				t.Errorf("a hop was tested and has no other reference: %s", c.State)
			}
		})
	}
}

// Rule 16: a waiver is a word about one state of the knee. It counts from its day on, and not beyond the next operation.
func TestRule16_AWaiverEndsWithAnOperation(t *testing.T) {
	waived := func(from string) string {
		if from != "" {
			from = "from = " + from + "\n"
		}
		return "[[waived]]\ncriterion = \"running.knee-extension.lsi\"\n" + from + "by = \"imbali\"\nreason = \"agreed\"\n"
	}
	first := "[[event]]\nkind = \"operation\"\nprocedure = \"acl-reconstruction\"\ndate = 2024-03-04\nside = \"left\"\ngraft = \"allograft\"\n"
	other := strings.ReplaceAll(first, "left", "right")
	for _, row := range []struct {
		name, more string
		want       plan.State
		asks, why  string
	}{
		{"since the operation", waived("2026-05-01"), plan.Waived, "", ""},
		{"on its day", waived("2026-01-05"), plan.Waived, "", "the first day counts"},
		{"before it", waived("2026-01-04"), plan.NotTested, "before the operation of 2026-01-05: it does not count", "of another state of the knee"},
		{"later than the block begins", waived("2026-06-02"), plan.NotTested, "", "as of the block's first day"},
		{"without a day", waived(""), plan.Waived, "has no day; write from", "accepted, and asked about"},
		{"without a day, operated twice", waived("") + first, plan.NotTested, "operated on again on 2026-01-05: it does not count", "it may be of the first one"},
		{"before the second operation", waived("2024-09-02") + first, plan.NotTested, "of 2024-09-02, before the operation of 2026-01-05", "ended by it"},
		{"without a day, the other knee operated before", waived("") + other, plan.Waived, "has no day", "that was not this knee"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{other: "operated-too", starts: "2026-06-01", weeks: 1, more: row.more}
			p, faults := w.planned(t)
			if p == nil {
				t.Fatal(faults)
			}
			if got := criterion(t, p, "running.knee-extension.lsi").State; got != row.want {
				t.Errorf("%s, want %s: %s", got, row.want, row.why)
			}
			if asked := strings.Contains(faults.Error(), "waiver of"); asked != (row.asks != "") || !strings.Contains(faults.Error(), row.asks) {
				t.Errorf("%v; want %q", faults, row.asks)
			}
		})
	}
}
