package source

import (
	"errors"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// leg is a closed set; its words are out of alphabetical order on purpose.
type leg string

func (leg) Words() []string { return []string{"left", "right", "both"} }

// mark knows its own endings, as a criterion's mark does.
type mark struct {
	n    float64
	unit string
	word string
}

func (*mark) KeyEndings() []unit.Ending {
	return []unit.Ending{{Name: "", Factor: 1}, {Name: "percent", Symbol: "%", Factor: 1}, {Name: "cm", Symbol: "cm", Factor: 0.01}}
}

func (m *mark) FromKeyed(e unit.Ending, value any) error {
	switch v := value.(type) {
	case string:
		if e.Name != "" {
			return fmt.Errorf("%q is a word; write a number", v)
		}
		m.word = v
	case int64:
		m.n, m.unit = float64(v)*e.Factor, e.Symbol
	case float64:
		m.n, m.unit = v*e.Factor, e.Symbol
	}
	return nil
}

// month is written as a string; load as a string or a table.
type month struct{ text string }

func (m *month) FromText(s string) error {
	if len(s) != len("1998-04") {
		return fmt.Errorf("%q is not a month; write year-month", s)
	}
	m.text = s
	return nil
}

type load struct {
	At   basis.Origin
	Mass basis.Num[unit.Kilograms] `key:"mass"`
	Reps *int                      `key:"reps,required"`
	text string
}

func (l *load) FromShort(s string, at basis.Origin) error {
	if s == "" {
		return errors.New("the set is empty; write 60x8")
	}
	l.text, l.At = s, at
	return nil
}

type pull struct {
	At     basis.Origin
	Peak   []basis.Num[unit.Newtons]      `key:"peak,list" range:"1 3000" ask:"100 1500"`
	Torque []basis.Num[unit.NewtonMetres] `key:"torque,list"`
	Arm    basis.Num[unit.Metres]         `key:"arm" range:"0.05 0.6"`
}

type test struct {
	Here basis.Origin
	ID   string `key:"id,required"`
	allowance
	Left  pull `key:"left"`
	Right pull `key:"right"`
}

// allowance is embedded; its id loses against the one outside.
type allowance struct {
	Hidden   string          `key:"id"`
	Part     *unit.Percent   `key:"part" range:"0 100"`
	PartMass *unit.Kilograms `key:"part"`
	Reach    *unit.Reach     `key:"range"`
}

type sheet struct {
	At      basis.Origin
	Title   string                    `key:"title" example:"Settle"`
	Born    month                     `key:"born"`
	Since   *month                    `key:"since"`
	Leg     leg                       `key:"leg"`
	Legs    []leg                     `key:"legs,lone"`
	Names   []string                  `key:"names"`
	On      unit.Day                  `key:"on"`
	Until   *unit.Day                 `key:"until"`
	Weeks   int                       `key:"weeks" range:"1 12"`
	Floor   *int                      `key:"floor"`
	Ratio   *float64                  `key:"ratio" range:"0.25 8"`
	Heavy   bool                      `key:"heavy"`
	Night   *bool                     `key:"night"`
	Mass    basis.Num[unit.Kilograms] `key:"mass" range:"25 250" ask:"40 160"`
	Pain    basis.Num[unit.Points]    `key:"pain" range:"0 10"`
	Rest    unit.Seconds              `key:"rest"`
	Angle   *unit.Degrees             `key:"angle"`
	Plates  []unit.Kilograms          `key:"plates,list" range:"0.1 60"`
	Range   unit.Reach                `key:"range"`
	AtLeast *mark                     `key:"at_least"`
	Set     load                      `key:"set"`
	Tests   []test                    `key:"test"`
	Setups  map[string]pull           `key:"setup"`
	Presets map[string]string         `key:"presets"`
	Any     []sheet                   `key:"any"`
	Private string
}

func readSheet(t *testing.T, text string) (s sheet, fs Faults) {
	t.Helper()
	fs = TOML("a.toml", []byte(text), &s)
	return s, fs
}

func pounds(n float64) unit.Kilograms { return unit.Kilograms(n * unit.KilogramsPerPound) }

// TestFills holds what is accepted: a row has what the file says and what the struct then holds.
func TestFills(t *testing.T) {
	rows := []struct {
		name, text string
		got        func(s sheet) any
		want       any
	}{
		{"pound becomes kilogram", "mass_lb = 100", func(s sheet) any { return s.Mass.Or(0) }, unit.Kilograms(45.359237)},
		{"typed text keeps the unit", "mass_lb = 100.5", func(s sheet) any { return s.Mass.Step().Typed }, "100.5 lb"},
		{"origin of a plain key", "mass_kg = 64", func(s sheet) any { return s.Mass.Step().At }, basis.Origin{File: "a.toml", Key: "mass_kg"}},
		{"bare quantity", "pain = 0", func(s sheet) any { return s.Pain.OK() && s.Pain.Step().Typed == "0" }, true},
		{"left out is not zero", "", func(s sheet) any { return s.Pain.Why().String() }, "not tested"},
		{"minutes", "rest_min = 1.5", func(s sheet) any { return s.Rest }, unit.Seconds(90)},
		{"pointer quantity", "angle_deg = 0", func(s sheet) any { return *s.Angle }, unit.Degrees(0)},
		{"pointer left out", "", func(s sheet) any { return s.Angle == nil && s.Night == nil && s.Until == nil }, true},
		{"pointer to false", "night = false", func(s sheet) any { return *s.Night }, false},
		{"a list of quantities", "plates_lb = [10, 20.0]", func(s sheet) any { return s.Plates }, []unit.Kilograms{pounds(10), pounds(20)}},
		{"one number for a list", "plates_kg = 5", func(s sheet) any { return s.Plates }, []unit.Kilograms{5}},
		{"one word for a list", `legs = "both"`, func(s sheet) any { return s.Legs }, []leg{"both"}},
		{"an empty list", "names = []", func(s sheet) any { return s.Names != nil && len(s.Names) == 0 }, true},
		{"a whole float where a whole number is wanted", "weeks = 4.0", func(s sheet) any { return s.Weeks }, 4},
		{"a whole number where a float is wanted", "ratio = 2", func(s sheet) any { return *s.Ratio }, 2.0},
		{"a local date", "on = 2026-04-06", func(s sheet) any { return s.On }, unit.Day{Year: 2026, Month: 4, Date: 6}},
		{"leap day", "until = 2028-02-29", func(s sheet) any { return s.Until.String() }, "2028-02-29"},
		{"a range", "range_deg = [-5, 70.5]", func(s sheet) any { return s.Range }, unit.Reach{Straightest: -5, MostBent: 70.5}},
		{"own text", `born = "1998-04"`, func(s sheet) any { return s.Born.text }, "1998-04"},
		{"own text by pointer", `since = "1998-04"`, func(s sheet) any { return s.Since.text }, "1998-04"},
		{"mark with a unit", "at_least_percent = 80", func(s sheet) any { return *s.AtLeast }, mark{n: 80, unit: "%"}},
		{"mark with another unit", "at_least_cm = 12.5", func(s sheet) any { return *s.AtLeast }, mark{n: 0.125, unit: "cm"}},
		{"mark that is a word", `at_least = "trace"`, func(s sheet) any { return *s.AtLeast }, mark{word: "trace"}},
		{"short writing", `set = "60x8"`, func(s sheet) any { return s.Set.text + " at " + s.Set.At.Key }, "60x8 at set"},
		{"long writing", "set.mass_kg = 60\nset.reps = 8", func(s sheet) any { return s.Set.Mass.Step().At.Key }, "set.mass_kg"},
		{"number in a list", "[[test]]\nid = \"x\"\n[[test]]\nid = \"k\"\nleft.peak_kgf = [40, 42.8]", func(s sheet) any {
			step := s.Tests[1].Left.Peak[1].Step()
			return step.Typed + " at " + step.At.Key
		}, "42.8 kgf at test[1].left.peak_kgf[1]"},
		{"lone number has no index", "[[test]]\nid = \"k\"\nleft.peak_n = 331", func(s sheet) any { return s.Tests[0].Left.Peak[0].Step().At.Key }, "test[0].left.peak_n"},
		{"origins of tables", "[[test]]\nid = \"k\"\nright.arm_cm = 31", func(s sheet) any {
			return s.At.Key + "|" + s.Tests[0].Here.Key + "|" + s.Tests[0].Right.At.Key + "|" + s.Tests[0].Left.At.Key
		}, "|test[0]|test[0].right|"},
		{"one base, two quantities", "[[test]]\nid = \"k\"\npart_lb = 10", func(s sheet) any { return s.Tests[0].Part == nil && *s.Tests[0].PartMass == pounds(10) }, true},
		{"outer key wins", "[[test]]\nid = \"k\"", func(s sheet) any { return s.Tests[0].ID + s.Tests[0].Hidden }, "k"},
		{"embedded pointer", "[[test]]\nid = \"k\"\nrange_deg = [0, 70]", func(s sheet) any { return s.Tests[0].Reach.MostBent }, unit.Degrees(70)},
		{"inline list of tables", "any = [ { title = \"a\" }, { weeks = 2 } ]", func(s sheet) any { return s.Any[0].Title + s.Any[1].At.Key }, "aany[1]"},
		{"map of tables", "[setup.knee-extension]\narm_cm = 31", func(s sheet) any { return s.Setups["knee-extension"].Arm.Step().At.Key }, "setup.knee-extension.arm_cm"},
		{"map of texts", "presets = { loaded-bend = \"kngf\" }", func(s sheet) any { return s.Presets["loaded-bend"] }, "kngf"},
		{"a name that looks like a number", "title = 112", func(s sheet) any { return s.Title }, "112"},
		{"CRLF inside a text", "title = \"\"\"a\r\nb\"\"\"\r\n", func(s sheet) any { return s.Title }, "a\nb"},
		{"BOM", "\xef\xbb\xbftitle = \"a\"", func(s sheet) any { return s.Title }, "a"},
		{"4000 characters are enough", "title = \"" + strings.Repeat("é", 4000) + "\"", func(s sheet) any { return len([]rune(s.Title)) }, 4000},
		{"on the bound in another unit", "mass_lb = 551.1556554621939", func(s sheet) any { return s.Mass.OK() }, true},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			s, fs := readSheet(t, r.text)
			if wrong := fs.Wrong(); len(wrong) > 0 {
				t.Fatal(wrong)
			}
			if got := r.got(s); !reflect.DeepEqual(got, r.want) {
				t.Errorf("got %v, want %v", got, r.want)
			}
		})
	}
}

