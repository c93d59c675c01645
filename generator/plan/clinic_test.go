package plan_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/plan"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// The rules are tested on the road that a clinic takes: a folder of text, read, judged, planned with the shipped program.
// Everybody here is invented.

// clinicText has every machine that the rules speak of.
const clinicText = `paceleaf = 1
name = "Test Clinic"
emergency = "999"
[[phone]]
who = "clinic"
number = "020 7946 0000"
hours = "always"
[[phone]]
who = "surgeon's ward"
number = "020 7946 0263"
hours = "day and night"
[[therapist]]
id = "imbali"
name = "Imbali R."
role = "physiotherapist"
[[place]]
id = "gym"
[[place.device]]
id = "press"
kind = "angled-leg-press"
plates_kg = [20, 10, 5, 2.5, 1.25]
[[place.device]]
id = "stack"
kind = "knee-extension-stack"
lightest_kg = 5
heaviest_kg = 40
step_kg = 5
add_on_kg = 1.25
[[place.device]]
id = "curl"
kind = "leg-curl-stack"
lightest_kg = 5
heaviest_kg = 80
step_kg = 5
[[place.device]]
id = "bike"
kind = "bike"
[[place.device]]
id = "box"
kind = "box"
[[place.device]]
id = "mat"
kind = "mat"
[[place.device]]
id = "strap"
kind = "strap"
[[place]]
id = "heavy"
[[place.device]]
id = "big-press"
kind = "angled-leg-press"
carriage_kg = 45
plates_kg = [20, 10, 5, 2.5, 1.25]
[[place]]
id = "cables"
[[place.device]]
id = "pulley"
kind = "cable"
ratio = 2
lightest_kg = 2.5
step_kg = 2.5
[[place]]
id = "hotel"
[[gauge]]
id = "belt"
kind = "belt-fixed dynamometer"
[[gauge]]
id = "averaging"
kind = "hand-held dynamometer"
trial = "mean"
`

// who is one invented client; what is empty takes the ordinary value.
type who struct {
	date, side, graft, other, sport, place, born, days string
	also                                               string            // as TOML: ["…"]
	stages                                             string            // "rebuild 2026-03-02, run 2026-04-06"
	more                                               string            // further sections of client.toml
	tests                                              map[string]string // by day
	starts                                             string
	weeks                                              int
	block                                              string            // further lines of the block
	files                                              map[string]string // laid over the clinic, such as a program of its own
}

func or(s, instead string) string {
	if s == "" {
		return instead
	}
	return s
}

func (w who) clinic() fstest.MapFS {
	side := or(w.side, "left")
	var b strings.Builder
	fmt.Fprintf(&b, "program = \"acl-reconstruction\"\nplace = %q\ntraining_days = %s\nother_leg = %q\nsport = %q\n",
		or(w.place, "gym"), or(w.days, `["mon", "wed", "fri"]`), or(w.other, "sound"), or(w.sport, "twisting"))
	if w.born != "" {
		fmt.Fprintf(&b, "born = %q\n", w.born)
	}
	fmt.Fprintf(&b, "[[event]]\nkind = \"operation\"\nprocedure = \"acl-reconstruction\"\ndate = %s\nside = %q\ngraft = %q\n",
		or(w.date, "2026-01-05"), side, or(w.graft, "hamstring"))
	if w.graft != "allograft" {
		from := unit.Side(side)
		if w.other == "donor" {
			from = from.Opposite()
		}
		fmt.Fprintf(&b, "graft_from = %q\n", from)
	}
	if w.also != "" {
		fmt.Fprintf(&b, "also = %s\n", w.also)
	}
	for _, s := range strings.Split(w.stages, ",") {
		if id, from, ok := strings.Cut(strings.TrimSpace(s), " "); ok {
			fmt.Fprintf(&b, "[[stage]]\nid = %q\nfrom = %s\nby = \"imbali\"\n", id, from)
		}
	}
	b.WriteString(w.more)
	weeks := w.weeks
	if weeks == 0 {
		weeks = 4
	}
	files := fstest.MapFS{}
	put := func(name, text string) { files[name] = &fstest.MapFile{Data: []byte(text)} }
	put("clinic.toml", clinicText)
	put("clients/tern-04/client.toml", b.String())
	put("clients/tern-04/blocks/1.toml", fmt.Sprintf("starts = %s\nweeks = %d\nby = \"imbali\"\n%s", w.starts, weeks, w.block))
	for day, text := range w.tests {
		put("clients/tern-04/tests/"+day+".toml", text)
	}
	for name, text := range w.files {
		put(name, text)
	}
	return files
}

