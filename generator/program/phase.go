package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// File is one file of programs/: a program as its author wrote it.
type File struct {
	At              basis.Origin
	Title           string            `key:"title,required" doc:"name of the program" show:"After ACL reconstruction" said:"client"`
	About           string            `key:"about" doc:"one or two sentences for a surgeon or a colleague, at the head of its page in the library" show:"Six stages, from the first days to a whole match." said:"desk"`
	CountsFrom      string            `key:"counts_from,required" doc:"the procedure whose date weeks count from, or injury, or start" show:"acl-reconstruction"`
	Phases          []string          `key:"phases,required" doc:"ids of programs/phases/, in order" show:"[\"settle\", \"activate\", \"rebuild\"]"`
	Limits          []string          `key:"limits" doc:"ids of programs/limits/" show:"[\"acl-graft\"]"`
	Sources         []string          `key:"sources" doc:"keys of the bibliography" show:"[\"kngf-2014\", \"reid-2007\"]"`
	Presets         map[string]string `key:"presets" doc:"by kind of limit: the named schedule to use; without it our composite holds" show:"{ straightening-under-load = \"kngf\" }"`
	WithinWeeks     *int              `key:"within_weeks" doc:"how old a test may be for a criterion that does not say so itself; 6 where it is left out (tool default)" range:"1 52" show:"6"`
	FirstSignsWeeks *int              `key:"first_signs_weeks" doc:"for how many weeks after the event clots, fever and the wound lead the list of signs to stop and call; 6 where it is left out" range:"1 52" show:"12"`
	OneRM           Estimate          `key:"one_rm" doc:"equation of the estimated one-repetition maximum, and of the share of it that repetitions allow; epley where it is left out"`
	Activities      []Activity        `key:"activity" doc:"something that the therapist opens, on its own floor and criteria"`
	Goals           []Goal            `key:"goal" doc:"what a knee should have reached by a week; it opens and closes nothing"`
	RetestWeeks     int               `key:"retest_every_weeks" doc:"weeks from one measurement to the next" range:"1 52" show:"6"`
	Notes           []string          `key:"notes" doc:"ids of programs/notes/ that the client is told about in every phase" show:"[\"thigh-alone\"]"`
	Stops           []Stop            `key:"stop" doc:"one more reason to stop and call; it takes none away"`
	End             *End              `key:"end" doc:"what it takes to finish the program, asked in its last phase"`
	CopiedFrom      string            `key:"copied_from" doc:"the shipped file that this one started as, and its digest then; check tells when that one changes" show:"acl-reconstruction 1a2b3c4d"`
}

// Estimate names an equation of the one-repetition maximum; package formula has all of them (a test of plan holds the two lists
// together).
type Estimate string

func (Estimate) Words() []string {
	return []string{"epley", "brzycki", "lombardi", "oconner", "wathen", "mayhew", "lander"}
}

// Goal is what a knee should reach by a week; one that is late may have to be told to the surgeon. It opens nothing.
type Goal struct {
	At       basis.Origin
	Measure  string        `key:"measure,required" doc:"extension, flexion, effusion, quads-lag, …" show:"flexion"`
	AtLeast  *Mark         `key:"at_least" doc:"the mark, or more" show:"90 deg"`
	AtMost   *Mark         `key:"at_most" doc:"the mark, or less" show:"0 deg"`
	ByWeek   *int          `key:"by_week,required" doc:"full weeks since the event" range:"0 104" show:"6"`
	Tell     Tell          `key:"tell" doc:"who is told where it is late"`
	When     When          `key:"when" doc:"only for some clients"`
	Source   string        `key:"source" doc:"key of the bibliography" show:"kngf-2014"`
	Standing unit.Standing `key:"standing" doc:"how far the source may be trusted"`
	Note     string        `key:"note" doc:"why it is as it is; the worksheet prints it" show:"read for week 6; the surgeon is told from memory" said:"desk"`
}

// Tell is who is told of a goal that is late.
type Tell string

func (Tell) Words() []string { return []string{"surgeon", "physician"} }

