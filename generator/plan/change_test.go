package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/plan"
)

func hopped(left string, more ...string) string {
	return "by = \"imbali\"\neffusion = \"zero\"\n[[hop]]\ntest = \"single\"\nleft.distance_cm = [" + left + "]\nright.distance_cm = [100]\n" + strings.Join(more, "\n") + "\n"
}

func changeOf(t *testing.T, p *plan.Plan, measure string) plan.Change {
	t.Helper()
	for _, c := range p.Changes {
		if c.Measure == measure {
			return c
		}
	}
	t.Fatalf("no change of %s", measure)
	return plan.Change{}
}

// The two examples of the evidence (measurement.md, 3): 82 to 90 is within 9.67, 80 to 90 is above it. What nobody has published
// is not known, and two tests that were made differently are not compared.
func TestRealChange(t *testing.T) {
	for _, row := range []struct {
		name, then, now, measure string
		want                     plan.Verdict
		because                  string
	}{
		{"82 to 90", hopped("82"), hopped("90"), "hop-single.lsi", plan.WithinError, ""},
		{"80 to 90", hopped("80"), hopped("90"), "hop-single.lsi", plan.RealChange, ""},
		{"90 to 80", hopped("90"), hopped("80"), "hop-single.lsi", plan.RealChange, ""},
		{"no error published", force("70"), force("95"), "knee-extension.lsi", plan.NotKnown, "no error of this test is known"},
		{"nothing before", "by = \"imbali\"\n", hopped("90"), "hop-single.lsi", plan.NotKnown, "no test before it"},
		{"another score", hopped("80", "trial = \"mean\""), hopped("95"), "hop-single.lsi", plan.NotKnown, "another score of the trials (mean, then best)"},
		{"doubtful", hopped("80"), hopped("130"), "hop-single.lsi", plan.NotKnown, "one of the two is doubtful"},
		{"printed at 90 % only, below", scored("50"), scored("58"), "lefs", plan.WithinError, ""},
		{"printed at 90 % only, above", scored("50"), scored("62"), "lefs", plan.NotKnown, "none is published at 95 %"},
		{"by the tool that was used", bent("100", "long-goniometer"), bent("111", "long-goniometer"), "flexion", plan.RealChange, ""},
		{"by a better tool", bent("100", "inclinometer"), bent("105", "inclinometer"), "flexion", plan.WithinError, ""},
		{"another tool", bent("100", "phone"), bent("120", "inclinometer"), "flexion", plan.NotKnown, "another tool (phone, then inclinometer)"},
		{"no tool said", bent("100", ""), bent("120", ""), "flexion", plan.NotKnown, "no error of this test is known"},
	} {
		c := changeOf(t, who{date: "2025-10-20", starts: "2026-07-20", tests: map[string]string{"2026-05-25": row.then, "2026-07-20": row.now}}.plan(t), row.measure)
		if c.Verdict != row.want || row.because != "" && !strings.Contains(c.Because.String(), row.because) {
			t.Errorf("%s: %s (%s), want %s (%s)", row.name, c.Verdict, c.Because, row.want, row.because)
		}
	}
}

func scored(lefs string) string {
	return "by = \"imbali\"\n[[questionnaire]]\nid = \"lefs\"\nscore = " + lefs + "\n"
}

func bent(flexion, tool string) string {
	if tool != "" {
		tool = fmt.Sprintf("angle_by = %q\n", tool)
	}
	return "by = \"imbali\"\n" + tool + "left.flexion_deg = " + flexion + "\n"
}

// An observed 91 with a standard error of 3.49 lies between 84.2 and 97.8 (measurement.md, 3).
func TestBandOfOneScore(t *testing.T) {
	c := changeOf(t, who{date: "2025-10-20", starts: "2026-07-20", tests: map[string]string{"2026-07-20": hopped("91")}}.plan(t), "hop-single.lsi")
	if got := fmt.Sprintf("%.1f–%.1f", c.Error.Low.Value, c.Error.High.Value); got != "84.2–97.8" {
		t.Errorf("%s, want 84.2–97.8", got)
	}
}

// An older test that was made in the same way is looked for behind one that was not, and the one between is named.
func TestChangeLooksFurtherBack(t *testing.T) {
	c := changeOf(t, who{date: "2025-10-20", starts: "2026-07-20", tests: map[string]string{
		"2026-05-25": hopped("80"), "2026-06-22": hopped("70", "trial = \"mean\""), "2026-07-20": hopped("95")}}.plan(t), "hop-single.lsi")
	if c.Before.On.String() != "2026-05-25" || c.Verdict != plan.RealChange || !strings.Contains(c.Because.String(), "not compared with 2026-06-22") {
		t.Errorf("before %s, %s, %q", c.Before.On, c.Verdict, c.Because)
	}
}
