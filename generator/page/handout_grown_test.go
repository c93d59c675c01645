package page

import (
	"regexp"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// What grew out of the plan: the other leg's limits, both knees, young clients, ladders, goals, steps of sport, places.

func TestGrownPagesRead(t *testing.T) {
	p, w := samplePrinter(t), sampleWords(t)
	for name, rows := range map[string][]struct {
		says bool
		text string
		why  string
	}{
		"donor": {
			{true, "**Back of the thigh, RIGHT leg** Pull your heel back without any weight only.", "the other leg's limit carries its name"},
			{true, "- **Bending** With weight on your leg, bend only to 70°", "the event's knee needs none"},
			{true, "Work for the back of the thigh, RIGHT leg: this limit may end", "nor do dates pass it off as the event's"},
			{true, "May change, not before this day: With weight on your leg, bend only to 90°", "what holds from then"},
			{true, "RIGHT leg (gave the graft)", "the donor's box"},
		},
		"both": {
			{true, "# BOTH knees: your plan", "the head says both"},
			{true, "- **Walking** On crutches, put at most 20 kg on your legs.", "what is the same for both stands once"},
			{false, "**Walking, ", "and needs no name"},
			{true, "One step at a time, and hold the rail.", "no leg goes first"},
			{true, "hard work is paused for your knees", "symptoms speak of both"},
			{true, "RIGHT leg (operated)", ""}, {true, "LEFT leg (operated)", ""},
			{false, "your BOTH", "BOTH knees is for headings"},
		},
		"young": {
			{true, "- **Also for** mother", "the guardian reads too"},
			{true, "## Read together", "and signs"},
			{true, "You are under 18.", ""},
			{true, "RIGHT leg (operated too)", "a second operated leg"},
			{true, "**Level 1:** *Outdoors:* Jog the straights, walk the curves. 8 laps. *Treadmill:* Walk 160 m, jog 160 m. 10 times.", "a rung, both ways"},
			{true, "**Level 2:** Jog all the way. 8 laps.", "a rung that is the same indoors"},
			{true, "**begin on level 2 · 1 time**", "where to begin"},
			{true, "**Weeks 2 to 4:** up to the level that you have earned · 1 time.", "then by its own rule"},
			{true, "**3 × 6 landings**", "sets of landings"},
			{true, "- **How long** About 40 to 55 min each time.", ""},
			{true, "- **Session A (about 40 min)**", ""},
			{true, "Only in weeks 1, 2 and 4.", "at home"},
			{true, "Only in week 3, at Hotel Kestrel.", "away"},
			{true, "You are away (Hotel Kestrel, 20 April to 24 April). Do the boxes for that place all week. Emergency there: [**112**](tel:112)", "its own number"},
			{true, "Part of training. Contact. A whole match. [What is still missing](#dates)", "the steps of sport by name: their days stand among the dates"},
			{false, "- **Contact** Not", ""},
			{true, "Contact, A whole match: not before this day.", "one date for both"},
			{true, "## Goals for your LEFT knee", ""},
			{true, "- **Straight (0°)** Planned for Mon 9 February 2026. Tell us at your next visit.", "late, said calmly"},
			{true, "- **Bend to 120° (well past a right angle)** Usual around Mon 4 May 2026. Later is no failure.", "a day is no promise (rule 18)"},
			{true, "- **A strong front of the thigh** Planned for Mon 30 March 2026. We look at it together at your next visit.", "no percentage"},
			{false, "Little or no swelling", "what is reached is not listed"},
		},
		"clock": {
			{true, "**6 rounds: 1 min hard, then 2 min easy**", "rounds"},
			{true, "hard is effort 7 of 10 (10 is the hardest)", "of the hard part"},
			{false, "rest 2 min", "the easy part is no rest besides"},
			{true, "**20 min**", ""}, {true, "go so that you can still talk in whole sentences", "the talk test"},
			{true, "**3 × 30 s**", "sets of some seconds"}, {true, "effort 4 of 10 (10 is the hardest) · rest 30 s", ""},
			{true, "**90 s**", "once"}, {true, "go so that you can only say a few words", ""},
			{true, "This is a lighter week. You do less on purpose.", "week 7 of the phase is in the block"},
			{true, "- **Riding at ease** A calm ride helps the knee. So part of it is easy.", "the note in short"},
			{true, "- The kneecap sits at the side.\n- ", "first in its level"},
			{true, "- A pop in your knee", "and it takes none away"},
			{true, "- **Next tests** They are due now. Ask us for a day.", "30 March is before the block"},
			{true, "Not before Mon 1 June 2026. Still missing: ", "the end waits"}, {false, "Keep on riding", "so its words are not said"},
			{true, "Only your physiotherapist ends the program.", ""},
		},
		"touch": {
			{true, "On crutches, let your RIGHT leg touch the floor only lightly, to keep your balance. Put at most 10 kg on it.", "touch"},
			{true, "Wear your brace. It is set to bend from 0° to 60°. Wear it all day. You may take it off in bed at night.", ""},
			{true, "Hold the rail and a crutch. Up: LEFT leg first. Down: RIGHT leg first.", "stairs"},
			{true, "Do not drive until your doctor or physiotherapist", ""},
			{true, "RIGHT leg (injured knee)", ""},
			{true, "watch your calf and your breath most", ""},
			{false, "wound", "there is none"},
			{false, "surgeon and", "nor a surgeon"},
			{false, "operat", "nor an operation"},
		},
	} {
		md := strings.ReplaceAll(string(printed(t, p.Markdown, Handout(samples()[name], w))), "\u00a0", " ")
		for _, row := range rows {
			if strings.Contains(md, row.text) != row.says {
				t.Errorf("%s: says %q: %v; %s", name, row.text, !row.says, row.why)
			}
		}
		if t.Failed() {
			t.Log(md)
			return
		}
	}
}

// TestHeldPagesOfAllSamples: the page of a pause can be made of every plan, and both printers say the same.
func TestHeldPagesOfAllSamples(t *testing.T) {
	p, w := samplePrinter(t), sampleWords(t)
	for name, made := range samples() {
		made.Symptoms = plan.Symptoms{Action: plan.Pause, Signals: []plan.Signal{{Action: plan.Pause, Code: "hold"}}, Held: &client.Hold{From: made.AsOf, By: "imbali", Reason: "pain"}}
		v := Hold(made, w)
		lawHolds(t, p, v)
		if md := string(printed(t, p.Markdown, v)); strings.ContainsAny(md, "‹{") || strings.Contains(md, "your BOTH") {
			t.Errorf("%s:\n%s", name, md)
		}
	}
}

func TestWeightBearingAndBrace(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	touch, half, little, yes, no := unit.Percent(10), unit.Percent(50), unit.Kilograms(6), true, false
	for _, tt := range []struct {
		kind  unit.Kind
		allow unit.Allowance
		want  string
	}{
		{unit.WeightBearing, unit.Allowance{Part: &touch}, "On crutches, let your LEFT leg touch the floor only lightly, to keep your balance."},
		{unit.WeightBearing, unit.Allowance{Part: &half, PartMass: &little}, "On crutches, put at most 6 kg on your LEFT leg. Try it on a bathroom scale."},
		{unit.Brace, unit.Allowance{Locked: deg(0)}, "Wear your brace locked straight (0°). Keep it on at night too, until you are told when to take it off."},
		{unit.Brace, unit.Allowance{Locked: deg(20), Night: &yes}, "Wear your brace locked at 20° (a soft bend). Wear it day and night. Take it off only as you were shown."},
		{unit.Brace, unit.Allowance{Range: reach(0, 30), Night: &no}, "Wear your brace. It is set to bend from 0° to 30°. Wear it all day. You may take it off in bed at night."},
		{unit.LoadedBend, unit.Allowance{Range: reach(0, 30), BothOnly: true}, "With weight on your leg, bend only to 30° (a soft bend). Do it on both legs, never on one alone."},
	} {
		if got := strings.ReplaceAll(h.allows(unit.Left, tt.kind, nil, tt.allow), "\u00a0", " "); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.kind, got, tt.want)
		}
	}
	closed := ban{topic: "walking", side: unit.Left, allow: unit.Allowance{Allowed: &no}}
	if got := h.stairs(closed); !strings.Contains(got, "no weight on your LEFT leg") {
		t.Errorf("stairs without weight: %q", got)
	}
}

