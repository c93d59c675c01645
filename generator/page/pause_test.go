package page

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// pausedSample is the sample of four weeks with a pause of the whole page.
func pausedSample() *plan.Plan {
	p := samplePlan()
	p.Symptoms = plan.Symptoms{Action: plan.Pause, Level: "block", Signals: []plan.Signal{{Action: plan.Pause, Level: "block", Code: "effusion"}}}
	return p
}

func handoutSays(t *testing.T, p *plan.Plan) string {
	t.Helper()
	return strings.ReplaceAll(string(printed(t, samplePrinter(t).Markdown, Handout(p, sampleWords(t)))), "\u00a0", " ")
}

// TestAPausedPageSaysThePause: its headline is not that of the stage, and no later week has a weight (rules 27).
func TestAPausedPageSaysThePause(t *testing.T) {
	const aim, ahead = "Both thighs work hard", "up to "
	hard := handoutSays(t, samplePlan())
	if !strings.Contains(hard, aim) || !strings.Contains(hard, ahead) {
		t.Fatal("the sample has no aim or no ceiling to lose")
	}
	for _, row := range []struct {
		says bool
		text string
		why  string
	}{
		{false, aim, "the headline of the stage"},
		{true, "First let your LEFT knee settle.", "the headline of the pause"},
		{false, "up to 3", "no later week has a dose of its own"},
		{true, "no more than this, until we have looked.", "what later weeks say"},
		{true, "Do no more than the boxes say, in any week, until we have looked.", "above the weeks"},
		{false, "May I go on to the next week?", "nothing is earned"},
		{false, "2 weeks or more: start again", "only the therapist starts again"},
		{false, "Your weights in this block", "a chart of what may not be done"},
		{false, "Too easy? Ask us about", "nothing harder"},
		{true, "A calm day does not end the pause.", "rules 30"},
	} {
		if md := handoutSays(t, pausedSample()); strings.Contains(md, row.text) != row.says {
			t.Errorf("says %q: %v; %s", row.text, !row.says, row.why)
		}
	}
	evening := pausedSample()
	evening.Symptoms.Level, evening.Symptoms.Signals[0].Level = "session", "session"
	if md := handoutSays(t, evening); !strings.Contains(md, ahead) || !strings.Contains(md, "First let your LEFT knee settle.") {
		t.Error("one bad evening pauses the first week, and no more")
	}
}

// TestTheDiaryOfAPauseAsksForNoMore: what the box does not ask for, the diary does not either.
func TestTheDiaryOfAPauseAsksForNoMore(t *testing.T) {
	for _, m := range (handout{pausedSample(), sampleWords(t)}).diary().Moves {
		for _, leg := range m.Legs {
			for _, asked := range leg.Asked[min(1, len(leg.Asked)):] {
				if got, first := asked.As["load"], leg.Asked[0].As["load"]; got != first {
					t.Errorf("%s, week %d: %v, and the box says %v", m.Do, asked.Week, got, first)
				}
			}
		}
	}
}

// TestWhatThePageHas: weights, jumps and runs are spoken of only where the page has them.
func TestWhatThePageHas(t *testing.T) {
	early := sampleEarly()
	early.Symptoms = plan.Symptoms{Action: plan.StepBack, Level: "week", Signals: []plan.Signal{{Action: plan.StepBack, Level: "week", Code: "pain-high"}}}
	early.Activities, early.Block.Weeks = nil, 2
	first := samplePlan()
	first.Client.Blocks = first.Client.Blocks[len(first.Client.Blocks)-1:]
	first.Symptoms = plan.Symptoms{Action: plan.Stay, Level: "week", Signals: []plan.Signal{{Action: plan.Stay, Level: "week", Code: "pain-middle"}}}
	later := samplePlan()
	later.Symptoms = first.Symptoms
	running := sampleYoung()
	for _, row := range []struct {
		name string
		p    *plan.Plan
		has  []string
		not  []string
	}{
		{"no weight, no jump", early, []string{"Do less for now: fewer times.", "Leave out all hard work with that knee for 48 hours.", "Start with fewer times.", "start again with fewer times."},
			[]string{"1 set less", "less weight", "no jumping", "Stay at this weight", "jumping and running", "Jump and run again"}},
		{"weights", samplePlan(), []string{"less weight", "1 set less", "one step less weight", "Leave out weights", "Stay at this weight"}, nil},
		{"a first block", first, []string{"Do as the boxes of week 1 say, and no more.", "Do not go up yet in weight"}, []string{"your last good week, and no more"}},
		{"a later block", later, []string{"Do as much as in your last good week, and no more."}, []string{"boxes of week 1 say"}},
		{"runs and hops", running, []string{"less weight"}, nil},
	} {
		md := handoutSays(t, row.p)
		for _, text := range row.has {
			if !strings.Contains(md, text) {
				t.Errorf("%s: does not say %q", row.name, text)
			}
		}
		for _, text := range row.not {
			if strings.Contains(md, text) {
				t.Errorf("%s: says %q", row.name, text)
			}
		}
	}
}

