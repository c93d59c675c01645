package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// bare is a program of one phase with these slots and these limits alone: no shipped row speaks.
func bare(limits, more string, slots ...string) map[string]string {
	files := own(slots...)
	files["programs/acl-reconstruction.toml"] = "title = \"Bare\"\ncounts_from = \"acl-reconstruction\"\nphases = [\"settle\"]\nlimits = [\"mine\"]\n" + more
	files["programs/limits/mine.toml"] = limits
	return files
}

// rows is a limit of a program: of whom, and its steps.
func rows(kind, when, lifts, steps string) string {
	s := fmt.Sprintf("[[limit]]\nkind = %q\n%s\nstanding = \"tool default\"\n", kind, when)
	if lifts != "" {
		s += "lifts_week = " + lifts + "\n"
	}
	return s + "steps = [ " + steps + " ]\n"
}

const ofDonor = `when.leg = "donor"`

// edited is the client with a text of its client.toml replaced.
func (w who) edited(old, now string) who {
	const name = "clients/tern-04/client.toml"
	text := string(w.clinic()[name].Data)
	if strings.Count(text, old) != 1 {
		panic(fmt.Sprintf("%q stands %d times in\n%s", old, strings.Count(text, old), text))
	}
	files := map[string]string{}
	for n, t := range w.files {
		files[n] = t
	}
	files[name] = strings.Replace(text, old, now, 1)
	w.files = files
	return w
}

// operation is an event of its own.
func operation(side, date string) string {
	return fmt.Sprintf("[[event]]\nkind = \"operation\"\nprocedure = \"acl-reconstruction\"\ndate = %s\nside = %q\ngraft = \"allograft\"\n", date, side)
}

// Rule 12: a donor leg has limits of its own, and they bind no other leg.
func TestRule12b_ADonorLegHasItsOwnLimits(t *testing.T) {
	limits := rows("hamstring-work", ofDonor, "8", `{ week = 0, grade = "active" }`) + rows("loaded-bend", "", "12", "{ week = 0, range_deg = [0, 60] }")
	slots := []string{`"leg-curl-machine", "prone-curl-no-weight"`, `"leg-press-single"`, `"squat"`}
	surgeon := limit("hamstring-work", "side = \"right\"\ngrade = \"resisted\"", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")
	before := limit("hamstring-work", "side = \"right\"\ngrade = \"resisted\"", "2025-12-01", "", "surgeon", "Dr Auk", "2025-12-01")
	for _, row := range []struct {
		name, starts, more             string
		donor                          func(who) who
		curlLeft, curlRight            string
		pressLeft, pressRight, squatTo string
		why                            string
	}{
		{"donor in week 4", "2026-02-02", "", nil, "leg-curl-machine", "prone-curl-no-weight", "0-60", "0-90", "0-60", "the donor's rows bind the donor, the operation's bind the operated leg"},
		{"donor in week 8", "2026-03-02", "", nil, "leg-curl-machine", "leg-curl-machine", "0-60", "0-90", "0-60", "the donor's rows count from the operation and have lifted"},
		{"graft of the same leg", "2026-02-02", "", func(w who) who { w.other = "sound"; return w }, "leg-curl-machine", "leg-curl-machine", "0-60", "0-90", "0-60", "nobody gave from the other leg"},
		{"donor of an allograft", "2026-02-02", "", func(w who) who { w.graft = "allograft"; return w }, "leg-curl-machine", "leg-curl-machine", "0-60", "0-90", "0-60", "other_leg = donor without graft_from: no tendon was taken"},
		{"both legs gave", "2026-02-02", "", func(w who) who { return w.edited(`graft_from = "right"`, `graft_from = "both"`) }, "leg-curl-machine", "prone-curl-no-weight", "0-60", "0-90", "0-60", "both includes the other leg"},
		{"surgeon on the donor leg", "2026-02-02", surgeon, nil, "leg-curl-machine", "leg-curl-machine", "0-60", "0-90", "0-60", "an instruction replaces the donor's row of its kind"},
		{"said before the graft was taken", "2026-02-02", before, nil, "leg-curl-machine", "prone-curl-no-weight", "0-60", "0-90", "0-60", "said of another state of that leg: it opens nothing"},
		{"donor, operated earlier", "2026-02-02", operation("right", "2024-05-06"), nil, "leg-curl-machine", "prone-curl-no-weight", "0-60", "0-90", "0-60", "its old operation takes no donor's row away"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{other: "donor", starts: row.starts, weeks: 1, more: setups + row.more, files: bare(limits, "", slots...)}
			if row.donor != nil {
				w = row.donor(w)
			}
			p := w.plan(t)
			if l, r := chosen(p, "slot-1", unit.Left, 1), chosen(p, "slot-1", unit.Right, 1); l != row.curlLeft || r != row.curlRight {
				t.Errorf("curls %s and %s, want %s and %s (%s)", l, r, row.curlLeft, row.curlRight, row.why)
			}
			if l, r := reach(dose(p, "leg-press-single", unit.Left, 1)), reach(dose(p, "leg-press-single", unit.Right, 1)); l != row.pressLeft || r != row.pressRight {
				t.Errorf("press %s and %s, want %s and %s (%s)", l, r, row.pressLeft, row.pressRight, row.why)
			}
			if got := reach(dose(p, "squat", unit.Both, 1)); got != row.squatTo {
				t.Errorf("squat %s, want %s (%s)", got, row.squatTo, row.why)
			}
		})
	}
}

