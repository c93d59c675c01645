package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Person is client.toml: what changes rarely.
type Person struct {
	At           basis.Origin
	Called       string                 `key:"called" doc:"what the handout says; no real name is needed anywhere" show:"Kit"`
	Born         Month                  `key:"born" doc:"year and month" example:"1998-04"`
	Sex          Sex                    `key:"sex" doc:"for the weight of the shank by model = \"de-leva\""`
	Height       basis.Num[unit.Metres] `key:"height" doc:"for a hop as a share of height" range:"0.8 2.3" show:"171"`
	Guardian     string                 `key:"guardian" doc:"under 18: who signs with the client" show:"mother"`
	Goal         string                 `key:"goal" doc:"what the client wants to do again, in the client's words" show:"Run along the river again"`
	Sport        unit.Sport             `key:"sport" doc:"how the sport loads the knee"`
	Program      string                 `key:"program,required" doc:"id of the program" show:"acl-reconstruction"`
	Place        string                 `key:"place,required" doc:"id of a place in clinic.toml" show:"gym"`
	TrainingDays []Weekday              `key:"training_days,required,lone" doc:"days on which the client trains" show:"[\"mon\", \"wed\", \"fri\"]"`
	OtherLeg     unit.OtherLeg          `key:"other_leg,required" doc:"what the other leg is: unless it is sound, symmetry opens nothing"`
	Print        Print                  `key:"print" doc:"large: the handout in large print, on paper at least 16 points, laid out anew"`
	Events       []Event                `key:"event,required" doc:"an injury, an operation or a start: weeks count from it"`
	Stages       []Stage                `key:"stage" doc:"a phase of the program that you have set, from a day on"`
	Opened       []Opened               `key:"opened" doc:"an activity that you have opened, or a kind of limit that may be opened"`
	Limits       []Limit                `key:"limit" doc:"an instruction of a surgeon or physician, or a tightening of your own"`
	Setups       map[string]Setup       `key:"setup" doc:"by id of the test or exercise"`
	Waived       []Waived               `key:"waived" doc:"a criterion that you waive; never swelling, pain or extension"`
	References   []Reference            `key:"reference" doc:"what the operated leg is compared with where the other leg is no sound reference"`
	Away         []Away                 `key:"away" doc:"a time at another place"`
}

// Print is how large the letters of a client's pages are.
type Print string

// LargePrint is for who reads with difficulty.
const LargePrint Print = "large"

func (Print) Words() []string { return []string{"normal", "large"} }

// Sex is there to choose body-segment parameters, nothing else.
type Sex string

func (Sex) Words() []string { return []string{"female", "male"} }

// Weekday is a training day.
type Weekday string

func (Weekday) Words() []string { return []string{"mon", "tue", "wed", "thu", "fri", "sat", "sun"} }

// Event is an injury, an operation or a start.
type Event struct {
	At        basis.Origin
	Kind      EventKind  `key:"kind,required" doc:"what happened"`
	Procedure string     `key:"procedure" doc:"of an operation" example:"acl-reconstruction"`
	Date      unit.Day   `key:"date,required" doc:"its day"`
	Side      unit.Side  `key:"side,required" doc:"the leg"`
	Graft     unit.Graft `key:"graft" doc:"of a reconstruction: what the new ligament was made of"`
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
	ID   string   `key:"id,required" doc:"id of a phase of the program" show:"rebuild"`
	From unit.Day `key:"from,required" doc:"first day of the stage"`
	By   string   `key:"by,required" doc:"id of the therapist who set it" show:"imbali"`
}

// Opened is an activity, or a kind of limit that may be opened, that the therapist has opened.
type Opened struct {
	At    basis.Origin
	ID    string   `key:"id,required" doc:"id of the activity, or the kind of limit" show:"running"`
	From  unit.Day `key:"from,required" doc:"first day on which it is open"`
	By    string   `key:"by,required" doc:"id of the therapist who opened it" show:"imbali"`
	Level int      `key:"level" doc:"of an activity with a ladder: the rung to begin on; the first where it is left out" range:"1 50" show:"2"`
}

