package page

import (
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/figure"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
	"paceleaf/programs"
	"paceleaf/templates"
)

// Hand-made plans: no number in them was computed, they only show every shape that a page must print.

func day(s string) unit.Day {
	d, err := unit.ParseDay(s)
	if err != nil {
		panic(err)
	}
	return d
}

func n(i int) *int                        { return &i }
func sec(s unit.Seconds) *unit.Seconds    { return &s }
func deg(d unit.Degrees) *unit.Degrees    { return &d }
func reach(a, b unit.Degrees) *unit.Reach { return &unit.Reach{Straightest: a, MostBent: b} }
func kg(k unit.Kilograms) basis.Num[unit.Kilograms] {
	return basis.Given("sample.load", basis.Rule{Name: "sample"}, k, "hand-made")
}

func sampleWords(t testing.TB) *words.Words {
	t.Helper()
	w, faults := words.Load(source.Over(templates.FS), "en-GB")
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	return w
}

func samplePrinter(t testing.TB) *Printer {
	t.Helper()
	p, err := NewPrinter(templates.FS)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

var samplePress = client.Device{ID: "press", Kind: "angled-leg-press", Carriage: kg(45), Plates: []basis.Num[unit.Kilograms]{kg(20), kg(10), kg(5), kg(2.5), kg(1.25)}}
var sampleStack = client.Device{ID: "stack", Kind: "knee-extension-stack", Name: "Knee extension by the window"}

// shippedPose is the pose of an exercise of the library; none where there is no such exercise.
func shippedPose(id string) figure.Pose {
	var e struct {
		Figure figure.Pose `key:"figure"`
	}
	if data, err := programs.FS.ReadFile("exercises/" + id + ".toml"); err == nil {
		source.TOML(id+".toml", data, &e)
	}
	return e.Figure
}

func sampleExercises() map[string]*program.Exercise {
	press := &program.Exercise{ID: "leg-press-single", Title: "Leg press, one leg", Describe: "Lying back, one foot on the plate. The knee bends and straightens.",
		Chain: program.ClosedChain, Side: program.OneLeg, Contraction: []program.Contraction{program.Concentric, program.Eccentric},
		ResistedBy: program.External, Range: reach(0, 90), Lift: 2, Hold: 1, Lower: 3, Harder: "squat",
		Words: program.Words{
			Steps:   []string{"Sit back. Put one foot in the middle of the plate.", "Unlock the sledge with care.", "Let the knee bend slowly, as far as the pin allows.", "Push through the whole foot until the knee is almost straight.", "Lock the sledge after the last time."},
			Cues:    []program.Cue{{Text: "Keep the knee over the second toe."}, {Text: "Straighten fully at the top.", ReachesDeg: deg(0)}, {Text: "Go down to a right angle.", ReachesDeg: deg(90)}},
			Faults:  []string{"The knee falls inward", "The bottom lifts off the seat"},
			Normal:  "A tired, warm thigh. It is gone in an hour.",
			EaseOff: "It aches more than 2 out of 10.",
			Stop:    "It is sharp, catches, or the knee gives way."}}
	extension := &program.Exercise{ID: "knee-extension-machine", Title: "Seated knee extension", Describe: "Seated, pad on the shin. The knee straightens within the allowed range.",
		Chain: program.OpenChain, Side: program.OneLeg, Contraction: []program.Contraction{program.Concentric, program.Eccentric},
		ResistedBy: program.External, Range: reach(0, 90), Lift: 2, Hold: 1, Lower: 3, Easier: "wall-sit",
		Words: program.Words{Steps: []string{"Sit well back. The knee lies in line with the machine's axis.", "Straighten the knee slowly.", "Hold, then lower slowly."},
			Normal: "A strong burn in the front of the thigh.", Stop: "Pain behind the kneecap goes above 2."}}
	curl := &program.Exercise{ID: "leg-curl", Title: "Lying leg curl", Describe: "Lying face down, pad above the heel. The heel comes toward the bottom.",
		Chain: program.OpenChain, Side: program.OneLeg, Contraction: []program.Contraction{program.Concentric}, ResistedBy: program.External, Range: reach(0, 100),
		Words: program.Words{Steps: []string{"Lie face down.", "Pull the heel up slowly.", "Lower it slowly."}}}
	sit := &program.Exercise{ID: "wall-sit", Title: "Wall sit", Describe: "Back against the wall, both knees bent, feet flat.",
		Chain: program.ClosedChain, Side: program.BothLegs, Contraction: []program.Contraction{program.Isometric}, ResistedBy: program.Time, Range: reach(60, 60),
		Words: program.Words{Steps: []string{"Lean your back on the wall.", "Slide down until the knees are bent as the box says.", "Hold. Breathe."}}}
	hop := &program.Exercise{ID: "hop-and-stick", Title: "Hop and stick", Describe: "A small hop forward, landing on the same leg and holding still.",
		Side: program.OneLeg, ResistedBy: program.FootContacts, Contraction: []program.Contraction{program.Stretch},
		Words: program.Words{Steps: []string{"Stand on one leg.", "Hop a foot's length.", "Land softly and hold still."}}}
	squat := &program.Exercise{ID: "squat", Title: "Squat with a bar"}
	all := map[string]*program.Exercise{}
	for _, e := range []*program.Exercise{press, extension, curl, sit, hop, squat} {
		all[e.ID] = e
		e.Figure = shippedPose(e.ID)
	}
	return all
}

// samplePlan is week 12 after an operation of the left knee, four weeks, two sessions in turn.
func samplePlan() *plan.Plan {
	exercises := sampleExercises()
	no, starts := false, day("2026-04-06")
	clinic := &client.Clinic{Name: "Saltmarsh Knee Clinic", Emergency: "999",
		Phones:     []client.Phone{{Who: "Clinic", Number: "020 7946 0000", Hours: "Mon to Fri, 8 to 18"}, {Who: "After hours", Number: "020 7946 0001", Hours: "nights and weekends"}},
		Therapists: []client.Therapist{{ID: "imbali", Name: "Imbali R.", Role: "physiotherapist"}},
		Places:     []client.Place{{ID: "gym", Name: "The gym"}, {ID: "hotel", Name: "Hotel Kestrel"}}}
	visit := day("2026-04-27")
	c := &client.Client{Code: "tern-04", Note: "You have come **far**. Keep the steps small:\n\n- sleep well\n- walk every day\n\nRead [more](https://example.org/knee).",
		Person: client.Person{Called: "Jo", Goal: "Play handball again with my club", OtherLeg: unit.Sound,
			Events: []client.Event{{Kind: client.Operation, Date: day("2026-01-12"), Side: unit.Left}},
			Away:   []client.Away{{From: day("2026-04-20"), Until: day("2026-04-24"), Place: "hotel", Emergency: "112"}}},
		Blocks: []client.Block{{Number: 2, Starts: day("2026-03-09"), Weeks: 4}, {Number: 3, Starts: starts, Weeks: 4, By: "imbali", NextVisit: &visit}}}
	p := &plan.Plan{Clinic: clinic, Client: c, Block: &c.Blocks[1], Event: &c.Events[0], Tool: "0.0.0", AsOf: starts,
		Program: &program.Program{ID: "acl-reconstruction", Exercises: exercises,
			File:    program.File{Sources: []string{"kngf-2014"}},
			Sources: program.Bibliography{"kngf-2014": {By: "Royal Dutch Society for Physical Therapy", Year: 2014, Title: "Rehabilitation after ACL reconstruction"}}},
		Stage: plan.StageState{Set: &program.Phase{ID: "rebuild", Aim: "Both thighs work hard, through the range that is allowed."}, WeeksSince: 12},
		Limits: []plan.Window{
			{Kind: unit.LoadedBend, Allow: unit.Allowance{Range: reach(0, 70)}, From: day("2026-02-02"), Lifts: day("2026-04-20"), SetBy: "surgeon", Name: "Dr Auk", Wins: true},
			{Kind: unit.StraighteningUnderLoad, Allow: unit.Allowance{Range: reach(45, 90)}, From: day("2026-02-02"), Lifts: day("2026-04-27"), SetBy: "program", Wins: true},
			{Kind: unit.HamstringWork, Allow: unit.Allowance{Grade: unit.Resisted}, From: day("2026-03-30"), Lifts: day("2026-05-04"), SetBy: "program", Wins: true},
			{Kind: unit.Running, Allow: unit.Allowance{Allowed: &no}, From: day("2026-01-12"), SetBy: "program", Wins: true},
			{Kind: unit.Kneeling, Allow: unit.Allowance{Allowed: &no}, From: day("2026-01-12"), Lifts: day("2026-07-12"), SetBy: "therapist", Name: "Imbali R.", Wins: true},
		},
		Activities: []plan.ActivityState{{Activity: &program.Activity{ID: "jumping", Title: "Jumping"}, State: "closed", NotBefore: day("2026-06-12"),
			Missing: []string{"jumping.time", "jumping.knee-extension.lsi", "jumping.hop-single.lsi", "jumping.hop-triple.lsi"}}},
		Dates: []plan.DateLine{
			{On: day("2026-04-20"), Kind: "lifts", What: "loaded-bend", SetBy: "surgeon"},
			{On: day("2026-04-20"), Kind: "away"},
			{On: day("2026-04-27"), Kind: "visit"},
			{On: day("2026-05-03"), Kind: "ends"},
			{On: day("2026-06-12"), Kind: "not-before", What: "jumping", Title: "Jumping", Missing: []string{"jumping.time", "jumping.knee-extension.lsi"}},
		},
		Prescriptions: samplePrescriptions(exercises)}
	for i := range 4 {
		from := starts.AddWeeks(i)
		week := plan.Week{Number: i + 1, Starts: from, Ends: from.AddDays(6), SinceEvent: 12 + i, PhaseWeek: 6 + i}
		if i == 2 {
			week.Away = &c.Away[0]
		}
		p.Weeks = append(p.Weeks, week)
		for j, offset := range []int{0, 2, 4} {
			p.Sessions = append(p.Sessions, plan.SessionDay{Day: from.AddDays(offset), Week: i + 1, Session: []string{"a", "b"}[(3*i+j)%2]})
		}
	}
	return p
}

func sampleDoses(starts unit.Day, dose program.Dose, change func(week int, d *plan.WeekDose), weeks ...int) (doses []plan.WeekDose) {
	for _, w := range weeks {
		d := plan.WeekDose{Week: w, Starts: starts.AddWeeks(w - 1), Due: w == 1, Dose: dose}
		change(w, &d)
		doses = append(doses, d)
	}
	return doses
}

func samplePrescriptions(e map[string]*program.Exercise) []plan.Prescription {
	starts := day("2026-04-06")
	press := program.Dose{Sets: n(3), Reps: n(10), Reserve: n(2), Rest: sec(120)}
	setup := &client.Setup{Seat: "4", Back: "2"}
	loads := func(r *unit.Reach, pin int, at unit.Degrees, first unit.Kilograms) func(int, *plan.WeekDose) {
		return func(w int, d *plan.WeekDose) {
			side := first + 1.25*unit.Kilograms(min(w, 3)-1)
			d.Range, d.NearPin, d.PinDeg, d.Plates = r, pin, at, kg(2*side)
			d.PerSide = []unit.Kilograms{20, side - 20}
			if side == 20 {
				d.PerSide = []unit.Kilograms{20}
			}
		}
	}
	extension := func(w int, d *plan.WeekDose) { d.Range, d.Plates = reach(45, 90), kg(17.5) }
	return []plan.Prescription{
		{Exercise: e["leg-press-single"], Side: unit.Right, Role: "other", Device: &samplePress, Setup: setup, Sessions: []string{"a", "b"},
			Weeks: sampleDoses(starts, press, loads(reach(0, 90), 1, 90, 32.5), 1, 2, 3, 4)},
		{Exercise: e["leg-press-single"], Side: unit.Left, Role: "operated", Device: &samplePress, Setup: setup, Sessions: []string{"a", "b"},
			Weeks: sampleDoses(starts, press, loads(reach(0, 70), 3, 60, 20), 1, 2, 3, 4)},
		{Exercise: e["knee-extension-machine"], Side: unit.Left, Role: "operated", Device: &sampleStack, Sessions: []string{"a"},
			Weeks: sampleDoses(starts, program.Dose{Sets: n(3), Reps: n(12), Reserve: n(3), Rest: sec(90)}, extension, 1, 2, 4)},
		{Exercise: e["leg-curl"], Side: unit.Left, Role: "operated", Sessions: []string{"b"},
			Weeks: sampleDoses(starts, press, func(w int, d *plan.WeekDose) { d.FindYourWeight, d.Range = true, reach(0, 90) }, 3, 4)},
		{Exercise: e["wall-sit"], Side: unit.Both, Role: "both", Sessions: []string{"b"},
			Weeks: sampleDoses(starts, program.Dose{Sets: n(3), HoldFor: sec(30), Rest: sec(60), TimesADay: n(1)}, func(w int, d *plan.WeekDose) { d.Range = reach(60, 60) }, 1, 2, 3, 4)},
	}
}

// sampleEarly is week 1 after an operation of the right knee: brace, crutches, small doses many times a day, and a pause.
func sampleEarly() *plan.Plan {
	p := samplePlan()
	no, yes, starts := false, true, p.Block.Starts
	p.Client.Called, p.Client.Note, p.Client.Away = "", "", nil
	p.Client.Events[0].Date, p.Client.Events[0].Side = day("2026-04-01"), unit.Right
	p.Block.Weeks, p.Block.NextVisit, p.Weeks = 1, nil, p.Weeks[:1]
	p.Limits = []plan.Window{
		{Kind: unit.WeightBearing, Allow: unit.Allowance{PartMass: new(unit.Kilograms)}, From: starts, Lifts: starts.AddWeeks(4), SetBy: "surgeon", Name: "Dr Auk", Wins: true},
		{Kind: unit.Brace, Allow: unit.Allowance{Locked: deg(0), Night: &yes}, From: starts, Lifts: starts.AddWeeks(2), SetBy: "surgeon", Name: "Dr Auk", Wins: true},
		{Kind: unit.PassiveBend, Allow: unit.Allowance{Range: reach(0, 90)}, From: starts, SetBy: "program", Wins: true},
		{Kind: unit.HamstringWork, Gap: true, From: starts, SetBy: "program", Wins: true},
		{Kind: unit.Impact, Allow: unit.Allowance{Allowed: &no}, From: starts, SetBy: "program", Wins: true},
	}
	*p.Limits[0].Allow.PartMass = 20
	p.Worn = []plan.Worn{{Side: unit.Right, Allow: p.Limits[1].Allow, From: starts, Until: starts.AddWeeks(2)}}
	p.Sessions = nil
	for i := range 7 {
		p.Sessions = append(p.Sessions, plan.SessionDay{Day: starts.AddDays(i), Week: 1, Session: "a", Title: "Every day", Daily: true})
	}
	squeeze := &program.Exercise{ID: "quad-set", Title: "Thigh squeeze", Describe: "Lying, a small roll under the knee. The thigh tightens.", Contraction: []program.Contraction{program.Isometric},
		Words: program.Words{Steps: []string{"Lie on your back.", "Tighten your thigh.", "Hold."}, Cues: []program.Cue{{Text: "Straighten fully.", ReachesDeg: deg(0)}}}}
	p.Prescriptions = []plan.Prescription{
		{Exercise: squeeze, Side: unit.Right, Role: "operated", Sessions: []string{"a"},
			Weeks: sampleDoses(starts, program.Dose{Reps: n(10), HoldFor: sec(5), TimesADay: n(5)}, func(int, *plan.WeekDose) {}, 1)},
		{Exercise: &program.Exercise{ID: "bike", Title: "Easy cycling", Describe: "On the bike, saddle high."}, Side: unit.Both, Role: "both", Sessions: []string{"a"},
			Weeks: sampleDoses(starts, program.Dose{Minutes: n(10)}, func(int, *plan.WeekDose) {}, 1)},
	}
	p.Symptoms = plan.Symptoms{Action: plan.Contact, Level: "block", Signals: []plan.Signal{{Action: plan.Contact, Code: "effusion"}, {Action: plan.Stay, Code: "pain-middle"}}}
	return p
}

// sampleBare is as little as a plan can be.
func sampleBare() *plan.Plan {
	c := &client.Client{Code: "wren-01", Blocks: []client.Block{{Number: 1, Starts: day("2026-04-06"), Weeks: 2}}}
	return &plan.Plan{Clinic: &client.Clinic{Name: "Saltmarsh", Emergency: "999"}, Client: c, Block: &c.Blocks[0], AsOf: day("2026-04-06")}
}

// sampleDonor is week 12 of a left knee whose graft came from the right leg, which has limits of its own.
func sampleDonor() *plan.Plan {
	p := samplePlan()
	p.Client.OtherLeg = unit.Donor
	p.Client.Events[0].GraftFrom = unit.Right
	for i := range p.Limits {
		p.Limits[i].Side = unit.Left
	}
	p.Limits = append(p.Limits, plan.Window{Side: unit.Right, Kind: unit.HamstringWork, Allow: unit.Allowance{Grade: unit.Active}, From: day("2026-01-12"), Lifts: day("2026-04-27"), SetBy: "program", Wins: true})
	p.Dates = append(p.Dates, plan.DateLine{Side: unit.Right, On: day("2026-04-27"), Kind: "lifts", What: "hamstring-work"},
		plan.DateLine{Side: unit.Left, On: day("2026-04-27"), Kind: "loosens", What: "loaded-bend", Allow: &unit.Allowance{Range: reach(0, 90)}})
	for i := range p.Prescriptions {
		if p.Prescriptions[i].Role == "other" {
			p.Prescriptions[i].Role = "donor"
		}
	}
	return p
}

// sampleBoth is both knees operated on one day: every limit stands for both legs.
func sampleBoth() *plan.Plan {
	p := sampleEarly()
	p.Client.Events[0].Side = unit.Both
	p.Symptoms.Held = &client.Hold{From: p.Block.Starts, By: "imbali", Reason: "swelling: after a walk"}
	limits := p.Limits
	p.Limits = nil
	for _, side := range []unit.Side{unit.Left, unit.Right} {
		for _, l := range limits {
			l.Side = side
			p.Limits = append(p.Limits, l)
		}
		p.Dates = append(p.Dates, plan.DateLine{Side: side, On: day("2026-05-04"), Kind: "lifts", What: "weight-bearing"})
	}
	left := p.Prescriptions[0]
	left.Side = unit.Left
	p.Prescriptions = append(p.Prescriptions, left)
	p.Dropped = []plan.Dropped{{Slot: "squat", Exercise: "wall-sit", Side: unit.Both, Week: 1, Paused: true}, {Slot: "press", Exercise: "leg-press-single", Side: unit.Left, Week: 1, Paused: true}}
	return p
}

// sampleYoung is a girl of 15 with a second knee operated before, a ladder of running, sport in steps, goals.
func sampleYoung() *plan.Plan {
	p := samplePlan()
	p.Client.Born, p.Client.Guardian, p.Client.OtherLeg = client.Month{Year: 2010, Month: 9}, "mother", unit.OperatedToo
	p.Minutes = map[string]int{"a": 40, "b": 55}
	run := &program.Exercise{ID: "running-levels", Title: "Run by levels", Describe: "Walking and jogging by turns.", Side: program.BothLegs, ResistedBy: program.Distance,
		Words:  program.Words{Steps: []string{"Walk until you are warm.", "Do your level once."}, Cues: []program.Cue{{Text: "All done, no more pain? Go up 1 level."}}},
		Levels: []program.Level{{Do: "Jog the straights, walk the curves. 8 laps.", Indoor: "Walk 160 m, jog 160 m. 10 times."}, {Do: "Jog all the way. 8 laps."}}}
	starts := p.Block.Starts
	p.Prescriptions = append(p.Prescriptions,
		plan.Prescription{Exercise: run, Side: unit.Both, Role: "both", Level: 2, Sessions: []string{"a"}, Weeks: sampleDoses(starts, program.Dose{Reps: n(1)}, func(int, *plan.WeekDose) {}, 1, 2, 3, 4)},
		plan.Prescription{Exercise: sampleExercises()["hop-and-stick"], Side: unit.Right, Role: "operated", Sessions: []string{"b"},
			Weeks: sampleDoses(starts, program.Dose{Sets: n(3), Contacts: n(6), Rest: sec(60)}, func(int, *plan.WeekDose) {}, 1, 2, 4)},
		plan.Prescription{Exercise: sampleExercises()["hop-and-stick"], Side: unit.Right, Role: "operated", Sessions: []string{"b"}, Device: &samplePress,
			Weeks: sampleDoses(starts, program.Dose{Sets: n(2), Contacts: n(4)}, func(int, *plan.WeekDose) {}, 3)})
	step := func(id, title, from string) plan.ActivityState {
		return plan.ActivityState{Activity: &program.Activity{ID: id, Title: title, Sport: true}, State: "closed", NotBefore: day(from), Missing: []string{id + ".time", id + ".hop-single.lsi"}}
	}
	p.Activities = append(p.Activities, step("part-training", "Part of training", "2026-10-12"), step("contact", "Contact", "2026-11-12"), step("match", "A whole match", "2026-11-12"))
	for _, a := range p.Activities[1:] {
		p.Dates = append(p.Dates, plan.DateLine{On: a.NotBefore, Kind: "not-before", What: a.Activity.ID, Title: a.Activity.Title, Missing: a.Missing})
	}
	goal := func(measure, state, by string, tell program.Tell, mark program.Mark, sense string) plan.GoalState {
		return plan.GoalState{Goal: &program.Goal{Measure: measure, Tell: tell, Standing: unit.ToolDefault}, Mark: mark, Sense: sense, State: state, By: day(by)}
	}
	p.Goals = []plan.GoalState{goal("extension", "late", "2026-02-09", "surgeon", program.Mark{Unit: "°"}, "at most"), goal("flexion", "not yet", "2026-05-04", "", program.Mark{Number: 120, Unit: "°"}, "at least"),
		goal("effusion", "reached", "2026-03-02", "", program.Mark{Grade: unit.GradeTrace}, "at most"), goal("quads-lag", "not tested", "2026-03-02", "", program.Mark{Unit: "°"}, "at most"),
		goal("knee-extension.lsi", "late", "2026-03-30", "", program.Mark{Number: 70, Unit: "%"}, "at least"), goal("lefs", "not yet", "2026-05-04", "", program.Mark{Number: 60}, "at least")}
	return p
}

// sampleTouch is week 1 after an injury, with no operation: a foot that may only touch the floor, a brace off at night.
func sampleTouch() *plan.Plan {
	p := sampleEarly()
	no := false
	p.Client.Events[0].Kind = client.Injury
	part, mass := unit.Percent(15), unit.Kilograms(10)
	p.Limits[0].Allow = unit.Allowance{Part: &part, PartMass: &mass}
	p.Limits[1].Allow = unit.Allowance{Range: reach(0, 60), Night: &no}
	p.Worn[0].Allow = p.Limits[1].Allow
	for i := range p.Prescriptions {
		if p.Prescriptions[i].Role == "operated" {
			p.Prescriptions[i].Role = "index"
		}
	}
	return p
}

// sampleClock has doses by the clock, a lighter week, a note, a reason to stop, a measurement that is due and the end of a program.
func sampleClock() *plan.Plan {
	p, e := samplePlan(), sampleExercises()
	p.Stage.Set = &program.Phase{ID: "ride", Aim: "Less pain, more go.", Notes: []string{"why"}, Deloads: []program.Deload{{Weeks: []int{7}, SetsPercent: 60, LoadPercent: 90, Standing: unit.CommonPractice}}}
	p.Program.Notes = []*program.Note{{ID: "why", Title: "Riding at ease", Short: "A calm ride helps the knee. So part of it is easy."}}
	p.Program.Stops = []program.Stop{{Urgency: program.Today, Says: "The kneecap sits at the side."}}
	p.Program.End = &program.End{Says: "Keep on riding.", Standing: unit.ToolDefault}
	p.End = &plan.EndState{Criteria: []plan.Criterion{{ID: "end.pain", Of: "end", Measure: "pain", State: plan.NotTested}}, Missing: []string{"end.pain", "end.time"}, NotBefore: day("2026-06-01")}
	p.Retest = &plan.Retest{EveryWeeks: 6, Due: day("2026-03-30")}
	hard := program.Dose{Rounds: n(6), WorkFor: sec(60), Rest: sec(120), Effort: n(7)}
	p.Prescriptions = nil
	for _, dose := range []program.Dose{hard, {Minutes: n(20), Talk: program.WholeSentences}, {Sets: n(3), WorkFor: sec(30), Rest: sec(30), Effort: n(4)}, {WorkFor: sec(90), Talk: program.FewWords}} {
		p.Prescriptions = append(p.Prescriptions, plan.Prescription{Exercise: e["wall-sit"], Side: unit.Both, Role: "both", Sessions: []string{"a"},
			Weeks: sampleDoses(p.Block.Starts, dose, func(int, *plan.WeekDose) {}, 1, 2, 3, 4)})
	}
	return p
}

func samples() map[string]*plan.Plan {
	step := samplePlan()
	step.Symptoms = plan.Symptoms{Action: plan.StepBack, Level: "exercise", Exercises: []string{"leg-press-single"}}
	hop := samplePlan()
	hop.Client.Events[0].Kind, hop.Client.Events[0].Side = client.Injury, unit.Right
	hop.Prescriptions = []plan.Prescription{{Exercise: sampleExercises()["hop-and-stick"], Side: unit.Right, Role: "index", Sessions: []string{"a"},
		Weeks: sampleDoses(hop.Block.Starts, program.Dose{Sets: n(3), Reps: n(5), Contacts: n(15), Reserve: n(0)}, func(int, *plan.WeekDose) {}, 1, 2, 3, 4)}}
	return map[string]*plan.Plan{"later": samplePlan(), "early": sampleEarly(), "bare": sampleBare(), "step-back": step, "hop": hop,
		"donor": sampleDonor(), "both": sampleBoth(), "young": sampleYoung(), "touch": sampleTouch(), "clock": sampleClock()}
}
