package plan_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

const sport = "[[activity]]\nid = \"sport\"\nsport = true\n[[activity.needs]]\nearliest_month = 9\n[[activity]]\nid = \"running\"\n[[activity.needs]]\nearliest_week = 12\n"

// young is a client with a month of birth in a clinic that has a floor of its own.
func young(born, starts string, months int) who {
	w := who{born: born, starts: starts, weeks: 1, files: bare(rows("kneeling", "", "", "{ week = 0, allowed = true }"), sport, `"squat"`)}
	if months > 0 {
		w.files["clinic.toml"] = clinicText + fmt.Sprintf("[under_18]\nsport_not_before_months = %d\n", months)
	}
	return w
}

// Rules 13 and 17: the clinic's own floor for young people, for a return to sport alone.
func TestRule17d_TheFloorOfYoungPeople(t *testing.T) {
	for _, row := range []struct {
		name, born, starts string
		months             int
		notBefore          string // of the floor; "" where there is none
		met                bool
		why                string
	}{
		{"17 years", "2008-11", "2026-10-05", 12, "2027-01-05", false, "twelve calendar months, though the program says nine"},
		{"17 years, a year later", "2009-02", "2027-01-05", 12, "2027-01-05", true, "the floor itself"},
		{"a day before", "2009-02", "2027-01-04", 12, "2027-01-05", false, "one day is missing"},
		{"grown up", "1998-04", "2026-10-05", 12, "", true, "it is not for adults"},
		{"no month of birth", "", "2026-10-05", 12, "", true, "an age that is not known is not young"},
		{"the last day of seventeen", "2008-10", "2026-10-30", 12, "2027-01-05", false, "a month of birth is taken at its last day: 18 on the 31st"},
		{"eighteen", "2008-10", "2026-10-31", 12, "", true, "from that day on the adults' floor holds"},
		{"no floor of the clinic", "2008-11", "2026-10-05", 0, "", true, "only a clinic that writes one has one"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := young(row.born, row.starts, row.months)
			w.more = "guardian = \"mother\"\n"
			w = w.above()
			p := w.plan(t)
			a := activity(t, p, "sport")
			got, passed := "", true
			for _, c := range a.Criteria {
				if c.ID == "sport.time-under-18" {
					got, passed = c.NotBefore.String(), c.Passed()
				}
			}
			if got != row.notBefore || passed != row.met {
				t.Errorf("floor %q, met %v; want %q, %v (%s)", got, passed, row.notBefore, row.met, row.why)
			}
			if missing := slices.Contains(a.Missing, "sport.time-under-18"); missing == row.met {
				t.Errorf("missing %v (%s)", a.Missing, row.why)
			}
			if row.notBefore != "" && a.NotBefore.String() != row.notBefore {
				t.Errorf("sport not before %s, want %s: the later of the two floors", a.NotBefore, row.notBefore)
			}
			for _, c := range activity(t, p, "running").Criteria {
				if strings.Contains(c.ID, "under-18") {
					t.Errorf("%s: running is no return to sport", c.ID)
				}
			}
		})
	}
}

// above puts keys of the person before its tables.
func (w who) above() who {
	keys := w.more
	w.more = ""
	return w.edited("[[event]]\n", keys+"[[event]]\n")
}

// A guardian is asked for under 18, and for nobody else.
func TestYoungPeopleHaveAGuardian(t *testing.T) {
	for _, row := range []struct {
		name, born, guardian string
		asked                bool
		why                  string
	}{
		{"17, nobody named", "2009-02", "", true, "who signs with the client?"},
		{"17, named", "2009-02", "guardian = \"father\"\n", false, "named"},
		{"18", "2008-01", "", false, "grown up on the block's first day"},
		{"unknown", "", "", false, "no age, no question"},
	} {
		w := young(row.born, "2026-02-02", 0)
		w.more = row.guardian
		_, faults := w.above().planned(t)
		if asked := strings.Contains(faults.Error(), "no guardian is named"); asked != row.asked || len(faults.Wrong()) > 0 {
			t.Errorf("%s: asked %v, want %v (%s); %v", row.name, asked, row.asked, row.why, faults)
		}
	}
}

// Rule 13: a young person grows, so the pre-operative ratio is of values per kilogram of each day's mass.
func TestRule13b_PerKilogramUnder18(t *testing.T) {
	mass := func(kg string) string {
		if kg == "" {
			return ""
		}
		return "mass_kg = " + kg + "\n"
	}
	for _, row := range []struct {
		name, born, before, now string
		ratio                   float64
		known                   bool
		want, why               string
	}{
		{"17, grew by ten kilograms", "2009-02", "50", "60", 79.1, true, "not met", "380 N at 60 kg against 400 N at 50 kg; the torques alone say 95"},
		{"17, as heavy as before", "2009-02", "60", "60", 95, true, "met", "nothing to correct"},
		{"grown up, ten kilograms more", "1998-04", "50", "60", 95, true, "met", "torques are compared"},
		{"17, never weighed before", "2009-02", "", "60", 0, false, "met", "no mass, no ratio: symmetry alone"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{born: row.born, starts: "2026-04-06", weeks: 1, stages: "rebuild 2026-03-02", more: "guardian = \"mother\"\n"}.above()
			w.files["clients/tern-04/client.toml"] += setups
			w.tests = map[string]string{
				"2025-12-29": mass(row.before) + pull("knee-extension", "[400]", "[400]"),
				"2026-04-06": mass(row.now) + pull("knee-extension", "[380]", "[390]"),
			}
			p := w.plan(t)
			m := p.Found.Measure("knee-extension.preop-ratio")
			if m.OK != row.known || m.Number != row.ratio {
				t.Errorf("ratio %v (%v), want %v (%s)", m.Number, m.OK, row.ratio, row.why)
			}
			if c := criterion(t, p, "run.knee-extension.lsi"); string(c.State) != row.want {
				t.Errorf("%s, want %s (%s)", c.State, row.want, row.why)
			}
		})
	}
}