// Rules 6 and 7: what both legs do together obeys the limits of both; where they leave nothing in common it is passed over.
func TestRule06b_BothLegsObeyBothKnees(t *testing.T) {
	for _, row := range []struct{ operated, donor, want, because, why string }{
		{"[0, 60]", "[0, 40]", "0-40", "", "the donor's is the narrower"},
		{"[0, 40]", "[0, 60]", "0-40", "", "the operated leg's is the narrower"},
		{"[0, 60]", "[20, 90]", "20-60", "", "each narrows its own end"},
		{"[0, 30]", "[50, 90]", "not prescribed", "the two knees allow no common range", "each alone would do"},
		{"[0, 50]", "[40, 90]", "not prescribed", "the two knees allow an arc of 10° together: under 20° only holding still", "ten degrees in common"},
	} {
		limits := rows("loaded-bend", "", "12", "{ week = 0, range_deg = "+row.operated+" }") + rows("loaded-bend", ofDonor, "12", "{ week = 0, range_deg = "+row.donor+" }")
		p := who{other: "donor", starts: "2026-02-02", weeks: 1, files: bare(limits, "", `"squat", "heel-raise"`)}.plan(t)
		if got := reach(dose(p, "squat", unit.Both, 1)); got != row.want {
			t.Errorf("operated %s, donor %s: %s, want %s (%s)", row.operated, row.donor, got, row.want, row.why)
		}
		if got := because(p, "squat", 1); row.because != "" && got != row.because {
			t.Errorf("operated %s, donor %s: %q", row.operated, row.donor, got)
		}
	}
}

// Rule 6: an exercise that one leg leads and the other bears obeys the event's knee on both sides.
func TestRule06c_LoadsBoth(t *testing.T) {
	limits := rows("loaded-bend", "", "12", "{ week = 0, range_deg = [0, 50] }")
	p := who{starts: "2026-02-02", weeks: 1, files: bare(limits, "", `"split-squat"`, `"leg-press-single"`), more: setups}.plan(t)
	for _, row := range []struct {
		exercise string
		side     unit.Side
		want     string
		why      string
	}{
		{"split-squat", unit.Left, "10-50", "the operated leg leads"},
		{"split-squat", unit.Right, "10-50", "the other leads, and the operated knee bends behind it"},
		{"leg-press-single", unit.Right, "0-90", "the operated leg has no part in it"},
	} {
		if got := reach(dose(p, row.exercise, row.side, 1)); got != row.want {
			t.Errorf("%s %s: %s, want %s (%s)", row.exercise, row.side, got, row.want, row.why)
		}
	}
}

