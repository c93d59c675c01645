package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// What the program language says beside slots and marks: lighter weeks, sessions on every so many days, all-of, measurements, an end.

// A lighter week takes off sets and load, in its week alone, and the growth of the others goes on.
func TestLighterWeek(t *testing.T) {
	const plain = "52.5 55 55 57.5 57.5 60"
	for _, row := range []struct{ name, more, loads, sets, why string }{
		{"none", "", plain, "3 3 3 3 3 3", "as without it"},
		{"sets and load", "[[deload]]\nweeks = [28]\nsets_percent = 60\nload_percent = 90\n", "52.5 50 55 57.5 57.5 60", "3 1 3 3 3 3", "90 % of 55.64 kg is 50.08; 60 % of 3 sets is 1.8, cut down"},
		{"sets alone", "[[deload]]\nweeks = [28, 30]\nsets_percent = 70\n", plain, "3 2 3 2 3 3", "2.1 sets are 2"},
		{"load alone", "[[deload]]\nweeks = [27]\nload_percent = 90\n", "47.5 55 55 57.5 57.5 60", "3 3 3 3 3 3", "90 % of 54.29 kg is 48.86"},
		{"never none", "[[deload]]\nweeks = [28]\nsets_percent = 10\n", plain, "3 1 3 3 3 3", "one set stays"},
		{"another week", "[[deload]]\nweeks = [3]\nsets_percent = 60\n", plain, "3 3 3 3 3 3", "weeks are of the phase, not of the block"},
	} {
		w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
		w.files["programs/phases/settle.toml"] += row.more
		p := w.plan(t)
		var sets []string
		for _, week := range p.Weeks {
			sets = append(sets, fmt.Sprint(*dose(p, "leg-press-single", unit.Left, week.Number).Dose.Sets))
		}
		if got := loads(p, "leg-press-single", unit.Left); got != row.loads || strings.Join(sets, " ") != row.sets {
			t.Errorf("%s: loads %s, sets %s; want %s and %s (%s)", row.name, got, strings.Join(sets, " "), row.loads, row.sets, row.why)
		}
	}
}

// A machine that cannot be set so low keeps its load in a lighter week: the exercise is not lost for it, nor in the weeks after.
func TestLighterWeekOfAHeavyMachine(t *testing.T) {
	w := pressed("knee-extension-machine", "6.25 kg x 10+0", "6.25 kg x 10+0", "")
	w.files["programs/phases/settle.toml"] += "[[deload]]\nweeks = [28]\nload_percent = 50\n"
	w.files["programs/phases/settle.toml"] = strings.Replace(w.files["programs/phases/settle.toml"], "reps = 10\nreserve = 2", "reps = 6\nreserve = 2", 1)
	if got := loads(w.plan(t), "knee-extension-machine", unit.Left); got != "6.25 6.25 6.25 6.25 6.25 6.25" {
		t.Errorf("%s: the lightest pin is 5 kg", got)
	}
}

// Sessions on every so many days count from the day the stage began, whatever the training days, and across blocks.
func TestEveryDays(t *testing.T) {
	for _, row := range []struct{ starts, lines, want, why string }{
		{"2026-03-02", "every_days = 3", "03-02a 03-05a 03-08a", "from the day the stage began"},
		{"2026-03-09", "every_days = 3", "03-11a 03-14a", "on across blocks: 9 days after the first is the 11th"},
		{"2026-03-02", "every_days = 3\nfrom_day = 2", "03-03a 03-06a", "a day later"},
		{"2026-03-02", "every_days = 2\nfrom_day = 2", "03-03a 03-05a 03-07a", "so it takes turns with one from day 1"},
		{"2026-03-02", "", "03-02a 03-04a 03-06a", "else the training days"},
	} {
		w := who{starts: row.starts, weeks: 1, stages: "settle 2026-03-02", files: own(`"quad-set"`)}
		w.files["programs/phases/settle.toml"] += row.lines + "\n"
		if got := sessions(w.plan(t)); got != row.want {
			t.Errorf("%s %s: %s, want %s (%s)", row.starts, row.lines, got, row.want, row.why)
		}
	}
}

