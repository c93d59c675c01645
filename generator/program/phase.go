package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// File is one file of programs/: a program as its author wrote it.
type File struct {
	At          basis.Origin
	Title       string            `key:"title,required"`
	About       string            `key:"about" doc:"one or two sentences for a surgeon or a colleague; not printed yet"`
	CountsFrom  string            `key:"counts_from,required" doc:"the procedure whose date weeks count from, or injury, or start"`
	Phases      []string          `key:"phases,required" doc:"ids of programs/phases/, in order"`
	Limits      []string          `key:"limits" doc:"ids of programs/limits/"`
	Sources     []string          `key:"sources" doc:"keys of the bibliography"`
	Presets     map[string]string `key:"presets" doc:"by kind of limit: the named schedule to use; without it our composite holds"`
	WithinWeeks *int              `key:"within_weeks" doc:"how old a test may be for a criterion that does not say so itself; 6 where it is left out (tool default)" range:"1 52"`
	OneRM       Estimate          `key:"one_rm" doc:"formula of the estimated one-repetition maximum; epley where it is left out, and the only one so far"`
	Activities  []Activity        `key:"activity"`
	Goals       []Goal            `key:"goal"`
	CopiedFrom  string            `key:"copied_from" doc:"the shipped file that this one started as; not used yet"`
}

// Estimate names a formula of the one-repetition maximum.
type Estimate string

func (Estimate) Words() []string { return []string{"epley"} }

// Goal is what a knee should reach by a week; one that is late may have to be told to the surgeon. It opens nothing.
type Goal struct {
	At       basis.Origin
	Measure  string        `key:"measure,required" doc:"extension, flexion, effusion, quads-lag, …"`
	AtLeast  *Mark         `key:"at_least"`
	AtMost   *Mark         `key:"at_most"`
	ByWeek   *int          `key:"by_week,required" doc:"full weeks since the event" range:"0 104"`
	Tell     Tell          `key:"tell" doc:"who is told where it is late"`
	When     When          `key:"when"`
	Source   string        `key:"source"`
	Standing unit.Standing `key:"standing"`
	Note     string        `key:"note"`
}

// Tell is who is told of a goal that is late.
type Tell string

func (Tell) Words() []string { return []string{"surgeon", "physician"} }

// Activity is something that the therapist opens on its own floor and criteria.
type Activity struct {
	At    basis.Origin
	ID    string      `key:"id,required"`
	Title string      `key:"title" doc:"what the client reads; the id where it is left out"`
	Kinds []unit.Kind `key:"kinds,lone" doc:"limits that keep it closed while they run"`
	Sport bool        `key:"sport" doc:"a return to sport: the clinic's own floor for young people counts too"`
	Needs []Criterion `key:"needs,required"`
}

// Phase is one file of programs/phases/.
type Phase struct {
	ID         string // the file's name
	At         basis.Origin
	Title      string      `key:"title,required"`
	Aim        string      `key:"aim,required" doc:"what the phase is for, said to the client"`
	Enter      []Criterion `key:"enter" doc:"what it takes to earn the phase; none for the first"`
	Slots      []Slot      `key:"slot,required"`
	Sessions   []Session   `key:"session,required"`
	CopiedFrom string      `key:"copied_from" doc:"the shipped file that this one started as; not used yet"`
}

// Criterion is one thing that must be true. It has a floor in time, or a measure with a mark, or any of several.
type Criterion struct {
	At            basis.Origin
	EarliestWeek  *int          `key:"earliest_week" doc:"full weeks since the event" range:"0 520"`
	EarliestMonth *int          `key:"earliest_month" doc:"calendar months since the event" range:"0 120"`
	Measure       string        `key:"measure" doc:"test.quantity, such as knee-extension.lsi"`
	AtLeast       *Mark         `key:"at_least"`
	Above         *Mark         `key:"above"`
	AtMost        *Mark         `key:"at_most"`
	Below         *Mark         `key:"below"`
	WithinWeeks   *int          `key:"within_weeks" doc:"how old the test may be" range:"1 104"`
	OnlyIfTested  bool          `key:"only_if_tested" doc:"asked only where the test has been done"`
	When          When          `key:"when"`
	Any           []Criterion   `key:"any" doc:"one of these is enough"`
	Source        string        `key:"source"`
	Standing      unit.Standing `key:"standing"`
	Note          string        `key:"note"`
}

// Mark is what a criterion compares with: a number with the unit that its key names (at_least_percent), or a grade.
type Mark struct {
	Number float64
	Unit   string     // symbol; "" for a bare number
	Grade  unit.Grade // instead of a number
	Typed  string     // as written
}

// MarkEndings are the units in which a mark may be written, besides the bare key.
var MarkEndings = []unit.Ending{{Name: "", Symbol: "", Factor: 1}, {Name: "percent", Symbol: "%", Factor: 1}, {Name: "deg", Symbol: "°", Factor: 1},
	{Name: "nm_per_kg", Symbol: "N·m/kg", Factor: 1}, {Name: "cm", Symbol: "m", Factor: 0.01}, {Name: "s", Symbol: "s", Factor: 1}}

// Slot is a place in a session for one exercise: the first of its choices that limits, place and knee allow.
type Slot struct {
	At     basis.Origin
	ID     string   `key:"id,required"`
	Choose []string `key:"choose,required,lone" doc:"ids of exercises, in order of preference"`
	Legs   Legs     `key:"legs" doc:"each (default) or operated: for exercises of one leg"`
	Dose
	WeeklyPercent unit.Percent  `key:"weekly" doc:"growth of the ceilings of earned weeks; or waves, not both" range:"0 10"`
	Waves         []Wave        `key:"wave" doc:"other doses from a week of the phase on"`
	Source        string        `key:"source"`
	Standing      unit.Standing `key:"standing"`
}

// Dose is how much: what is not said is not part of it.
type Dose struct {
	Sets      *int          `key:"sets" range:"1 20"`
	Reps      *int          `key:"reps" range:"1 100"`
	Reserve   *int          `key:"reserve" doc:"repetitions that would still have been possible" range:"0 10"`
	HoldFor   *unit.Seconds `key:"hold" doc:"of each repetition" range:"1 3600"`
	TimesADay *int          `key:"times_a_day" range:"1 20"`
	Minutes   *int          `key:"minutes" range:"1 180"`
	Contacts  *int          `key:"foot_contacts" range:"1 400"`
	Rest      *unit.Seconds `key:"rest" range:"0 600"`
}

// Wave changes the dose from a week of the phase on, until the next wave.
type Wave struct {
	At       basis.Origin
	FromWeek int `key:"from_week,required" range:"1 104"`
	Dose
}

// Session is what is done on one training day; the sessions of a phase take the days in turn.
type Session struct {
	At    basis.Origin
	ID    string   `key:"id,required"`
	Title string   `key:"title"`
	Daily bool     `key:"daily" doc:"done on every day, besides the sessions that take the training days in turn"`
	Slots []string `key:"slots,required"`
}