// Rule 12: a leg that was operated too has its own schedule, by its own date.
func TestRule12c_ALegOperatedTooHasItsOwnSchedule(t *testing.T) {
	limits := rows("loaded-bend", "", "12", "{ week = 0, range_deg = [0, 60] }, { week = 8, range_deg = [0, 80] }")
	injury := "[[event]]\nkind = \"injury\"\ndate = 2025-12-08\nside = \"right\"\n"
	for _, row := range []struct {
		name, starts, more string
		left, right, squat string
		week               int
		role, why          string
	}{
		{"only one", "2026-02-09", "", "0-60", "0-90", "0-60", 5, "other", "the other leg is free"},
		{"the other four weeks before", "2026-02-09", operation("right", "2025-12-08"), "0-60", "0-80", "0-60", 5, "operated", "week 5 of the left, week 9 of the right"},
		{"the same, earlier", "2026-01-26", operation("right", "2025-12-08"), "0-60", "0-60", "0-60", 3, "operated", "week 3 of the left, week 7 of the right"},
		{"the same, its limits over", "2026-03-09", operation("right", "2025-12-08"), "0-80", "0-90", "0-80", 9, "operated", "week 9 of the left, week 13 of the right"},
		{"the other one is newer", "2026-03-09", operation("right", "2026-02-02"), "0-80", "0-60", "0-60", 5, "operated", "weeks count from the newer, and the first leg keeps its own"},
		{"the other is still to come", "2026-02-09", operation("right", "2026-02-16"), "0-60", "0-90", "0-60", 5, "other", "an operation after the block's first day is none yet"},
		{"twice on the other leg", "2026-02-09", operation("right", "2024-12-09") + operation("right", "2025-12-08"), "0-60", "0-80", "0-60", 5, "operated", "the newer counts there too"},
		{"an injury of the other leg", "2026-02-09", injury, "0-60", "0-90", "0-60", 5, "other", "weeks count from operations"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{other: "operated-too", starts: row.starts, weeks: 1, more: setups + row.more, files: bare(limits, "", `"leg-press-single"`, `"squat"`)}
			p := w.plan(t)
			l, r, both := reach(dose(p, "leg-press-single", unit.Left, 1)), reach(dose(p, "leg-press-single", unit.Right, 1)), reach(dose(p, "squat", unit.Both, 1))
			if l != row.left || r != row.right || both != row.squat {
				t.Errorf("left %s, right %s, both %s; want %s, %s, %s (%s)", l, r, both, row.left, row.right, row.squat, row.why)
			}
			if got := p.Weeks[0].SinceEvent; got != row.week {
				t.Errorf("week %d, want %d (%s)", got, row.week, row.why)
			}
			for _, rx := range p.Prescriptions {
				if rx.Side == unit.Right && rx.Role != row.role {
					t.Errorf("the right leg is %s, want %s (%s)", rx.Role, row.role, row.why)
				}
			}
		})
	}
}

// Rules 12 and 17: a leg that was operated too does nothing of an activity that is not opened, though its own limits have lifted.
func TestRule17c_ALegOperatedTooWaitsForTheTherapist(t *testing.T) {
	jumping := "[[activity]]\nid = \"jumping\"\nkinds = [\"impact\"]\n[[activity.needs]]\nearliest_week = 4\n"
	limits := rows("impact", "", "4", "{ week = 0, allowed = false }")
	for _, row := range []struct {
		name, more string
		left       string
		right      string
		why        string
	}{
		{"a free leg", "", "heel-raise-single", "side-hop", "nothing keeps a sound leg from it"},
		{"operated too", operation("right", "2025-10-06"), "heel-raise-single", "heel-raise-single", "no activity is opened"},
		{"operated too, opened", operation("right", "2025-10-06") + opened("jumping", "2026-03-02"), "side-hop", "side-hop", "the therapist has opened it"},
	} {
		w := who{other: "operated-too", starts: "2026-03-02", weeks: 1, more: row.more, files: bare(limits, jumping, `"side-hop", "heel-raise-single"`),
			tests: map[string]string{"2026-03-02": straightKnees}}
		w.files["programs/phases/settle.toml"] = strings.Replace(w.files["programs/phases/settle.toml"], "reps = 10\nreserve = 2\nweekly_percent = 2.5", "foot_contacts = 20", 1)
		w.files["programs/exercises/side-hop.toml"] = "title = \"Side hop\"\ndescribe = \"Hop.\"\ntrains = [\"calf\"]\nkinds = [\"impact\"]\nside = \"one\"\n" +
			"contraction = [\"stretch-shortening\"]\nresisted_by = \"foot-contacts\"\nactivity = \"jumping\"\nstanding = \"common practice\"\n"
		p := w.plan(t)
		if l, r := chosen(p, "slot-1", unit.Left, 1), chosen(p, "slot-1", unit.Right, 1); l != row.left || r != row.right {
			t.Errorf("%s: %s and %s, want %s and %s (%s); dropped %+v", row.name, l, r, row.left, row.right, row.why, p.Dropped)
		}
	}
}

