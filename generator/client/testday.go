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
	By              string                    `key:"by" doc:"id of the therapist who measured" show:"imbali"`
	Mass            basis.Num[unit.Kilograms] `key:"mass" doc:"body mass of the day" range:"25 250" ask:"40 160" show:"64.1"`
	PainWorst       basis.Num[unit.Points]    `key:"pain_worst" doc:"worst pain" range:"0 10" show:"2"`
	PainNextMorning basis.Num[unit.Points]    `key:"pain_next_morning" doc:"pain on the morning after" range:"0 10" show:"1"`
	PainKind        PainKind                  `key:"pain_kind" doc:"what the pain is like; it counts before its number"`
	Effusion        unit.Grade                `key:"effusion" doc:"swelling inside the knee, by the sweep test"`
	EffusionMethod  EffusionMethod            `key:"effusion_method" doc:"how the swelling was looked at, where it was not by the sweep test: that needs a knee that lacks 5° at most"`
	QuadsLag        basis.Num[unit.Degrees]   `key:"quads_lag" doc:"what the knee falls short of straight when the leg is raised by itself" range:"0 60" show:"3"`
	Left            KneeRange                 `key:"left" doc:"range of the left knee"`
	Right           KneeRange                 `key:"right" doc:"range of the right knee"`
	Strength        []Strength                `key:"strength" doc:"a test of force, by leg; what it says goes before the set-up"`
	Lifts           []Lift                    `key:"lift" doc:"a set to failure or near it: loads are made of it"`
	Hops            []Hop                     `key:"hop" doc:"a hop test, by leg"`
	YBalance        YBalance                  `key:"y_balance" doc:"reach in three directions while standing on one leg"`
	Rise            Rise                      `key:"single_leg_rise" doc:"standing up on one leg from lower and lower seats"`
	Questionnaires  []Questionnaire           `key:"questionnaire" doc:"a score, or the answers that it is made of; no item's text is shipped"`
	AngleBy         AngleBy                   `key:"angle_by" doc:"what the bend of the knee was measured with; never trended across"`
	Reason          string                    `key:"reason" doc:"why a test was made that a shipped limit does not allow" show:"the surgeon asked for the value"`
}

// EffusionMethod is how swelling inside the knee was looked at; empty is the sweep test.
type EffusionMethod string

const (
	SweepTest   EffusionMethod = "sweep-test"
	PatellarTap EffusionMethod = "patellar-tap"
	Girth       EffusionMethod = "girth"
	Ultrasound  EffusionMethod = "ultrasound"
)

func (EffusionMethod) Words() []string {
	return []string{"sweep-test", "patellar-tap", "girth", "ultrasound"}
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
	LacksExtension basis.Num[unit.Degrees]              `key:"lacks_extension" doc:"short of straight" range:"0 90" show:"3"`
	BeyondStraight basis.Num[unit.Degrees]              `key:"beyond_straight" doc:"past straight" range:"0 20" show:"2"`
	Flexion        basis.Num[unit.Degrees]              `key:"flexion" doc:"bend, as far as the knee goes" range:"0 165" show:"128"`
	Occlusion      basis.Num[unit.MillimetresOfMercury] `key:"occlusion" doc:"pressure of a cuff that stops the flow to this leg, measured in the position of the exercise" range:"60 400" show:"180"`
	NotTested      basis.Said                           `key:"not_tested" doc:"why not; for whoever reads the file: a knee without an angle is not tested anyhow" show:"in a bandage"`
}

// Strength is a test of force, by leg.
type Strength struct {
	At   basis.Origin
	Test string `key:"test,required" doc:"such as knee-extension, knee-flexion" show:"knee-extension"`
	Conditions
	Left  Pull `key:"left" doc:"the left leg"`
	Right Pull `key:"right" doc:"the right leg"`
}

// Pull is the trials of one leg: forces, or torques where the device gives them.
type Pull struct {
	At             basis.Origin
	Peak           []basis.Num[unit.Newtons]      `key:"peak,list" doc:"peak force of each trial" range:"1 3000" ask:"100 1500" show:"[318, 331, 325]"`
	Torque         []basis.Num[unit.NewtonMetres] `key:"torque,list" doc:"peak torque of each trial, where the device gives it instead" range:"1 900" ask:"15 500" show:"[98, 102, 101]"`
	Arm            basis.Num[unit.Metres]         `key:"arm" doc:"lever, where it differs from the set-up" range:"0.05 0.6" ask:"0.2 0.45" show:"31"`
	LimbWeight     basis.Num[unit.Newtons]        `key:"limb_weight" doc:"what the sensor showed with the relaxed leg hanging on it; else the set-up's" range:"1 250" show:"38"`
	NotTested      basis.Said                     `key:"not_tested" doc:"why not" show:"before week 12"`
	StoppedForPain bool                           `key:"stopped_for_pain" doc:"tried and stopped: no value, and pain above 5 for that exercise"`
}

// Lift is a set to failure or near it, by leg (or both together).
type Lift struct {
	At       basis.Origin
	Exercise string      `key:"exercise,required" doc:"id of the exercise" show:"leg-press-single"`
	Device   string      `key:"device" doc:"where it differs from the set-up" show:"press"`
	Place    string      `key:"place" doc:"where it was not the client's place" show:"hotel"`
	Range    *unit.Reach `key:"range" doc:"bend that was gone through; the limit in force where it is left out"`
	Left     Set         `key:"left" doc:"load x repetitions + how many more were possible; 0 is to failure" show:"60 kg x 8+0"`
	Right    Set         `key:"right" doc:"the same, of the right leg" show:"90 kg x 8+2"`
	Both     Set         `key:"both" doc:"the same, of both legs together" show:"120 kg x 10+2"`
}

// Hop is a hop test, by leg.
type Hop struct {
	At    basis.Origin
	Test  string  `key:"test,required" doc:"single, triple, crossover, timed-6m, side, vertical" show:"single"`
	Trial Trial   `key:"trial" doc:"best or mean of the trials; best where it is left out; never trended across"`
	Left  HopSide `key:"left" doc:"the left leg"`
	Right HopSide `key:"right" doc:"the right leg"`
}

// HopSide is the trials of one leg.
type HopSide struct {
	At             basis.Origin
	Distance       []basis.Num[unit.Metres]  `key:"distance,list" doc:"of single, triple and crossover hop, and height of a vertical one: each trial" range:"0.05 12" show:"[118, 121]"`
	Time           []basis.Num[unit.Seconds] `key:"time,list" doc:"of the timed hop: each trial" range:"0.5 60" show:"[2.1, 2.0]"`
	Count          []basis.Num[unit.Count]   `key:"count,list" doc:"of the side hop: hops of each trial" range:"0 200" show:"[41, 44]"`
	NotTested      basis.Said                `key:"not_tested" doc:"why not" show:"before week 12"`
	StoppedForPain bool                      `key:"stopped_for_pain" doc:"tried and stopped: no value counts"`
}

// AngleBy is what the bend of a knee was measured with.
type AngleBy string

func (AngleBy) Words() []string {
	return []string{"inclinometer", "long-goniometer", "short-goniometer", "phone", "eye"}
}