// TestSays pins every message whole: a change of one word is a change of what a therapist reads.
func TestSays(t *testing.T) {
	rows := []struct {
		name, text string
		want       []string
	}{
		// words
		{"swapped letters", `leg = "lfet"`, []string{`a.toml:1: leg "lfet"; write "left", "right" or "both"`}},
		{"nearest first", `leg = "Rihgt"`, []string{`a.toml:1: leg "Rihgt"; write "right", "left" or "both"`}},
		{"word in a list", "legs = [\n\"left\",\n\"bth\"]", []string{`a.toml:3: legs "bth"; write "both", "left" or "right"`}},
		{"word that is a number", "leg = 1", []string{`a.toml:1: leg is a number; write leg = "left", "right" or "both"`}},
		{"empty word", `leg = ""`, []string{`a.toml:1: leg ""; write "left", "right" or "both"`}},

		// units
		{"no unit", "mass = 64", []string{`a.toml:1: mass has no unit; write mass_kg or mass_lb`}},
		{"unknown unit", "mass_st = 10", []string{`a.toml:1: mass_st has an unknown unit; write mass_kg or mass_lb`}},
		{"unit of another quantity", "[[test]]\nid = \"k\"\nleft.peak_kg = 40", []string{`a.toml:3: peak_kg has an unknown unit; write peak_kgf, peak_n or peak_lbf`}},
		{"two units", "mass_kg = 64\nmass_lb = 141", []string{`a.toml:2: two keys for one thing: mass_kg and mass_lb; keep one`}},
		{"two units of a mark", "at_least_cm = 1\nat_least_percent = 2", []string{`a.toml:2: two keys for one thing: at_least_cm and at_least_percent; keep one`}},
		{"base of two quantities", "[[test]]\nid = \"k\"\npart = 20", []string{`a.toml:3: part has no unit; write part_percent, part_kg or part_lb`}},
		{"range without its unit", "range = [0, 70]", []string{`a.toml:1: range has no unit; write range_deg`}},

		// numbers
		{"in quotes", `mass_kg = "64.1"`, []string{`a.toml:1: mass_kg "64.1" is in quotes; write 64.1 without quotes`}},
		{"decimal comma in quotes", `mass_kg = "64,1"`, []string{`a.toml:1: mass_kg "64,1" has a decimal comma and quotes; write 64.1 without quotes`}},
		{"a text", `mass_kg = "heavy"`, []string{`a.toml:1: mass_kg "heavy" is a text; write a number: mass_kg = …`}},
		{"a fraction", "weeks = 4.5", []string{`a.toml:1: weeks 4.5 is not a whole number; write weeks = …, without a fraction`}},
		{"not a number", "mass_kg = nan", []string{`a.toml:1: mass_kg is nan, which is no number; write a number or leave the key out`}},
		{"infinite", "ratio = -inf", []string{`a.toml:1: ratio is -inf, which is no number; write a number or leave the key out`}},
		{"infinite mark", "at_least = inf", []string{`a.toml:1: at_least is inf, which is no number; write a number or leave the key out`}},
		{"true for a number", "mass_kg = true", []string{`a.toml:1: mass_kg is true; write a number: mass_kg = …`}},
		{"outside", "weeks = 60", []string{`a.toml:1: weeks 60 is outside 1 to 12; check the number`}},
		{"outside in another unit", "mass_lb = 600", []string{`a.toml:1: mass_lb 600 is outside 55.1 to 551 lb; check the number`}},
		{"right in another unit", "[[test]]\nid = \"k\"\nleft.arm_cm = 0.31", []string{`a.toml:3: arm_cm 0.31 is outside 5 to 60 cm; check it, or write arm_m if it is in m`}},
		{"unusual, and usual in another unit", "[[test]]\nid = \"k\"\nleft.peak_n = [331, 42]", []string{`a.toml:3: peak_n 42 is unusual, most are 100 to 1500 N; check it, or write peak_kgf if it is in kgf`}},
		{"list item outside", "plates_kg = [\n20,\n200]", []string{`a.toml:3: plates_kg 200 is outside 0.1 to 60 kg; check the number`}},
		{"two numbers wanted", "range_deg = [0]", []string{`a.toml:1: range_deg has 1 number; write straightest and most bent, as in range_deg = [0, 90]`}},
		{"swapped ends", "range_deg = [90, 0.5]", []string{`a.toml:1: range_deg has the more bent end first; write range_deg = [0.5, 90]`}},
		{"no knee bends so far", "range_deg = [0, 170]", []string{`a.toml:1: range_deg 170 is outside -15 to 160°; check the number`}},
		{"one number for a range", "range_deg = 90", []string{`a.toml:1: range_deg is a number; write straightest and most bent, as in range_deg = [0, 90]`}},
		{"text in a range", `range_deg = [0, "90"]`, []string{`a.toml:1: range_deg "90" is in quotes; write 90 without quotes`}},
		{"table for a mark", "at_least = {}", []string{`a.toml:1: at_least is a table; write a number: at_least, at_least_percent or at_least_cm = …`}},
		{"a type's own judgement", `at_least_cm = "trace"`, []string{`a.toml:1: "trace" is a word; write a number`}},

		// days
		{"day in quotes", `on = "2026-04-06"`, []string{`a.toml:1: on "2026-04-06" is in quotes; write on = 2026-04-06 without quotes`}},
		{"no day in quotes", `on = "6 April"`, []string{`a.toml:1: on "6 April" is a text; write year-month-day, as in on = 2026-04-06`}},
		{"day with an hour", "on = 2026-04-06T10:00:00Z", []string{`a.toml:1: on has an hour; write the day alone: on = 2026-04-06`}},
		{"local day with an hour", "on = 2026-04-06 10:00:00", []string{`a.toml:1: on has an hour; write the day alone: on = 2026-04-06`}},
		{"an hour alone", "on = 10:00:00", []string{`a.toml:1: on is an hour; write year-month-day, as in on = 2026-04-06`}},
		{"the year 206", "on = 0206-04-06", []string{`a.toml:1: on 0206-04-06 is not between 1900 and 2100; check the year`}},
		{"number for a day", "until = 20260406", []string{`a.toml:1: until is a number; write year-month-day, as in until = 2026-04-06`}},

		// keys
		{"misspelt key", `titel = "a"`, []string{`a.toml:1: unknown key titel; did you mean title?`}},
		{"misspelt unit", "mass_gk = 1", []string{`a.toml:1: mass_gk has an unknown unit; write mass_kg or mass_lb`}},
		{"key in another case", "Mass_kg = 64", []string{`a.toml:1: unknown key Mass_kg; did you mean mass_kg?`}},
		{"shared beginning", "set = \"x\"\n[setups.a]", []string{`a.toml:2: unknown key setups; did you mean setup?`}},
		{"nothing like it", "zzz = 1", []string{`a.toml:1: unknown key zzz; possible here: title, born, since, leg, legs, names, on, until, …`}},
		{"few keys possible", "[[test]]\nid = \"a\"\n[test.left]\nzzz = 1", []string{`a.toml:4: unknown key zzz; possible here: peak_n, peak_kgf, peak_lbf, torque_nm, arm_cm, arm_in, arm_m`}},
		{"first of two lists", "[[test]]\nid = 1.5\n[[test]]\nid = \"b\"", []string{`a.toml:2: id is a number; write id = "…"`}},
		{"no id", "[setup.Knee_Extension]\narm_cm = 31", []string{`a.toml:1: "Knee_Extension" is no id; write small letters, digits and single hyphens, as in knee-extension`}},
		{"key of the file below a header", "[[test]]\nid = \"a\"\nheavy = true", []string{`a.toml:3: heavy does not belong to this table; move it up, above the first [header]`}},
		{"key of a table below a header in it", "[[test]]\nleft.arm_cm = 31\n[test.right]\nid = \"a\"", []string{`a.toml:4: id does not belong to this table; move it up, right below the header of test`}},
		{"number too long to show", "mass_kg = 1e300", []string{`a.toml:1: mass_kg 1e+300 is outside 25 to 250 kg; check the number`}},
		{"missing, at its header", "title = \"a\"\n\n[[test]]\nid = \"a\"\n[[test]]\nleft.arm_cm = 31", []string{`a.toml:5: id is missing; write id = "…"`}},
		{"missing and misspelt is one mistake", "[[test]]\nIDs = \"a\"", []string{`a.toml:2: unknown key IDs; did you mean id?`}},
		{"missing in a table of its own", "[set]\nmass_kg = 3", []string{`a.toml:1: reps is missing; write a whole number: reps = …`}},

		// kinds
		{"list for a text", "title = [\"a\"]", []string{`a.toml:1: title is a list; write title = "Settle"`}},
		{"text for a list", "names = \"a\"", []string{`a.toml:1: names is a text; write names = ["…"]`}},
		{"number for yes and no", "heavy = 1", []string{`a.toml:1: heavy is a number; write heavy = true or false`}},
		{"yes in quotes", "heavy = \"true\"", []string{`a.toml:1: heavy is in quotes; write heavy = true`}},
		{"table for a list of tables", "[test]\nid = \"a\"", []string{`a.toml:1: test is a table; write [[test]] before each one`}},
		{"list for a table", "[[setup]]\na = 1", []string{`a.toml:1: setup is a list; write a table [setup]`}},
		{"number for a table", "[[test]]\nid = \"a\"\nleft = 5", []string{`a.toml:3: left is a number; write a table [test.left]`}},
		{"date for a text", "title = 2026-04-06", []string{`a.toml:1: title is a date; write title = "Settle"`}},
		{"own text", `born = "April"`, []string{`a.toml:1: "April" is not a month; write year-month`}},
		{"own text that is none", "born = 1998", []string{`a.toml:1: born is a number; write born = "…"`}},
		{"own short writing", "set = \"\"", []string{`a.toml:1: the set is empty; write 60x8`}},
		{"control character", "title = \"a\\u0007\"", []string{`a.toml:1: title holds the control character U+0007; take it out`}},
		{"4001 characters", "title = \"" + strings.Repeat("é", 4001) + "\"", []string{`a.toml:1: title has 4001 characters; write at most 4000`}},

		// files
		{"not UTF-8", "# ok\ntitle = \"J\xe9r\"", []string{`a.toml:2: this line is not UTF-8 text; save the file as UTF-8`}},
		{"too long", strings.Repeat("#\n", 1<<19) + "\n", []string{`a.toml: the file is longer than 1 MiB; split it, or remove what does not belong here`}},
		{"too deep in brackets", "a = 1\nb = " + strings.Repeat("[", 1<<19), []string{`a.toml:2: more than 20 tables or lists inside one another; write it flatter`}},
		{"too deep in points", "a" + strings.Repeat(".a", 1<<18) + " = 1", []string{`a.toml:1: more than 20 tables or lists inside one another; write it flatter`}},
		{"too deep by both", "title = \"x\"\n[a.a.a.a.a.a.a.a.a.a]\na.a.a.a.a.a.a.a.a.a.a.a = 1", []string{`a.toml:3: more than 20 tables or lists inside one another; write it flatter`}},
		{"too many values", "a = [" + strings.Repeat("1,", 20_000) + "]", []string{`a.toml: more than 20000 values in one file; split it`}},
		{"all at once, by line", "zzz = 1\nweeks = 40\nleg = \"up\"\nmass_kg = \"64\"", []string{
			`a.toml:1: unknown key zzz; possible here: title, born, since, leg, legs, names, on, until, …`,
			`a.toml:2: weeks 40 is outside 1 to 12; check the number`,
			`a.toml:3: leg "up"; write "left", "right" or "both"`,
			`a.toml:4: mass_kg "64" is in quotes; write 64 without quotes`}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			_, fs := readSheet(t, r.text)
			if got, want := fs.Error(), strings.Join(r.want, "\n"); got != want {
				t.Errorf("\n got %s\nwant %s", got, want)
			}
		})
	}
}