// Rule 6: an instruction binds the leg that it names, and the event's where it names none.
func TestRule06d_AnInstructionWithASide(t *testing.T) {
	limits := rows("loaded-bend", "", "", "{ week = 0, range_deg = [0, 80] }")
	for _, row := range []struct{ name, side, left, right, squat, why string }{
		{"none", "", "0-40", "0-90", "0-40", "the event's knee"},
		{"the event's", "side = \"left\"\n", "0-40", "0-90", "0-40", "the same"},
		{"the other", "side = \"right\"\n", "0-80", "0-40", "0-40", "that leg alone, and what both do together"},
		{"both", "side = \"both\"\n", "0-40", "0-40", "0-40", "each"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: "2026-02-02", weeks: 1, files: bare(limits, "", `"leg-press-single"`, `"squat"`),
				more: setups + limit("loaded-bend", row.side+"range_deg = [0, 40]", "2026-01-12", "", "surgeon", "Dr Auk", "2026-01-12")}
			p := w.plan(t)
			l, r, both := reach(dose(p, "leg-press-single", unit.Left, 1)), reach(dose(p, "leg-press-single", unit.Right, 1)), reach(dose(p, "squat", unit.Both, 1))
			if l != row.left || r != row.right || both != row.squat {
				t.Errorf("left %s, right %s, both %s; want %s, %s, %s (%s)", l, r, both, row.left, row.right, row.squat, row.why)
			}
		})
	}
}

// Rule 9: tests of a limited other leg are refused by that leg's limits; a free leg's never.
func TestRule09b_TestsOfALimitedOtherLeg(t *testing.T) {
	force := pull("knee-extension", "[331]", "[410]")
	hop := "[[hop]]\ntest = \"single\"\nleft.distance_cm = [90]\nright.distance_cm = [100]\n"
	donor := rows("maximal-effort", ofDonor, "12", "{ week = 0, allowed = false }")
	operated := rows("impact", "", "12", "{ week = 0, allowed = false }")
	noForce := limit("maximal-effort", "side = \"right\"\nallowed = false", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")
	for _, row := range []struct {
		name, other, limits, more, on, test string
		left, right                         bool // kept
		says                                string
		why                                 string
	}{
		{"donor in week 5", "donor", donor, "", "2026-02-10", force, true, false, "knee-extension, right leg: maximal-effort was not open", "the donor's limit refuses the donor's value alone"},
		{"donor in week 6", "donor", donor, "", "2026-02-17", force, true, true, "", "held at 90° it is let through from week 6"},
		{"donor, a hop in week 5", "donor", donor, "", "2026-02-10", hop, true, false, "hop-single: maximal-effort was not open", "a hop is a maximal effort"},
		{"sound leg", "sound", donor, "", "2026-02-10", force, true, true, "", "nothing binds it"},
		{"operated leg's limit", "sound", operated, "", "2026-02-10", hop, false, true, "hop-single: impact was not open", "the other leg may hop"},
		{"an instruction for the other leg", "sound", operated, noForce, "2026-04-20", force, true, false, "right leg: maximal-effort", "against an instruction nothing admits it"},
		{"operated too, inside its own window", "operated-too", operated, operation("right", "2025-12-08"), "2026-02-20", hop, false, false, "impact", "week 6 of the left, week 10 of the right"},
		{"operated too, after its own window", "operated-too", operated, operation("right", "2025-12-08"), "2026-03-05", hop, false, true, "impact", "week 8 of the left, week 12 of the right"},
		{"before either operation", "operated-too", operated, operation("right", "2025-12-08"), "2025-12-01", hop, true, true, "", "data from before are kept as they are"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{other: row.other, starts: "2026-04-20", weeks: 1, more: setups + row.more, files: bare(row.limits, "", `"squat"`), tests: map[string]string{row.on: row.test}}
			p, faults := w.planned(t)
			if p == nil {
				t.Fatal(faults)
			}
			var left, right bool
			for _, s := range p.Found.Strength {
				left, right = s.Left.Force.OK(), s.Right.Force.OK()
			}
			for _, h := range p.Found.Hops {
				left, right = h.Left.Distance.OK(), h.Right.Distance.OK()
			}
			if left != row.left || right != row.right {
				t.Errorf("left kept %v, right kept %v; want %v, %v (%s)\n%v", left, right, row.left, row.right, row.why, faults)
			}
			if asked := strings.Contains(faults.Error(), "the value is not used"); asked == (row.says == "") || !strings.Contains(faults.Error(), row.says) {
				t.Errorf("%v; want %q (%s)", faults, row.says, row.why)
			}
		})
	}
}