// TestRunningCountsOnceItWasOpened: what the therapist opened the client does, on the page or not; what is closed nobody does.
func TestRunningCountsOnceItWasOpened(t *testing.T) {
	run := &program.Activity{ID: "running", Kinds: []unit.Kind{unit.Running}}
	for _, row := range []struct {
		state plan.ActivityState
		want  bool
	}{{plan.ActivityState{Activity: run, State: "open", OpenedBy: "imbali"}, true}, {plan.ActivityState{Activity: run, State: "suspended", OpenedBy: "imbali"}, true},
		{plan.ActivityState{Activity: run, State: "closed"}, false}} {
		h := handout{samplePlan(), sampleWords(t)}
		h.Activities = []plan.ActivityState{row.state}
		if got := strings.Contains(h.less(), "no running"); got != row.want || h.has(unit.Running) != row.want {
			t.Errorf("%s: %q", row.state.State, h.less())
		}
	}
}

// TestTheBraceStandsInTheBox: where the leg works, and with what to do where the brace stops before the range does.
func TestTheBraceStandsInTheBox(t *testing.T) {
	w := sampleWords(t)
	for _, row := range []struct {
		name  string
		brace unit.Allowance
		reach *unit.Reach
		kinds []unit.Kind
		want  string
	}{
		{"a lift of the straight leg", unit.Allowance{Locked: deg(0)}, reach(0, 0), []unit.Kind{unit.ActiveBend}, "Keep your brace on, locked straight (0°)."},
		{"no range is said", unit.Allowance{Locked: deg(0)}, nil, []unit.Kind{unit.ActiveBend}, "Keep your brace on, locked straight (0°)."},
		{"locked bent", unit.Allowance{Locked: deg(20)}, reach(20, 20), []unit.Kind{unit.ActiveBend}, "Keep your brace on, locked at 20° (a soft bend)."},
		{"a slide within the hinge", unit.Allowance{Range: reach(0, 90)}, reach(0, 70), []unit.Kind{unit.PassiveBend}, "Keep your brace on, set from 0° to 90°."},
		{"a slide beyond the hinge", unit.Allowance{Range: reach(0, 60)}, reach(0, 90), []unit.Kind{unit.PassiveBend}, "Your brace stops you before that. Open it or take it off only as you were shown."},
		{"a slide, locked", unit.Allowance{Locked: deg(0)}, reach(0, 90), []unit.Kind{unit.PassiveBend}, "Your brace stops you before that. Open it or take it off only as you were shown."},
		{"a lift to the side", unit.Allowance{Locked: deg(0)}, nil, nil, "Keep your brace on, locked straight (0°)."},
		{"a brace that nobody needs", unit.Allowance{Allowed: new(bool)}, reach(0, 0), []unit.Kind{unit.ActiveBend}, "Keep your brace on, as it was set for you."},
	} {
		h := handout{sampleEarly(), w}
		h.Limits = []plan.Window{{Kind: unit.PassiveBend, Allow: unit.Allowance{Range: reach(30, 40)}, From: h.Block.Starts, SetBy: "program", Wins: true}}
		h.Worn = []plan.Worn{{Side: unit.Right, Allow: row.brace, From: h.Block.Starts, Until: h.Block.Starts.AddWeeks(2)}}
		p := plan.Prescription{Exercise: &program.Exercise{ID: "any", Kinds: row.kinds}, Side: unit.Right}
		d := plan.WeekDose{Week: 1, Starts: h.Block.Starts, Range: row.reach}
		if got := strings.ReplaceAll(h.braceOn(p, d), "\u00a0", " "); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
		p.Side = unit.Left
		if got := h.braceOn(p, d); got != "" {
			t.Errorf("%s: the other leg wears none, and reads %q", row.name, got)
		}
		p.Side, d.Starts = unit.Right, h.Block.Starts.AddWeeks(2)
		if got := h.braceOn(p, d); got != "" {
			t.Errorf("%s: it has lifted, and reads %q", row.name, got)
		}
	}
	trunk := handout{sampleEarly(), w}
	if got := trunk.braceOn(plan.Prescription{Exercise: &program.Exercise{}, Side: unit.Both}, plan.WeekDose{Starts: trunk.Block.Starts}); got != "" {
		t.Errorf("a hold of the trunk reads %q", got)
	}
	if md := handoutSays(t, sampleEarly()); strings.Contains(md, "Bend and straighten it gently") || !strings.Contains(md, "Keep your brace on. Bend and straighten only as you were shown.") {
		t.Error("a knee in a locked brace does not bend freely, in a pause or in a flare")
	}
	if md := handoutSays(t, sampleTouch()); !strings.Contains(md, "You may take it off in bed at night.") {
		t.Error("a brace for the day says when it comes off")
	}
}

