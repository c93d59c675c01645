package page

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// OverviewRow is what the overview says of one client: small, for it is kept until the last client is read.
type OverviewRow struct {
	Code         string
	Program      string
	Stage        string
	Block        int
	Starts, Ends unit.Day
	Action       plan.Action
	Because      string
	Flags        int
	Missing      []string // ids of criteria of the next stage that are not passed
	Stale        []string // measures whose test is out of date
	Warnings     int      // filled by the conductor: what check asks about
}

// Failed is a client whose files have mistakes: its earlier pages stay as they were.
type Failed struct {
	Code     string
	Mistakes int
	First    string // the first of them, as check prints it
	Kept     bool   // there is an earlier page
}

// OverviewOf is the row of one plan.
func OverviewOf(p *plan.Plan) OverviewRow {
	row := OverviewRow{
		Code: p.Client.Code, Program: p.Program.Title, Stage: phaseTitle(p.Stage.Set), Block: p.Block.Number, Starts: p.Block.Starts, Ends: blockEnd(p),
		Action: p.Symptoms.Action, Because: p.Symptoms.Because, Flags: len(p.Flags), Stale: staleOf(p),
	}
	if p.Stage.Next != nil {
		row.Missing = missingFor(p.Stage, p.Stage.Next.ID)
	}
	return row
}

// staleOf are the measures of criteria whose test is out of date, sorted.
func staleOf(p *plan.Plan) (stale []string) {
	for _, c := range allCriteria(p) {
		if c.State == plan.OutOfDate {
			stale = append(stale, cmp.Or(c.Measure, c.ID))
		}
	}
	slices.Sort(stale)
	return slices.Compact(stale)
}

func phaseTitle(ph *program.Phase) string {
	if ph == nil {
		return ""
	}
	return ph.Title
}

// blockEnd is the last day of the block.
func blockEnd(p *plan.Plan) unit.Day { return p.Block.Starts.AddWeeks(p.Block.Weeks).AddDays(-1) }

// Overview is the page of all clients of a clinic: who needs the therapist first. It reads no clock: it says when a block
// ends, and the reader knows the day.
func Overview(clinic *plan.Clinic, rows []OverviewRow, failed []Failed, w *words.Words) View {
	s := sheet{w}
	v := View{Format: 1, Kind: "overview", Lang: w.Lang, Dir: w.Dir, Title: s.say("overview-window", "clinic", clinic.Name),
		Running: s.say("overview-running", "clinic", clinic.Name)}
	head := s.part("overview-head", s.note("overview-note", "clients", len(rows)+len(failed)))
	head.Title = s.say("overview-title", "clinic", clinic.Name)
	v.Parts = append(v.Parts, head)
	if len(failed) > 0 {
		v.Parts = append(v.Parts, s.failures(failed))
	}
	v.Parts = append(v.Parts, s.overviewRows(rows))
	return v
}

func (s sheet) failures(failed []Failed) Part {
	table := s.table("failed", s.say("failed-caption"), "code", "mistakes", "first-mistake", "earlier-page")
	for _, f := range slices.SortedFunc(slices.Values(failed), func(a, b Failed) int { return cmp.Compare(a.Code, b.Code) }) {
		kept := "page-none"
		if f.Kept {
			kept = "page-kept"
		}
		table.row("failed", f.Code, strconv.Itoa(f.Mistakes), f.First, s.say(kept))
	}
	return s.part("failed", table)
}

// overviewRows puts the clients who need the therapist first: contact, pause, then the order of codes.
func (s sheet) overviewRows(rows []OverviewRow) Part {
	if len(rows) == 0 {
		return s.part("clients", s.note("no-clients"))
	}
	table := s.table("clients", s.say("clients-caption"), "code", "symptoms", "program", "stage", "block", "block-ends", "missing-next", "stale", "look-at")
	byNeed := func(a, b OverviewRow) int {
		return cmp.Or(cmp.Compare(urgency(b.Action), urgency(a.Action)), cmp.Compare(a.Code, b.Code))
	}
	for _, r := range slices.SortedFunc(slices.Values(rows), byNeed) {
		class := ""
		if urgency(r.Action) > 0 {
			class = "alert"
		}
		table.row(class, r.Code, nonEmpty(": ", s.word("action", string(cmp.Or(r.Action, plan.NoAction))), r.Because), r.Program, r.Stage,
			s.say("block-starts", "number", r.Block, "day", s.w.Day(r.Starts)), s.w.Day(r.Ends), strings.Join(r.Missing, ", "), strings.Join(r.Stale, ", "),
			nonEmpty(", ", s.counted("flags-count", r.Flags), s.counted("warnings-count", r.Warnings)))
	}
	return s.part("clients", table)
}

// urgency is above zero where the therapist is asked to act.
func urgency(a plan.Action) int { return max(0, a.Rank()-plan.Pause.Rank()+1) }

// counted is a number of things in words; nothing where there are none.
func (s sheet) counted(key string, n int) string {
	if n == 0 {
		return ""
	}
	return s.say(key, "n", n)
}