// TestSyntax pins what is said of files that are not TOML.
func TestSyntax(t *testing.T) {
	rows := []struct{ name, text, want string }{
		{"decimal comma", "a = 1\nmass_kg = 12,5", `a.toml:2: mass_kg has a decimal comma; write mass_kg = 12.5`},
		{"two numbers", "pain_worst = 2-3", `a.toml:1: pain_worst has two numbers; write one, or pain_worst = [2, 3] where a range is asked for`},
		{"grade without quotes", "effusion = 1+", `a.toml:1: effusion is a word and stands without quotes; write effusion = "1+"`},
		{"unit behind the number", "mass_kg = 64 kg", `a.toml:1: mass_kg has a unit behind its number; write the number alone, with digits only, and the unit in the key`},
		{"no quotes", "leg = left # the sore one", `a.toml:1: leg has no quotes; write leg = "left"`},
		{"several words without quotes", "goal = Play handball again", `a.toml:1: goal has no quotes; write goal = "Play handball again"`},
		{"capital yes", "heavy = True", `a.toml:1: heavy = True; write heavy = true`},
		{"curly quotes", "leg = “left”", `a.toml:1: curly quotation marks; write straight ones: "…"`},
		{"leading zero", "weeks = 04", `a.toml:1: weeks begins with a zero; write weeks = "04" if it is a telephone number or a name, else weeks = 4`},
		{"leading point", "ratio = .5", `a.toml:1: ratio begins with a point; write ratio = 0.5`},
		{"trailing point", "ratio = 5.", `a.toml:1: ratio ends with a point; write ratio = 5`},
		{"month without quotes", "born = 1998-04", `a.toml:1: 1998-04 is no day; write year-month-day, as in 2026-04-06, or put it in quotes if it is a text`},
		{"day written another way", "on = 6.4.2026", `a.toml:1: 6.4.2026 is no day; write year-month-day, as in 2026-04-06, or put it in quotes if it is a text`},
		{"30 February", "on = 2026-02-30", `a.toml:1: 2026-02-30 is not in the calendar; check the day`},
		{"no value", "a = 1\nmass_kg =\nb = 2", `a.toml:2: mass_kg has no value; write a value, or take the line out`},
		{"colon", "mass_kg: 64", `a.toml:1: mass_kg is followed by a colon; write mass_kg = 64`},
		{"colon before a word", "by: imbali", `a.toml:1: by is followed by a colon; write by = "imbali"`},
		{"key with spaces", "pain worst = 2", `a.toml:1: key with spaces: pain worst; write it with underscores or hyphens`},
		{"word alone", "left", `a.toml:1: a word alone; write key = value`},
		{"foreign comment", "// note\na = 1", `a.toml:1: // is no comment; begin a comment with #`},
		{"twice", "a = 1\nb = 2\na = 3", `a.toml:3: a stands twice; keep one`},
		{"table twice", "[a]\nb = 1\n[a]\nc = 1", `a.toml:3: a stands twice; keep one`},
		{"list and table", "[a]\nb = 1\n[[a]]\nb = 1", `a.toml:3: a is written in two ways; write [[a]] before each one, and nothing else`},
		{"value and table", "a = 1\n[a.b]\nc = 1", `a.toml:2: a has a value and cannot be a table too; keep one`},
		{"text not closed", "title = \"a\nb = 1", `a.toml:1: a text that does not end on its line; close it with a quotation mark`},
		{"long text not closed", "title = \"\"\"a\nb = 1\n", `a.toml:1: the text of title does not end; close it with """`},
		{"key that cannot be shown", "\"a\\nb\" = '''x\n", `a.toml:1: the text of "a\nb" does not end; close it with '''`},
		{"list not closed", "a = [1,\n2\nb = 3", `a.toml:3: the list a is not closed, or a comma is missing in it; put a comma between the values and ] after the last`},
		{"list not closed before a word", "a = [1,\n2\nheavy = true", `a.toml:3: the list a is not closed, or a comma is missing in it; put a comma between the values and ] after the last`},
		{"braces not closed", "a = {b = 1 c = 2}", `a.toml:1: the table in braces of a.b is not closed, or a comma is missing in it; put a comma between the keys and } after the last`},
		{"long text in a list of tables", "[[a]]\nb = 1\n[[a]]\nb = '''x\n\n\n", `a.toml:4: the text of a.b does not end; close it with '''`},
		{"header not closed", "[a\nb = 1", `a.toml:1: a header that is not closed, or a name with a space; write [name]`},
		{"windows path", `a = "C:\Users"`, `a.toml:1: a backslash \ that means nothing here; write \\, or put the text in single quotes`},
		{"control character", "a = 1\nb = \"\x01\"", `a.toml:2: a control character that cannot be seen; take it out`},
		{"too large", "a = 99999999999999999999", `a.toml:1: a number that is too large; check the number`},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			_, fs := readSheet(t, r.text)
			if got := fs.Error(); got != r.want {
				t.Errorf("\n got %s\nwant %s", got, r.want)
			}
		})
	}
}