// TestGivingWayCallsFromTheBox: an exercise in which the knee bears weight names the call, one of the free foot does not.
func TestGivingWayCallsFromTheBox(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	standing := &program.Exercise{Kinds: []unit.Kind{unit.LoadedBend, unit.WeightBearing}}
	free := &program.Exercise{Kinds: []unit.Kind{unit.StraighteningUnderLoad, unit.AddedWeight}}
	still := &program.Exercise{Kinds: []unit.Kind{unit.ActiveBend}}
	for e, want := range map[*program.Exercise]bool{standing: true, free: false, still: false} {
		if got := strings.Contains(h.gaveWay(e), "call us the same day"); got != want {
			t.Errorf("%v: names the call %v, want %v", e.Kinds, got, want)
		}
	}
}

// TestSchoolSportWaits: until running, jumping and turning are all open, for a client under 18 and for nobody else.
func TestSchoolSportWaits(t *testing.T) {
	const waits, sits = "None until running, jumping and turning are all open.", "Sit on the bus."
	open := func(state string) *plan.Plan {
		p := sampleYoung()
		p.Limits = nil
		p.Activities = nil
		for _, k := range []unit.Kind{unit.Running, unit.Impact, unit.Twisting} {
			p.Activities = append(p.Activities, plan.ActivityState{Activity: &program.Activity{ID: string(k), Title: "Some " + string(k), Kinds: []unit.Kind{k}}, State: "open", OpenedBy: "imbali"})
		}
		p.Activities[2].State = state
		return p
	}
	paused := open("open")
	paused.Symptoms = pausedSample().Symptoms
	early := sampleYoung()
	early.Client.Events[0].Date = early.Block.Starts.AddWeeks(-1)
	for _, row := range []struct {
		name        string
		p           *plan.Plan
		sport, stay bool
		why         string
	}{
		{"nothing is open", sampleYoung(), true, false, "week 12"}, {"all are open", open("open"), false, false, ""},
		{"turning is closed", open("closed"), true, false, "two of three are not enough"}, {"turning is suspended", open("suspended"), true, false, ""},
		{"all open, and a pause", paused, true, false, "a pause closes it"}, {"of age", samplePlan(), false, false, "no school"}, {"week 1", early, true, true, "crutches and stairs"},
	} {
		md := handoutSays(t, row.p)
		if strings.Contains(md, waits) != row.sport || strings.Contains(md, sits) != row.stay {
			t.Errorf("%s: sport waits %v, bus %v (%s)", row.name, strings.Contains(md, waits), strings.Contains(md, sits), row.why)
		}
	}
	if md := handoutSays(t, sampleYoung()); strings.Count(md, "One step at a time, never all on this day.") != 1 {
		t.Error("two steps of sport share 12 November, and one line says that they come one by one")
	}
}