// An all-of is met where each of it is, and stands for nothing where nothing was looked at.
func TestAllOf(t *testing.T) {
	const all = "[[enter]]\nany = [ { all = [ { measure = \"flexion\", at_least_deg = 120 }, { measure = \"quads-lag\", at_most_deg = 5 } ] }, { measure = \"lefs\", at_least = 70 } ]\n"
	for _, row := range []struct{ name, enter, test, want, why string }{
		{"both", all, "left.flexion_deg = 125\nquads_lag_deg = 2\n", "met", ""},
		{"one of both", all, "left.flexion_deg = 125\nquads_lag_deg = 9\n", "not met", "the second is not"},
		{"one not tested", all, "left.flexion_deg = 125\n", "not tested", "a missing test never passes"},
		{"the other choice", all, "left.flexion_deg = 90\n[[questionnaire]]\nid = \"lefs\"\nscore = 72\n", "met", "any one is enough"},
		{"only where tested, none is", strings.ReplaceAll(all, "at_least_deg = 120", "at_least_deg = 120, only_if_tested = true"), "quads_lag_deg = 9\n", "not met", ""},
		{"all only where tested", "[[enter]]\nall = [ { measure = \"flexion\", at_least_deg = 120, only_if_tested = true } ]\n", "quads_lag_deg = 2\n", "not tested", "nothing was looked at, so nothing is met"},
		{"alone", "[[enter]]\nall = [ { measure = \"flexion\", at_least_deg = 120 }, { measure = \"quads-lag\", at_most_deg = 5 } ]\n", "left.flexion_deg = 119\nquads_lag_deg = 2\n", "not met", "without any around it too"},
	} {
		w := who{starts: "2026-03-02", files: own(`"quad-set"`), tests: map[string]string{"2026-03-02": row.test}}
		w.files["programs/phases/activate.toml"] = w.files["programs/phases/settle.toml"] + row.enter
		p := w.plan(t)
		if c := p.Stage.Criteria[0]; string(c.State) != row.want || (c.Passed() != (row.want == "met")) {
			t.Errorf("%s: %s (%s), want %s (%s)", row.name, c.State, c.ID, row.want, row.why)
		}
	}
}

// Swelling, pain and extension cannot be waived as a part of an all-of either.
func TestAllOfIsNotWaivedAroundPain(t *testing.T) {
	enter := "[[enter]]\nall = [ { measure = \"pain\", at_most = 2 }, { measure = \"flexion\", at_least_deg = 120 } ]\n"
	w := who{starts: "2026-03-02", files: own(`"quad-set"`), tests: map[string]string{"2026-03-02": "pain_worst = 5\nleft.flexion_deg = 130\n"},
		more: waived("activate.all-1")}
	w.files["programs/phases/activate.toml"] = w.files["programs/phases/settle.toml"] + enter
	p, faults := w.planned(t)
	if p != nil || !strings.Contains(fmt.Sprint(faults.Wrong()), "activate.all-1 cannot be waived") {
		t.Errorf("waived: %v", faults)
	}
}

