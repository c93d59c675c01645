package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/figure"
	"paceleaf/generator/unit"
)

// Exercise is one file of programs/exercises/, with its words in the Markdown file beside it.
type Exercise struct {
	ID          string // the file's name
	At          basis.Origin
	Title       string            `key:"title,required" doc:"what the client reads" show:"Leg press, one leg" said:"client"`
	Describe    string            `key:"describe,required" doc:"one sentence: where you are, what moves" show:"Lying back in the press, one foot on the plate." said:"client"`
	Trains      []Muscle          `key:"trains,required,lone" doc:"muscles, or what else it works on" show:"[\"quadriceps\", \"gluteals\"]"`
	Chain       Chain             `key:"chain" doc:"open: the foot is free; closed: the foot stands on something"`
	Kinds       []unit.Kind       `key:"kinds,declared" doc:"every limit that speaks of it; [] if none, but the key must be there" show:"[\"loaded-bend\", \"added-weight\"]"`
	Work        unit.Work         `key:"hamstring_work" doc:"with the kind hamstring-work: how the hamstrings are worked"`
	Needs       []unit.DeviceKind `key:"needs,lone" doc:"kinds of device, all of them" show:"[\"angled-leg-press\"]"`
	Side        Legs1             `key:"side,required" doc:"one leg at a time, or both together"`
	LoadsBoth   bool              `key:"loads_both" doc:"one leg leads, but the other knee is loaded too: limits and pauses of the operated leg hold for both"`
	Contraction []Contraction     `key:"contraction,required,lone" doc:"how the muscle works" show:"[\"concentric\", \"eccentric\"]"`
	ResistedBy  Resistance        `key:"resisted_by,required" doc:"what makes it hard"`
	Range       *unit.Reach       `key:"range" doc:"bend that the movement goes through by nature; limits narrow it" example:"[0, 90]"`
	WeightOnLeg *unit.Percent     `key:"weight_on_leg" doc:"share of body weight on the working leg, of an exercise without weights: with it, part weight-bearing lets the exercise pass where the share keeps within; without it, none" range:"0 100" show:"50"`
	Activity    string            `key:"activity" doc:"id of the activity that the therapist must have opened; without it, every activity that names one of its kinds" show:"running"`
	Own         *Dose             `key:"dose" doc:"used where the slot's dose does not fit: a held exercise in a slot of repetitions"`
	Lift        unit.Seconds      `key:"lift" doc:"time to move the load, of one repetition" show:"2"`
	Hold        unit.Seconds      `key:"hold" doc:"time to hold it, of one repetition" show:"1"`
	Lower       unit.Seconds      `key:"lower" doc:"time to let it back, of one repetition" show:"3"`
	MovesBody   MovesBody         `key:"moves_body" doc:"the body is lifted too: percent of the maximum, growth and steps are reckoned with its part and the added weight together; needs mass_kg of a test day" show:"two-leg-squat"`
	OneRM       Estimate          `key:"one_rm" doc:"equation of this exercise, where it is another than the program's" show:"brzycki"`
	Heavy       bool              `key:"heavy" doc:"counts as a heavy day of its muscles: 48 hours to the next"`
	Easier      string            `key:"easier" doc:"id of an easier exercise" show:"leg-press-both"`
	Harder      string            `key:"harder" doc:"id of a harder exercise" show:"split-squat"`
	Cautions    []string          `key:"cautions" doc:"when to be careful with it, for the therapist" show:"[\"a kneecap that slips\"]"`
	NotFor      []string          `key:"not_for" doc:"whom it is not for, for the therapist" show:"[\"a healing bone graft\"]"`
	Source      string            `key:"source" doc:"key of the bibliography" show:"kngf-2014"`
	Standing    unit.Standing     `key:"standing" doc:"how far the source may be trusted"`
	CopiedFrom  string            `key:"copied_from" doc:"the shipped file that this one started as, and its digest then; check tells when that one changes" show:"leg-press-single 1a2b3c4d"`
	Levels      []Level           `key:"level" doc:"a ladder that the client climbs by its own rule, such as return to running; the therapist records the first rung"`
	Figure      figure.Pose       `key:"figure" doc:"the pose that is drawn; without it the page has no picture"`
	Words       Words
}

// Level is one rung of a ladder, in words for the client.
type Level struct {
	At     basis.Origin
	Do     string `key:"do,required" doc:"what to do on this rung" example:"walk 150 m, jog 150 m, 10 times" said:"client"`
	Indoor string `key:"indoor" doc:"the same on a treadmill, where it differs" show:"walk 2 min, jog 1 min, 10 times" said:"client"`
}

// Legs1 says whether an exercise is done with one leg at a time or with both together.
type Legs1 string

const (
	OneLeg   Legs1 = "one"
	BothLegs Legs1 = "both"
)

func (Legs1) Words() []string { return []string{"one", "both"} }

// MovesBody says which part of the body an exercise moves: all but what stays on the ground. Package formula has the shares.
type MovesBody string

func (MovesBody) Words() []string {
	return []string{"two-leg-squat", "one-leg-squat", "step-up", "one-leg-heel-raise"}
}

// Words are the Markdown texts of an exercise, each under its own heading.
type Words struct {
	At      basis.Origin
	Steps   []string `said:"client"` // "Steps": a numbered list, one movement each
	Cues    []Cue    // "Cues"
	Faults  []string `said:"client"` // "Watch for"
	Normal  string   `said:"client"` // "What is normal"
	EaseOff string   `said:"client"` // "Ease off if"
	Stop    string   `said:"client"` // "Stop if"
	Setup   string   `said:"client"` // "Set up"
}

// Cue is a hint; one that tells to go to an end of the movement is printed only where the range of the week reaches it.
type Cue struct {
	Text       string        `said:"client"`
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
