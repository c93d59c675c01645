package page

import (
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// The handout says each thing once. What is shortened here must stand elsewhere on the page.

// TestRangeOfBothLegs: where both legs have one range, one line below the boxes names both legs; where they differ in a single word,
// each box has its own.
func TestRangeOfBothLegs(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	own, other := h.Prescriptions[1], h.Prescriptions[0]
	for _, c := range []struct {
		name         string
		other        *unit.Reach
		pin          int
		shared, each int
	}{
		{"the same", own.Weeks[0].Range, own.Weeks[0].NearPin, 1, 0},
		{"another range", reach(0, 90), own.Weeks[0].NearPin, 0, 2},
		{"another pin", own.Weeks[0].Range, own.Weeks[0].NearPin + 1, 0, 2},
		{"the other leg has none", nil, 0, 0, 1},
	} {
		o := other
		o.Weeks = slices.Clone(own.Weeks)
		o.Weeks[0].Range, o.Weeks[0].NearPin = c.other, c.pin
		h.Prescriptions = []plan.Prescription{own, o}
		exercise := h.exercise(1, h.moves()[0])
		inBoxes := 0
		for _, box := range inside(exercise.Nodes, ofClass("leg")) {
			inBoxes += len(inside(box.Nodes, ofClass("range")))
		}
		shared := inside(exercise.Nodes, ofClass("all-legs"))
		if len(shared) != c.shared || inBoxes != c.each {
			t.Errorf("%s: %d lines of both legs and %d in boxes, want %d and %d", c.name, len(shared), inBoxes, c.shared, c.each)
		}
		for _, n := range shared {
			if says := textOf(n.Spans); !strings.HasPrefix(says, "BOTH legs: ") || !strings.HasSuffix(says, h.rangeOf(own, own.Weeks[0])) {
				t.Errorf("%s: %q does not name both legs and their range", c.name, says)
			}
		}
	}
}

// TestOneLineForLaterWeeks: a box that asks for the same all through names no later week, and the page says once what that means.
func TestOneLineForLaterWeeks(t *testing.T) {
	w := sampleWords(t)
	page := said(Handout(samplePlan(), w))
	if strings.Count(page, w.Say("exercises.same")) != 1 {
		t.Errorf("the page does not say once %q", w.Say("exercises.same"))
	}
	p := samplePlan()
	p.Prescriptions = p.Prescriptions[:2] // their loads grow
	if strings.Contains(said(Handout(p, w)), w.Say("exercises.same")) {
		t.Error("no box asks for the same, and the page speaks of one")
	}
}

// TestLaterWeeksSayWhatIsNew: of how hard and how rested a later week repeats nothing; where something falls away it says all.
func TestLaterWeeksSayWhatIsNew(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	dose := func(reserve, rest int) plan.WeekDose {
		d := plan.WeekDose{}
		d.Dose.Reserve = n(reserve)
		if rest > 0 {
			d.Dose.Rest = sec(unit.Seconds(rest))
		}
		return d
	}
	for _, c := range []struct {
		name        string
		before, now plan.WeekDose
		want        string
	}{
		{"nothing new", dose(2, 120), dose(2, 120), ""},
		{"nearer to the end", dose(3, 120), dose(2, 120), "stop when 2 more were possible"},
		{"a shorter rest", dose(2, 120), dose(2, 60), "rest 1 min"},
		{"no rest is asked for", dose(3, 120), dose(3, 0), "stop when 3 more were possible"},
	} {
		if got := strings.ReplaceAll(strings.Join(h.newManner(c.before, c.now), dot), "\u00a0", " "); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// TestMissingIsNamedOnce: a later step that misses all that the one before it does names that one and what comes to it.
func TestMissingIsNamedOnce(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	line := func(title string, missing ...string) plan.DateLine {
		return plan.DateLine{Title: title, Missing: missing}
	}
	two := line("Jumping", "jumping.pain", "jumping.effusion")
	for _, c := range []struct {
		name         string
		line, before plan.DateLine
		want         string
	}{
		{"the first", two, plan.DateLine{}, "Still missing: Little pain. A knee without swelling."},
		{"the same", line("Turning", "turning.effusion", "turning.pain"), two, "Still missing: as for Jumping."},
		{"more", line("Turning", "turning.pain", "turning.effusion", "turning.extension"), two, "Still missing: as for Jumping. Also: A straight knee."},
		{"less", line("Turning", "turning.pain"), two, "Still missing: Little pain."},
		{"one of two, and another", line("Turning", "turning.pain", "turning.extension"), two, "Still missing: Little pain. A straight knee."},
		{"a single one is named again", line("Turning", "turning.pain"), line("Jumping", "jumping.pain"), "Still missing: Little pain."},
		{"nothing", line("Turning"), two, ""},
	} {
		if got := h.missingAs(c.line, c.before); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// TestDayOfABanStandsOnce: a ban has its day among the dates; one that has none there keeps it beside it, so that none is lost.
func TestDayOfABanStandsOnce(t *testing.T) {
	for name, p := range samples() {
		h, w := handout{p, sampleWords(t)}, sampleWords(t)
		dates := textOfPart(h.dates())
		for _, b := range h.bans() {
			if b.lifts.IsZero() {
				continue
			}
			day, beside := w.Day(b.lifts), h.mayChange(b)
			if there := strings.Contains(beside, day); there == h.endDated(b) {
				t.Errorf("%s: %q, %s beside it: %v; among the dates: %v", name, b.says, day, there, h.endDated(b))
			}
			if h.endDated(b) && !strings.Contains(dates, strings.ReplaceAll(day, "\u00a0", " ")) {
				t.Errorf("%s: %q ends on %s, and no date says so", name, b.says, day)
			}
		}
	}
}

func textOfPart(p Part) string { return said(View{Parts: []Part{p}}) }

// TestOneGridForTheBlock: a row a training day, a column an exercise; a dash where the day does not ask for it.
func TestOneGridForTheBlock(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	g, moves, row := h.grid(), h.moves(), 0
	if len(g.Head) != 1+len(moves)+boxesOfKnee {
		t.Fatalf("the head is %q for %d exercises", g.Head, len(moves))
	}
	for _, week := range h.Weeks {
		for i, sessions := range h.trainingDays(week.Number) {
			cells := g.Rows[row]
			row++
			if day := textOf(cells[0].Spans); !strings.Contains(day, h.w.DayMonth(sessions[0].Day)) || (i == 0) != strings.HasPrefix(day, h.w.Say("tick.week", "week", week.Number)) {
				t.Errorf("row %d is %q", row, day)
			}
			for j, m := range moves {
				asked := m.anyWeek(func(d plan.WeekDose) bool { return d.Week == week.Number }) &&
					slices.ContainsFunc(sessions, func(s plan.SessionDay) bool { return m.in(s.Session) })
				if box := len(cells[j+1].Spans) == 0; box != asked {
					t.Errorf("row %d, %s: a box is %v, asked %v", row, m.Exercise.Title, box, asked)
				}
			}
		}
	}
	if row != len(g.Rows) || row == 0 {
		t.Errorf("%d rows for %d days", len(g.Rows), row)
	}
}
