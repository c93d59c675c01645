package generator_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// walkClinic has a device of every kind that an exercise may need.
func walkClinic() string {
	var b strings.Builder
	b.WriteString("paceleaf = 1\nname = \"Walk Clinic\"\nemergency = \"999\"\n[[phone]]\nwho = \"clinic\"\nnumber = \"020 7946 0000\"\nhours = \"always\"\n" +
		"[[phone]]\nwho = \"ward\"\nnumber = \"020 7946 0263\"\nhours = \"day and night\"\n[[therapist]]\nid = \"imbali\"\nname = \"Imbali R.\"\nrole = \"physiotherapist\"\n[[place]]\nid = \"gym\"\n")
	for _, kind := range unit.DeviceKind("").Words() {
		fmt.Fprintf(&b, "[[place.device]]\nid = %q\nkind = %q\n", kind, kind)
		switch kind {
		case "angled-leg-press", "horizontal-leg-press", "hack-squat", "sled":
			b.WriteString("plates_kg = [20, 10, 5, 2.5, 1.25]\n")
		case "barbell":
			b.WriteString("bar_kg = 15\nplates_kg = [20, 10, 5, 2.5, 1.25]\n")
		case "knee-extension-stack", "leg-curl-stack", "leg-curl-seated-stack", "stack", "cable", "dumbbell", "ankle-weight":
			b.WriteString("lightest_kg = 1\nheaviest_kg = 120\nstep_kg = 1\n")
		}
	}
	b.WriteString("[[place]]\nid = \"home\"\n")
	for _, kind := range []string{"band", "mat", "strap"} {
		fmt.Fprintf(&b, "[[place.device]]\nid = \"home-%s\"\nkind = %q\n", kind, kind)
	}
	b.WriteString("[[gauge]]\nid = \"belt\"\nkind = \"belt-fixed dynamometer\"\n")
	return b.String()
}

// walkStart is the day from which the weeks of every walk count.
var walkStart, _ = unit.ParseDay("2026-01-05")

// walker is a made-up client of a program, in one of its phases, with nothing to be said against the knee.
type walker struct {
	program *program.Program
	phase   int      // of the program's, from 0
	starts  unit.Day // of the block
	since   unit.Day // of the phase
	weeks   int
	tests   string // of the day before the block; soundTests where it is empty
	both    bool   // the event is of both knees
	home    bool   // trains at home, with next to nothing
}

// floorOf is the first day on which the floors in time of a list of criteria are over.
func floorOf(rules []program.Criterion) unit.Day {
	day := walkStart
	for _, c := range rules {
		if c.EarliestWeek != nil && day.Before(walkStart.AddWeeks(*c.EarliestWeek)) {
			day = walkStart.AddWeeks(*c.EarliestWeek)
		}
		if c.EarliestMonth != nil && day.Before(walkStart.AddMonths(*c.EarliestMonth)) {
			day = walkStart.AddMonths(*c.EarliestMonth)
		}
	}
	return day
}

// entered is the first day on which a phase may be entered, when all before it were entered as early as may be.
func entered(p *program.Program, phase int) unit.Day {
	day := walkStart
	for i := 1; i <= phase; i++ {
		if floor := floorOf(p.Phases[i].Enter); day.Before(floor) {
			day = floor
		} else {
			day = day.AddWeeks(1)
		}
	}
	return day
}

