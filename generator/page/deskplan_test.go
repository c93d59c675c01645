package page

import (
	"os"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// deskWords are the shipped words; mistakes in the client's file are its own test's business.
func deskWords(t *testing.T) *words.Words {
	t.Helper()
	w, faults := words.Load(source.Over(os.DirFS("../../templates")), "en-GB")
	for _, f := range faults {
		if strings.HasSuffix(f.File, "desk.toml") {
			t.Error(f)
		}
	}
	return w
}

func civil(s string) unit.Day {
	d, err := unit.ParseDay(s)
	if err != nil {
		panic(err)
	}
	return d
}

func ptr[T any](v T) *T { return &v }

var (
	testDay  = civil("2026-04-06")
	testFile = "clients/tern-04/tests/2026-04-06.toml"
)

// deskPlan is the demo clinic's client tern-04 in short, made by hand: a left knee operated on, one day of tests, one load, one search
// for a load, one of everything that a worksheet tells.
func deskPlan() *plan.Plan {
	event := &client.Event{Kind: client.Operation, Procedure: "acl-reconstruction", Date: civil("2026-01-12"), Side: unit.Left, Graft: "hamstring", GraftFrom: unit.Left, Also: []string{"meniscus-repair-vertical-medial"}}
	press := &program.Exercise{ID: "leg-press-single", Title: "Leg press, one leg", Standing: unit.CommonPractice}
	curl := &program.Exercise{ID: "leg-curl", Title: "Leg curl", Source: "delaware-2012", Standing: unit.SecondHand}
	rebuild, run := &program.Phase{ID: "rebuild", Title: "Rebuild strength"}, &program.Phase{ID: "run", Title: "Learn to run"}
	p := &plan.Plan{
		Clinic:  &client.Clinic{Name: "Saltmarsh Knee Clinic", Therapists: []client.Therapist{{ID: "imbali", Name: "Imbali R.", Role: "physiotherapist", Registration: "PT-0000"}}},
		Program: deskProgram(press, curl), Client: &client.Client{Code: "tern-04", Person: client.Person{OtherLeg: unit.Sound}},
		Block: &client.Block{Number: 3, Starts: testDay, Weeks: 4, By: "imbali"}, Event: event, AsOf: testDay,
		Found: deskFindings(),
		Stage: plan.StageState{Set: rebuild, Recorded: true, Since: civil("2026-03-02"), WeeksSince: 12, Earned: rebuild, Next: run},
		Flags: []plan.Flag{{ID: "reference-rose", About: "knee-extension.lsi", Says: "the other leg gained more than 10 %"}},
		Symptoms: plan.Symptoms{Action: plan.Stay, Because: "pain 3, back to 1 next morning", Level: "session", On: testDay,
			Signals: []plan.Signal{{Action: plan.Stay, Level: "session", On: testDay, Because: "pain 3, back to 1 next morning", Code: "pain-3"}}},
		Dropped:   []plan.Dropped{passed(1), passed(2)},
		Sessions:  []plan.SessionDay{{Day: testDay, Week: 1, Session: "a", Title: "Strength"}},
		Overrides: []plan.AppliedOverride{{Applied: true, Changed: []basis.Said{"sets 3 → 2, left leg, weeks 1 to 4"}, Override: &client.Override{Exercise: "leg-press-single", Side: unit.Left, Sets: ptr(2), Reason: "travel", At: basis.Origin{File: "clients/tern-04/blocks/3.toml", Key: "override[0]"}}}},
	}
	p.Limits = deskLimits()
	p.Prescriptions = []plan.Prescription{deskPress(press, p.Found), {Exercise: curl, Side: unit.Right, Role: "other", OneRM: basis.Refused[unit.Kilograms]("leg-curl.right.one-rm", formula.ByOneRM, "no lift test"),
		Weeks: []plan.WeekDose{{Week: 1, Starts: testDay, Due: true, Dose: program.Dose{Sets: ptr(3), HoldFor: ptr(unit.Seconds(5)), TimesADay: ptr(5)}, FindYourWeight: true, Why: "no lift test on this machine"}}}}
	p.Stage.Criteria, p.Activities = deskCriteria(p.Found)
	p.Dates = []plan.DateLine{
		{On: civil("2026-04-20"), Kind: "lifts", What: "loaded-bend", SetBy: "surgeon"},
		{On: civil("2026-04-06"), Kind: "not-before", What: "running", Title: "Running", Missing: p.Activities[0].Missing},
		{Side: unit.Left, On: civil("2026-04-13"), Kind: "loosens", What: "straightening-under-load", Allow: &unit.Allowance{Range: &unit.Reach{Straightest: 20, MostBent: 90}}}}
	return p
}

func passed(week int) plan.Dropped {
	return plan.Dropped{Slot: "quadriceps", Exercise: "knee-extension-machine", Side: unit.Left, Week: week, Because: "added weight is closed until 6 April"}
}

func deskProgram(exercises ...*program.Exercise) *program.Program {
	p := &program.Program{ID: "acl-reconstruction", File: program.File{Title: "After ACL reconstruction"}, Exercises: map[string]*program.Exercise{},
		Sources: program.Bibliography{"delaware-2012": {Title: "Rehabilitation guidelines", By: "University of Delaware", Year: 2012, Read: "second-hand"}}}
	for _, e := range exercises {
		p.Exercises[e.ID] = e
	}
	return p
}

func deskFindings() *finding.Findings {
	typedForce := func(leg, text string, i string, v float64) basis.Num[unit.Newtons] {
		return basis.Typed(unit.Newtons(v), text, basis.Origin{File: testFile, Key: "strength[0]." + leg + ".peak_n[" + i + "]"})
	}
	mass := basis.Typed(unit.Kilograms(64.1), "64.1 kg", basis.Origin{File: testFile, Key: "mass_kg"}).Named("mass")
	pull := func(leg string, trials ...basis.Num[unit.Newtons]) finding.Leg {
		arm := basis.Typed(unit.Metres(0.31), "31 cm", basis.Origin{File: "clients/tern-04/client.toml", Key: "setup.knee-extension." + leg + ".arm_cm"})
		id := "knee-extension." + leg
		l := finding.Leg{Force: basis.OfList(id+".force", formula.ByBest, formula.Best[unit.Newtons], trials), Spread: basis.OfList(id+".spread", formula.BySpread, formula.Spread[unit.Newtons], trials)}
		l.Torque = basis.Of2(id+".torque", formula.ByTorque, formula.Torque, l.Force, arm)
		l.PerKg = basis.Try2(id+".nm-per-kg", formula.ByPerKilogram, formula.PerKilogram, l.Torque, mass)
		return l
	}
	s := finding.StrengthTest{On: testDay, Test: "knee-extension", Gauge: "belt", Mode: "isometric", Score: "best",
		Left: pull("left", typedForce("left", "318 N", "0", 318), typedForce("left", "331 N", "1", 331)), Right: pull("right", typedForce("right", "402 N", "0", 402), typedForce("right", "410 N", "1", 410))}
	share := basis.Try2("knee-extension.symmetry", formula.BySymmetry, formula.Symmetry[unit.NewtonMetres], s.Left.Torque, s.Right.Torque)
	s.LSI = basis.Cut("knee-extension.lsi", byCut, func(x, step unit.Percent) unit.Percent { return unit.CutTo(x, step) }, share, basis.Given("", basis.Rule{Name: "a tenth"}, unit.Percent(0.1), "")).On(testDay)
	s.Deficit = basis.Of1("knee-extension.deficit", formula.ByDeficit, formula.Deficit, s.LSI)
	s.Preop = basis.Refused[unit.Percent]("knee-extension.preop-ratio", formula.ByPreopRatio, "not tested before the operation")
	lift := finding.LiftTest{On: testDay, Exercise: "leg-press-single", Place: "gym", Device: "press", Range: &unit.Reach{Straightest: 0, MostBent: 70}, Left: deskLift()}
	lift.Right.NotTested = "machine taken"
	swelling := basis.Word("effusion", basis.ByTyped, "trace", "")
	swelling.At = basis.Origin{File: testFile, Key: "effusion"}
	return &finding.Findings{AsOf: testDay, Order: []string{"knee-extension.lsi", "knee-extension.preop-ratio", "effusion"},
		Measures: map[string]finding.Measure{
			"knee-extension.lsi":         {Name: "knee-extension.lsi", Value: s.LSI.Step(), Number: 80.7, Unit: "%", OK: true, On: testDay, SEM: ptr(3.49), SEMSource: "reid-2007"},
			"knee-extension.preop-ratio": {Name: "knee-extension.preop-ratio", Value: s.Preop.Step(), Unit: "%", Reason: s.Preop.Why()},
			"effusion":                   {Name: "effusion", Value: swelling, Grade: unit.GradeTrace, OK: true, On: testDay}},
		Strength: []finding.StrengthTest{s}, Lifts: []finding.LiftTest{lift},
		Hops: []finding.HopTest{{On: testDay, Test: "single", Left: finding.HopLeg{NotTested: "before week 12"}, Right: finding.HopLeg{NotTested: "before week 12"}}},
		Knees: []finding.KneeDay{{On: testDay, Pain: basis.Typed(unit.Points(2), "2", basis.Origin{File: testFile, Key: "pain_worst"}).Named("pain"), PainKind: "ache", Effusion: unit.GradeTrace,
			EffusionAt: swelling.At, Mass: mass, Left: finding.KneeAngles{Flexion: basis.Typed(unit.Degrees(128), "128 °", basis.Origin{File: testFile, Key: "left.flexion_deg"}).Named("flexion.left")}}},
		Doubts: []finding.Doubt{{ID: "knee-flexion.left.spread", Says: "trials spread more than 10 %", Code: "spread"}}}
}

func deskLift() finding.LiftLeg {
	at := basis.Origin{File: testFile, Key: "lift[0].left"}
	plates := basis.Typed(unit.Kilograms(60), "60 kg", at)
	carriage := basis.Typed(unit.Kilograms(45), "45 kg", basis.Origin{File: "clinic.toml", Key: "place[0].device[0].carriage_kg"}).Named("press.carriage")
	l := finding.LiftLeg{Reps: basis.Typed(unit.Count(8), "8", at), Reserve: basis.Typed(unit.Count(0), "0", at)}
	l.Moved = basis.Of2("leg-press-single.left.moved", formula.ByMovedLoad, func(a, b unit.Kilograms) unit.Kilograms { return a + b }, plates, carriage)
	failure := basis.Of2("leg-press-single.left.to-failure", formula.ByToFailure, func(a, b unit.Count) unit.Count { return a + b }, l.Reps, l.Reserve)
	l.OneRM = basis.Of2("leg-press-single.left.one-rm", formula.ByOneRM, func(w unit.Kilograms, n unit.Count) unit.Kilograms {
		return unit.Kilograms(float64(w) * (1 + float64(n)/30))
	}, l.Moved, failure)
	return l
}

func deskPress(e *program.Exercise, f *finding.Findings) plan.Prescription {
	carriage := f.Lifts[0].Left.Moved.Step().From[1]
	pr := plan.Prescription{Exercise: e, Slot: &program.Slot{ID: "press", Source: "delaware-2012", Standing: unit.SecondHand}, Side: unit.Left, Role: "operated", Device: &client.Device{ID: "press"},
		Setup: &client.Setup{Seat: "4", Back: "2"}, OneRM: f.Lifts[0].Left.OneRM, LiftedOn: testDay, Tested: f.Lifts[0].Range, Sessions: []string{"a"}}
	for week := 1; week <= 2; week++ {
		stem := "leg-press-single.left.w" + string(rune('0'+week))
		share := basis.Given(stem+".allowed", basis.Rule{Name: "share of the maximum"}, unit.Percent(100/(1+12.0/30)), "")
		load := basis.Of2(stem+".working", formula.ByWorkingLoad, func(m unit.Kilograms, p unit.Percent) unit.Kilograms {
			return unit.Kilograms(float64(m) * float64(p) / 100)
		}, pr.OneRM, share)
		rest := basis.Typed(unit.Kilograms(carriage.Value), carriage.Typed, carriage.At).Named(carriage.ID)
		plates := basis.Of2(stem+".put-on", formula.ByPutOn, func(a, b unit.Kilograms) unit.Kilograms { return a - b }, load, rest)
		w := plan.WeekDose{Week: week, Starts: testDay.AddWeeks(week - 1), Due: week == 1, Dose: program.Dose{Sets: ptr(2), Reps: ptr(10), Reserve: ptr(2), Rest: ptr(unit.Seconds(120))}, Range: &unit.Reach{Straightest: 0, MostBent: 70},
			PerSide: []unit.Kilograms{20, 2.5}, NearPin: 2, PinDeg: 75}
		w.Plates = basis.Cut(stem+".load", byCut, cutTo, plates, basis.Given("press.step", basis.Rule{Name: "step of the device"}, unit.Kilograms(2.5), ""))
		w.Moved = basis.Of2(stem+".moved", formula.ByMovedLoad, func(a, b unit.Kilograms) unit.Kilograms { return a + b }, w.Plates, rest)
		w.Share = basis.Of2(stem+".share", formula.ByTrueShare, func(a, b unit.Kilograms) unit.Percent { return unit.Percent(100 * float64(a) / float64(b)) }, w.Moved, pr.OneRM)
		pr.Weeks = append(pr.Weeks, w)
	}
	return pr
}

func deskLimits() []plan.Window {
	return []plan.Window{
		{Kind: unit.LoadedBend, Allow: unit.Allowance{Range: &unit.Reach{Straightest: 0, MostBent: 70}}, From: civil("2026-02-02"), Lifts: civil("2026-04-20"), SetBy: "surgeon", Name: "Dr Auk", Route: "letter", Said: civil("2026-02-02"),
			Reason: "repair under tension at 80°", Standing: unit.Instruction, Wins: true, Touches: true, At: basis.Origin{File: "clients/tern-04/client.toml", Key: "limit[0]"}},
		{Side: unit.Right, Kind: unit.LoadedBend, Allow: unit.Allowance{Range: &unit.Reach{Straightest: 0, MostBent: 90}}, From: civil("2026-02-23"), SetBy: "program", Name: "programs/limits/acl-also.toml", Standing: unit.ToolDefault, Touches: true},
		{Kind: unit.AddedWeight, On: []unit.Kind{unit.StraighteningUnderLoad}, Allow: unit.Allowance{Allowed: ptr(false)}, From: civil("2026-01-12"), Lifts: civil("2026-04-06"), SetBy: "program", Source: "kngf-2014", Standing: unit.Published, Wins: true},
		{Kind: unit.Brace, From: civil("2026-01-12"), SetBy: "program", Standing: unit.ToolDefault, Gap: true, Wins: true},
	}
}

func deskCriteria(f *finding.Findings) ([]plan.Criterion, []plan.ActivityState) {
	lsi := f.Measures["knee-extension.lsi"].Value
	rule := &program.Criterion{Source: "delaware-2012", Standing: unit.SecondHand}
	run := []plan.Criterion{
		{ID: "run.time", Of: "run", Measure: "time", State: plan.Met, Sense: "at least", Wanted: program.Mark{Number: 12, Unit: "weeks"}, Found: &basis.Step{ID: "run.time", By: basis.Rule{Name: "calendar"}, Value: 12, Unit: "weeks"}, NotBefore: civil("2026-04-06")},
		{ID: "run.flexion.percent-of-other", Of: "run", Measure: "flexion.percent-of-other", State: plan.OutOfDate, Sense: "at least", Wanted: program.Mark{Number: 95, Unit: "%"}, Rule: rule},
		{ID: "run.effusion", Of: "run", Measure: "effusion", State: plan.Met, Sense: "at most", Wanted: program.Mark{Grade: unit.GradeTrace}, Found: f.Measures["effusion"].Value, On: testDay},
	}
	running := []plan.Criterion{
		{ID: "running.knee-extension.lsi", Of: "running", Measure: "knee-extension.lsi", State: plan.Met, Near: ptr(true), Sense: "at least", Wanted: program.Mark{Number: 80, Unit: "%"}, Found: lsi, On: testDay, Rule: rule},
		{ID: "running.any-4", Of: "running", State: plan.NotMet, Any: []plan.Criterion{{ID: "running.hop-single.lsi", Of: "running", Measure: "hop-single.lsi", State: plan.NotTested, Sense: "at least", Wanted: program.Mark{Number: 80, Unit: "%"}, Reason: "not tested"}}},
		{ID: "running.quads-lag", Of: "running", State: plan.Waived, Sense: "at most", Wanted: program.Mark{Number: 0, Unit: "°"}, Waived: &client.Waived{Criterion: "running.quads-lag", By: "imbali", Reason: "measured by hand"}},
	}
	return run, []plan.ActivityState{{Activity: &program.Activity{ID: "running", Title: "Running"}, State: "closed", NotBefore: civil("2026-04-06"), Criteria: running, Missing: []string{"running.any-4"}}}
}