// Activity is something that the therapist opens on its own floor and criteria.
type Activity struct {
	At    basis.Origin
	ID    string      `key:"id,required" doc:"how it is named by [[opened]] and by exercises" show:"running"`
	Title string      `key:"title" doc:"what the client reads; the id where it is left out" show:"Running" said:"client"`
	Kinds []unit.Kind `key:"kinds,lone" doc:"limits that keep it closed while they run" show:"[\"running\", \"impact\"]"`
	Sport bool        `key:"sport" doc:"a return to sport: the clinic's own floor for young people counts too"`
	Needs []Criterion `key:"needs,required" doc:"a criterion that must be met"`
}

// Phase is one file of programs/phases/.
type Phase struct {
	ID            string // the file's name
	At            basis.Origin
	Title         string      `key:"title,required" doc:"what the client reads" show:"Rebuild strength" said:"client"`
	Aim           string      `key:"aim,required" doc:"what the phase is for, said to the client" show:"Work both thighs hard, as far as each knee may move." said:"client"`
	Enter         []Criterion `key:"enter" doc:"what it takes to earn the phase; none for the first"`
	Slots         []Slot      `key:"slot,required" doc:"a place in a session for one exercise: the first of its choices that limits, place and knee allow"`
	Deloads       []Deload    `key:"deload" doc:"lighter weeks, planned beforehand"`
	SessionsAWeek int         `key:"sessions_a_week" doc:"how many sessions a week the source asks for; a client with more training days is asked about" range:"1 14" show:"3"`
	RetestWeeks   int         `key:"retest_every_weeks" doc:"weeks from one measurement to the next; of this phase, in the place of the program's" range:"1 52" show:"6"`
	Notes         []string    `key:"notes" doc:"ids of programs/notes/ that the client is told about in this phase" show:"[\"thigh-alone\"]"`
	Sessions      []Session   `key:"session,required" doc:"what is done on one training day; sessions take the training days in turn"`
	CopiedFrom    string      `key:"copied_from" doc:"the shipped file that this one started as, and its digest then; check tells when that one changes" show:"rebuild 1a2b3c4d"`
}

// Criterion is one thing that must be true. It has a floor in time, or a measure with a mark, or any of several.
type Criterion struct {
	At            basis.Origin
	EarliestWeek  *int          `key:"earliest_week" doc:"full weeks since the event" range:"0 520" show:"12"`
	EarliestMonth *int          `key:"earliest_month" doc:"calendar months since the event" range:"0 120" show:"9"`
	Measure       string        `key:"measure" doc:"test.quantity, such as knee-extension.lsi" show:"knee-extension.lsi"`
	AtLeast       *Mark         `key:"at_least" doc:"the mark, or more" show:"80 percent"`
	Above         *Mark         `key:"above" doc:"more than the mark" show:"2.5 nm_per_kg"`
	AtMost        *Mark         `key:"at_most" doc:"the mark, or less" show:"\"trace\""`
	Below         *Mark         `key:"below" doc:"less than the mark" show:"3 deg"`
	WithinWeeks   *int          `key:"within_weeks" doc:"how old the test may be" range:"1 104" show:"6"`
	OnlyIfTested  bool          `key:"only_if_tested" doc:"asked only where the test has been done"`
	When          When          `key:"when" doc:"only for some clients"`
	Any           []Criterion   `key:"any" doc:"one of these is enough"`
	All           []Criterion   `key:"all" doc:"all of these together: one of the choices of any"`
	Source        string        `key:"source" doc:"key of the bibliography" show:"delaware-2012"`
	Standing      unit.Standing `key:"standing" doc:"how far the source may be trusted"`
	Note          string        `key:"note" doc:"why it is as it is; the worksheet prints it" show:"more than 60 in the source" said:"desk"`
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
	ID     string   `key:"id,required" doc:"how sessions name the slot" show:"press"`
	Choose []string `key:"choose,required,lone" doc:"ids of exercises, in order of preference" show:"[\"leg-press-single\", \"step-up\"]"`
	Legs   Legs     `key:"legs" doc:"each (default) or operated: for exercises of one leg"`
	Dose
	OtherSets     *int          `key:"other_sets" doc:"sets of the leg that is not the event's, where they differ; the same for both where it is left out (2:1 and 3:1 are common practice, no source)" range:"1 20" show:"2"`
	HoldPercent   unit.Percent  `key:"hold_target" doc:"of a held exercise: share of the best isometric pull of the day's newest test at that angle, told in the unit of the gauge, where the gauge is at hand" range:"5 100" show:"70"`
	Range         *unit.Reach   `key:"range" doc:"the part of the movement that the slot asks for; it narrows the exercise's own range and opens nothing" example:"[10, 60]"`
	Lift          unit.Seconds  `key:"lift" doc:"time to move the load, where the slot asks for another speed than the exercise" range:"1 30" show:"3"`
	Lower         unit.Seconds  `key:"lower" doc:"time to let it back, likewise" range:"1 30" show:"3"`
	Method        Method        `key:"method" doc:"how the sets differ; steady where it is left out"`
	Cuffed        *Cuffed       `key:"cuffed" doc:"of method cuffed: load and pressure"`
	Stimulated    *Stimulated   `key:"stimulated" doc:"of method stimulated: the current's dose"`
	WeeklyPercent unit.Percent  `key:"weekly" doc:"growth of the ceilings of earned weeks; or waves, not both" range:"0 10" show:"2.5"`
	Waves         []Wave        `key:"wave" doc:"other doses from a week of the phase on"`
	Source        string        `key:"source" doc:"key of the bibliography" show:"acsm-2009"`
	Standing      unit.Standing `key:"standing" doc:"how far the source may be trusted"`
}