// Rule 11, both knees: an event of both has no other leg. Comparisons read "not tested", and the worse knee counts.
func TestRule11b_BothKnees(t *testing.T) {
	day := calm + "left.lacks_extension_deg = 0\nleft.flexion_deg = 138\nright.lacks_extension_deg = 3\nright.flexion_deg = 110\n" +
		pull("knee-extension", "[300]", "[250]") + "[[hop]]\ntest = \"single\"\nleft.distance_cm = [90]\nright.distance_cm = [100]\n"
	limits := rows("loaded-bend", "", "", "{ week = 0, range_deg = [0, 70] }")
	w := who{side: "both", graft: "hamstring", other: "operated-too", starts: "2026-06-01", weeks: 1, more: setups,
		tests: map[string]string{"2026-06-01": day}, files: bare(limits, "", `"leg-press-single"`, `"squat"`)}
	p := w.plan(t)
	for _, name := range []string{"knee-extension.lsi", "flexion.percent-of-other", "hop-single.lsi", "knee-extension.preop-ratio"} {
		if m := p.Found.Measure(name); m.OK {
			t.Errorf("%s is %v: there is no other leg to compare with", name, m.Number)
		}
	}
	if m := p.Found.Measure("knee-extension.lsi"); !strings.Contains(m.Reason.String(), "both knees") {
		t.Errorf("%q", m.Reason)
	}
	for name, want := range map[string]float64{"extension": 3, "flexion": 110} {
		if m := p.Found.Measure(name); !m.OK || m.Number != want {
			t.Errorf("%s %v, want %g: the worse knee counts", name, m.Number, want)
		}
	}
	if m := p.Found.Measure("knee-extension.nm-per-kg"); fmt.Sprintf("%.3f", m.Number) != "1.211" {
		t.Errorf("%v N·m/kg, want 250 N × 0.31 m ÷ 64 kg of the weaker leg", m.Number)
	}
	for side, want := range map[unit.Side]string{unit.Left: "0-70", unit.Right: "3-70"} {
		if got := reach(dose(p, "leg-press-single", side, 1)); got != want {
			t.Errorf("%s: %s, want %s: the limits bind both knees, and the right one lacks 3°", side, got, want)
		}
	}
	for _, r := range p.Prescriptions {
		if r.Side != unit.Both && r.Role != "operated" {
			t.Errorf("the %s leg is %s", r.Side, r.Role)
		}
	}
}

