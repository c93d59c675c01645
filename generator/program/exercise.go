package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Exercise is one file of programs/exercises/, with its words in the Markdown file beside it.
type Exercise struct {
	ID          string // the file's name
	At          basis.Origin
	Title       string            `key:"title,required"`
	Describe    string            `key:"describe,required" doc:"one sentence: where you are, what moves"`
	Trains      []Muscle          `key:"trains,required,lone"`
	Chain       Chain             `key:"chain" doc:"open: the foot is free; closed: the foot stands on something"`
	Kinds       []unit.Kind       `key:"kinds,declared" doc:"every limit that speaks of it; [] if none, but the key must be there"`
	Work        unit.Work         `key:"hamstring_work" doc:"with the kind hamstring-work: how the hamstrings are worked"`
	Needs       []unit.DeviceKind `key:"needs,lone" doc:"kinds of device, all of them"`
	Side        Legs1             `key:"side,required" doc:"one leg at a time, or both together"`
	LoadsBoth   bool              `key:"loads_both" doc:"one leg leads, but the other knee is loaded too: limits and pauses of the operated leg hold for both"`
	Contraction []Contraction     `key:"contraction,required,lone"`
	ResistedBy  Resistance        `key:"resisted_by,required"`
	Range       *unit.Reach       `key:"range" doc:"bend that the movement goes through by nature; limits narrow it" example:"[0, 90]"`
	Activity    string            `key:"activity" doc:"id of the activity that the therapist must have opened; without it, every activity that names one of its kinds"`
	Own         *Dose             `key:"dose" doc:"used where the slot's dose does not fit: a held exercise in a slot of repetitions"`
	Lift        unit.Seconds      `key:"lift"`
	Hold        unit.Seconds      `key:"hold"`
	Lower       unit.Seconds      `key:"lower"`
	Heavy       bool              `key:"heavy" doc:"counts as a heavy day of its muscles: 48 hours to the next"`
	Easier      string            `key:"easier"`
	Harder      string            `key:"harder"`
	Source      string            `key:"source"`
	Standing    unit.Standing     `key:"standing"`
	CopiedFrom  string            `key:"copied_from" doc:"the shipped file that this one started as; not used yet"`
	Levels      []Level           `key:"level" doc:"a ladder that the client climbs by its own rule, such as return to running; the therapist records the first rung"`
	Figure      Figure            `key:"figure"`
	Words       Words
}

// Level is one rung of a ladder, in words for the client.
type Level struct {
	At     basis.Origin
	Do     string `key:"do,required" doc:"what to do on this rung" example:"walk 150 m, jog 150 m, 10 times"`
	Indoor string `key:"indoor" doc:"the same on a treadmill, where it differs"`
}

// Legs1 says whether an exercise is done with one leg at a time or with both together.
type Legs1 string

const (
	OneLeg   Legs1 = "one"
	BothLegs Legs1 = "both"
)

func (Legs1) Words() []string { return []string{"one", "both"} }

// Figure is the pose of an exercise. Nothing draws it yet.
type Figure struct {
	RangeFrame string `key:"range_frame" doc:"thigh for an open chain, shank for a closed one; not used yet"`
}

// Words are the Markdown texts of an exercise, each under its own heading.
type Words struct {
	At      basis.Origin
	Steps   []string // "Steps": a numbered list, one movement each
	Cues    []Cue    // "Cues"
	Faults  []string // "Watch for"
	Normal  string   // "What is normal"
	EaseOff string   // "Ease off if"
	Stop    string   // "Stop if"
	Setup   string   // "Set up"
}

// Cue is a hint; one that tells to go to an end of the movement is printed only where the range of the week reaches it.
type Cue struct {
	Text       string
	ReachesDeg *unit.Degrees // written as "(to 0°)" at the end of the line: printed only where that bend is allowed
}

// Isometric reports whether the exercise holds still.
func (e *Exercise) Isometric() bool {
	return len(e.Contraction) == 1 && e.Contraction[0] == Isometric
}

// Names reports whether the exercise declares the kind.
func (e *Exercise) Names(k unit.Kind) bool {
	for _, have := range e.Kinds {
		if have == k {
			return true
		}
	}
	return false
}