// Dose is how much: what is not said is not part of it.
type Dose struct {
	Sets      *int          `key:"sets" doc:"sets" range:"1 20" show:"3"`
	Reps      *int          `key:"reps" doc:"repetitions of a set" range:"1 100" show:"10"`
	RepsTo    *int          `key:"reps_to" doc:"to so many repetitions with one load, from reps on: repetitions come first, and a step of load once every set has reached this with the reserve" range:"2 100" show:"12"`
	Reserve   *int          `key:"reserve" doc:"repetitions that would still have been possible" range:"0 10" show:"2"`
	HoldFor   *unit.Seconds `key:"hold" doc:"of each repetition" range:"1 3600" show:"30"`
	TimesADay *int          `key:"times_a_day" doc:"how often in a day" range:"1 20" show:"3"`
	Minutes   *int          `key:"minutes" doc:"how long" range:"1 180" show:"20"`
	WorkFor   *unit.Seconds `key:"work" doc:"how long one set goes on, or the hard part of one round; a hold is hold_s" range:"5 3600" show:"30"`
	Rounds    *int          `key:"rounds" doc:"of intervals: how often work_s hard and rest_s easy" range:"2 40" show:"6"`
	Effort    *int          `key:"effort" doc:"how hard minutes, work_s or a round's hard part feel, of 10" range:"1 10" show:"4"`
	Talk      Talk          `key:"talk" doc:"the talk test instead of effort: what can still be said"`
	Contacts  *int          `key:"foot_contacts" doc:"landings" range:"1 400" show:"60"`
	Rest      *unit.Seconds `key:"rest" doc:"between sets, or the easy part of a round" range:"0 600" show:"120"`
}

// Talk is the talk test: what a client can still say while working.
type Talk string

const (
	WholeSentences Talk = "sentences" // easy
	FewWords       Talk = "words"     // hard
)

func (Talk) Words() []string { return []string{"sentences", "words"} }

// Wave changes the dose from a week of the phase on, until the next wave.
type Wave struct {
	At       basis.Origin
	FromWeek int         `key:"from_week,required" doc:"week of the phase from which the dose holds" range:"1 104" show:"5"`
	Range    *unit.Reach `key:"range" doc:"another part of the movement from then on" example:"[0, 90]"`
	Dose
}

// Session is what is done on one training day; the sessions of a phase take the days in turn.
type Session struct {
	At        basis.Origin
	ID        string   `key:"id,required" doc:"how the session is named" show:"strength"`
	Title     string   `key:"title" doc:"what the client reads" show:"Strength" said:"client"`
	Daily     bool     `key:"daily" doc:"done on every day, besides the sessions that take the training days in turn"`
	EveryDays int      `key:"every_days" doc:"done on every so many days instead of the training days, counted from the day the stage began" range:"2 14" show:"3"`
	FromDay   int      `key:"from_day" doc:"with every_days: the day of the first one, 1 where it is left out; so two sessions take turns" range:"1 14" show:"2"`
	Slots     []string `key:"slots,required" doc:"ids of its slots, in order" show:"[\"press\", \"quadriceps-alone\"]"`
}