// Both knees: a value of one leg alone is no value of both; missing is never the better one.
func TestRule11c_BothKneesOneUntested(t *testing.T) {
	for _, row := range []struct{ name, test, why string }{
		{"left alone", "[[strength]]\ntest = \"knee-extension\"\nleft.peak_n = [300]\n", "the right knee was not tested"},
		{"right alone", "[[strength]]\ntest = \"knee-extension\"\nright.peak_n = [300]\n", "the left knee was not tested"},
	} {
		w := who{side: "both", other: "operated-too", starts: "2026-06-01", weeks: 1, more: setups, tests: map[string]string{"2026-06-01": calm + row.test},
			files: bare(rows("kneeling", "", "", "{ week = 0, allowed = true }"), "", `"squat"`)}
		if m := w.plan(t).Found.Measure("knee-extension.nm-per-kg"); m.OK {
			t.Errorf("%s: %v N·m/kg (%s)", row.name, m.Number, row.why)
		}
	}
}

// Before the operation: what was measured then is data. It opens nothing, loads nothing and tells nothing of the knee.
func TestRule02b_BeforeTheOperation(t *testing.T) {
	before := "by = \"imbali\"\nmass_kg = 64\npain_worst = 8\npain_kind = \"sharp\"\neffusion = \"3+\"\nleft.lacks_extension_deg = 0\nleft.flexion_deg = 138\n" +
		pull("knee-extension", "[331]", "[410]") + lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0") +
		"[[hop]]\ntest = \"single\"\nleft.distance_cm = [90]\nright.distance_cm = [100]\n"
	goal := "[[goal]]\nmeasure = \"flexion\"\nat_least_deg = 120\nby_week = 2\n"
	files := bare(rows("maximal-effort", "", "12", "{ week = 0, allowed = false }"), goal, `"leg-press-single"`)
	for _, row := range []struct {
		name, on string
		counts   bool
		why      string
	}{
		{"weeks before", "2025-11-03", false, "nine weeks before the operation"},
		{"the day before", "2026-01-04", false, "week minus one"},
	} {
		p, faults := who{starts: "2026-02-02", weeks: 1, more: setups, files: files, tests: map[string]string{row.on: before}}.planned(t)
		if p == nil || strings.Contains(faults.Error(), "not used") {
			t.Fatalf("%s: %v: nobody asks about a test from before (%s)", row.name, faults, row.why)
		}
		for _, name := range []string{"knee-extension.lsi", "extension", "flexion", "pain", "effusion", "hop-single.lsi", "leg-press-single.lsi"} {
			if m := p.Found.Measure(name); m.OK != row.counts {
				t.Errorf("%s: %s counts: %v (%s)", row.name, name, m.OK, row.why)
			}
		}
		if got := put(dose(p, "leg-press-single", unit.Left, 1)); got != -1 {
			t.Errorf("%s: %v kg from a lift before the operation (%s)", row.name, got, row.why)
		}
		if p.Symptoms.Action != "none" || p.Goals[0].State != "not tested" {
			t.Errorf("%s: %s, goal %s (%s)", row.name, p.Symptoms.Action, p.Goals[0].State, row.why)
		}
		if len(p.Found.Strength) != 1 || !p.Found.Strength[0].Left.Force.OK() {
			t.Errorf("%s: the value itself is gone (%s)", row.name, row.why)
		}
	}
}

// Revision: two operations of one knee. Weeks count from the newer, and what was recorded before it does not count.
func TestRule01b_Revision(t *testing.T) {
	old := operation("left", "2024-03-04")
	stages := "settle 2024-03-04, rebuild 2024-05-06, run 2024-09-02"
	good := straightKnees + pull("knee-extension", "[400]", "[410]") + lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0")
	w := who{starts: "2026-02-02", weeks: 1, stages: stages, more: setups + old + opened("running", "2024-09-02"), tests: map[string]string{"2025-03-03": good}}
	p := w.plan(t)
	if p.Weeks[0].SinceEvent != 4 || p.Event.Date != day("2026-01-05") {
		t.Errorf("week %d since %s, want week 4 of the newer operation", p.Weeks[0].SinceEvent, p.Event.Date)
	}
	if p.Stage.Set.ID != "settle" || p.Stage.Recorded {
		t.Errorf("stage %s, recorded %v: the stages belong to the operation of 2024", p.Stage.Set.ID, p.Stage.Recorded)
	}
	if a := activity(t, p, "running"); a.State != "closed" {
		t.Errorf("running is %s: it was opened before this operation", a.State)
	}
	if m := p.Found.Measure("knee-extension.lsi"); m.OK {
		t.Errorf("symmetry %v of before the operation is taken for now", m.Number)
	}
	for _, x := range p.Limits {
		if x.From.Before(day("2026-01-05")) {
			t.Errorf("a limit of %s counts from %s, before the newer operation", x.Kind, x.From)
		}
	}
	w.starts = "2025-06-02"
	if p := w.plan(t); p.Event.Date != day("2024-03-04") || p.Stage.Set.ID != "run" {
		t.Errorf("a block between the two counts from %s, stage %s; want the older one's", p.Event.Date, p.Stage.Set.ID)
	}
}

