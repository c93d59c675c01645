package plan_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"paceleaf/generator/plan"
)

// force is a test of the front of the thigh in which the right leg gives 100 N: symmetry is what the left one gives.
func force(left string, more ...string) string {
	return "by = \"imbali\"\neffusion = \"zero\"\npain_worst = 0\n[[strength]]\ntest = \"knee-extension\"\nangle_deg = 90\nleft.peak_n = [" + left + "]\nright.peak_n = [100]\n" + strings.Join(more, "\n") + "\n"
}

// grown are the tests of the evidence (measurement.md, 7D): weeks 12 to 28 after 5 January 2026.
func grown() map[string]string {
	return map[string]string{"2026-03-30": force("58"), "2026-04-27": force("66"), "2026-05-25": force("71"), "2026-06-22": force("77"), "2026-07-20": force("81")}
}

// trendTo is the first trend of a measure to a mark.
func trendTo(t *testing.T, p *plan.Plan, measure string, mark float64) plan.Trend {
	t.Helper()
	for _, trend := range p.Trends {
		if trend.Measure == measure && trend.Mark.Number == mark {
			return trend
		}
	}
	t.Fatalf("no trend of %s to %g", measure, mark)
	return plan.Trend{}
}

// The weeks are those of the evidence, to its digits: straight 33.614 (80 %: 32.16 to 35.40), log-time 39.218, resistant 33.511.
func TestTrendComesToTheMarkAsInTheEvidence(t *testing.T) {
	trend := trendTo(t, who{starts: "2026-07-20", tests: grown()}.plan(t), "knee-extension.lsi", 90)
	if trend.Refused != "" || len(trend.Points) != 5 {
		t.Fatalf("refused: %q, %d points", trend.Refused, len(trend.Points))
	}
	for _, row := range []struct {
		name      string
		got, want float64
	}{
		{"straight", trend.Straight.Week.Value, 33.614}, {"first", trend.Straight.Low.Value, 32.16}, {"last", trend.Straight.High.Value, 35.40},
		{"log-time", trend.Log.Week.Value, 39.218}, {"resistant", trend.Resistant.Week.Value, 33.511}, {"slope", trend.Straight.Slope.Value, 1.425},
	} {
		if math.Abs(row.got-row.want) > 0.006 {
			t.Errorf("%s: week %.3f, want %.3f", row.name, row.got, row.want)
		}
	}
}

// No projected day lies before the floor in time: nine months for a sport of twisting end on 5 October, both weeks lie before.
func TestTrendWaitsForTheFloor(t *testing.T) {
	held := 0
	for _, trend := range (who{starts: "2026-07-20", tests: grown()}).plan(t).Trends {
		if trend.First.IsZero() {
			continue
		}
		if trend.First.Before(trend.NotBefore) || trend.CouldBe.Before(trend.NotBefore) {
			t.Errorf("%s: %s and %s, not before %s", trend.Measure, trend.First, trend.CouldBe, trend.NotBefore)
		}
		if trend.First == trend.NotBefore {
			held++
		}
	}
	if held == 0 {
		t.Error("no trend was held back by its floor: this test sees nothing")
	}
}

// What is refused says why; a test under other conditions or in doubt is left out by name.
func TestTrendRefuses(t *testing.T) {
	with := func(change map[string]string) map[string]string {
		all := grown()
		for day, text := range change {
			if all[day] = text; text == "" {
				delete(all, day)
			}
		}
		return all
	}
	for _, row := range []struct {
		name          string
		tests         map[string]string
		refused, left string
	}{
		{"two tests", with(map[string]string{"2026-03-30": "", "2026-04-27": "", "2026-05-25": ""}), "fewer than 3 tests", ""},
		{"five weeks", map[string]string{"2026-06-15": force("70"), "2026-06-29": force("74"), "2026-07-20": force("77")}, "span less than 6 weeks", ""},
		{"falls", with(map[string]string{"2026-07-20": force("50"), "2026-06-22": force("55")}), "does not rise", ""},
		{"another angle before", with(map[string]string{"2026-03-30": strings.Replace(force("58"), "angle_deg = 90", "angle_deg = 60\ntared = true", 1), "2026-04-27": "", "2026-05-25": ""}), "fewer than 3 tests", "another angle (60°, then 90°)"},
		{"trials far apart", with(map[string]string{"2026-05-25": force("71, 50"), "2026-06-22": "", "2026-04-27": ""}), "fewer than 3 tests", "spread more than 10 %"},
	} {
		trend := trendTo(t, who{starts: "2026-07-20", tests: row.tests}.plan(t), "knee-extension.lsi", 90)
		if !strings.Contains(trend.Refused.String(), row.refused) || !strings.Contains(fmt.Sprint(trend.LeftOut), row.left) || !trend.First.IsZero() {
			t.Errorf("%s: refused %q, left out %v, first %s", row.name, trend.Refused, trend.LeftOut, trend.First)
		}
	}
}

// More than 3 points a week is a slip more often than a knee; far ahead is a long reach.
func TestTrendDoubts(t *testing.T) {
	steep := trendTo(t, who{starts: "2026-07-20", tests: map[string]string{"2026-06-01": force("50"), "2026-06-29": force("66"), "2026-07-20": force("76")}}.plan(t), "knee-extension.lsi", 90)
	if !strings.Contains(fmt.Sprint(steep.Doubts), "more than 3 points a week") {
		t.Errorf("steep: %v", steep.Doubts)
	}
	slow := trendTo(t, who{starts: "2026-07-20", tests: map[string]string{"2026-05-25": force("70"), "2026-06-22": force("71.2"), "2026-07-20": force("72")}}.plan(t), "knee-extension.lsi", 90)
	if !strings.Contains(fmt.Sprint(slow.Doubts), "further ahead than the tests reach back") {
		t.Errorf("slow: %v", slow.Doubts)
	}
}

// A trend opens nothing: criteria, loads and dates of a plan are the same with and without the tests that make one.
func TestTrendOpensNothing(t *testing.T) {
	many := who{starts: "2026-07-20", tests: grown()}.plan(t)
	one := who{starts: "2026-07-20", tests: map[string]string{"2026-07-20": force("81")}}.plan(t)
	if a, b := states(many), states(one); a != b {
		t.Errorf("with a trend:\n%s\nwithout:\n%s", a, b)
	}
}

func states(p *plan.Plan) (all string) {
	for _, c := range p.Stage.Criteria {
		all += fmt.Sprintln(c.ID, c.State)
	}
	for _, a := range p.Activities {
		all += fmt.Sprintln(a.Activity.ID, a.State, a.Missing)
	}
	for _, d := range p.Dates {
		all += fmt.Sprintln(d.On, d.Kind, d.What, d.Missing)
	}
	return all
}