// TestEveryLimitReadsForBothLegs: no kind of limit trips over two legs or over the other one.
func TestEveryLimitReadsForBothLegs(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	no := false
	for _, side := range []unit.Side{unit.Left, unit.Right, unit.Both} {
		for _, k := range unit.Kind("").Words() {
			says := h.allows(side, unit.Kind(k), nil, unit.Allowance{Allowed: &no})
			if k == string(unit.Brace) {
				continue // a brace that is not allowed is no sentence of ours
			}
			if says == "" || strings.ContainsAny(says, "{‹") || side == unit.Both && regexp.MustCompile(`LEFT|RIGHT|BOTH`).MatchString(says) {
				t.Errorf("%s, %s: %q", side, k, says)
			}
		}
	}
}

func TestGrownWorksheet(t *testing.T) {
	p := deskPlan()
	p.Client.Born, p.Client.Guardian, p.Client.OtherLeg = client.Month{Year: 2012, Month: 1}, "father", unit.Donor
	p.Symptoms.Held = &client.Hold{From: testDay, By: "imbali", Reason: "swelling: after a walk"}
	p.Goals = []plan.GoalState{{Goal: &program.Goal{Measure: "effusion", Tell: "surgeon", Standing: unit.ToolDefault, Source: "delaware-2012"}, Mark: program.Mark{Grade: unit.GradeZero}, Sense: "at most",
		By: civil("2026-02-23"), State: "late", Found: p.Found.Measures["effusion"].Value, On: testDay}}
	p.Minutes = map[string]int{"a": 45}
	p.Prescriptions[0].Weeks[0].Implied = basis.Given("leg-press-single.left.w1.implied-reserve", basis.Rule{Name: "x"}, unit.Count(-1.8e-15), "")
	p.Prescriptions[0].Weeks[1].Implied = basis.Given("leg-press-single.left.w2.implied-reserve", basis.Rule{Name: "x"}, unit.Count(2.36), "")
	text := said(Worksheet(p, deskWords(t)))
	for _, row := range []struct{ want, why string }{
		{"Pause called: from Mon 6 April 2026 by Imbali R., physiotherapist, PT-0000: swelling: after a walk", "who, when, why"},
		{"effusion | trace | at most zero | Mon 23 February | LATE | surgeon | delaware-2012, tool default", "a goal"},
		{"right (gave the graft)", "the donor by its role"},
		{"a (about 45 min)", "length of a session"},
		{"| 71.4286 % | 0\n", "no dust, no negative zero"},
		{"| 71.4286 % | 2.3\n", "a tenth, never above what it is"},
		{"read together with father", "the guardian signs"},
	} {
		if !strings.Contains(text, row.want) {
			t.Errorf("the worksheet does not say %q: %s", row.want, row.why)
		}
	}
	if t.Failed() {
		t.Log(text)
	}
	data := string(PlanJSON(p))
	for _, want := range []string{`"id": "effusion",
      "state": "late",
      "found": "trace",
      "sense": "at most",
      "wanted": "zero",`, `"tell": "surgeon"`, `"minutes": {
    "a": 45
  }`, `"held": {`, `"side": "right"`} {
		if !strings.Contains(data, want) {
			t.Errorf("plan.json lacks %s", want)
		}
	}
}

