package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Clinic is clinic.toml: what all clients of the folder share.
type Clinic struct {
	At         basis.Origin
	Paceleaf   int         `key:"paceleaf,required" doc:"number of the format; this version reads 1" range:"1 1000000" show:"1"`
	Name       string      `key:"name,required" doc:"name of the clinic; on every page" show:"Saltmarsh Knee Clinic"`
	Language   string      `key:"language" doc:"of the pages; en-GB where it is left out" show:"en-GB"`
	Units      Units       `key:"units" doc:"what pages print; metric where it is left out"`
	Emergency  string      `key:"emergency,required" doc:"the emergency number; on every handout" show:"999"`
	Phones     []Phone     `key:"phone,required" doc:"a number that a client may call; two at least, else pages send clients to the emergency number"`
	Therapists []Therapist `key:"therapist,required" doc:"who tests, types and signs"`
	Places     []Place     `key:"place,required" doc:"where clients train, with what stands there"`
	Gauges     []Gauge     `key:"gauge" doc:"an instrument that measures force"`
	Under18    Under18     `key:"under_18" doc:"the clinic's own floor for young people"`

	Logo    string  `key:"logo" doc:"file in templates/ (svg, png, jpg) that stands at the top of pages" show:"logo.svg"`
	Colours Colours `key:"colours" doc:"the clinic's own colours; a pair that cannot be read well is refused"`

	KnownWords []string `key:"known_words" doc:"words that your clients know; check tells the reading grade with and without them" show:"[\"physiotherapist\", \"exercise\"]"`

	Library string `key:"library" doc:"where the public library is served; handouts then lead to its notes of reasons" show:"https://library.saltmarsh.example"`

	ShowRelativeRate bool `key:"show_relative_rate" doc:"print on the worksheet how rates of groups compared; the sentence and its caution stand there anyhow"`
}

// Units is the system that pages print.
type Units string

const (
	Metric   Units = "metric"
	Imperial Units = "imperial"
)

func (Units) Words() []string { return []string{string(Metric), string(Imperial)} }

// EnoughPhones is how many numbers with hours a page should have besides the emergency number: the clinic, and who answers
// after hours or the surgeon's team (rules 31).
const EnoughPhones = 2

// Phone is a number that a client may call.
type Phone struct {
	At     basis.Origin
	Who    string `key:"who,required" doc:"such as clinic, after hours, surgeon's ward" show:"clinic"`
	Number string `key:"number,required" doc:"the number" show:"020 7946 0000"`
	Hours  string `key:"hours,required" doc:"when somebody answers" show:"Mon to Fri, 8 to 18"`
}

// Therapist signs and types.
type Therapist struct {
	At           basis.Origin
	ID           string `key:"id,required" doc:"how other files name the therapist" show:"imbali"`
	Name         string `key:"name,required" doc:"name as it is printed" show:"Imbali R."`
	Role         string `key:"role,required" doc:"profession as it is printed" show:"physiotherapist"`
	Registration string `key:"registration" doc:"number of the licence; on the worksheet" show:"PT-0000"`
}

// Place is where a client trains, with its devices.
type Place struct {
	At      basis.Origin
	ID      string   `key:"id,required" doc:"how other files name the place" show:"gym"`
	Name    string   `key:"name" doc:"as the client knows it; the id where it is left out" show:"our gym"`
	Devices []Device `key:"device" doc:"one machine, or one set of weights; loads never carry from one to another"`
}

// Device is one machine or one set of weights. Loads never carry from one device to another.
type Device struct {
	At       basis.Origin
	ID       string                      `key:"id,required" doc:"how other files name the device" show:"press"`
	Kind     unit.DeviceKind             `key:"kind,required" doc:"what it is; exercises say which kinds they need"`
	Name     string                      `key:"name" doc:"name as the client knows it" show:"the black press"`
	Angle    basis.Num[unit.Degrees]     `key:"angle" doc:"of an angled press: slope of its rail; the force along it stands on the worksheet, to compare machines; it does not scale kilograms" range:"1 90" show:"45"`
	Cam      basis.Num[unit.Metres]      `key:"cam" doc:"of a lever machine: radius of the wheel that the stack hangs on; for the torque on the worksheet" range:"0.01 0.6" show:"25"`
	Pad      basis.Num[unit.Metres]      `key:"pad" doc:"of a lever machine: from its axis to the middle of the pad" range:"0.05 0.8" show:"40"`
	Rest     basis.Num[unit.Metres]      `key:"rest" doc:"of a band: its length when nothing pulls on it" range:"0.05 5" show:"60"`
	Points   []BandPoint                 `key:"point" doc:"of a band: two points of it, measured with a luggage scale; without them it has no force"`
	Carriage basis.Num[unit.Kilograms]   `key:"carriage" doc:"moved but not counted by the client" range:"0 200" show:"45"`
	Bar      basis.Num[unit.Kilograms]   `key:"bar" doc:"weight of the empty bar" range:"0 50" show:"20"`
	Ratio    basis.Num[unit.Count]       `key:"ratio" doc:"of a cable: 2 means that half the stack is felt" range:"0.25 8" show:"2"`
	Plates   []basis.Num[unit.Kilograms] `key:"plates,list" doc:"sizes, each in pairs" range:"0.1 60" show:"[20, 10, 5, 2.5, 1.25]"`
	Single   bool                        `key:"single" doc:"plates are loaded one by one, not in pairs"`
	Lightest basis.Num[unit.Kilograms]   `key:"lightest" doc:"of a stack: the lightest weight" range:"0 300" show:"5"`
	Heaviest basis.Num[unit.Kilograms]   `key:"heaviest" doc:"of a stack: the heaviest weight" range:"0 600" show:"100"`
	Step     basis.Num[unit.Kilograms]   `key:"step" doc:"of a stack: from one weight to the next" range:"0.1 50" show:"5"`
	AddOn    basis.Num[unit.Kilograms]   `key:"add_on" doc:"a small weight hung on the stack" range:"0.1 20" show:"1.25"`
	Pounds   bool                        // the device is marked in pounds: filled by Read from the keys that were used
}

// BandPoint is one measured point of a band: its length and the force there.
type BandPoint struct {
	At     basis.Origin
	Length basis.Num[unit.Metres]  `key:"length,required" doc:"how long the band is" range:"0.05 10" show:"120"`
	Force  basis.Num[unit.Newtons] `key:"force,required" doc:"what the scale shows there" range:"1 1000" show:"20.5"`
}

// Gauge is an instrument that measures force, and the score that is kept of several trials.
type Gauge struct {
	At    basis.Origin
	ID    string `key:"id,required" doc:"how other files name the instrument" show:"belt"`
	Kind  string `key:"kind,required" doc:"what it is, such as hand-held dynamometer; for whoever reads the file" show:"belt-fixed dynamometer"`
	Place string `key:"place" doc:"id of the place where clients can read it while they train; only there a hold has a target" show:"gym"`
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
	SportNotBeforeMonths int `key:"sport_not_before_months" doc:"months from the operation before a return to sport under 18; of this and the program's floor the later counts" range:"0 36" show:"12"`
}
