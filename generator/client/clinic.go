package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Clinic is clinic.toml: what all clients of the folder share.
type Clinic struct {
	At         basis.Origin
	Paceleaf   int         `key:"paceleaf,required" doc:"number of the format; this version reads 1" range:"1 1000000"`
	Name       string      `key:"name,required"`
	Language   string      `key:"language" doc:"of the pages; en-GB where it is left out"`
	Units      Units       `key:"units" doc:"what pages print; metric where it is left out"`
	Emergency  string      `key:"emergency,required" doc:"the emergency number; on every handout"`
	Phones     []Phone     `key:"phone,required"`
	Therapists []Therapist `key:"therapist,required"`
	Places     []Place     `key:"place,required"`
	Gauges     []Gauge     `key:"gauge"`
	Under18    Under18     `key:"under_18"`
}

// Units is the system that pages print.
type Units string

func (Units) Words() []string { return []string{"metric", "imperial"} }

// Phone is a number that a client may call.
type Phone struct {
	At     basis.Origin
	Who    string `key:"who,required" doc:"such as clinic, after hours, surgeon's ward"`
	Number string `key:"number,required"`
	Hours  string `key:"hours,required"`
}

// Therapist signs and types.
type Therapist struct {
	At           basis.Origin
	ID           string `key:"id,required"`
	Name         string `key:"name,required"`
	Role         string `key:"role,required"`
	Registration string `key:"registration"`
}

// Place is where a client trains, with its devices.
type Place struct {
	At      basis.Origin
	ID      string   `key:"id,required"`
	Name    string   `key:"name" doc:"as the client knows it; the id where it is left out"`
	Devices []Device `key:"device"`
}

// Device is one machine or one set of weights. Loads never carry from one device to another.
type Device struct {
	At       basis.Origin
	ID       string                      `key:"id,required"`
	Kind     unit.DeviceKind             `key:"kind,required"`
	Name     string                      `key:"name"`
	Angle    *unit.Degrees               `key:"angle" doc:"of an angled press; does not scale kilograms; not used yet" range:"0 90"`
	Carriage basis.Num[unit.Kilograms]   `key:"carriage" doc:"moved but not counted by the client" range:"0 200"`
	Bar      basis.Num[unit.Kilograms]   `key:"bar" doc:"weight of the empty bar" range:"0 50"`
	Ratio    basis.Num[unit.Count]       `key:"ratio" doc:"of a cable: 2 means that half the stack is felt" range:"0.25 8"`
	Plates   []basis.Num[unit.Kilograms] `key:"plates,list" doc:"sizes, each in pairs" range:"0.1 60"`
	Single   bool                        `key:"single" doc:"plates are loaded one by one, not in pairs"`
	Lightest basis.Num[unit.Kilograms]   `key:"lightest" range:"0 300"`
	Heaviest basis.Num[unit.Kilograms]   `key:"heaviest" range:"0 600"`
	Step     basis.Num[unit.Kilograms]   `key:"step" range:"0.1 50"`
	AddOn    basis.Num[unit.Kilograms]   `key:"add_on" doc:"a small weight hung on the stack" range:"0.1 20"`
	Pounds   bool                        // the device is marked in pounds: filled by Read from the keys that were used
}

// Gauge is an instrument that measures force, and the score that is kept of several trials.
type Gauge struct {
	At    basis.Origin
	ID    string `key:"id,required"`
	Kind  string `key:"kind,required" doc:"what it is, such as hand-held dynamometer; for whoever reads the file"`
	Trial Trial  `key:"trial" doc:"best or mean; never trended across"`
}

// Trial says which score is kept of several trials.
type Trial string

const (
	Best Trial = "best"
	Mean Trial = "mean"
)

func (Trial) Words() []string { return []string{"best", "mean"} }

// Under18 is the clinic's own floor for young people.
type Under18 struct {
	SportNotBeforeMonths int `key:"sport_not_before_months" range:"0 36"`
}
