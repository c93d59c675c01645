package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Person is client.toml: what changes rarely.
type Person struct {
	At           basis.Origin
	Called       string                 `key:"called" doc:"what the handout says; no real name is needed anywhere"`
	Born         Month                  `key:"born" doc:"year and month" example:"1998-04"`
	Sex          Sex                    `key:"sex" doc:"not used yet"`
	Height       basis.Num[unit.Metres] `key:"height" doc:"not used yet" range:"0.8 2.3"`
	Guardian     string                 `key:"guardian" doc:"under 18: who signs with the client"`
	Goal         string                 `key:"goal"`
	Sport        unit.Sport             `key:"sport"`
	Program      string                 `key:"program,required"`
	Place        string                 `key:"place,required" doc:"id of a place in clinic.toml"`
	TrainingDays []Weekday              `key:"training_days,required,lone"`
	OtherLeg     unit.OtherLeg          `key:"other_leg,required"`
	Events       []Event                `key:"event,required"`
	Stages       []Stage                `key:"stage"`
	Opened       []Opened               `key:"opened"`
	Limits       []Limit                `key:"limit"`
	Setups       map[string]Setup       `key:"setup" doc:"by id of the test or exercise"`
	Waived       []Waived               `key:"waived"`
	Away         []Away                 `key:"away"`
}

// Sex is there to choose body-segment parameters and reference values, nothing else; neither is used yet.
type Sex string

func (Sex) Words() []string { return []string{"female", "male"} }

// Weekday is a training day.
type Weekday string

func (Weekday) Words() []string { return []string{"mon", "tue", "wed", "thu", "fri", "sat", "sun"} }

// Event is an injury, an operation or a start.
type Event struct {
	At        basis.Origin
	Kind      EventKind  `key:"kind,required"`
	Procedure string     `key:"procedure" doc:"of an operation" example:"acl-reconstruction"`
	Date      unit.Day   `key:"date,required"`
	Side      unit.Side  `key:"side,required"`
	Graft     unit.Graft `key:"graft"`
	GraftFrom unit.Side  `key:"graft_from" doc:"the leg that gave the graft"`
	Also      []string   `key:"also,lone" doc:"what else was done" example:"[\"meniscus-repair-vertical-medial\"]"`
}

// EventKind is what happened.
type EventKind string

const (
	Injury    EventKind = "injury"
	Operation EventKind = "operation"
	Start     EventKind = "start"
)

func (EventKind) Words() []string { return []string{"injury", "operation", "start"} }

// Stage is the phase that the therapist has set, from a day on.
type Stage struct {
	At   basis.Origin
	ID   string   `key:"id,required" doc:"id of a phase of the program"`
	From unit.Day `key:"from,required"`
	By   string   `key:"by,required"`
}

// Opened is an activity, or a kind of limit that may be opened, that the therapist has opened.
type Opened struct {
	At    basis.Origin
	ID    string   `key:"id,required"`
	From  unit.Day `key:"from,required"`
	By    string   `key:"by,required"`
	Level int      `key:"level" doc:"of an activity with a ladder: the rung to begin on; the first where it is left out" range:"1 50"`
}

// Limit is an instruction of a surgeon or physician, or a therapist's own tightening.
type Limit struct {
	At   basis.Origin
	Kind unit.Kind   `key:"kind,required"`
	On   []unit.Kind `key:"on,lone" doc:"only for exercises that also name one of these kinds"`
	unit.Allowance
	Side   unit.Side `key:"side" doc:"left, right or both; the knee of the event where it is left out"`
	From   unit.Day  `key:"from,required"`
	Lifts  *unit.Day `key:"lifts" doc:"the first day without it; until further notice where it is left out"`
	SetBy  SetBy     `key:"set_by,required"`
	Name   string    `key:"name,required"`
	Said   unit.Day  `key:"said,required"`
	Route  Route     `key:"route,required"`
	Reason string    `key:"reason"`
}

// SetBy is who gave an instruction; Route is how it came.
type (
	SetBy string
	Route string
)

const (
	BySurgeon   SetBy = "surgeon"
	ByPhysician SetBy = "physician"
	ByTherapist SetBy = "therapist"
)

func (SetBy) Words() []string { return []string{"surgeon", "physician", "therapist"} }
func (Route) Words() []string { return []string{"operation-note", "letter", "call"} }

// Setup is typed once for a test or an exercise; a test day gives only what has changed.
type Setup struct {
	At basis.Origin
	Conditions
	Left   Arm            `key:"left"`
	Right  Arm            `key:"right"`
	Device string         `key:"device"`
	Place  string         `key:"place" doc:"where the device stands; the client's place where it is left out"`
	Seat   string         `key:"seat" doc:"number or letter of the hole"`
	Back   string         `key:"back"`
	Pad    string         `key:"pad"`
	Pins   []unit.Degrees `key:"pins,list" doc:"bend at pin 1, 2, …" range:"-15 160"`
}

// Conditions are what a test of force was made with. Values under other conditions are never put in one trend.
type Conditions struct {
	Gauge string                  `key:"gauge"`
	Mode  Mode                    `key:"mode"`
	Angle basis.Num[unit.Degrees] `key:"angle" doc:"bend of the knee at the test" range:"0 130"`
	Speed *float64                `key:"speed_deg_per_s" range:"1 500"`
	Tared *bool                   `key:"tared" doc:"the hanging shank was weighed away before the pull: no correction for gravity"`
	Shank basis.Num[unit.Metres]  `key:"shank" doc:"knee to outer ankle; for the correction for gravity" range:"0.2 0.6"`
}

// Arm is the lever from the axis of the knee to the middle of the pad, of one leg.
type Arm struct {
	At  basis.Origin
	Arm basis.Num[unit.Metres] `key:"arm" range:"0.05 0.6" ask:"0.2 0.45"`
}

// Mode is how a force was measured.
type Mode string

const (
	IsometricMode  Mode = "isometric"
	IsokineticMode Mode = "isokinetic"
)

func (Mode) Words() []string { return []string{"isometric", "isokinetic"} }

// Waived is a criterion that the therapist waives, by name and with a reason.
type Waived struct {
	At        basis.Origin
	Criterion string `key:"criterion,required" doc:"stage or activity, then the measure" example:"running.hop-single.lsi"`
	By        string `key:"by,required"`
	Reason    string `key:"reason,required"`
}

// Away is a time at another place.
type Away struct {
	At        basis.Origin
	From      unit.Day `key:"from,required"`
	Until     unit.Day `key:"until,required" doc:"the last day away"`
	Place     string   `key:"place,required"`
	Emergency string   `key:"emergency" doc:"that country's number"`
}
