package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Step is one row of a schedule: it holds from the beginning of Week until the next row, or until the limit lifts.
type Step struct {
	At   basis.Origin
	Week *int `key:"week,required" doc:"full weeks since the event; the row holds until the next one" range:"0 520" show:"8"`
	unit.Allowance
	Standing unit.Standing `key:"standing" doc:"how far the row may be trusted, where it differs from the limit's"`
	Note     string        `key:"note" doc:"why the row is as it is; the worksheet prints it" show:"ten degrees wider a week" said:"desk"`
}

// When narrows a limit or a criterion to some clients. An empty list asks nothing.
type When struct {
	Graft     []unit.Graft `key:"graft,lone" doc:"only for these grafts" show:"[\"hamstring\"]"`
	Also      []string     `key:"also,lone" doc:"further procedures of the operation" show:"[\"meniscus-repair-root\"]"`
	Sport     []unit.Sport `key:"sport,lone" doc:"only for these sports" show:"[\"twisting\", \"contact\"]"`
	GraftFrom GraftFrom    `key:"graft_from" doc:"same: this leg gave its graft itself; other: the other leg did; allograft: a donated one"`
	Leg       LegRole      `key:"leg" doc:"operated where it is left out; donor: the other leg, where it gave the graft"`
	UnderAge  int          `key:"under_age" doc:"younger than this on the day" range:"1 120" show:"18"`
}

// Limit is a shipped or a clinic's schedule for one kind. It covers every day from the event to the day it lifts:
// a day that no row covers is closed.
type Limit struct {
	At        basis.Origin
	Kind      unit.Kind     `key:"kind,required" doc:"what it limits"`
	On        []unit.Kind   `key:"on,lone" doc:"only for exercises that also name one of these kinds" show:"[\"straightening-under-load\"]"`
	When      When          `key:"when" doc:"only for some clients"`
	Source    string        `key:"source" doc:"key of the bibliography" show:"kngf-2014"`
	Standing  unit.Standing `key:"standing" doc:"of all rows that do not say their own; published where a preset names a source, else tool default"`
	Preset    string        `key:"preset" doc:"this schedule reproduces one source and is used only where a program chooses it by this name" show:"kngf"`
	LiftsWeek *int          `key:"lifts_week" doc:"the first week without the limit; without it the last row holds until further notice" range:"0 520" show:"12"`
	OpensWeek *int          `key:"opens_week" doc:"from this week the therapist may open it by [[opened]] with id = the kind" range:"0 520" show:"12"`
	Steps     []Step        `key:"steps,required" doc:"the rows of the schedule, by week"`
	Note      string        `key:"note" doc:"why it is as it is; the worksheet prints it" show:"the graft is weakest in these weeks" said:"desk"`
}

// LimitFile is one file of programs/limits/: what is closed until a week, and what is closed until the therapist opens it. Several
// programs share it.
type LimitFile struct {
	At         basis.Origin
	CopiedFrom string     `key:"copied_from" doc:"the shipped file that this one started as, and its digest then; check tells when that one changes" show:"acl-graft 1a2b3c4d"`
	Limits     []Limit    `key:"limit" doc:"a schedule of one kind of limit, from the event to the day it lifts"`
	Activities []Activity `key:"activity" doc:"something that the therapist opens, on its own floor and criteria, in every program that names this file"`
}