// No operation: weeks count from an injury or a start, the leg is the index leg, and limits bind it all the same.
func TestRule11d_NoOperation(t *testing.T) {
	limits := rows("loaded-bend", "", "6", "{ week = 0, range_deg = [0, 50] }")
	for _, row := range []struct {
		name, counts, events string
		mistake              string
		week                 int
		left, right          string
		why                  string
	}{
		{"injury", "injury", "[[event]]\nkind = \"injury\"\ndate = 2026-01-05\nside = \"left\"\n", "", 4, "0-50", "0-90", "the injured knee is bound"},
		{"start", "start", "[[event]]\nkind = \"start\"\ndate = 2026-01-05\nside = \"left\"\n", "", 4, "0-50", "0-90", "a start counts like an event"},
		{"both injured", "injury", "[[event]]\nkind = \"injury\"\ndate = 2026-01-05\nside = \"left\"\n[[event]]\nkind = \"injury\"\ndate = 2025-11-24\nside = \"right\"\n", "", 4, "0-50", "0-90", "the other's six weeks are over"},
		{"start of both", "start", "[[event]]\nkind = \"start\"\ndate = 2026-01-05\nside = \"both\"\n", "", 4, "0-50", "0-50", "both knees are bound"},
		{"an operation only", "injury", operation("left", "2026-01-05"), "counts from injury, and no such event is typed", 0, "", "", "the program counts from something else"},
		{"an injury only", "acl-reconstruction", "[[event]]\nkind = \"injury\"\ndate = 2026-01-05\nside = \"left\"\n", "counts from acl-reconstruction, and no such event is typed", 0, "", "", "nobody was operated on"},
	} {
		t.Run(row.name, func(t *testing.T) {
			files := bare(limits, "", `"leg-press-single"`)
			files["programs/acl-reconstruction.toml"] = strings.Replace(files["programs/acl-reconstruction.toml"], `counts_from = "acl-reconstruction"`, fmt.Sprintf("counts_from = %q", row.counts), 1)
			files["clients/tern-04/client.toml"] = "program = \"acl-reconstruction\"\nplace = \"gym\"\ntraining_days = [\"mon\"]\nother_leg = \"sound\"\n" + row.events + setups
			p, faults := who{starts: "2026-02-02", weeks: 1, files: files}.planned(t)
			if row.mistake != "" {
				if p != nil || !strings.Contains(faults.Wrong().Error(), row.mistake) {
					t.Errorf("%v, want %q (%s)", faults, row.mistake, row.why)
				}
				return
			}
			if p == nil || len(faults.Wrong()) > 0 {
				t.Fatal(faults)
			}
			if p.Weeks[0].SinceEvent != row.week {
				t.Errorf("week %d, want %d", p.Weeks[0].SinceEvent, row.week)
			}
			if l, r := reach(dose(p, "leg-press-single", unit.Left, 1)), reach(dose(p, "leg-press-single", unit.Right, 1)); l != row.left || r != row.right {
				t.Errorf("left %s, right %s; want %s, %s (%s)", l, r, row.left, row.right, row.why)
			}
			for _, r := range p.Prescriptions {
				if r.Side == unit.Left && r.Role != "index" {
					t.Errorf("the left leg is %s: nobody operated on it", r.Role)
				}
			}
		})
	}
}