// Limit is an instruction of a surgeon or physician, or a therapist's own tightening.
type Limit struct {
	At   basis.Origin
	Kind unit.Kind   `key:"kind,required" doc:"what it limits"`
	On   []unit.Kind `key:"on,lone" doc:"only for exercises that also name one of these kinds" show:"[\"straightening-under-load\"]"`
	unit.Allowance
	Side   unit.Side `key:"side" doc:"left, right or both; the knee of the event where it is left out"`
	From   unit.Day  `key:"from,required" doc:"first day on which it holds"`
	Lifts  *unit.Day `key:"lifts" doc:"the first day without it; until further notice where it is left out" show:"2026-05-04"`
	SetBy  SetBy     `key:"set_by,required" doc:"who gave it; only a surgeon's or physician's may take the place of a shipped limit"`
	Name   string    `key:"name,required" doc:"name of who gave it" show:"Dr Auk"`
	Said   unit.Day  `key:"said,required" doc:"day on which it was said or written"`
	Route  Route     `key:"route,required" doc:"how it came"`
	Reason string    `key:"reason" doc:"why, for the worksheet" show:"cartilage of the kneecap was smoothed"`
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
	Left   Arm            `key:"left" doc:"of the left leg"`
	Right  Arm            `key:"right" doc:"of the right leg"`
	Device string         `key:"device" doc:"id of the device at the place" show:"press"`
	Place  string         `key:"place" doc:"where the device stands; the client's place where it is left out" show:"gym"`
	Seat   string         `key:"seat" doc:"number or letter of the hole" show:"4"`
	Back   string         `key:"back" doc:"setting of the back rest" show:"2"`
	Pad    string         `key:"pad" doc:"setting of the pad" show:"B"`
	Pins   []unit.Degrees `key:"pins,list" doc:"bend at pin 1, 2, …" range:"-15 160" show:"[90, 75, 60, 45, 30]"`
}

// Conditions are what a test of force was made with. Values under other conditions are never put in one trend.
type Conditions struct {
	Gauge string                  `key:"gauge" doc:"id of the instrument" show:"belt"`
	Mode  Mode                    `key:"mode" doc:"how the force was measured; isometric where it is left out"`
	Angle basis.Num[unit.Degrees] `key:"angle" doc:"bend of the knee at the test" range:"0 130" show:"90"`
	Speed *float64                `key:"speed_deg_per_s" doc:"of an isokinetic test, in degrees in a second" range:"1 500" show:"60"`
	Tared *bool                   `key:"tared" doc:"the hanging shank was weighed away before the pull: no correction for gravity"`
	Shank basis.Num[unit.Metres]  `key:"shank" doc:"knee to outer ankle; for the correction for gravity" range:"0.2 0.6" show:"40"`
	Model Model                   `key:"model" doc:"whose table the weight of the shank is taken from; winter where it is left out"`
	// WeighedAt goes with limb_weight of each leg: measured, it takes the place of any table.
	WeighedAt basis.Num[unit.Degrees] `key:"weighed_at" doc:"bend at which the relaxed leg was weighed on the sensor, best near 50" range:"0 75" show:"50"`
}

// Arm is what is measured once of one leg: the lever from the axis of the knee to the middle of the pad, the weight of the leg
// on the sensor there, the length of the leg.
type Arm struct {
	At         basis.Origin
	Arm        basis.Num[unit.Metres]  `key:"arm" doc:"lever: axis of the knee to the middle of the pad" range:"0.05 0.6" ask:"0.2 0.45" show:"31"`
	LimbWeight basis.Num[unit.Newtons] `key:"limb_weight" doc:"what the sensor showed with the relaxed leg hanging on it" range:"1 250" show:"38"`
	Leg        basis.Num[unit.Metres]  `key:"leg" doc:"of y-balance: hip bone to inner ankle" range:"0.4 1.3" show:"91"`
}

// Model is whose table of body segments gives the weight of a shank.
type Model string

const (
	Winter Model = "winter"
	DeLeva Model = "de-leva"
)

func (Model) Words() []string { return []string{"winter", "de-leva"} }

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
	Criterion string   `key:"criterion,required" doc:"stage or activity, then the measure" example:"running.hop-single.lsi"`
	From      unit.Day `key:"from" doc:"the day of the decision; it counts from then, and no longer than to the next operation of that knee"`
	By        string   `key:"by,required" doc:"id of the therapist who waives it" show:"imbali"`
	Reason    string   `key:"reason,required" doc:"why" show:"the gym has no curl machine until May"`
}

// Reference is the therapist's word on what the operated leg is compared with where the other leg is no sound reference.
type Reference struct {
	At     basis.Origin
	Use    Use      `key:"use,required" doc:"pre-operative: what the other leg did before the operation"`
	From   unit.Day `key:"from,required" doc:"the day of the decision"`
	By     string   `key:"by,required" doc:"id of the therapist who confirms it" show:"imbali"`
	Reason string   `key:"reason,required" doc:"why" show:"the other knee was operated on too"`
}

// Use is what a reference is.
type Use string

const PreOperative Use = "pre-operative"

func (Use) Words() []string { return []string{"pre-operative"} }

// Away is a time at another place.
type Away struct {
	At        basis.Origin
	From      unit.Day `key:"from,required" doc:"first day away" show:"2026-04-20"`
	Until     unit.Day `key:"until,required" doc:"the last day away" show:"2026-04-26"`
	Place     string   `key:"place,required" doc:"id of a place in clinic.toml" show:"hotel"`
	Emergency string   `key:"emergency" doc:"that country's number" show:"112"`
}
