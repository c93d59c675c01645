package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// A week counts only with a calm knee, and what the knee asks for now denies the week after it.
func TestWhatDeniesAWeek(t *testing.T) {
	week := func(days ...string) (sets []string) {
		for _, on := range days {
			sets = append(sets, on+" left 52.5 10,10,10 2")
		}
		return sets
	}
	first, last := week("2026-03-09", "2026-03-11", "2026-03-13"), week("2026-03-30", "2026-04-01", "2026-04-03")
	told := func(on, pain, swelling string) string {
		return `{ "on": "` + on + `", "pain": ` + pain + `, "pain_am": 1, "kind": "ache", "swelling": "` + swelling + `" }`
	}
	for _, row := range []struct {
		name          string
		sets          []string
		more          []string
		look          string // at the newest test day
		completed     int
		last          bool
		short, denied string
	}{
		{"calm", first, nil, "trace", 1, false, "", ""},
		{"pain on a day without a session", first, []string{told("2026-03-14", "3", "same")}, "trace", 0, false, "week 1: pain on 2026-03-14", ""},
		{"swelling on a day without a session", first, []string{told("2026-03-15", "1", "more")}, "trace", 0, false, "week 1: more swelling on 2026-03-15", ""},
		{"pain in another week", first, []string{told("2026-03-19", "3", "same")}, "trace", 1, false, "", ""},
		{"the last week of its block", last, nil, "trace", 4, true, "", ""},
		{"the last week, and a pause now", last, nil, "2+", 4, true, "", "pause: effusion 2+ on 2026-04-06"},
	} {
		w := logger(map[string]string{"2026-04-05": logWith(append(calmKnees(row.sets), row.more...), row.sets...)})
		w.tests["2026-04-06"] = strings.Replace(straightKnees, `effusion = "trace"`, `effusion = "`+row.look+`"`, 1)
		l := w.plan(t).CameBack[0].Lines[0]
		if l.Completed != row.completed || l.Last != row.last || l.Short.String() != row.short || l.Denied.String() != row.denied {
			t.Errorf("%s: week %d, last %v, short %q, denied %q; want %d, %v, %q, %q", row.name, l.Completed, l.Last, l.Short, l.Denied, row.completed, row.last, row.short, row.denied)
		}
	}
}

// Within the block: a look that pauses the knee denies the week after the one that was done.
func TestALookWithinTheBlockDeniesTheNextWeek(t *testing.T) {
	sets := []string{"2026-03-09 left 52.5 10,10,10 2", "2026-03-11 left 52.5 10,10,10 2", "2026-03-13 left 52.5 10,10,10 2"}
	for look, want := range map[string]string{"trace": "", "2+": "pause: effusion 2+ on 2026-03-16"} {
		w := logger(map[string]string{"2026-03-15": logOf(sets...)})
		delete(w.files, "clients/tern-04/blocks/2.toml")
		delete(w.tests, "2026-04-06")
		w.tests["2026-03-16"] = strings.Replace(straightKnees, `effusion = "trace"`, `effusion = "`+look+`"`, 1)
		if l := w.plan(t).CameBack[0].Lines[0]; l.Completed != 1 || l.Last || l.Denied.String() != want {
			t.Errorf("%s: week %d, denied %q, want week 1, %q", look, l.Completed, l.Denied, want)
		}
	}
}

// Rule 27: in a pause the other leg goes on and no further; its handout says "no more than this", so no ceiling may rise above the first week's.
func TestRule27f_NoCeilingRisesInAPause(t *testing.T) {
	calm := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	for name, row := range map[string]struct {
		w     who
		rises bool
	}{"calm": {calm, true}, "paused": {pausedWho(`"leg-press-single"`), false}} {
		ceilings := strings.Fields(loads(row.w.plan(t), "leg-press-single", unit.Right))
		if rises := ceilings[0] != ceilings[len(ceilings)-1]; rises != row.rises {
			t.Errorf("%s: the other leg's ceilings are %v", name, ceilings)
		}
	}
}

// A goal that was reached in time and is not met any more keeps its state, for swelling is weighed as a symptom; it says since when.
func TestAGoalThatIsLost(t *testing.T) {
	files := bare(rows("kneeling", "", "", "{ week = 0, allowed = true }"), "[[goal]]\nmeasure = \"effusion\"\nat_most = \"trace\"\nby_week = 4\nstanding = \"tool default\"\n", `"squat"`)
	for _, row := range []struct {
		name, newer, newest, lost string // empty: it still is met
	}{{"calm all the time", "trace", "trace", ""}, {"lost at the newest look", "trace", "1+", "2026-03-09"}, {"lost before, and still", "1+", "1+", "2026-03-02"}, {"came back", "1+", "trace", ""}} {
		tests := map[string]string{"2026-02-02": "effusion = \"trace\"\n", "2026-03-02": "effusion = \"" + row.newer + "\"\n", "2026-03-09": "effusion = \"" + row.newest + "\"\n"}
		g := who{starts: "2026-03-09", weeks: 1, files: files, tests: tests}.plan(t).Goals[0]
		if lost := row.lost; g.State != "reached" || (lost == "") != g.Lost.IsZero() || !g.Lost.IsZero() && g.Lost.String() != lost {
			t.Errorf("%s: %q, lost %s, want reached, lost %s", row.name, g.State, g.Lost, lost)
		}
	}
}
