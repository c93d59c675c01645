package source_test

import (
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// The files of testdata/formats are the examples of the design, word for word: what they show must be read.

func sample(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile("testdata/formats/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func read[T any](t *testing.T, name string) T {
	t.Helper()
	var into T
	if fs := source.TOML(name, sample(t, name), &into); len(fs) > 0 {
		t.Fatalf("%s:\n%v", name, fs)
	}
	return into
}

func same(t *testing.T, what string, got, want any) {
	t.Helper()
	if !reflect.DeepEqual(got, want) {
		t.Errorf("%s: got %v, want %v", what, got, want)
	}
}

func TestFormatOfClinic(t *testing.T) {
	c := read[client.Clinic](t, "clinic.toml")
	press := c.Places[0].Devices[0]
	var plates []unit.Kilograms
	for _, p := range press.Plates {
		plates = append(plates, p.Or(0))
	}
	same(t, "plates", plates, []unit.Kilograms{20, 10, 5, 2.5, 1.25})
	same(t, "angle", press.Angle.Or(0), unit.Degrees(45))
	same(t, "carriage", press.Carriage.Step().At, basis.Origin{File: "clinic.toml", Key: "place[0].device[0].carriage_kg"})
	same(t, "second device", c.Places[0].Devices[1].At.Key, "place[0].device[1]")
}

func TestFormatOfPerson(t *testing.T) {
	p := read[client.Person](t, "person.toml")
	same(t, "height", p.Height.Or(0), unit.Metres(1.71))
	same(t, "height as typed", p.Height.Step().Typed, "171 cm")
	same(t, "days", p.TrainingDays, []client.Weekday{"mon", "wed", "fri"})
	same(t, "operation", p.Events[0].Date, unit.Day{Year: 2026, Month: 1, Date: 12})
	same(t, "range of a limit", *p.Limits[0].Range, unit.Reach{Straightest: 0, MostBent: 70})
	same(t, "lifts", p.Limits[0].Lifts.String(), "2026-04-20")
	setup := p.Setups["knee-extension"]
	same(t, "angle", setup.Angle.Step().Typed, "90°")
	same(t, "arm", setup.Right.Arm.Step().At.Key, "setup.knee-extension.right.arm_cm")
	same(t, "seat, a number that is a name", p.Setups["leg-press-single"].Seat, "4")
	same(t, "pins", p.Setups["leg-press-single"].Pins, []unit.Degrees{90, 75, 60, 45, 30})
}

func TestFormatOfTestDay(t *testing.T) {
	d := read[client.TestDay](t, "testday.toml")
	left := d.Strength[0].Left.Peak
	same(t, "trials", len(left), 3)
	same(t, "trial", left[1].Step().At.Key, "strength[0].left.peak_n[1]")
	same(t, "trial as typed", left[1].Step().Typed, "331 N")
	same(t, "load", d.Lifts[0].Left.Plates.Step().Typed, "60 kg")
	same(t, "place of the load", d.Lifts[0].Left.Plates.Step().At.Key, "lift[0].left")
	same(t, "reserve of a set to failure", d.Lifts[0].Right.Reserve.OK(), true)
	same(t, "not tested", d.Hops[0].Left.NotTested.String(), "before week 12 and a repaired meniscus")
	same(t, "zero is a value", d.QuadsLag.OK(), true)
	same(t, "what is left out is none", d.Right.LacksExtension.OK(), false)
}

func TestFormatOfBlock(t *testing.T) {
	b := read[client.Block](t, "block.toml")
	same(t, "starts", b.Starts.String(), "2026-04-06")
	same(t, "sets", *b.Overrides[0].Sets, 2)
	same(t, "reps are not set", b.Overrides[0].Reps == nil, true)
}

func TestFormatOfProgram(t *testing.T) {
	// the activity of the example has no title, which the struct asks for: the one difference to the design
	text := strings.Replace(string(sample(t, "program.toml")), "id = \"running\"\n", "id = \"running\"\ntitle = \"Running\"\n", 1)
	var f program.File
	if fs := source.TOML("program.toml", []byte(text), &f); len(fs) > 0 {
		t.Fatal(fs)
	}
	same(t, "preset", f.Presets["straightening-under-load"], "kngf")
	needs := f.Activities[0].Needs
	same(t, "week", *needs[0].EarliestWeek, 12)
	same(t, "grade", needs[2].AtMost.Grade, unit.GradeTrace)
	same(t, "share", needs[4].AtLeast.Unit, "%")
	same(t, "place", needs[5].At.Key, "activity[0].needs[5]")
}

func TestFormatOfPhase(t *testing.T) {
	p := read[program.Phase](t, "phase.toml")
	same(t, "any", p.Enter[2].Any[1].At.Key, "enter[2].any[1]")
	same(t, "sport", p.Enter[2].When.Sport, []unit.Sport{"twisting", "contact"})
	same(t, "sets of an embedded dose", *p.Slots[0].Sets, 3)
	same(t, "rest", *p.Slots[0].Rest, unit.Seconds(120))
	same(t, "weekly", p.Slots[0].WeeklyPercent, unit.Percent(2.5))
	same(t, "wave", *p.Slots[0].Waves[0].Reps, 12)
}

func TestFormatOfLimits(t *testing.T) {
	l := read[program.LimitFile](t, "limits.toml")
	same(t, "closed", *l.Limits[0].Steps[0].Allowed, false)
	same(t, "week 0 is said", *l.Limits[0].Steps[0].Week, 0)
	same(t, "row", *l.Limits[0].Steps[4].Range, unit.Reach{Straightest: 10, MostBent: 90})
	same(t, "place", l.Limits[0].Steps[4].At.Key, "limit[0].steps[4]")
}

func TestFormatOfExercise(t *testing.T) {
	e := read[program.Exercise](t, "exercise.toml")
	same(t, "lift", e.Lift, unit.Seconds(2))
	same(t, "kinds", e.Kinds, []unit.Kind{"straightening-under-load", "added-weight"})
}

// TestLineInALongList: the mistake stands in one row of many, and only that row is named.
func TestLineInALongList(t *testing.T) {
	text := strings.Replace(string(sample(t, "limits.toml")), `{ week = 5, range_deg`, `{ week = 5.5, range_deg`, 1)
	var l program.LimitFile
	got := source.TOML("limits.toml", []byte(text), &l).Error()
	if want := "limits.toml:10: week 5.5 is not a whole number; write week = …, without a fraction"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

// kinds are the files that the fuzzer fills.
var kinds = []struct {
	name string
	read func(data []byte) source.Faults
}{
	{"clinic.toml", filler[client.Clinic]},
	{"person.toml", filler[client.Person]},
	{"testday.toml", filler[client.TestDay]},
	{"block.toml", filler[client.Block]},
	{"program.toml", filler[program.File]},
	{"phase.toml", filler[program.Phase]},
	{"limits.toml", filler[program.LimitFile]},
	{"exercise.toml", filler[program.Exercise]},
}

func filler[T any](data []byte) source.Faults { return source.TOML("a.toml", data, new(T)) }

// FuzzTOML holds the laws of any file: no panic, each fault on a line that exists, the same faults again, and messages
// that a therapist can read.
func FuzzTOML(f *testing.F) {
	for i, k := range kinds {
		f.Add(i, string(sample(f, k.name)))
		f.Add(i, strings.ReplaceAll(string(sample(f, k.name)), "=", "= ="))
	}
	f.Add(2, "left = {peak_n = [[1]]}\n[[strength]]\nleft.peak_n = [nan, \"1,5\", 1e300]\nmass_kg = -0.0")
	f.Add(1, "\"\" = 1\n\"a\\nb\" = {}\nevent = [1, {kind = 3}]\nsetup.\"A B\" = 1\nborn = ''\n")
	f.Fuzz(func(t *testing.T, kind int, text string) {
		k := kinds[uint(kind)%uint(len(kinds))]
		fs := k.read([]byte(text))
		last := strings.Count(strings.TrimSuffix(text, "\n"), "\n") + 1
		for _, fault := range fs {
			if fault.Line < 0 || fault.Line > last {
				t.Errorf("line %d of %d: %v", fault.Line, last, fault)
			}
			if say := fault.Error(); strings.Contains(say, "interface {}") || strings.Contains(say, "toml: ") || strings.Contains(say, "%!") || strings.ContainsRune(fault.What, '\n') {
				t.Errorf("no therapist reads: %s", say)
			}
		}
		if again := k.read([]byte(text)); !reflect.DeepEqual(fs, again) {
			t.Errorf("other faults the second time:\n%v\n%v", fs, again)
		}
	})
}

// The judgement costs three tenths on top of the library's decoding into a map: 138 µs against 106 µs for this file, on one
// core of an AMD EPYC; the index of lines, made only where there is a fault, costs eight tenths more.
func BenchmarkTOML(b *testing.B) {
	data := sample(b, "person.toml")
	b.Run("walked", func(b *testing.B) {
		for b.Loop() {
			source.TOML("person.toml", data, new(client.Person))
		}
	})
	b.Run("map alone", func(b *testing.B) {
		for b.Loop() {
			var m map[string]any
			toml.Decode(string(data), &m)
		}
	})
	b.Run("with one fault", func(b *testing.B) {
		faulty := append([]byte("zzz = 1\n"), data...)
		for b.Loop() {
			source.TOML("person.toml", faulty, new(client.Person))
		}
	})
}

// TestTagsAreWritable: a tag that the walker cannot follow would be found only by the first file that has its table.
func TestTagsAreWritable(t *testing.T) {
	for _, typ := range []reflect.Type{
		reflect.TypeFor[client.Clinic](), reflect.TypeFor[client.Person](), reflect.TypeFor[client.TestDay](), reflect.TypeFor[client.Block](),
		reflect.TypeFor[program.File](), reflect.TypeFor[program.Phase](), reflect.TypeFor[program.LimitFile](), reflect.TypeFor[program.Exercise](),
		reflect.TypeFor[program.Source](),
	} {
		source.TagsOf(typ)
	}
}