func TestManyFaultsAreCounted(t *testing.T) {
	var b strings.Builder
	for i := range 250 {
		fmt.Fprintf(&b, "zz%d = 1\n", i)
	}
	_, fs := readSheet(t, b.String())
	if len(fs) != maxFaults+1 || fs[maxFaults].Error() != "a.toml:201: and 50 more from here on" {
		t.Errorf("%d faults, the last %v", len(fs), fs[len(fs)-1])
	}
}

func TestDeclaredAndRequired(t *testing.T) {
	type exercise struct {
		Kinds  []string                  `key:"kinds,declared"`
		Trains []string                  `key:"trains,required,lone" example:"quadriceps"`
		Title  string                    `key:"title,required"`
		Leg    leg                       `key:"leg,required"`
		On     unit.Day                  `key:"on,required"`
		Mass   basis.Num[unit.Kilograms] `key:"mass,required"`
		Tests  []test                    `key:"test,required"`
		Rest   []unit.Seconds            `key:"rest,required,list"`
		Legs   []leg                     `key:"legs,required"`
		Range  unit.Reach                `key:"range,required"`
		Heavy  bool                      `key:"heavy,required"`
		Left   pull                      `key:"left,required"`
	}
	var e exercise
	got := TOML("e.toml", []byte("trains = []\ntitle = \"\"\n"), &e).Error()
	want := `e.toml:1: heavy is missing; write heavy = true or false
e.toml:1: kinds is missing; write kinds = [] if there is none
e.toml:1: left is missing; write a table [left]
e.toml:1: leg is missing; write leg = "left", "right" or "both"
e.toml:1: legs is missing; write a list: legs = ["left", "right" or "both"]
e.toml:1: mass_kg or mass_lb is missing; write a number: mass_kg or mass_lb = …
e.toml:1: on is missing; write year-month-day, as in on = 2026-04-06
e.toml:1: range_deg is missing; write straightest and most bent, as in range_deg = [0, 90]
e.toml:1: rest_s or rest_min is missing; write a list of numbers: rest_s or rest_min = [ … ]
e.toml:1: test is missing; write [[test]] before each one
e.toml:1: trains is empty; write trains = ["quadriceps"]
e.toml:2: title is empty; write title = "…"`
	if got != want {
		t.Errorf("\n got %s\nwant %s", got, want)
	}
}

