package page

import (
	"cmp"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// OverviewRow is what the overview says of one client: small, for it is kept until the last client is read, and as a note
// beside the client's pages. It knows no today: what is overdue is judged when the page is made.
type OverviewRow struct {
	Code         string
	Program      string
	What         string    // the procedure, or the kind of the event
	Side         unit.Side // its knee
	Since        unit.Day  // of the event
	Stage        string    // title
	Recorded     bool      // a [[stage]] says so
	Ahead        bool      // the stage is not earned
	Block        int
	Weeks        int
	Starts, Ends unit.Day
	NextVisit    unit.Day // zero where none is booked
	LastTest     unit.Day // the newest test day of all
	Action       plan.Action
	Because      basis.Said
	Told         basis.Said // the gravest that the client told of one session of the block
	Held         bool       // a pause called between visits, which has a page of its own
	Flags        []plan.Flag
	MoreFlags    int            // those that stand on the worksheet only
	Missing      []OverviewMark // marks of the next stage that are not passed
	Stale        []string       // measures whose test is out of date
	Warnings     int            // filled by the conductor: what check asks about
}

// OverviewMark is a criterion of the next stage that is not passed.
type OverviewMark struct {
	Measure   string
	AnyOf     []string // measures of which one is enough; then Measure is the criterion's id
	Near      bool     // the mark lies within the error of the test
	NotBefore unit.Day // of a floor in time
}

// The room of a row in the manifest is limited: a client with more flags than these is read on the worksheet.
const (
	flagsKept  = 12
	lettersOf  = 160 // of what a flag says
	marksKept  = 20
	cutShortBy = "…"
)

// OverviewOf is the row of one plan.
func OverviewOf(p *plan.Plan) OverviewRow {
	row := OverviewRow{
		Code: p.Client.Code, Program: p.Program.Title, Stage: phaseTitle(p.Stage.Set), Recorded: p.Stage.Recorded, Ahead: p.Stage.Ahead && !p.Stage.Answered,
		Block: p.Block.Number, Weeks: p.Block.Weeks, Starts: p.Block.Starts, Ends: blockEnd(p),
		Action: p.Symptoms.Action, Because: inRoom(p.Symptoms.Because), Told: inRoom(gravest(p.Symptoms.Told)), Held: p.Symptoms.Held != nil, Stale: staleOf(p),
	}
	if p.Block.NextVisit != nil {
		row.NextVisit = *p.Block.NextVisit
	}
	if e := p.Event; e != nil {
		row.What, row.Side, row.Since = cmp.Or(e.Procedure, string(e.Kind)), e.Side, e.Date
	}
	for i := range p.Client.Tests {
		if on := p.Client.Tests[i].On; on.After(row.LastTest) {
			row.LastTest = on
		}
	}
	for _, f := range p.Flags[:min(flagsKept, len(p.Flags))] {
		row.Flags = append(row.Flags, plan.Flag{ID: f.ID, About: f.About, Says: inRoom(f.Says)})
	}
	row.MoreFlags = len(p.Flags) - len(row.Flags)
	for _, c := range singly(p.Stage.Criteria) {
		if !c.Passed() && len(row.Missing) < marksKept {
			row.Missing = append(row.Missing, markOf(c))
		}
	}
	return row
}

// gravest is what the gravest of several signals says; "" of none.
func gravest(signals []plan.Signal) (says basis.Said) {
	rank := -1
	for _, g := range signals {
		if g.Action.Rank() > rank {
			rank, says = g.Action.Rank(), g.Because
		}
	}
	return says
}

// singly are criteria, of an all-of each by itself.
func singly(criteria []plan.Criterion) (each []plan.Criterion) {
	for _, c := range criteria {
		if c.Together {
			each = append(each, singly(c.Any)...)
			continue
		}
		each = append(each, c)
	}
	return each
}

func markOf(c plan.Criterion) OverviewMark {
	mark := OverviewMark{Measure: cmp.Or(c.Measure, c.ID), Near: c.Near != nil && *c.Near, NotBefore: c.NotBefore}
	for _, choice := range c.Any {
		mark.AnyOf = append(mark.AnyOf, cmp.Or(choice.Measure, choice.ID))
	}
	return mark
}

// inRoom is a fragment as a row keeps it: one that is longer than a row has room for is kept as its English, cut short.
func inRoom(said basis.Said) basis.Said {
	if len(said) > 3*lettersOf {
		return basis.Said(shortened(said.String()))
	}
	return said
}

// shortened cuts a text to what a glance takes in.
func shortened(text string) string {
	if letters := []rune(text); len(letters) > lettersOf {
		return string(letters[:lettersOf]) + cutShortBy
	}
	return text
}

// staleOf are the measures of criteria whose test is out of date, sorted.
func staleOf(p *plan.Plan) (stale []string) {
	for _, c := range allCriteria(p) {
		if c.State == plan.OutOfDate {
			stale = append(stale, cmp.Or(c.Measure, c.ID))
		}
	}
	slices.Sort(stale)
	stale = slices.Compact(stale)
	return stale[:min(marksKept, len(stale))]
}

func phaseTitle(ph *program.Phase) string {
	if ph == nil {
		return ""
	}
	return ph.Title
}

// blockEnd is the last day of the block.
func blockEnd(p *plan.Plan) unit.Day { return p.Block.Starts.AddWeeks(p.Block.Weeks).AddDays(-1) }
