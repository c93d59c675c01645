package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Step is one row of a schedule: it holds from the beginning of Week until the next row, or until the limit lifts.
type Step struct {
	At   basis.Origin
	Week *int `key:"week,required" doc:"full weeks since the event; the row holds until the next one" range:"0 520"`
	unit.Allowance
	Standing unit.Standing `key:"standing" doc:"how far the row may be trusted, where it differs from the limit's"`
	Note     string        `key:"note" doc:"why the row is as it is; the worksheet prints it"`
}

// When narrows a limit or a criterion to some clients. An empty list asks nothing.
type When struct {
	Graft    []unit.Graft `key:"graft,lone"`
	Also     []string     `key:"also,lone" doc:"further procedures of the operation"`
	Sport    []unit.Sport `key:"sport,lone"`
	Leg      LegRole      `key:"leg" doc:"operated where it is left out; donor: the other leg, where it gave the graft"`
	UnderAge int          `key:"under_age" doc:"younger than this on the day" range:"1 120"`
}

// Limit is a shipped or a clinic's schedule for one kind. It covers every day from the event to the day it lifts:
// a day that no row covers is closed.
type Limit struct {
	At        basis.Origin
	Kind      unit.Kind     `key:"kind,required"`
	On        []unit.Kind   `key:"on,lone" doc:"only for exercises that also name one of these kinds"`
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
