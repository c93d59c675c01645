package page

import (
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// TestNumbersAsRead: no finer than anybody reads the test, and never a bare percent where points are meant.
func TestNumbersAsRead(t *testing.T) {
	d := &desk{sheet: sheet{deskWords(t)}, p: &plan.Plan{AsOf: testDay}}
	for _, row := range []struct {
		measure, unit string
		delta, error  float64
		want, why     string
	}{
		{"flexion", "°", -9, 0, "−9° since 30 March, error not known", "degrees are whole"},
		{"extension", "°", 1, 5.4051, "1° of straightening lost since 30 March, within error (5°)", "more degrees are worse here"},
		{"extension", "°", -2, 5.4051, "2° of straightening won since 30 March, within error (5°)", "and fewer better"},
		{"extension", "°", 0, 5.4051, "0° since 30 March, within error (5°)", "nothing has no sign"},
		{"knee-extension.lsi", "%", 8.6, 0, "+8.6 points of symmetry since 30 March, error not known", "no share of what was there before"},
		{"knee-extension.nm-per-kg", "N·m/kg", 0.2744, 0, "+0.27 N·m/kg since 30 March, error not known", "two decimals"},
		{"leg-press-single.one-rm", "kg", 5.6667, 0, "+5.7 kg since 30 March, error not known", "as a lift is cut"},
		{"pain", "", 2, 0, "+2 since 30 March, error not known", "points of pain"},
	} {
		c := plan.Change{Measure: row.measure, Delta: &basis.Step{Value: row.delta, Unit: row.unit}, Before: finding.Measure{On: civil("2026-03-30")}, Verdict: plan.NotKnown}
		if row.error > 0 {
			c.Verdict, c.Error = plan.WithinError, plan.TestError{MDC95: &basis.Step{Value: row.error, Unit: row.unit}}
		}
		d.p.Changes = []plan.Change{c}
		if got := d.since(row.measure); strings.ReplaceAll(got, "\u00a0", " ") != row.want {
			t.Errorf("%s: %q, want %q (%s)", row.measure, got, row.want, row.why)
		}
	}
}

// TestStraightEndInWords: two signs are in use for it.
func TestStraightEndInWords(t *testing.T) {
	d := &desk{sheet: sheet{deskWords(t)}}
	for v, want := range map[unit.Degrees]string{0: "straight (0°)", 4: "lacks 4°", -3: "3° beyond straight"} {
		if got := d.straightEnd(finding.KneeAngles{Straight: basis.Typed(v, "", basis.Origin{})}); got != want {
			t.Errorf("%v: %q, want %q", v, got, want)
		}
	}
	if got := d.straightEnd(finding.KneeAngles{}); got != "" {
		t.Errorf("not measured: %q", got)
	}
}

// TestAFloorThatIsPast: a day that is over is nothing to wait for.
func TestAFloorThatIsPast(t *testing.T) {
	activity := func(id, day string) plan.ActivityState {
		return plan.ActivityState{Activity: &program.Activity{ID: id, Title: id}, State: "closed", NotBefore: civil(day)}
	}
	d := &desk{sheet: sheet{deskWords(t)}, p: &plan.Plan{AsOf: testDay, Block: &client.Block{Starts: testDay, Weeks: 4}, Client: &client.Client{}}}
	d.p.Activities = []plan.ActivityState{activity("Past", "2026-02-23"), activity("Ahead", "2026-04-20"), activity("Third", "2026-03-02"), activity("Far", "2026-08-24")}
	var b strings.Builder
	saidNodes(&b, []Node{d.decideActivities()})
	text := strings.ReplaceAll(b.String(), "\u00a0", " ")
	for _, want := range []string{"Past: closed, its waiting time ended on Mon 23 February", "Ahead: closed, not before Mon 20 April", "Third (its waiting time ended on Mon 2 March)", "Far Mon 24 August"} {
		if !strings.Contains(text, want) {
			t.Errorf("not %q:\n%s", want, text)
		}
	}
}

// TestWhatAWeekHasEarned: nothing, where it was the last of its block or the knee denies it.
func TestWhatAWeekHasEarned(t *testing.T) {
	d := &desk{sheet: sheet{deskWords(t)}}
	for _, row := range []struct {
		line plan.BackLine
		want string
	}{
		{plan.BackLine{}, "none yet"},
		{plan.BackLine{Completed: 2}, "week 2: week 3 is earned"},
		{plan.BackLine{Completed: 4, Last: true}, "week 4, the last of this block"},
		{plan.BackLine{Completed: 2, Denied: "pause: swollen"}, "week 2; week 3 is not earned (pause: swollen)"},
		{plan.BackLine{Completed: 4, Last: true, Denied: "pause: swollen"}, "week 4, the last of this block; nothing more is earned (pause: swollen)"},
	} {
		if got := d.completed(row.line); got != row.want {
			t.Errorf("%q, want %q", got, row.want)
		}
	}
}

// TestGoalThatIsLost: "reached" alone would be untrue beside a knee that is swollen again.
func TestGoalThatIsLost(t *testing.T) {
	d := &desk{sheet: sheet{deskWords(t)}, p: &plan.Plan{AsOf: testDay}}
	for lost, want := range map[string]string{"": "reached", "2026-03-30": "reached earlier, lost on Mon 30 March"} {
		g := plan.GoalState{State: "reached"}
		if lost != "" {
			g.Lost = civil(lost)
		}
		if got := strings.ReplaceAll(d.goalState(g), "\u00a0", " "); got != want {
			t.Errorf("lost %q: %q, want %q", lost, got, want)
		}
	}
}
