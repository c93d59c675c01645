package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// TestDay is what a therapist measured on one day: a file of tests/, or a row of the clinic's day sheet.
// A short day (pain, effusion, one load) is a valid day.
type TestDay struct {
	On              unit.Day // the file's name
	At              basis.Origin
	By              string                    `key:"by"`
	Mass            basis.Num[unit.Kilograms] `key:"mass" range:"25 250" ask:"40 160"`
	PainWorst       basis.Num[unit.Points]    `key:"pain_worst" range:"0 10"`
	PainNextMorning basis.Num[unit.Points]    `key:"pain_next_morning" range:"0 10"`
	PainKind        PainKind                  `key:"pain_kind"`
	Effusion        unit.Grade                `key:"effusion" doc:"by the sweep test"`
	QuadsLag        basis.Num[unit.Degrees]   `key:"quads_lag" range:"0 60"`
	Left            KneeRange                 `key:"left"`
	Right           KneeRange                 `key:"right"`
	Strength        []Strength                `key:"strength"`
	Lifts           []Lift                    `key:"lift"`
	Hops            []Hop                     `key:"hop"`
	Questionnaires  []Questionnaire           `key:"questionnaire"`
	Reason          string                    `key:"reason" doc:"why a test was made that a shipped limit does not allow"`
}

// PainKind is asked before its number.
type PainKind string

const (
	Ache      PainKind = "ache"
	Sharp     PainKind = "sharp"
	Catching  PainKind = "catching"
	GivingWay PainKind = "giving-way"
)

func (PainKind) Words() []string { return []string{"ache", "sharp", "catching", "giving-way"} }

// Alarming reports a kind of pain that stops an exercise whatever its number.
func (k PainKind) Alarming() bool { return k == Sharp || k == Catching || k == GivingWay }

// KneeRange is the range of one knee, with the two keys in which clinics write the straight end.
type KneeRange struct {
	At             basis.Origin
	LacksExtension basis.Num[unit.Degrees] `key:"lacks_extension" doc:"short of straight" range:"0 90"`
	BeyondStraight basis.Num[unit.Degrees] `key:"beyond_straight" doc:"past straight" range:"0 20"`
	Flexion        basis.Num[unit.Degrees] `key:"flexion" range:"0 165"`
	NotTested      string                  `key:"not_tested" doc:"why not; for whoever reads the file: a knee without an angle is not tested anyhow"`
}

// Strength is a test of force, by leg.
type Strength struct {
	At   basis.Origin
	Test string `key:"test,required" doc:"such as knee-extension, knee-flexion"`
	Conditions
	Left  Pull `key:"left"`
	Right Pull `key:"right"`
}

// Pull is the trials of one leg: forces, or torques where the device gives them.
type Pull struct {
	At             basis.Origin
	Peak           []basis.Num[unit.Newtons]      `key:"peak,list" range:"1 3000" ask:"100 1500"`
	Torque         []basis.Num[unit.NewtonMetres] `key:"torque,list" range:"1 900" ask:"15 500"`
	Arm            basis.Num[unit.Metres]         `key:"arm" range:"0.05 0.6" ask:"0.2 0.45"`
	NotTested      string                         `key:"not_tested" doc:"why not"`
	StoppedForPain bool                           `key:"stopped_for_pain" doc:"tried and stopped: no value, and pain above 5 for that exercise"`
}

// Lift is a set to failure or near it, by leg (or both together).
type Lift struct {
	At       basis.Origin
	Exercise string      `key:"exercise,required"`
	Device   string      `key:"device" doc:"where it differs from the set-up"`
	Place    string      `key:"place"`
	Range    *unit.Reach `key:"range" doc:"bend that was gone through; the limit in force where it is left out"`
	Left     Set         `key:"left"`
	Right    Set         `key:"right"`
	Both     Set         `key:"both"`
}

// Hop is a hop test, by leg.
type Hop struct {
	At    basis.Origin
	Test  string  `key:"test,required" doc:"single, triple, crossover, timed-6m, side, vertical"`
	Left  HopSide `key:"left"`
	Right HopSide `key:"right"`
}

// HopSide is the trials of one leg.
type HopSide struct {
	At             basis.Origin
	Distance       []basis.Num[unit.Metres]  `key:"distance,list" range:"0.05 12"`
	Time           []basis.Num[unit.Seconds] `key:"time,list" range:"0.5 60"`
	Count          []basis.Num[unit.Count]   `key:"count,list" range:"0 200"`
	NotTested      string                    `key:"not_tested"`
	StoppedForPain bool                      `key:"stopped_for_pain"`
}

// Questionnaire is a score; no item text is shipped.
type Questionnaire struct {
	At    basis.Origin
	ID    string                 `key:"id,required"`
	Score basis.Num[unit.Points] `key:"score" range:"0 1000"`
}