// soundTests are a test day on which every mark of every program is met.
func soundTests() string {
	k := `pain_worst = 1
pain_next_morning = 0
pain_kind = "ache"
effusion = "zero"
quads_lag_deg = 0
left.lacks_extension_deg = 0
left.flexion_deg = 140
right.lacks_extension_deg = 0
right.flexion_deg = 140
mass_kg = 70
strength = [
  { test = "knee-extension", angle_deg = 90, left.arm_cm = 30, right.arm_cm = 30, left.peak_n = [400], right.peak_n = [400] },
  { test = "knee-flexion", angle_deg = 90, left.arm_cm = 30, right.arm_cm = 30, left.peak_n = [250], right.peak_n = [250] },
]
hop = [ { test = "single", left.distance_cm = [120], right.distance_cm = [120] }, { test = "triple", left.distance_cm = [380], right.distance_cm = [380] }, { test = "crossover", left.distance_cm = [350], right.distance_cm = [350] }, { test = "timed-6m", left.time_s = [2.2], right.time_s = [2.2] } ]
questionnaire = [ { id = "acl-rsi", score = 90 }, { id = "kos-adls", score = 96 } ]
`
	return k
}

// files are the folder of a walker's clinic.
func (w walker) files() fstest.MapFS {
	p, kind, more := w.program, "operation", ""
	switch w.program.CountsFrom {
	case "injury", "start":
		kind = w.program.CountsFrom
	case "acl-reconstruction":
		more = "procedure = \"acl-reconstruction\"\ngraft = \"patellar-tendon\"\ngraft_from = \"left\"\n"
	default:
		more = fmt.Sprintf("procedure = %q\n", p.CountsFrom)
	}
	var b strings.Builder
	fmt.Fprintf(&b, "program = %q\nplace = %q\ntraining_days = [\"mon\", \"wed\", \"fri\"]\nother_leg = \"sound\"\nsport = \"straight-line\"\nborn = \"1980-01\"\n", p.ID, map[bool]string{false: "gym", true: "home"}[w.home])
	side := map[bool]string{false: "left", true: "both"}[w.both]
	fmt.Fprintf(&b, "[[event]]\nkind = %q\ndate = %s\nside = %q\n%s", kind, walkStart, side, more)
	for i := 1; i <= w.phase; i++ {
		fmt.Fprintf(&b, "[[stage]]\nid = %q\nfrom = %s\nby = \"imbali\"\n", p.Phases[i].ID, w.enteredAt(i))
	}
	for _, a := range p.Activities {
		if !floorOf(a.Needs).After(w.starts) {
			fmt.Fprintf(&b, "[[opened]]\nid = %q\nfrom = %s\nby = \"imbali\"\n", a.ID, w.starts)
		}
	}
	tests := soundTests()
	if w.tests != "" {
		tests = w.tests
	}
	files := fstest.MapFS{
		"clinic.toml":                   {Data: []byte(walkClinic())},
		"clients/wren-01/client.toml":   {Data: []byte(b.String())},
		"clients/wren-01/blocks/1.toml": {Data: []byte(fmt.Sprintf("starts = %s\nweeks = %d\nby = \"imbali\"\n", w.starts, max(w.weeks, 1)))},
	}
	tested := func(on unit.Day, text string) {
		files["clients/wren-01/tests/"+on.String()+".toml"] = &fstest.MapFile{Data: []byte("by = \"imbali\"\n" + text)}
	}
	for i := 1; i <= w.phase; i++ {
		tested(w.enteredAt(i), soundTests())
	}
	tested(w.starts, tests)
	return files
}

// enteredAt is the day on which a phase was recorded: as early as may be, but the walker's own at the end.
func (w walker) enteredAt(phase int) unit.Day {
	if phase == w.phase {
		return w.since
	}
	return entered(w.program, phase)
}

// at puts a walker at the start of a phase.
func at(p *program.Program, phase int) walker {
	day := entered(p, phase)
	return walker{program: p, phase: phase, since: day, starts: day}
}

func (w walker) plan(t testing.TB) (*generator.House, *plan.Plan) {
	t.Helper()
	house, faults := generator.Open(generator.Files{Clinic: w.files(), Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	if house == nil {
		t.Fatal(faults)
	}
	done := house.Plan("wren-01")
	if done.Plan == nil || len(done.Faults.Wrong()) > 0 {
		t.Fatalf("%s, %s: %v", w.program.ID, w.program.Phases[w.phase].ID, done.Faults)
	}
	return house, done.Plan
}
