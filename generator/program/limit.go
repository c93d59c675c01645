package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Allowance is what a limit allows of its kind: closed, a range, a grade of work, a share of body weight. An allowance
// that says nothing allows everything of its kind (a limit that is no limit). Steps of a schedule and a surgeon's
// instruction write it with the same keys.
type Allowance struct {
	Allowed  *bool           `key:"allowed" doc:"false: not at all; true: free"`
	Range    *unit.Reach     `key:"range" doc:"bend that is allowed, straightest first; 0 is straight" example:"[0, 70]"`
	Grade    Work            `key:"grade" doc:"hamstring work: up to and with this grade"`
	Part     *unit.Percent   `key:"part" doc:"weight-bearing: up to this share of body weight"`
	PartMass *unit.Kilograms `key:"part" doc:"weight-bearing: up to this weight on the leg"`
	Locked   *unit.Degrees   `key:"locked" doc:"brace: locked at this bend"`
	Night    *bool           `key:"night" doc:"brace: also worn at night"`
}

// Step is one row of a schedule: it holds from the beginning of Week until the next row, or until the limit lifts.
type Step struct {
	At   basis.Origin
	Week *int `key:"week,required" doc:"full weeks since the event; the row holds until the next one" range:"0 520"`
	Allowance
	Standing unit.Standing `key:"standing" doc:"how far the row may be trusted, where it differs from the limit's"`
	Note     string        `key:"note" doc:"why the row is as it is; the worksheet prints it"`
}

// When narrows a limit or a criterion to some clients. An empty list asks nothing.
type When struct {
	Graft    []Graft  `key:"graft,lone"`
	Also     []string `key:"also,lone" doc:"further procedures of the operation"`
	Sport    []Sport  `key:"sport,lone"`
	UnderAge int      `key:"under_age" doc:"younger than this on the day" range:"1 120"`
}

// Limit is a shipped or a clinic's schedule for one kind. It covers every day from the event to the day it lifts:
// a day that no row covers is closed.
type Limit struct {
	At        basis.Origin
	Kind      Kind          `key:"kind,required"`
	On        []Kind        `key:"on,lone" doc:"only for exercises that also name one of these kinds"`
	When      When          `key:"when"`
	Source    string        `key:"source" doc:"key of the bibliography"`
	Standing  unit.Standing `key:"standing" doc:"of all rows that do not say their own; published where a preset names a source, else tool default"`
	Preset    string        `key:"preset" doc:"this schedule reproduces one source and is used only where a program chooses it by this name"`
	LiftsWeek *int          `key:"lifts_week" doc:"the first week without the limit; without it the last row holds until further notice" range:"0 520"`
	OpensWeek *int          `key:"opens_week" doc:"from this week the therapist may open it by [[opened]] with id = the kind" range:"0 520"`
	Steps     []Step        `key:"steps,required"`
	Note      string        `key:"note"`
}

// LimitFile is one file of programs/limits/.
type LimitFile struct {
	Limits []Limit `key:"limit,required"`
}