// TestWhyOfACriterion: a criterion says what was found and wanted, and where the found value comes from.
func TestWhyOfACriterion(t *testing.T) {
	p := deskPlan()
	text, ok := WhyText(p, "running.knee-extension.lsi", nil)
	for _, want := range []string{"running.knee-extension.lsi — met\n", "  found 80.7 %\n", "  wanted at least 80 %\n", "  tested on 2026-04-06\n", "  near yes\n", "  rule delaware-2012, second-hand\n",
		"knee-extension.lsi = down(", "331 N — clients/tern-04/tests/2026-04-06.toml, strength[0].left.peak_n[1]\n"} {
		if !ok || !strings.Contains(text, want) {
			t.Errorf("%q is missing:\n%s", want, text)
		}
	}
	if text, ok := WhyText(p, "running.any-4", nil); !ok || !strings.Contains(text, "one of running.hop-single.lsi: not tested; at least 80 %") {
		t.Errorf("any-of:\n%s", text)
	}
	if text, ok := WhyText(p, "running.quads-lag", nil); !ok || !strings.Contains(text, "waived by imbali: measured by hand") {
		t.Errorf("waived:\n%s", text)
	}
	if all, _ := WhyText(p, "", nil); !strings.Contains(all, "run.flexion.percent-of-other") || !strings.Contains(all, "  out of date; at least 95 %\n") {
		t.Errorf("the list of ids:\n%s", all)
	}
	if data, ok := WhyJSON(p, "running.knee-extension.lsi", nil); !ok || !strings.Contains(string(data), `"criterion": {`) || !strings.Contains(string(data), `"knee-extension.left.torque": {`) {
		t.Errorf("%s", data)
	}
}
