// Package plan says what follows from a program, a client and what the tests found: the stage that is earned, the
// limits of each day, the exercises and loads of each week and leg, the dates, the cautions.
//
// It is computed as of the block's first day, from tests and stages dated on or before it. It reads no clock and
// no file, and it prints nothing: page turns it into what a person reads.
package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Plan is everything that the pages of one block say, as numbers with their basis.
type Plan struct {
	Clinic  *client.Clinic
	Program *program.Program
	Client  *client.Client
	Block   *client.Block
	Event   *client.Event // the one that weeks count from
	AsOf    unit.Day
	Tool    string // version of Paceleaf, as printed
	Weeks   []Week // of the block, in order

	Stage         StageState
	Found         *finding.Findings
	Activities    []ActivityState
	Goals         []GoalState
	End           *EndState // in the last phase of a program that has an end
	Retest        *Retest   // nil where the program does not say
	Changes       []Change  // since the test before, by measure
	Trends        []Trend   // towards what is still asked
	Groups        *Groups   // what groups of people showed; nil where it does not apply
	Limits        []Window  // every window of every limit weighed that touches the block or lies ahead, winners and losers
	Worn          []Worn    // how each brace is set, day by day
	Prescriptions []Prescription
	Dropped       []Dropped
	Sessions      []SessionDay
	Minutes       map[string]int // about how long a session takes, by id, rounded up to five
	Dates         []DateLine
	Symptoms      Symptoms
	Flags         []Flag
	Overrides     []AppliedOverride
	Since         *SinceBlock // what the block before asked otherwise; nil of a first block
	CameBack      []CameBack  // what logs told of the block before and of this one

	mistakes []Mistake // that showed only while it was made
}

// Mistake is something wrong with a client that only shows when it is held against its program, or something to ask.
type Mistake struct {
	At      basis.Origin
	What    string
	Instead string
	Ask     bool
}

// Week is a training week: seven days from the block's first day on.
type Week struct {
	Number     int // in the block, from 1
	Starts     unit.Day
	Ends       unit.Day // its last day
	SinceEvent int      // full weeks since the event on its first day
	PhaseWeek  int      // week of the stage, from 1
	Place      *client.Place
	Away       *client.Away // set where a day of the week is away
}

// StageState is the recorded stage, what has been earned, and what the next one asks.
type StageState struct {
	Set        *program.Phase
	Recorded   bool // a [[stage]] says so; else the first phase is taken
	Since      unit.Day
	WeeksSince int // full weeks since the event, as of the block's first day
	Earned     *program.Phase
	Next       *program.Phase // the phase after the recorded one; nil at the last
	Ahead      bool           // the recorded stage lies ahead of what is earned
	Answered   bool           // and all that was missing on that day has been passed since
	Short      []Criterion    // the criteria of the first recorded phase that was not earned, as of the day it was recorded
	Criteria   []Criterion    // of Next
}

// State of a criterion.
type State string

const (
	Met       State = "met"
	NotMet    State = "not met"
	NotTested State = "not tested"
	OutOfDate State = "out of date"
	Waived    State = "waived"
)

// Criterion is one criterion weighed: what was found, what was wanted, and how it stands.
type Criterion struct {
	ID        string // stage or activity, then the measure: running.knee-extension.lsi; any-of is running.any-1
	Of        string // id of the phase or activity
	Rule      *program.Criterion
	State     State
	Near      *bool          // the mark lies within the error band; nil: the error is not known
	Band      float64        // half the width of the error band, in the unit of the mark; 0 where Near is nil
	NearBy    *program.Error // the error behind it
	Measure   string
	Found     *basis.Step // what was found, a number or a word; nil where there is nothing
	Wanted    program.Mark
	Sense     string     // "at least", "above", "at most", "below"
	On        unit.Day   // of the test
	NotBefore unit.Day   // of a floor in time
	Reason    basis.Said // why it is not met or not tested, where the numbers do not say it
	Doubt     basis.Said // why a value opens nothing although it reaches the mark
	Waived    *client.Waived
	Any       []Criterion // of an any-of, or of an all-of
	Together  bool        // all of Any are asked, not one of them
	Optional  bool        // asked only where it has been tested, and it has not
}

