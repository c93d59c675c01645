package plan_test

import (
	"encoding/csv"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// Published schedules and decision tables, cell by cell, against what ships: each cell becomes a client of a clinic that
// exists only here, is read and planned as any other, and the plan must say what the cell says.

const schedules = "../../testdata/published/schedules"

// The list of cells that are shipped otherwise than their source has them may only shrink: 9 of them are remembered and
// not read, 1 is a trial's arm that nothing ships, 4 are stricter on purpose.
const mostGaps, mostLooser = 14, 0

// fewestCells is how many cells must have been checked; more is better.
const fewestCells = 80

func TestSchedules(t *testing.T) {
	cells, gaps := cellsIn(t), gapsIn(t)
	houses := map[string]*tableClinic{}
	for i := range cells {
		cells[i].admit(t, houses)
	}
	for _, h := range houses {
		h.open(t)
	}
	checked, held, idle := map[string]int{}, map[string]int{}, map[string]int{}
	for _, c := range cells {
		got, carried := c.found(t, houses)
		gap, listed := gaps[c.id]
		switch {
		case !carried:
			idle[c.key()]++
			got = "not carried out"
		case got == c.wanted && c.mark != "memory":
			checked[c.key()]++
			if listed {
				t.Logf("%s: %s is what its source says by now: take it off known-gaps.csv", c.id, got)
			}
			continue
		case listed:
			held[c.key()]++
		default:
			t.Errorf("%s: %s: %s, %s: %s; the plan says %s", c.file, c.id, c.what, c.state, c.wanted, got)
		}
		if listed && gap.holds != got {
			t.Errorf("known-gaps.csv: %s is said to hold %s; the plan says %s", c.id, gap.holds, got)
		}
		if c.mark == "memory" && !listed {
			t.Errorf("%s: %s is from memory and not in known-gaps.csv", c.file, c.id)
		}
	}
	logCells(t, "checked", checked)
	logCells(t, "held otherwise, as known-gaps.csv says", held)
	logCells(t, "not carried out yet", idle)
	if n := countOf(checked); n < fewestCells {
		t.Errorf("%d cells were checked; want at least %d", n, fewestCells)
	}
}

func logCells(t *testing.T, what string, by map[string]int) {
	t.Helper()
	var parts []string
	for _, k := range slices.Sorted(maps.Keys(by)) {
		parts = append(parts, fmt.Sprintf("%s %d", k, by[k]))
	}
	t.Logf("%d cells %s: %s", countOf(by), what, strings.Join(parts, ", "))
}

func countOf(by map[string]int) (n int) {
	for _, k := range by {
		n += k
	}
	return n
}

// cell is one cell of a published table: what it speaks of, in which week or state, what it says, who says it and how it
// was read.
type cell struct{ file, id, what, state, wanted, source, mark string }

func (c cell) thing() string { return strings.Fields(c.what)[0] }
func (c cell) key() string   { k, _, _ := strings.Cut(c.source, ","); return k }

// with is a word of what, such as graft=hamstring.
func (c cell) with(key, instead string) string {
	for _, w := range strings.Fields(c.what) {
		if v, ok := strings.CutPrefix(w, key+"="); ok {
			return v
		}
	}
	return instead
}

func (c cell) isLimit() bool {
	return slices.Contains(unit.Kind("").Words(), c.thing())
}

// isCriterion reports whether the cell is the mark of a criterion, named as the worksheet names it.
func (c cell) isCriterion() bool { return strings.Contains(c.thing(), ".") }

func cellsIn(t *testing.T) (cells []cell) {
	t.Helper()
	files, _ := filepath.Glob(filepath.Join(schedules, "*.csv"))
	shipped, _ := program.Library{Folder: source.Over(programs.FS)}.Program("acl-reconstruction")
	seen := map[string]bool{}
	for _, name := range files {
		if filepath.Base(name) == "known-gaps.csv" {
			continue
		}
		for _, row := range tableRows(t, name, "id,what,state,wanted,source,mark") {
			c := cell{filepath.Base(name), row[0], row[1], row[2], row[3], row[4], row[5]}
			if _, known := shipped.Sources[c.key()]; !known {
				t.Errorf("%s: %s: source %q is not in programs/sources.toml", c.file, c.id, c.key())
			}
			if seen[c.id] || !slices.Contains([]string{"published", "second-hand", "memory"}, c.mark) {
				t.Errorf("%s: %s: a cell needs an id of its own and a mark", c.file, c.id)
			}
			seen[c.id] = true
			cells = append(cells, c)
		}
	}
	return cells
}

type gap struct{ why, holds string }

func gapsIn(t *testing.T) map[string]gap {
	t.Helper()
	gaps, looser := map[string]gap{}, 0
	for _, row := range tableRows(t, filepath.Join(schedules, "known-gaps.csv"), "id,why,holds,because") {
		gaps[row[0]] = gap{row[1], row[2]}
		if row[1] == "looser" {
			looser++
		}
	}
	if len(gaps) > mostGaps || looser > mostLooser {
		t.Errorf("known-gaps.csv has %d rows, %d of them looser; it may only shrink from %d and %d", len(gaps), looser, mostGaps, mostLooser)
	}
	return gaps
}

func tableRows(t *testing.T, name, head string) [][]string {
	t.Helper()
	f, err := os.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil || len(rows) < 2 || strings.Join(rows[0], ",") != head {
		t.Fatalf("%s: want the columns %s and a row: %v", filepath.Base(name), head, err)
	}
	return rows[1:]
}

// tableClinic is a clinic that exists only here, for one preset: clients are admitted first, then it is opened once.
type tableClinic struct {
	preset string
	files  fstest.MapFS
	house  *generator.House
	plans  map[string]*plan.Plan
}

const clinicFile = `paceleaf = 1
name = "Tables"
emergency = "999"
phone = [ { who = "clinic", number = "020 7946 0000", hours = "8 to 18" } ]
therapist = [ { id = "imbali", name = "Imbali R.", role = "physiotherapist" } ]
gauge = [ { id = "belt", kind = "belt-fixed dynamometer" } ]
[[place]]
id = "gym"
device = [ { id = "stack", kind = "knee-extension-stack", lightest_kg = 5, heaviest_kg = 100, step_kg = 5 },
  { id = "curl", kind = "leg-curl-stack", lightest_kg = 5, heaviest_kg = 80, step_kg = 5 },
  { id = "mat", kind = "mat" }, { id = "strap", kind = "strap" }, { id = "step", kind = "box" }, { id = "bike", kind = "bike" } ]
`

const clientFile = `program = "acl-reconstruction"
place = "gym"
training_days = ["mon", "wed", "fri"]
other_leg = "sound"
event = [ { kind = "operation", procedure = "acl-reconstruction", date = %s, side = "left", graft = %q, graft_from = "left", also = [%s] } ]
stage = [ { id = %q, from = %s, by = "imbali" } ]
setup.knee-extension = { gauge = "belt", angle_deg = 90, left.arm_cm = 30, right.arm_cm = 30 }
setup.knee-flexion = { gauge = "belt", angle_deg = 90, left.arm_cm = 30, right.arm_cm = 30 }
`

var tableOperation = unit.Day{Year: 2026, Month: 1, Date: 12}

func inHouse(t *testing.T, houses map[string]*tableClinic, preset string) *tableClinic {
	t.Helper()
	if houses[preset] == nil {
		c := &tableClinic{preset: preset, files: fstest.MapFS{}, plans: map[string]*plan.Plan{}}
		c.put("clinic.toml", clinicFile)
		if preset != "kngf" {
			c.put("programs/acl-reconstruction.toml", withPreset(t, preset))
		}
		houses[preset] = c
	}
	return houses[preset]
}

// withPreset is the shipped program with another preset of open-chain straightening, or with none.
func withPreset(t *testing.T, preset string) string {
	t.Helper()
	data, err := programs.FS.ReadFile("acl-reconstruction.toml")
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(string(data), "\n")
	i := slices.IndexFunc(lines, func(l string) bool { return strings.HasPrefix(l, "presets = ") })
	if i < 0 {
		t.Fatal("the shipped program names no preset")
	}
	lines[i] = map[bool]string{true: "", false: fmt.Sprintf("presets = { straightening-under-load = %q }", preset)}[preset == "none"]
	return strings.Join(lines, "\n")
}

func (c *tableClinic) put(name, text string) { c.files[name] = &fstest.MapFile{Data: []byte(text)} }

// admit lays down a client whose block begins in a week after the operation, with test days counted from its first day.
func (c *tableClinic) admit(code string, week int, graft, also, stage string, tests map[int]string) {
	starts := tableOperation.AddWeeks(week)
	if also != "" {
		also = strconv.Quote(also)
	}
	dir := "clients/" + code + "/"
	c.put(dir+"client.toml", fmt.Sprintf(clientFile, tableOperation, graft, also, stage, tableOperation))
	c.put(dir+"blocks/1.toml", fmt.Sprintf("starts = %s\nweeks = 1\nby = \"imbali\"\n", starts))
	for days, text := range tests {
		c.put(dir+"tests/"+starts.AddDays(days).String()+".toml", "by = \"imbali\"\n"+text)
	}
}

func (c *tableClinic) open(t *testing.T) {
	t.Helper()
	house, faults := generator.Open(generator.Files{Clinic: c.files, Programs: programs.FS, Templates: templates.FS, Version: "tables", Shelf: &shelf})
	if house == nil {
		t.Fatalf("preset %s: %v", c.preset, faults)
	}
	c.house = house
}

func (c *tableClinic) plan(t *testing.T, code string) *plan.Plan {
	t.Helper()
	if c.plans[code] == nil {
		done := c.house.Plan(code)
		if done.Plan == nil {
			t.Fatalf("%s: %v", code, done.Faults)
		}
		c.plans[code] = done.Plan
	}
	return c.plans[code]
}

// admit lays down the clients that a cell asks for.
func (c cell) admit(t *testing.T, houses map[string]*tableClinic) {
	t.Helper()
	h := inHouse(t, houses, c.with("preset", "kngf"))
	switch {
	case c.isLimit():
		h.admit(c.id, c.week(t), c.with("graft", "hamstring"), c.with("also", ""), "rebuild", nil)
	case c.thing() == "effusion":
		looks, tests := strings.Split(c.state, " > "), map[int]string{}
		for i, grade := range looks {
			tests[2*(i-len(looks)+1)] = fmt.Sprintf("effusion = %q\n", grade)
		}
		h.admit(c.id, 14, "hamstring", "", "rebuild", tests)
	case c.isCriterion():
		c.admitSides(h)
	}
}

func (c cell) week(t *testing.T) int {
	t.Helper()
	n, err := strconv.Atoi(strings.TrimPrefix(c.state, "week "))
	if err != nil {
		t.Fatalf("%s: %s: %q is no week", c.file, c.id, c.state)
	}
	return n
}

// found is what the plan says of a cell, in the words of its wanted; false where no code carries the cell out.
func (c cell) found(t *testing.T, houses map[string]*tableClinic) (string, bool) {
	t.Helper()
	h := houses[c.with("preset", "kngf")]
	switch {
	case c.isLimit():
		p, kind := h.plan(t, c.id), unit.Kind(c.thing())
		allow := ruling(p.Limits, kind, unit.Kind(c.with("on", "")), p.AsOf)
		c.obeyed(t, p, kind, allow)
		return inCellWords(allow), true
	case c.thing() == "effusion":
		return string(h.plan(t, c.id).Symptoms.Action), true
	case c.isCriterion():
		return c.shippedMark(t, h), true
	case c.thing() == "running-level":
		return c.shippedLevel()
	case c.thing() == "running-rule", c.thing() == "soreness":
		return c.shippedWords()
	}
	return "", false
}

var distance = regexp.MustCompile(`([0-9.]+) (mi|km|m)\b`)

// metres are the distances that a text names.
func metres(text string) (list []float64) {
	for _, m := range distance.FindAllStringSubmatch(text, -1) {
		n, _ := strconv.ParseFloat(m[1], 64)
		list = append(list, float64(n*map[string]float64{"mi": 1609.344, "km": 1000, "m": 1}[m[2]]))
	}
	return list
}

// shippedLevel holds a level of running to the words that ship: each distance of the table must stand in them, rounded by
// no more than a hundredth. A cell without a distance is carried out by nothing that could be held to it.
func (c cell) shippedLevel() (string, bool) {
	const name = "exercises/running-levels.toml"
	data, err := programs.FS.ReadFile(name)
	var e program.Exercise
	if err != nil || len(source.TOML(name, data, &e).Wrong()) > 0 || len(metres(c.wanted)) == 0 {
		return "", false
	}
	n, err := strconv.Atoi(strings.TrimPrefix(c.state, "level "))
	if err != nil || n < 1 || n > len(e.Levels) {
		return "no such level", true
	}
	text := e.Levels[n-1].Do
	if strings.HasSuffix(c.what, "treadmill") {
		text = e.Levels[n-1].Indoor
	}
	for _, wanted := range metres(c.wanted) {
		if !slices.ContainsFunc(metres(text), func(m float64) bool { return m <= wanted && m >= 0.99*wanted }) {
			return text, true
		}
	}
	return c.wanted, true
}

// carriedBy are the sentences of the exercise running-levels that carry out a rule of climbing or of soreness: a client reads
// and obeys them, nothing computes them.
var carriedBy = map[string]string{
	"running-advance": "Done it all, with no more pain and no more swelling? Go up 1 level.",
	"running-rest":    "Leave at least 1 day free between two runs.",
	"running-week":    "Run at most 4 times a week.",
	"running-rise":    "Go up at most 2 levels in 7 days.",
	"soreness-1":      "Sore as you warm up, and it stays? Take 2 days off. Then go 1 level down.",
	"soreness-2":      "Sore as you warm up, and it goes? Do the same level again.",
	"soreness-3":      "It goes and comes back as you run? Take 2 days off. Then go 1 level down.",
	"soreness-4":      "Sore the next day, or 1 hour after, and not in the muscle? Take 1 day off. Then do the same level.",
	"soreness-5":      "Done it all, with no more pain and no more swelling? Go up 1 level.",
}

// shippedWords holds a rule that is words for the client to the sentence that says it.
func (c cell) shippedWords() (string, bool) {
	says, known := carriedBy[c.id]
	text, err := programs.FS.ReadFile("exercises/running-levels.md")
	switch {
	case !known || err != nil:
		return "", false
	case !strings.Contains(string(text), says):
		return "not in the words of the exercise", true
	}
	return c.wanted, true
}

// ruling is the strictest of the windows that hold on a day, worked out anew from what the worksheet lists.
func ruling(windows []plan.Window, kind, on unit.Kind, day unit.Day) (r unit.Allowance) {
	no := false
	for _, w := range windows {
		if w.Kind != kind || len(w.On) > 0 && !slices.Contains(w.On, on) || day.Before(w.From) || !w.Lifts.IsZero() && !day.Before(w.Lifts) {
			continue
		}
		a := w.Allow
		switch {
		case a.Grade == unit.NoWork:
			return a
		case a.Closed():
			return unit.Allowance{Allowed: &no}
		}
		if a.Range != nil {
			met := a.Range.Meet(*firstOf(r.Range, a.Range))
			r.Range = &met
		}
		if a.Grade != "" && (r.Grade == "" || a.Grade.Rank() < r.Grade.Rank()) {
			r.Grade = a.Grade
		}
		if a.Part != nil && (r.Part == nil || *a.Part < *r.Part) {
			r.Part = a.Part
		}
		if a.Locked != nil {
			r.Locked = a.Locked
		}
	}
	return r
}

func firstOf[T any](a, b *T) *T {
	if a != nil {
		return a
	}
	return b
}

func inCellWords(a unit.Allowance) string {
	switch {
	case a.Grade != "":
		return string(a.Grade)
	case a.Closed():
		return "closed"
	case a.Locked != nil:
		return fmt.Sprintf("locked %g", float64(*a.Locked))
	case a.Range != nil:
		return fmt.Sprintf("%g to %g", float64(a.Range.Straightest), float64(a.Range.MostBent))
	case a.Part != nil:
		return fmt.Sprintf("%g %%", float64(*a.Part))
	}
	return "free"
}

// obeyed holds what is prescribed for the operated leg to the ruling: nothing outside it, and where a range of work is
// allowed some exercise goes through all of it.
func (c cell) obeyed(t *testing.T, p *plan.Plan, kind unit.Kind, allow unit.Allowance) {
	t.Helper()
	whole := kind != unit.LoadedBend && kind != unit.StraighteningUnderLoad || allow.Closed()
	for _, r := range p.Prescriptions {
		reach := r.Weeks[0].Range
		if r.Side == unit.Right || !r.Exercise.Names(kind) || c.with("on", "") != "" && !r.Exercise.Names(unit.Kind(c.with("on", ""))) {
			continue
		}
		if allow.Closed() && allow.Grade == "" || allow.Part != nil || allow.Grade != "" && r.Exercise.Work.Rank() > allow.Grade.Rank() ||
			allow.Range != nil && reach != nil && !reach.Within(*allow.Range) {
			t.Errorf("%s: %s: %s is prescribed against %s", c.file, c.id, r.Exercise.ID, inCellWords(allow))
		}
		if reach != nil && *reach == (unit.Reach{Straightest: 0, MostBent: 90}).Meet(*firstOf(allow.Range, &unit.Full)) {
			whole = true
		}
	}
	if !whole && ruling(p.Limits, unit.WeightBearing, "", p.AsOf).Free() {
		t.Errorf("%s: %s: nothing that is prescribed goes through all of %s", c.file, c.id, inCellWords(allow))
	}
}

// knee is a test day on which every criterion of running is met, for one value to be changed at a time.
type knee struct {
	pain, lacks, lag    float64
	effusion            unit.Grade
	flexion, hop        float64 // percent of the other side
	extensors, flexors  float64 // percent of the other side
	weeksSinceOperation float64
}

func soundKnee() knee {
	return knee{pain: 1, effusion: unit.GradeZero, flexion: 100, hop: 100, extensors: 100, flexors: 100, weeksSinceOperation: 12}
}

func (k knee) text() string {
	return fmt.Sprintf(`pain_worst = %g
effusion = %q
quads_lag_deg = %g
left.lacks_extension_deg = %g
left.flexion_deg = %g
right.flexion_deg = 140
strength = [ { test = "knee-extension", left.peak_n = [%g], right.peak_n = [400] }, { test = "knee-flexion", left.peak_n = [%g], right.peak_n = [400] } ]
hop = [ { test = "single", left.distance_cm = [%g], right.distance_cm = [100] } ]
`, k.pain, k.effusion, k.lag, k.lacks, 1.4*k.flexion, 4*k.extensors, 4*k.flexors, k.hop)
}

// value is where a measure stands in a knee; nil for swelling, which has a grade.
func (k *knee) value(measure string) *float64 {
	return map[string]*float64{"time": &k.weeksSinceOperation, "pain": &k.pain, "extension": &k.lacks, "quads-lag": &k.lag, "flexion.percent-of-other": &k.flexion,
		"knee-extension.lsi": &k.extensors, "knee-flexion.lsi": &k.flexors, "hop-single.lsi": &k.hop}[measure]
}

func (c cell) measure() (of, measure string) {
	of, measure, _ = strings.Cut(c.thing(), ".")
	return of, measure
}

// admitSides lays down two clients: one whose value just fails the source's mark, and one with nothing to be said against.
func (c cell) admitSides(h *tableClinic) {
	of, measure := c.measure()
	before := map[string]string{"activate": "settle", "rebuild": "activate"}[of] // a phase is judged from the one before it
	if before == "" {
		before = "rebuild"
	}
	fails, passes := soundKnee(), soundKnee()
	words := strings.Fields(c.wanted)
	mark, err := strconv.ParseFloat(words[len(words)-1], 64)
	switch v := fails.value(measure); {
	case err != nil:
		grade := unit.Grade(words[len(words)-1])
		passes.effusion = grade
		fails.effusion = unit.Grade(grade.Words()[grade.Rank()+1])
	case strings.HasPrefix(c.wanted, "below"), strings.HasPrefix(c.wanted, "above"):
		*v = mark
	case strings.HasPrefix(c.wanted, "at most"):
		*v, *passes.value(measure) = mark+1, mark
	default:
		*v, *passes.value(measure) = mark-1, mark
	}
	if c.mayHoldMore() {
		passes = soundKnee()
	}
	h.admit(c.id+"-fails", int(fails.weeksSinceOperation), "hamstring", "", before, map[int]string{0: fails.text()})
	h.admit(c.id+"-passes", int(passes.weeksSinceOperation), "hamstring", "", before, map[int]string{0: passes.text()})
}

// mayHoldMore reports whether the shipped mark may be stricter than the source's, so that the source's mark need not pass.
func (c cell) mayHoldMore() bool { return strings.HasPrefix(c.wanted, "above") }

// shippedMark is the mark of the criterion that the cell names, after its two clients were judged by it.
func (c cell) shippedMark(t *testing.T, h *tableClinic) string {
	t.Helper()
	fails, passes := c.criterion(t, h.plan(t, c.id+"-fails")), c.criterion(t, h.plan(t, c.id+"-passes"))
	if passes.State != plan.Met {
		t.Errorf("%s: %s: %s is %q for a client who has what it asks", c.file, c.id, passes.ID, passes.State)
	}
	shipped := passes.Sense + " " + passes.Wanted.Typed
	source := c.wanted
	if passes.Wanted.Unit != "" && passes.Wanted.Grade == "" {
		shipped = strings.TrimSuffix(shipped, " "+passes.Wanted.Unit)
		if shipped != source {
			shipped += " " + passes.Wanted.Unit
		}
	}
	if fails.State == plan.Met {
		t.Logf("%s: %s: a client on the source's mark passes (%s; the source has %s)", c.file, c.id, shipped, source)
	}
	return shipped
}

func (c cell) criterion(t *testing.T, p *plan.Plan) plan.Criterion {
	t.Helper()
	of, _ := c.measure()
	list := p.Stage.Criteria
	for _, a := range p.Activities {
		if a.Activity.ID == of {
			list = a.Criteria
		}
	}
	i := slices.IndexFunc(list, func(k plan.Criterion) bool { return k.ID == c.thing() })
	if i < 0 {
		t.Fatalf("%s: %s: no criterion %s", c.file, c.id, c.thing())
	}
	return list[i]
}

// Every shipped schedule begins in week 0 and says how far each row may be trusted; a composite says why it is as it is;
// what is from memory never opens more than the row before it.
func TestLimitFiles(t *testing.T) {
	p, faults := program.Library{Folder: source.Over(programs.FS)}.Program("acl-reconstruction")
	for _, f := range faults.Wrong() {
		t.Errorf("%v", f)
	}
	rows := map[unit.Standing]int{}
	for _, l := range p.Limits {
		for i, s := range l.Steps {
			at := fmt.Sprintf("%s, %s", s.At.File, s.At.Key)
			standing := s.Standing
			if standing == "" {
				standing = l.Standing
			}
			rows[standing]++
			switch {
			case standing == "":
				t.Errorf("%s: a row without standing", at)
			case i == 0 && *s.Week != 0:
				t.Errorf("%s: the schedule begins in week %d", at, *s.Week)
			case standing == unit.ToolDefault && s.Note == "" && l.Note == "":
				t.Errorf("%s: our own row without a note", at)
			case (standing == unit.Published || standing == unit.SecondHand) && l.Source == "":
				t.Errorf("%s: %s, but no source is named", at, standing)
			case standing == unit.FromMemory && i > 0 && !allows(l.Steps[i-1].Allowance, s.Allowance):
				t.Errorf("%s: a row from memory opens more than the row before it", at)
			}
		}
		if l.LiftsWeek == nil {
			t.Errorf("%s, %s: the schedule never lifts", l.At.File, l.At.Key)
		}
	}
	for _, s := range slices.Sorted(maps.Keys(rows)) {
		t.Logf("%d rows %s", rows[s], s)
	}
}

// allows reports whether an allowance allows all that another does.
func allows(outer, inner unit.Allowance) bool {
	switch {
	case inner.Closed() || outer.Free():
		return true
	case outer.Closed():
		return false
	case outer.Range != nil:
		return inner.Range != nil && inner.Range.Within(*outer.Range)
	case outer.Grade != "":
		return inner.Grade != "" && inner.Grade.Rank() <= outer.Grade.Rank()
	case outer.Part != nil:
		return inner.Part != nil && *inner.Part <= *outer.Part
	case outer.Locked != nil:
		return inner.Locked != nil
	}
	return false
}

// strictestOf are the procedures that stand for whatever was not written down, with those they stand for.
var strictestOf = map[string]string{"meniscus-repair-unknown": "meniscus-repair-", "cartilage-unknown": "cartilage-"}

// A second procedure never opens what the graft alone has closed, and one of unknown kind is at least as strict as every
// one that it may be: for each graft, kind and week of the first year.
func TestProceduresOnlyTighten(t *testing.T) {
	p, _ := program.Library{Folder: source.Over(programs.FS)}.Program("acl-reconstruction")
	var also []string
	for _, l := range p.Limits {
		for _, a := range l.When.Also {
			if !slices.Contains(also, a) {
				also = append(also, a)
			}
		}
	}
	for unknown, family := range strictestOf {
		if !slices.Contains(also, unknown) || !slices.ContainsFunc(also, func(a string) bool { return a != unknown && strings.HasPrefix(a, family) }) {
			t.Errorf("%s, or what it stands for, is no procedure of the program: %v", unknown, also)
		}
	}
	c := inHouse(t, map[string]*tableClinic{}, "none")
	for _, graft := range unit.Graft("").Words() {
		for _, a := range append([]string{"alone"}, also...) {
			c.admit(graft+"-"+a, 0, graft, strings.TrimPrefix(a, "alone"), "settle", nil)
		}
	}
	c.open(t)
	for _, graft := range unit.Graft("").Words() {
		windows := func(a string) []plan.Window { return c.plan(t, graft+"-"+a).Limits }
		for _, a := range also {
			tighter(t, graft+", "+a, windows("alone"), windows(a))
			for unknown, family := range strictestOf {
				if strings.HasPrefix(a, family) {
					tighter(t, graft+", "+unknown+" against "+a, windows(a), windows(unknown))
				}
			}
		}
	}
	t.Logf("%d procedures beside %d grafts: %s", len(also), len(unit.Graft("").Words()), strings.Join(also, ", "))
}

func tighter(t *testing.T, what string, than, is []plan.Window) {
	t.Helper()
	for _, k := range unit.Kind("").Words() {
		kind := unit.Kind(k)
		for _, on := range []unit.Kind{"", unit.StraighteningUnderLoad, unit.LoadedBend} {
			for week := range 54 {
				day := tableOperation.AddWeeks(week)
				if outer, inner := ruling(than, kind, on, day), ruling(is, kind, on, day); !allows(outer, inner) {
					t.Errorf("%s: week %d, %s: %s, where the other has %s", what, week, kind, inCellWords(inner), inCellWords(outer))
					break
				}
			}
		}
	}
}