// The next measurement is due so many weeks after the newest day that measured more than how the knee feels.
func TestRetest(t *testing.T) {
	for _, row := range []struct {
		name, lines string
		tests       map[string]string
		want, why   string
	}{
		{"none", "retest_every_weeks = 6\n", nil, "2026-02-16", "six weeks after the operation of 5 January"},
		{"a lift", "retest_every_weeks = 6\n", map[string]string{"2026-02-02": pull("knee-extension", "[200]", "[300]")}, "2026-03-16", ""},
		{"a look alone", "retest_every_weeks = 6\n", map[string]string{"2026-02-02": calm}, "2026-02-16", "swelling and pain are no measurement of what the program asks"},
		{"before the operation", "retest_every_weeks = 6\n", map[string]string{"2025-12-29": pull("knee-extension", "[200]", "[300]")}, "2026-02-16", "it was another state of the knee"},
		{"after the block's first day", "retest_every_weeks = 6\n", map[string]string{"2026-03-09": pull("knee-extension", "[200]", "[300]")}, "2026-02-16", "a plan is computed as of its first day"},
	} {
		w := who{starts: "2026-03-02", files: own(`"quad-set"`), tests: row.tests, more: setups}
		w.files["programs/phases/settle.toml"] = row.lines + w.files["programs/phases/settle.toml"]
		if p := w.plan(t); p.Retest == nil || p.Retest.Due.String() != row.want {
			t.Errorf("%s: %+v, want %s (%s)", row.name, p.Retest, row.want, row.why)
		}
	}
	if p := (who{starts: "2026-03-02", files: own(`"quad-set"`)}).plan(t); p.Retest != nil {
		t.Errorf("%+v, and the program asks for none", p.Retest)
	}
}

// A criterion that no test can give is a mistake of the program, before it keeps somebody waiting for ever.
func TestUnmeasured(t *testing.T) {
	for _, row := range []struct{ measure, want, why string }{
		{"knee-extension.lsi", "", ""}, {"knee-extension-60.nm-per-kg", "", "a word behind the test"}, {"hop-single.lsi", "", ""},
		{"hop-battery.lsi", "", ""}, {"leg-press-single.lsi", `no test gives "leg-press-single.lsi"`, "an exercise that the program does not have"},
		{"quad-set.lsi", "", "one that it has"}, {"flexion.percent-of-other", "", ""}, {"y-balance.composite", "", ""}, {"single-leg-rise.lsi", "", ""},
		{"hamstrings-to-quadriceps.percent", "", ""},
		{"knee-extention.lsi", `no test gives "knee-extention.lsi"`, "misspelt"},
		{"knee-extension.ratio", "write knee-extension.lsi or knee-extension.preop-ratio", "no such quantity"},
		{"hop-double.lsi", `no test gives "hop-double.lsi"`, "no such hop"},
		{"extension.percent-of-other", `no test gives`, "only of flexion"},
	} {
		w := who{starts: "2026-03-02", files: own(`"quad-set"`)}
		w.files["programs/acl-reconstruction.toml"] = "title = \"Own\"\ncounts_from = \"acl-reconstruction\"\nphases = [\"settle\", \"activate\"]\n"
		w.files["programs/phases/activate.toml"] = w.files["programs/phases/settle.toml"] + fmt.Sprintf("[[enter]]\nmeasure = %q\nat_least_percent = 80\n", row.measure)
		_, faults := w.planned(t)
		wrong := faults.Wrong()
		if got := fmt.Sprint(wrong); (row.want == "") != (len(wrong) == 0) || !strings.Contains(got, row.want) {
			t.Errorf("%s: %v, want %q (%s)", row.measure, wrong, row.want, row.why)
		}
	}
}

// More training days than the phase's source asks for are flagged and asked about; no day is taken away.
func TestMoreSessionsThanAsked(t *testing.T) {
	for _, row := range []struct {
		asked string
		want  bool
	}{{"", false}, {"sessions_a_week = 3\n", false}, {"sessions_a_week = 2\n", true}} {
		w := who{starts: "2026-03-02", weeks: 1, files: own(`"quad-set"`)}
		w.files["programs/phases/settle.toml"] = row.asked + w.files["programs/phases/settle.toml"]
		p, faults := w.planned(t)
		flagged := false
		for _, f := range p.Flags {
			flagged = flagged || f.ID == "more-sessions"
		}
		if asked := strings.Contains(fmt.Sprint(faults), "3 training days a week"); flagged != row.want || asked != row.want || len(p.Sessions) != 3 {
			t.Errorf("%q: flagged %v, asked %v, %d sessions", row.asked, flagged, asked, len(p.Sessions))
		}
	}
}