// Passed reports whether the criterion stands in the way of nothing.
func (c Criterion) Passed() bool {
	return c.State == Met || c.State == Waived || c.Optional && c.State == NotTested
}

// ActivityState is running, jumping and so on.
type ActivityState struct {
	Activity   *program.Activity
	State      string   // closed, open, suspended
	NotBefore  unit.Day // the floor in time; zero where there is none
	Criteria   []Criterion
	Missing    []string   // ids of criteria that are not passed
	Because    basis.Said // why suspended
	OpenedBy   string
	OpenedFrom unit.Day
	Ahead      []string // ids of criteria that were not passed on the day it was opened, where some are not passed yet
}

// Window is a stretch of days of one limit, with who set it and whether it wins.
type Window struct {
	Side     unit.Side // the leg that it binds
	Kind     unit.Kind
	On       []unit.Kind
	Allow    unit.Allowance
	PartLoad basis.Num[unit.Kilograms] // of part weight-bearing in percent: what that is of the newest body mass, cut down to 1 kg
	From     unit.Day
	Lifts    unit.Day // the first day without it; zero: until further notice
	SetBy    string   // surgeon, physician, therapist, program
	Name     string   // who, or the id of the limit file
	Route    string
	Said     unit.Day
	Reason   string
	Source   string
	Standing unit.Standing
	Note     string
	Wins     bool // in force in its window, as a whole or a part of it
	Gap      bool // no row covers these days: closed
	Touches  bool // overlaps the block
	At       basis.Origin
}

// SessionDay is one training day of the block.
type SessionDay struct {
	Day     unit.Day
	Week    int
	Session string
	Title   string
	Daily   bool // done on every day of the block
}

// DateLine is a date that matters: a limit that lifts, an activity's earliest day, the next visit, the block's end.
type DateLine struct {
	Side    unit.Side // the leg, of a limit
	On      unit.Day
	Kind    string          // lifts, loosens, tightens, not-before, visit, ends, away
	What    string          // kind of limit, id of activity
	Title   string          // of the activity; of a limit on some exercises only, the kind that these also name
	Allow   *unit.Allowance // of a limit that loosens: what holds from then
	Missing []string        // of an activity: ids of criteria still missing
	SetBy   basis.Said      // of a limit: who set it
}

// Action says what symptoms ask for, from mildest.
type Action string

const (
	NoAction Action = "none"
	Stay     Action = "stay"
	StepBack Action = "step back"
	Pause    Action = "pause"
	Contact  Action = "contact"
)

// Words orders the actions, mildest first.
func (Action) Words() []string { return []string{"none", "stay", "step back", "pause", "contact"} }

// Rank orders the actions from 0.
func (a Action) Rank() int {
	for i, w := range a.Words() {
		if w == string(a) {
			return i
		}
	}
	return -1
}

// Symptoms is the strictest signal and all that were weighed.
type Symptoms struct {
	Action    Action
	Because   basis.Said
	Level     string // block, week, session, exercise
	Exercises []string
	On        unit.Day     // of the look
	Held      *client.Hold // a pause called between visits that still stands
	Signals   []Signal
	Told      []Signal // what the client told of one session of this block: it changes no page, and calls the therapist
}

// Signal is one symptom weighed.
type Signal struct {
	Action   Action
	Level    string
	Exercise string // of level exercise
	On       unit.Day
	Because  basis.Said // sentence fragment for the worksheet
	Reported bool       // by the client; else seen on a test day
	Code     string     // of the sentence in words: effusion-2, pain-high, pain-kind …
	Since    int        // week of the block in which it came to light; 0: by its first day
}

// Flag is something that the therapist should look at.
type Flag struct {
	ID    string
	About string
	Says  basis.Said // sentence fragment for the worksheet
}

// AppliedOverride is what an override changed.
type AppliedOverride struct {
	Override *client.Override
	Changed  []basis.Said // sets 3 → 2, left leg
	Applied  bool
}