// planned reads and plans; faults may be questions or mistakes.
func (w who) planned(t testing.TB) (*plan.Plan, source.Faults) {
	t.Helper()
	house, faults := generator.Open(generator.Files{Clinic: w.clinic(), Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	if house == nil {
		t.Fatal(faults)
	}
	done := house.Plan("tern-04")
	return done.Plan, done.Faults
}

// plan is planned without a mistake.
func (w who) plan(t testing.TB) *plan.Plan {
	t.Helper()
	p, faults := w.planned(t)
	if wrong := faults.Wrong(); len(wrong) > 0 || p == nil {
		t.Fatalf("no plan: %v", faults)
	}
	return p
}

func day(s string) unit.Day {
	d, err := unit.ParseDay(s)
	if err != nil {
		panic(err)
	}
	return d
}

// dose is what a leg does of an exercise in a week; nil where it is not prescribed.
func dose(p *plan.Plan, exercise string, side unit.Side, week int) *plan.WeekDose {
	for i := range p.Prescriptions {
		r := &p.Prescriptions[i]
		if r.Exercise.ID != exercise || r.Side != side {
			continue
		}
		for j := range r.Weeks {
			if r.Weeks[j].Week == week {
				return &r.Weeks[j]
			}
		}
	}
	return nil
}

// chosen is the exercise that a leg (or both) has in a slot in a week; "" where none.
func chosen(p *plan.Plan, slot string, side unit.Side, week int) string {
	for _, r := range p.Prescriptions {
		for _, w := range r.Weeks {
			if r.Slot.ID == slot && w.Week == week && (r.Side == side || r.Side == unit.Both) {
				return r.Exercise.ID
			}
		}
	}
	return ""
}

// because is why an exercise was passed over in a week.
func because(p *plan.Plan, exercise string, week int) string {
	for _, d := range p.Dropped {
		if d.Exercise == exercise && d.Week == week {
			return d.Because.String()
		}
	}
	return ""
}

func reach(d *plan.WeekDose) string {
	switch {
	case d == nil:
		return "not prescribed"
	case d.Range == nil:
		return "no range"
	}
	return fmt.Sprintf("%g-%g", float64(d.Range.Straightest), float64(d.Range.MostBent))
}

// put is what is put on; -1 where there is no load.
func put(d *plan.WeekDose) float64 {
	if d == nil || !d.Plates.OK() {
		return -1
	}
	return float64(d.Plates.Or(0))
}

func criterion(t testing.TB, p *plan.Plan, id string) plan.Criterion {
	t.Helper()
	all := append([]plan.Criterion{}, p.Stage.Criteria...)
	for _, a := range p.Activities {
		all = append(all, a.Criteria...)
	}
	for _, c := range all {
		if c.ID == id {
			return c
		}
	}
	t.Fatalf("no criterion %s", id)
	return plan.Criterion{}
}

func activity(t testing.TB, p *plan.Plan, id string) plan.ActivityState {
	t.Helper()
	for _, a := range p.Activities {
		if a.Activity.ID == id {
			return a
		}
	}
	t.Fatalf("no activity %s", id)
	return plan.ActivityState{}
}

// window finds a window of a limit by who set it (a name or "program").
func windows(p *plan.Plan, k unit.Kind, setBy string) (list []plan.Window) {
	for _, w := range p.Limits {
		if w.Kind == k && (w.SetBy == setBy || w.Name == setBy) {
			list = append(list, w)
		}
	}
	return list
}

// limit is one [[limit]] of client.toml.
func limit(kind, allow, from, lifts, setBy, name, said string) string {
	s := fmt.Sprintf("[[limit]]\nkind = %q\n%s\nfrom = %s\n", kind, allow, from)
	if lifts != "" {
		s += "lifts = " + lifts + "\n"
	}
	return s + fmt.Sprintf("set_by = %q\nname = %q\nsaid = %s\nroute = \"letter\"\n", setBy, name, said)
}

func opened(id, from string) string {
	return fmt.Sprintf("[[opened]]\nid = %q\nfrom = %s\nby = \"imbali\"\n", id, from)
}

const calm = "by = \"imbali\"\nmass_kg = 64\npain_worst = 1\npain_next_morning = 1\npain_kind = \"ache\"\neffusion = \"trace\"\nquads_lag_deg = 0\n"

// straightKnees is a calm day with a knee that straightens and bends.
const straightKnees = calm + "left.lacks_extension_deg = 0\nleft.flexion_deg = 138\nright.lacks_extension_deg = 0\nright.flexion_deg = 141\n"

// setups of the ordinary tests.
const setups = `[setup.knee-extension]
gauge = "belt"
mode = "isometric"
angle_deg = 90
left.arm_cm = 31
right.arm_cm = 31
[setup.knee-flexion]
gauge = "belt"
mode = "isometric"
angle_deg = 90
left.arm_cm = 31
right.arm_cm = 31
[setup.leg-press-single]
device = "press"
[setup.leg-press-both]
device = "press"
[setup.knee-extension-machine]
device = "stack"
[setup.leg-curl-machine]
device = "curl"
`

func pull(test, left, right string) string {
	return fmt.Sprintf("[[strength]]\ntest = %q\nleft.peak_n = %s\nright.peak_n = %s\n", test, left, right)
}

func lift(exercise, more, left, right string) string {
	s := fmt.Sprintf("[[lift]]\nexercise = %q\n%s\n", exercise, more)
	if left != "" {
		s += "left = " + setOf(left) + "\n"
	}
	if right != "" {
		s += "right = " + setOf(right) + "\n"
	}
	return s
}

// setOf is a set as it is typed: "60 kg x 8+0" is what is put on; "moved 51 kg x 8+0" is all that moves, which need be no setting of
// a device.
func setOf(set string) string {
	var load float64
	var marked string
	var reps, reserve int
	if n, _ := fmt.Sscanf(set, "moved %g %s x %d+%d", &load, &marked, &reps, &reserve); n == 4 {
		return fmt.Sprintf("{ moved_%s = %g, reps = %d, reserve = %d }", marked, load, reps, reserve)
	}
	return fmt.Sprintf("%q", set)
}

// shelf holds the shipped programs and words, read once for all houses of these tests.
var shelf generator.Shelf