// TestWeaknessAndPainAreTwoFlags: one is of a nerve, the other of the wound or the joint; a foot that cannot be lifted is an emergency.
func TestWeaknessAndPainAreTwoFlags(t *testing.T) {
	md := handoutSays(t, samplePlan())
	_, emergency, _ := strings.Cut(md, "### Emergency")
	emergency, today, _ := strings.Cut(emergency, "### Stop and call the same day")
	if !strings.Contains(emergency, "you cannot move or lift it") {
		t.Error("a foot that cannot be moved or lifted is no emergency")
	}
	for _, flag := range []string{"- Your foot is newly weak\n", "- Pain that medicine does not calm\n"} {
		if !strings.Contains(today, flag) {
			t.Errorf("the same day does not say %q", flag)
		}
	}
}

// TestTheFirstWeeksSpeakOfClots: of feet and medicine after an operation, and only in the first weeks; and until when a weight is
// looked for together.
func TestTheFirstWeeksSpeakOfClots(t *testing.T) {
	const feet, thinners, together = "Move both feet up and down often", "blood thinners too", "do this only together with your physiotherapist"
	find := sampleEarly()
	find.Prescriptions[0].Weeks[0].FindYourWeight = true
	late := samplePlan()
	for _, row := range []struct {
		name   string
		p      *plan.Plan
		clots  bool
		search bool
	}{{"after an operation", find, true, true}, {"after an injury", sampleTouch(), false, false}, {"week 12", late, false, false}} {
		md := handoutSays(t, row.p)
		if strings.Contains(md, feet) != row.clots || strings.Contains(md, thinners) != row.clots || strings.Contains(md, together) != row.search {
			t.Errorf("%s: feet %v, medicine %v, together %v", row.name, strings.Contains(md, feet), strings.Contains(md, thinners), strings.Contains(md, together))
		}
	}
}

// TestAStricterLimitStandsOnThePage: a letter that holds from a day within the block is on the list of what to leave out, and the end
// of the milder limit before it promises nothing.
func TestAStricterLimitStandsOnThePage(t *testing.T) {
	p := samplePlan()
	from := p.Block.Starts.AddDays(9)
	p.Limits = []plan.Window{{Side: unit.Left, Kind: unit.LoadedBend, Allow: unit.Allowance{Range: reach(0, 60)}, From: p.Event.Date, Lifts: p.Block.Starts.AddWeeks(3), SetBy: "program", Wins: true}}
	const milder = "With weight on your leg, bend only to 60°"
	if md := handoutSays(t, p); !strings.Contains(md, milder) || !strings.Contains(md, "May change: not before Mon 27 April 2026") {
		t.Fatalf("the sample has no milder limit with an end")
	}
	p.Dates = append(p.Dates, plan.DateLine{Side: unit.Left, On: from, Kind: "tightens", What: "loaded-bend", Allow: &unit.Allowance{Range: reach(0, 45)}})
	md := handoutSays(t, p)
	for _, want := range []string{milder, "- **Bending** From Wed 15 April 2026 on: With weight on your leg, bend only to 45° (half of a right angle).",
		"- **Wed 15 April 2026** From this day on: With weight on your leg, bend only to 45°"} {
		if !strings.Contains(md, want) {
			t.Errorf("does not say %q", want)
		}
	}
	if strings.Contains(md, "May change: not before Mon 27 April 2026") {
		t.Error("a stricter limit holds by then")
	}
	p.Dates[len(p.Dates)-1].On = p.Block.Starts.AddWeeks(p.Block.Weeks)
	if md := handoutSays(t, p); strings.Contains(md, "- **Bending** From") {
		t.Error("what begins after the block belongs to the next page's list")
	}
}