func TestRootMap(t *testing.T) {
	type entry struct {
		At    basis.Origin
		Title string `key:"title,required"`
	}
	var all map[string]entry
	fs := TOML("sources.toml", []byte("[kngf-2014]\ntitle = \"a\"\n[delaware]\n"), &all)
	if got, want := fs.Error(), `sources.toml:3: title is missing; write title = "…"`; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
	if all["kngf-2014"] != (entry{basis.Origin{File: "sources.toml", Key: "kngf-2014"}, "a"}) {
		t.Errorf("got %+v", all)
	}
}

func TestFillNamesThePlaceOfACell(t *testing.T) {
	origin := func(path string) basis.Origin { return basis.Origin{File: "days/1.csv", Line: 7, Key: "col " + path} }
	var s sheet
	fs := Fill(map[string]any{"mass_kg": int64(500), "pain": 2.0}, origin, &s)
	if got, want := fs.Error(), "days/1.csv:7: mass_kg 500 is outside 25 to 250 kg; check the number"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
	if at := s.Pain.Step().At; at != origin("pain") {
		t.Errorf("pain stands at %+v", at)
	}
}

// TestBadTags: a tag that means nothing must not wait for a therapist to find it.
func TestBadTags(t *testing.T) {
	for name, read := range map[string]func(){
		"unknown option": func() {
			TOML("a", nil, &struct {
				A string `key:"a,requierd"`
			}{})
		},
		"unknown type": func() {
			TOML("a", nil, &struct {
				A chan int `key:"a"`
			}{})
		},
		"unexported field": func() {
			TOML("a", nil, &struct {
				a string `key:"a"`
			}{})
		},
		"swapped bounds": func() {
			TOML("a", nil, &struct {
				A int `key:"a" range:"3 1"`
			}{})
		},
		"no struct": func() { TOML("a", nil, new(int)) },
	} {
		t.Run(name, func(t *testing.T) {
			defer func() {
				if recover() == nil {
					t.Error("taken in silence")
				}
			}()
			read()
		})
	}
}
