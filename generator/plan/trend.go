package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Trend is what the tests of one measure since the event look like, and when a line through them comes to a mark. It stands on
// the worksheet alone: it opens nothing, no date of a client rests on it, and a mark that a line reaches is not met.
type Trend struct {
	Measure   string
	For       []Waiting // the criteria that wait for the mark
	Mark      program.Mark
	Points    []finding.Measure // oldest first, under the conditions of the newest
	LeftOut   []basis.Said      // tests that stand under other conditions or in doubt, with the reason
	Straight  Fit
	Log       Fit
	Resistant Fit
	Refused   basis.Said   // why no week is told; empty where one is
	Doubts    []basis.Said // what to check before a week is believed
	First     unit.Day     // the span in which the straight line comes to the mark,
	Last      unit.Day     // not before the floors in time; zero where it has no end
	CouldBe   unit.Day     // the later of straight and log-time
	NotBefore unit.Day     // the earliest floor in time among For
}

// Waiting is a criterion that waits for a mark, and the floor in time of its stage or activity; zero where there is none.
type Waiting struct {
	ID        string
	NotBefore unit.Day
}

// Fit is one line through the points.
type Fit struct {
	Level, Slope, Week *basis.Step // Week is nil where the line does not come to the mark
	Low, High          *basis.Step // the interval of the week; nil where it has none
	Refused            basis.Said  // why there is no line, no week or no interval
}

// projected is how sure the interval of a week is. Chosen: with three or four tests an interval at 95 % has hardly ever an end.
const projected unit.Percent = 80

var byFieller = basis.Rule{Name: "weeks in which the interval of the line holds the mark, 80 %", Source: "interval of a line of least squares, turned round (Fieller)"}

// trends are the trends of what the next stage and the activities that are not open still ask.
func trends(s StageState, activities []ActivityState, found *finding.Findings, event *Event) (all []Trend) {
	groups := map[string][]Criterion{}
	var order []string
	add := func(of string, list []Criterion) {
		if len(groups[of]) == 0 && len(list) > 0 {
			order = append(order, of)
		}
		groups[of] = append(groups[of], list...)
	}
	for _, c := range s.Criteria {
		if s.Next != nil && c.Of == s.Next.ID {
			add(c.Of, []Criterion{c})
		}
	}
	for _, a := range activities {
		if a.State != "open" {
			add(a.Activity.ID, a.Criteria)
		}
	}
	for _, of := range order {
		for _, c := range flat(groups[of]) {
			if c.State != Met && c.State != Waived && (c.Sense == "at least" || c.Sense == "above") && c.Wanted.Grade == "" && c.Measure != "time" {
				all = joined(all, c, floorOf(groups[of]))
			}
		}
	}
	for i := range all {
		all[i].lay(found, event)
	}
	return all
}

// flat are the criteria with the choices of every any-of.
func flat(list []Criterion) (all []Criterion) {
	for _, c := range list {
		if all = append(all, flat(c.Any)...); len(c.Any) == 0 {
			all = append(all, c)
		}
	}
	return all
}

// floorOf is the latest floor in time among criteria.
func floorOf(list []Criterion) (floor unit.Day) {
	for _, c := range list {
		floor = later(floor, c.NotBefore)
	}
	return floor
}

// joined adds a criterion to the trend of its measure and mark. Of several floors the earliest counts for the trend; each criterion
// keeps its own.
func joined(all []Trend, c Criterion, floor unit.Day) []Trend {
	waits := Waiting{c.ID, floor}
	for i := range all {
		if t := &all[i]; t.Measure == c.Measure && t.Mark.Number == c.Wanted.Number && t.Mark.Unit == c.Wanted.Unit {
			t.For = append(t.For, waits)
			if floor.Before(t.NotBefore) {
				t.NotBefore = floor
			}
			return all
		}
	}
	return append(all, Trend{Measure: c.Measure, For: []Waiting{waits}, Mark: c.Wanted, NotBefore: floor})
}

// lay gathers the points and lays the lines.
func (t *Trend) lay(found *finding.Findings, event *Event) {
	t.gather(governed(found, t.Measure))
	if len(t.Points) > 0 && t.Points[0].Unit != t.Mark.Unit {
		t.Refused = basis.Say("the mark is in \"{a}\", the tests are in \"{b}\"", t.Mark.Unit, t.Points[0].Unit)
		return
	}
	points, steps := pointsOf(t.Points, event)
	mark := unit.Count(t.Mark.Number)
	if err := formula.Projectable(points, mark); err != nil {
		t.Refused = basis.SaidBy(err)
	}
	if len(points) < leastPoints {
		return
	}
	id := fmt.Sprintf("%s.to-%g", t.Measure, t.Mark.Number)
	wanted := &basis.Step{ID: id + ".mark", By: basis.Rule{Name: "mark", Source: "the criterion"}, Value: t.Mark.Number, Unit: t.Mark.Unit}
	straight, wrong := formula.StraightLine(points)
	t.Straight = fitOf(id+".straight", straight, wrong, mark, formula.ByStraightLine, formula.ByStraightLevel, wanted, steps)
	log, wrongLog := formula.LogTime(points)
	t.Log = fitOf(id+".log-time", log, wrongLog, mark, formula.ByLogTime, formula.ByLogLevel, wanted, steps)
	resistant, wrongResistant := formula.TheilSen(points)
	t.Resistant = fitOf(id+".resistant", resistant, wrongResistant, mark, formula.ByTheilSen, formula.ByTheilSenLevel, wanted, steps)
	t.days(straight, mark, event)
}

// leastPoints is the number of tests under which there is no line.
const leastPoints = 3

// gather keeps the values under the conditions of the newest, and says why it leaves others out.
func (t *Trend) gather(history []finding.Measure) {
	for i := len(history) - 1; i >= 0; i-- {
		m := history[i]
		why := basis.Said("")
		switch {
		case len(m.Doubts) > 0:
			why = m.Doubts[0]
		case len(t.Points) > 0:
			why = m.Alike.Apart(t.Points[0].Alike)
		}
		if why != "" {
			t.LeftOut = append(t.LeftOut, basis.Say("{a}: {b}", m.On, why))
			continue
		}
		t.Points = slices.Insert(t.Points, 0, m)
	}
	slices.Reverse(t.LeftOut)
}

// days turns weeks into days. No day lies before the floor in time, and none is told where a week was refused.
func (t *Trend) days(straight formula.Line[unit.Count], mark unit.Count, event *Event) {
	symmetry := t.Mark.Unit == unit.Percent(0).Unit()
	if doubt := formula.DoubtOfProjection(straight, mark, symmetry); doubt != "" && t.Refused == "" {
		t.Doubts = append(t.Doubts, doubt)
	}
	if t.Refused != "" || t.Straight.Week == nil {
		return
	}
	if t.Straight.Low == nil {
		t.Refused = basis.Say("no span can be told: {a}", t.Straight.Refused)
		return
	}
	day := func(week *basis.Step) unit.Day {
		if week == nil || week.Value > furthest {
			return unit.Day{}
		}
		return later(event.Date.AddDays(int(week.Value*daysInWeek)), t.NotBefore)
	}
	t.First, t.Last, t.CouldBe = day(t.Straight.Low), day(t.Straight.High), day(t.Straight.Week)
	if t.Log.Week != nil {
		t.CouldBe = later(t.CouldBe, day(t.Log.Week))
	}
}

const (
	daysInWeek = 7
	// furthest is the last week that is told as a day. Chosen: five years, the end of what was followed up.
	furthest = 260
)
