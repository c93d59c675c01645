package page

import (
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Every kind of dose, limit and later week, as a client reads it.

func TestDosesReadRight(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	pounds := &client.Device{Kind: "knee-extension-stack", Pounds: true}
	for _, tt := range []struct {
		name string
		dose plan.WeekDose
		on   *client.Device
		want string
	}{
		{"sets and repetitions", plan.WeekDose{Dose: program.Dose{Sets: n(3), Reps: n(10), Reserve: n(2), Rest: sec(120)}}, nil, "3 × 10 · stop when 2 more were possible · rest 2 min"},
		{"a rest that is no whole minute", plan.WeekDose{Dose: program.Dose{Sets: n(3), Reps: n(10), Rest: sec(150)}}, nil, "3 × 10 · rest 2 min 30 s"},
		{"plates on both sides", plan.WeekDose{Dose: program.Dose{Sets: n(3), Reps: n(10)}, Plates: kg(45), PerSide: []unit.Kilograms{20, 2.5}}, &samplePress, "3 × 10 · 22.5 kg on each side"},
		{"a stack", plan.WeekDose{Dose: program.Dose{Sets: n(3), Reps: n(10)}, Plates: kg(17.5)}, &sampleStack, "3 × 10 · 17.5 kg on the stack"},
		{"a stack marked in pounds", plan.WeekDose{Dose: program.Dose{Sets: n(3), Reps: n(10)}, Plates: kg(45 * unit.KilogramsPerPound)}, pounds, "3 × 10 · 45 lb on the stack"},
		{"nothing put on", plan.WeekDose{Dose: program.Dose{Sets: n(3), Reps: n(10)}, Plates: kg(0)}, &samplePress, "3 × 10 · no added weight"},
		{"repetitions held, often", plan.WeekDose{Dose: program.Dose{Reps: n(10), HoldFor: sec(5), TimesADay: n(5)}}, nil, "10 × hold 5 s · 5 times a day"},
		{"sets of held repetitions", plan.WeekDose{Dose: program.Dose{Sets: n(3), Reps: n(10), HoldFor: sec(5)}}, nil, "3 × 10 · hold 5 s each"},
		{"sets held", plan.WeekDose{Dose: program.Dose{Sets: n(3), HoldFor: sec(45)}}, nil, "3 × hold 45 s"},
		{"minutes, once a day", plan.WeekDose{Dose: program.Dose{Minutes: n(10), TimesADay: n(1)}}, nil, "10 min · once a day"},
		{"sets of minutes", plan.WeekDose{Dose: program.Dose{Sets: n(3), Minutes: n(2)}}, nil, "3 × 2 min"},
		{"landings", plan.WeekDose{Dose: program.Dose{Sets: n(3), Reps: n(5), Contacts: n(15)}}, nil, "3 × 5 · 15 landings"},
		{"to the end", plan.WeekDose{Dose: program.Dose{Sets: n(1), Reps: n(20), Reserve: n(0)}}, nil, "1 × 20 · go on until you cannot do one more"},
		{"repetitions alone", plan.WeekDose{Dose: program.Dose{Reps: n(1)}}, nil, "1 time"},
	} {
		p := plan.Prescription{Device: tt.on}
		got := strings.Join(append(h.work(p, tt.dose), h.manner(tt.dose)...), dot)
		if got = strings.ReplaceAll(got, "\u00a0", " "); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestLimitsReadRight(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	no, yes := false, true
	mass, part := unit.Kilograms(20), unit.Percent(50)
	for _, tt := range []struct {
		kind  unit.Kind
		allow unit.Allowance
		want  string
	}{
		{unit.WeightBearing, unit.Allowance{Allowed: &no}, "Put no weight on your LEFT leg. Use your crutches."},
		{unit.WeightBearing, unit.Allowance{PartMass: &mass}, "On crutches, put at most 20 kg on your LEFT leg. Try it on a bathroom scale."},
		{unit.WeightBearing, unit.Allowance{Part: &part}, "On crutches, put only part of your weight on your LEFT leg, as you were shown."},
		{unit.WeightBearing, unit.Allowance{Allowed: &yes}, ""},
		{unit.Brace, unit.Allowance{Range: reach(0, 90), Night: &yes}, "Wear your brace. It is set to bend from 0° to 90°. Wear it day and night. Take it off only as you were shown."},
		{unit.Brace, unit.Allowance{Allowed: &yes}, ""},
		{unit.PassiveBend, unit.Allowance{Range: reach(0, 60)}, "Bend no further than 60° (well short of a right angle), even with help."},
		{unit.LoadedBend, unit.Allowance{Range: reach(10, 60)}, "With weight on your leg, bend only between 10° (nearly straight) and 60° (well short of a right angle)."},
		{unit.LoadedBend, unit.Allowance{Range: reach(90, 60)}, "Do not bend your LEFT knee with weight on your leg."},
		{unit.StraighteningUnderLoad, unit.Allowance{Range: reach(45, 90)}, "With the foot free: straighten your knee only from 90° (a right angle) to 45° (half of a right angle)."},
		{unit.HamstringWork, unit.Allowance{Grade: unit.Active}, "Pull your heel back without any weight only."},
		{unit.HamstringWork, unit.Allowance{Grade: unit.Lengthened}, ""},
		{unit.Impact, unit.Allowance{Allowed: &no}, "No jumping, hopping or landing."},
	} {
		if got := strings.ReplaceAll(h.allows(unit.Left, tt.kind, nil, tt.allow), "\u00a0", " "); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.kind, got, tt.want)
		}
	}
}

// TestTighterLimitSpeaks: of two ranges of one kind that both hold, the page says the one inside the other.
func TestTighterLimitSpeaks(t *testing.T) {
	p := samplePlan()
	p.Limits = append(p.Limits, plan.Window{Kind: unit.LoadedBend, Allow: unit.Allowance{Range: reach(0, 90)}, From: p.Block.Starts, SetBy: "program", Wins: true})
	var said []string
	for _, b := range (handout{p, sampleWords(t)}).bans() {
		if b.kind == unit.LoadedBend {
			said = append(said, b.says)
		}
	}
	if len(said) != 1 || !strings.Contains(said[0], "70°") {
		t.Errorf("%q", said)
	}
}

func TestLaterWeeksReadRight(t *testing.T) {
	p := samplePlan()
	h := handout{p, sampleWords(t)}
	for _, tt := range []struct {
		name string
		box  plan.Prescription
		want string
	}{
		{"a load that grows", p.Prescriptions[1], "Week 2: up to 3 × 10 · 21.25 kg on each side. | Weeks 3 and 4: up to 3 × 10 · 22.5 kg on each side."},
		{"a week without it", p.Prescriptions[2], "Week 2: up to 3 × 12 · 17.5 kg on the stack. | Week 3: leave it out. | Week 4: up to 3 × 12 · 17.5 kg on the stack."},
		{"from week 3 on", p.Prescriptions[3], "Weeks 1 and 2: leave it out. | Week 4: up to 3 × 10 · find your weight."},
		{"all the same", p.Prescriptions[4], ""},
	} {
		var lines []string
		for _, item := range h.later(tt.box, false).Items {
			lines = append(lines, strings.ReplaceAll(textOf(item), "\u00a0", " "))
		}
		if got := strings.Join(lines, " | "); got != tt.want {
			t.Errorf("%s:\n%s\nwant\n%s", tt.name, got, tt.want)
		}
	}
}

// TestNoteKeepsWordsOnly: raw HTML of a therapist's note is dropped, links go to https only, the words stay.
func TestNoteKeepsWordsOnly(t *testing.T) {
	nodes := fromMarkdown("# Hi *Jo*\n\n<script>alert(1)</script>\n\nSee <b>this</b> [page](https://example.org/a) and [that](javascript:x) \\* &amp; `a*b`.\n\n1. one\n   - two\n2. three\n\n> quoted")
	var texts []string
	for _, n := range nodes {
		texts = append(texts, textOf(n.Spans))
		for _, i := range n.Items {
			texts = append(texts, textOf(i))
		}
	}
	want := "Hi Jo|See this page and that * & a*b.||one|two|three|quoted"
	if got := strings.Join(texts, "|"); got != want {
		t.Errorf("%q\nwant %q", got, want)
	}
	for _, s := range nodes[1].Spans {
		if s.Href != "" && s.Href != "https://example.org/a" {
			t.Errorf("a link to %s", s.Href)
		}
	}
}
