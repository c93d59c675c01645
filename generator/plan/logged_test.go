package plan_test

import (
	"fmt"
	"maps"
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// logger is a client of week 22 and on, whom no limit binds: block 1 from 9 March asked 52.5 and 80 kg of the press, after a lift
// of 2 March; block 2 begins on 6 April. Logs of block 1 are laid over it.
func logger(logs map[string]string) who {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.starts, w.weeks = "2026-03-09", 4
	w.tests = map[string]string{"2026-03-02": w.tests["2026-04-06"], "2026-04-06": straightKnees}
	w.files = maps.Clone(w.files)
	w.files["clients/tern-04/blocks/2.toml"] = "starts = 2026-04-06\nweeks = 4\nby = \"imbali\"\n"
	for day, text := range logs {
		w.files["clients/tern-04/logs/"+day+".json"] = text
	}
	return w
}

// logOf is a log of block 1; each set is "on leg load reps reserve", and each of its days was calm.
func logOf(sets ...string) string {
	return logWith(calmKnees(sets), sets...)
}

func calmKnees(sets []string) (knee []string) {
	seen := map[string]bool{}
	for _, s := range sets {
		if on := strings.Fields(s)[0]; !seen[on] {
			seen[on] = true
			knee = append(knee, fmt.Sprintf(`{ "on": %q, "pain": 1, "pain_am": 0, "kind": "ache", "swelling": "same" }`, on))
		}
	}
	return knee
}

func logWith(knee []string, sets ...string) string {
	var done []string
	for _, s := range sets {
		f := strings.Fields(s)
		reserve := ""
		if len(f) > 4 {
			reserve = `, "reserve": ` + f[4]
		}
		done = append(done, fmt.Sprintf(`{ "on": %q, "do": "leg-press-single", %q: { "kg": %s, "reps": [%s]%s } }`, f[0], f[1], f[2], f[3], reserve))
	}
	return fmt.Sprintf("{ \"log\": 1, \"client\": \"tern-04\", \"block\": 1,\n\"done\": [ %s ],\n\"knee\": [ %s ] }", strings.Join(done, ",\n"), strings.Join(knee, ",\n"))
}

// Rules 20, 23 and 24: which source a load has, and how far it may rise above what was logged. The plan is 10 with 2 in
// reserve: 12 to failure, 71.4 % of the maximum; the lift of 2 March gives 52.5.
func TestRule23_FromALoggedSet(t *testing.T) {
	for _, row := range []struct {
		name string
		logs map[string]string
		want float64
		why  string
	}{
		{"no log", nil, 52.5, "the lift, however old"},
		{"as strong", map[string]string{"2026-04-05": logOf("2026-04-03 left 60 8,8,7 0")}, 52.5, "60 × 8 to failure is 76, of it 54.28"},
		{"stronger", map[string]string{"2026-04-05": logOf("2026-04-03 left 60 8,8,8 2")}, 55, "60 × 10 is 80, of it 57.1: it lies under the 60 that was logged"},
		{"weaker", map[string]string{"2026-04-05": logOf("2026-04-03 left 50 8,8,8 0")}, 45, "50 × 8 is 63.3, of it 45.2: a log may lower what an old lift gave"},
		{"a step up by a tenth at most", map[string]string{"2026-04-05": logOf("2026-04-03 left 50 3,3 0", "2026-04-03 right 80 3 0")}, 37.5, "55 is the maximum then"},
		{"doubted, so nothing is raised", map[string]string{"2026-04-05": logOf("2026-04-03 left 40 13,13 2")}, 40, "40 × 15 is 60, of it 42.8: more than 10 to failure"},
		{"too many repetitions", map[string]string{"2026-04-05": logOf("2026-04-03 left 30 16 2")}, 52.5, "no estimate above 15: the lift"},
		{"no reserve told", map[string]string{"2026-04-05": logOf("2026-04-03 left 60 8")}, 52.5, "what is not told is not none"},
		{"the best of two", map[string]string{"2026-04-05": logOf("2026-04-01 left 50 8 0", "2026-04-03 left 52.5 8 1")}, 47.5, "52.5 × 9 is 68.25, of it 48.75"},
		{"older than two weeks", map[string]string{"2026-04-05": logOf("2026-03-22 left 50 8 0")}, 50, "the 23rd is 14 days before the block: the lift counts, and weeks 3 and 4 were missed: a step lower"},
		{"14 days before", map[string]string{"2026-04-05": logOf("2026-03-23 left 50 8 0")}, 45, "the last day that counts"},
		{"written after the block began", map[string]string{"2026-04-07": logOf("2026-04-03 left 50 8 0")}, 52.5, "a page does not change by what comes later"},
		{"the other leg", map[string]string{"2026-04-05": logOf("2026-04-03 right 50 8 0")}, 52.5, "nothing carries across legs"},
		{"far above what was asked", map[string]string{"2026-04-05": logOf("2026-04-03 left 80 8 0")}, 52.5, "a quarter more than the ceiling of that week: asked about, not used"},
		{"a weight that cannot be set", map[string]string{"2026-04-05": logOf("2026-04-03 left 51 8 0")}, 52.5, "plates of 1.25 in pairs make no 51"},
		{"two logs, the later one", map[string]string{"2026-03-30": logOf("2026-03-27 left 60 8 0"), "2026-04-05": logOf("2026-03-27 left 50 8 0")}, 45, "the client's last word"},
	} {
		p := logger(row.logs).plan(t)
		d := dose(p, "leg-press-single", unit.Left, 1)
		if put(d) != row.want {
			t.Errorf("%s: %g kg, want %g (%s)", row.name, put(d), row.want, row.why)
		}
		if ids := page.SharedIDs(p); len(ids) > 0 {
			t.Errorf("%s: ids of two numbers: %v", row.name, ids)
		}
	}
}

// Rule 23: of whatever is logged, a load above the logged one is predicted to be done with the reserve, and is a tenth more at
// most; none is given above it where the knee was not calm, or nobody told how it was.
func TestRule23b_AStepUpIsPredicted(t *testing.T) {
	up := 0
	for _, reps := range []int{6, 7, 8, 13} {
		for _, kg := range []float64{30, 40, 50, 60} {
			for _, knee := range []string{"calm", "sore", "silent", "swollen next day"} {
				set := fmt.Sprintf("2026-04-03 left %g %d 2", kg, reps)
				reports := map[string][]string{"calm": calmKnees([]string{set}), "silent": nil,
					"sore":             {`{ "on": "2026-04-03", "pain": 4, "pain_am": 1, "kind": "ache" }`},
					"swollen next day": append(calmKnees([]string{set}), `{ "on": "2026-04-04", "swelling": "more" }`)}[knee]
				w := logger(map[string]string{"2026-04-05": logWith(reports, set)})
				w.files["clients/tern-04/blocks/2.toml"] += "[[override]]\nexercise = \"leg-press-single\"\nreps = 5\nreason = \"wish\"\n"
				p := w.plan(t)
				d := dose(p, "leg-press-single", unit.Left, 1)
				if put(d) <= kg {
					continue
				}
				up++
				if knee != "calm" || reps+2 > 10 {
					t.Errorf("%g × %d, %s: raised to %g", kg, reps, knee, put(d))
				}
				if put(d) > kg*1.1 || float64(d.Implied.Or(0)) < 2 {
					t.Errorf("%g × %d: raised to %g, %g would be left", kg, reps, put(d), float64(d.Implied.Or(0)))
				}
			}
		}
	}
	if up < 5 {
		t.Errorf("only %d loads rose: is the rule still looking?", up)
	}
}

// Rule 23: fewer repetitions asked make the load heavier, but by no more than a tenth at once.
func TestRule23d_ATenthAtMost(t *testing.T) {
	for reps, want := range map[int]float64{8: 40, 5: 42.5, 3: 42.5, 2: 42.5} {
		w := logger(map[string]string{"2026-04-05": logOf("2026-04-03 left 40 8 2")})
		w.files["clients/tern-04/blocks/2.toml"] += fmt.Sprintf("[[override]]\nexercise = \"leg-press-single\"\nreps = %d\nreason = \"wish\"\n", reps)
		if got := put(dose(w.plan(t), "leg-press-single", unit.Left, 1)); got != want {
			t.Errorf("%d repetitions: %g, want %g: 40 × 10 is 53.3, and 44 is a tenth more", reps, got, want)
		}
	}
}

// Rule 20: which lift comes before a log: one of the block that is over, or of the new block's morning.
func TestRule20c_ALiftBeforeALog(t *testing.T) {
	log := map[string]string{"2026-04-05": logOf("2026-04-03 left 50 8 0")}
	for on, want := range map[string]float64{"2026-03-08": 45, "2026-03-09": 52.5, "2026-03-20": 52.5, "2026-04-06": 52.5} {
		w := logger(log)
		w.tests = map[string]string{"2026-03-01": straightKnees + lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0"),
			on: straightKnees + lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0")}
		if got := put(dose(w.plan(t), "leg-press-single", unit.Left, 1)); got != want {
			t.Errorf("lifted on %s: %g, want %g", on, got, want)
		}
	}
}

// Rule 24: without a lift a weight that the client found counts once it was told on a second day; and the range is the one
// in force in its week.
func TestRule24c_AFoundWeight(t *testing.T) {
	for _, row := range []struct {
		name string
		log  string
		more string
		want string
	}{
		{"told once", logOf("2026-04-03 left 50 8 0"), "", "find"},
		{"told twice", logOf("2026-04-01 left 50 7 0", "2026-04-03 left 50 8 0"), "", "45"},
		{"a slip beside it", logOf("2026-04-01 left 20 7 0", "2026-04-03 left 50 8 0"), "", "17.5"},
		{"not so deep then", logOf("2026-04-01 left 50 7 0", "2026-04-03 left 50 8 0"), limit("loaded-bend", "range_deg = [0, 60]", "2026-03-01", "2026-04-06", "surgeon", "Dr Auk", "2026-03-01"), "find"},
		{"not allowed then", logOf("2026-04-01 left 50 7 0", "2026-04-03 left 50 8 0"), limit("loaded-bend", "allowed = false", "2026-03-01", "2026-04-06", "surgeon", "Dr Auk", "2026-03-01"), "find"},
	} {
		w := logger(map[string]string{"2026-04-05": row.log})
		w.more += row.more
		w.tests = map[string]string{"2026-03-02": straightKnees, "2026-04-06": straightKnees}
		p := w.plan(t)
		if got := strings.Fields(loads(p, "leg-press-single", unit.Left))[0]; got != row.want {
			t.Errorf("%s: %s, want %s", row.name, got, row.want)
		}
	}
}

// What is wrong with a log that only the program and the page show.
func TestLogsAgainstThePage(t *testing.T) {
	for _, row := range []struct{ name, set, says string }{
		{"an unknown exercise", `{ "on": "2026-04-03", "do": "leg-pres-single", "left": {} }`, `:2: there is no exercise "leg-pres-single" in program`},
		{"a leg that is not there", `{ "on": "2026-04-03", "do": "leg-press-single", "both": {} }`, `:2: leg-press-single is not done by that leg; write it under "left" and "right"`},
		{"pounds at a press in kilograms", `{ "on": "2026-04-03", "do": "leg-press-single", "left": { "lb": 110, "reps": [8] } }`, `:2: press is marked in kg, and the load is told in lb; write "kg" as it stands on the device`},
		{"far below", `{ "on": "2026-04-03", "do": "leg-press-single", "left": { "kg": 20, "reps": [8] } }`, ":2: leg-press-single of 2026-04-03: 20 kg is far below what was asked"},
		{"far above", `{ "on": "2026-04-03", "do": "leg-press-single", "left": { "kg": 100, "reps": [8] } }`, ":2: leg-press-single of 2026-04-03: 100 kg is far above what was asked"},
		{"not on this device", `{ "on": "2026-04-03", "do": "leg-press-single", "left": { "kg": 51, "reps": [8] } }`, ":2: press cannot be set to 51 kg"},
	} {
		text := "{ \"log\": 1, \"client\": \"tern-04\", \"block\": 1,\n\"done\": [ " + row.set + " ] }"
		_, faults := logger(map[string]string{"2026-04-05": text}).planned(t)
		if got := faults.Error(); !strings.Contains(got, "clients/tern-04/logs/2026-04-05.json"+row.says) {
			t.Errorf("%s: %s", row.name, got)
		}
	}
}

// What came back: sessions, the last completed week, and what follows for a step up.
func TestRule22c_WhatCameBack(t *testing.T) {
	week := func(load, reps, reserve string, days ...string) (sets []string) {
		for _, on := range days {
			sets = append(sets, fmt.Sprintf("%s left %s %s %s", on, load, reps, reserve))
		}
		return sets
	}
	first := week("52.5", "10,10,10", "2", "2026-03-09", "2026-03-11", "2026-03-13")
	for _, row := range []struct {
		name      string
		sets      []string
		completed int
		short     string
		step      string
	}{
		{"one whole week", first, 1, "", "repetitions first: one step up needs 14 to failure at this load"},
		{"a session left out", first[:2], 0, "week 1: 2 of 3 sessions", "repetitions first"},
		{"a repetition short", append(week("52.5", "10,10,9", "2", "2026-03-09"), first[1:]...), 0, "week 1: fewer than 10 repetitions on 2026-03-09", ""},
		{"too near failure", append(week("52.5", "10,10,10", "1", "2026-03-09"), first[1:]...), 0, "week 1: only 1 in reserve on 2026-03-09", ""},
		{"a set short", append(week("52.5", "10,10", "2", "2026-03-09"), first[1:]...), 0, "week 1: 2 of 3 sets on 2026-03-09", ""},
		{"the last set heavier: a line of its own", append([]string{"2026-03-09 left 52.5 10,10 2", "2026-03-09 left 55 10 2"}, first[1:]...), 1, "", ""},
		{"lighter than asked", append(week("50", "10,10,10", "2", "2026-03-09"), first[1:]...), 0, "week 1: less than the load of week 1 on 2026-03-09", ""},
		{"two for two", append(first[:1:1], week("52.5", "12,12,12", "2", "2026-03-11", "2026-03-13")...), 1, "", "2 for 2: a step is earned"},
	} {
		p := logger(map[string]string{"2026-04-05": logOf(row.sets...)}).plan(t)
		if len(p.CameBack) != 1 || len(p.CameBack[0].Lines) != 1 {
			t.Errorf("%s: %+v", row.name, p.CameBack)
			continue
		}
		l := p.CameBack[0].Lines[0]
		if l.Completed != row.completed || l.Short.String() != row.short || !strings.HasPrefix(l.Step.String(), row.step) {
			t.Errorf("%s: week %d, %q, %q; want %d, %q, %q", row.name, l.Completed, l.Short, l.Step, row.completed, row.short, row.step)
		}
		if row.name == "one whole week" && (l.Asked != 3 || l.Done != 3 || l.Tonnage[0].Or(0) != 3*3*10*52.5) {
			t.Errorf("%d of %d, %v", l.Done, l.Asked, l.Tonnage[0].Or(0))
		}
	}
}

// Foster's worked week: 1260, monotony 0.982, strain 1237.3; a training day that nobody rated leaves the week without a load.
func TestSessionLoadsOfAWeek(t *testing.T) {
	rate := func(rows ...string) string {
		return "{ \"log\": 1, \"client\": \"tern-04\", \"block\": 1, \"effort\": [ " + strings.Join(rows, ", ") + " ] }"
	}
	row := func(on string, rating, minutes int) string {
		return fmt.Sprintf(`{ "on": %q, "rating": %d, "minutes": %d }`, on, rating, minutes)
	}
	all := []string{row("2026-03-09", 6, 50), row("2026-03-11", 7, 60), row("2026-03-13", 6, 60), row("2026-03-14", 3, 60)}
	p := logger(map[string]string{"2026-04-05": rate(all...)}).plan(t)
	w := p.CameBack[0].Weeks[0]
	if got := fmt.Sprintf("%.0f %.3f %.1f", float64(w.Load.Or(0)), float64(w.Monotony.Or(0)), float64(w.Strain.Or(0))); got != "1260 0.982 1237.3" {
		t.Errorf("%s", got)
	}
	p = logger(map[string]string{"2026-04-05": rate(all[1:]...)}).plan(t)
	if w := p.CameBack[0].Weeks[0]; w.Load.OK() || !strings.Contains(w.Load.Why().String(), "the session of 2026-03-09 was not rated") {
		t.Errorf("%v %s", w.Load.OK(), w.Load.Why())
	}
}

// Rule 30: the client's own report. It may hold back or pause and never opens.
func TestRule30e_Reports(t *testing.T) {
	knee := func(rows ...string) string { return logWith(rows) }
	for _, row := range []struct {
		name, look string // the last test day
		knee       []string
		action     plan.Action
		level      string
		why        string
	}{
		{"calm", "2026-03-20", []string{`{ "on": "2026-04-02", "pain": 1, "pain_am": 1, "swelling": "same" }`}, plan.NoAction, "", ""},
		{"more", "2026-03-20", []string{`{ "on": "2026-04-02", "swelling": "more" }`}, plan.Stay, "session", "one evening"},
		{"more, twice", "2026-03-20", []string{`{ "on": "2026-03-30", "swelling": "more" }`, `{ "on": "2026-04-02", "swelling": "more" }`}, plan.Stay, "week", "it repeats"},
		{"more, eight days ago", "2026-03-20", []string{`{ "on": "2026-03-29", "swelling": "more" }`}, plan.NoAction, "", "one evening of last week is over"},
		{"much more", "2026-03-01", []string{`{ "on": "2026-03-12", "swelling": "much more" }`}, plan.Pause, "block", "until a test day looks, however long ago"},
		{"much more, then the same", "2026-03-01", []string{`{ "on": "2026-03-12", "swelling": "much more" }`, `{ "on": "2026-04-02", "swelling": "same" }`}, plan.Pause, "block", "a calm report opens nothing"},
		{"much more, then looked at", "2026-03-13", []string{`{ "on": "2026-03-12", "swelling": "much more" }`}, plan.NoAction, "", "a later test day puts it aside"},
		{"much more on the evening of the look", "2026-03-12", []string{`{ "on": "2026-03-12", "swelling": "much more" }`}, plan.Pause, "block", "the look was before it"},
		{"sharp, of number 1", "2026-03-20", []string{`{ "on": "2026-04-02", "pain": 1, "pain_am": 0, "kind": "sharp" }`}, plan.StepBack, "session", "kind before number"},
		{"pain 4, settled", "2026-03-20", []string{`{ "on": "2026-04-02", "pain": 4, "pain_am": 1 }`}, plan.Stay, "session", ""},
		{"pain 4, morning not told", "2026-03-20", []string{`{ "on": "2026-04-02", "pain": 4 }`}, plan.Pause, "session", "what is not told is not calm"},
		{"pain 6", "2026-03-20", []string{`{ "on": "2026-04-02", "pain": 6, "pain_am": 1 }`}, plan.StepBack, "session", ""},
		{"sore mornings, twice", "2026-03-20", []string{`{ "on": "2026-03-31", "pain": 2, "pain_am": 3 }`, `{ "on": "2026-04-02", "pain": 2, "pain_am": 3 }`}, plan.StepBack, "week", "it repeats"},
		{"before the block's first day", "2026-04-06", []string{`{ "on": "2026-04-02", "pain": 6, "pain_am": 5 }`}, plan.NoAction, "", "the test of that morning asked"},
	} {
		w := logger(map[string]string{"2026-04-05": knee(row.knee...)})
		w.tests = map[string]string{"2026-03-01": straightKnees, row.look: straightKnees}
		s := w.plan(t).Symptoms
		if s.Action != row.action || s.Level != row.level {
			t.Errorf("%s: %s, %s; want %s, %s (%s)", row.name, s.Action, s.Level, row.action, row.level, row.why)
		}
	}
}

// Rule 30: one bad evening holds the first week and no longer; what repeats, or pauses until a look, holds the block.
func TestRule30f_HowLongAReportHolds(t *testing.T) {
	for _, row := range []struct {
		name, knee string
		want       string
	}{
		{"nothing told", "", "52.5 55 55 57.5"},
		{"one evening", `{ "on": "2026-04-02", "pain": 4 }`, "- 52.5 55 55"},
		{"two evenings", `{ "on": "2026-04-02", "pain": 4 }, { "on": "2026-04-03", "pain": 4 }`, "- - - -"},
		{"much more swelling", `{ "on": "2026-04-02", "swelling": "much more" }`, "- - - -"},
		{"more swelling", `{ "on": "2026-04-02", "swelling": "more" }`, "52.5 52.5 55 55"},
	} {
		w := logger(map[string]string{"2026-04-05": logWith([]string{row.knee})})
		w.tests = map[string]string{"2026-03-02": w.tests["2026-03-02"]}
		if got := loads(w.plan(t), "leg-press-single", unit.Left); got != row.want {
			t.Errorf("%s: %s, want %s", row.name, got, row.want)
		}
	}
}

// Rule 30: reports of a block that runs reach its page as a pause, and as nothing else; they end no hold.
func TestRule30g_ReportsOfARunningBlock(t *testing.T) {
	for _, row := range []struct {
		name, knee string
		files      map[string]string
		action     plan.Action
		why        string
	}{
		{"much more", `{ "on": "2026-04-12", "swelling": "much more" }`, nil, plan.Pause, ""},
		{"more", `{ "on": "2026-04-12", "swelling": "more" }`, nil, plan.NoAction, "the page's own rules say what to do"},
		{"one sore evening", `{ "on": "2026-04-12", "pain": 4 }`, nil, plan.NoAction, "one evening does not change the page"},
		{"much more, then looked at", `{ "on": "2026-04-12", "swelling": "much more" }`, map[string]string{"clients/tern-04/tests/2026-04-13.toml": straightKnees}, plan.NoAction, "looked at, and calm"},
		{"held, then calm reports", `{ "on": "2026-04-14", "pain": 0, "pain_am": 0, "swelling": "same" }`, map[string]string{"clients/tern-04/holds/2026-04-12.toml": "by = \"imbali\"\nreason = \"swelling\"\n"}, plan.Pause, "only a look ends a hold"},
	} {
		w := logger(map[string]string{"2026-04-20": strings.Replace(logWith([]string{row.knee}), `"block": 1`, `"block": 2`, 1)})
		maps.Copy(w.files, row.files)
		if s := w.plan(t).Symptoms; s.Action != row.action {
			t.Errorf("%s: %s, want %s (%s)", row.name, s.Action, row.action, row.why)
		}
	}
}

// Rule 30: no criterion can be met by a report.
func TestRule30h_AReportMeetsNothing(t *testing.T) {
	w := logger(map[string]string{"2026-04-05": logWith([]string{`{ "on": "2026-04-05", "pain": 0, "pain_am": 0, "kind": "ache", "swelling": "same" }`})})
	w.tests = map[string]string{"2026-03-02": "by = \"imbali\"\nmass_kg = 64\n"}
	p := w.plan(t)
	for _, measure := range []string{"pain", "pain-next-morning", "effusion"} {
		if p.Found.Measure(measure).OK {
			t.Errorf("%s is taken from a report", measure)
		}
	}
}
