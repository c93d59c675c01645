package page

import (
	"cmp"
	"slices"
	"strconv"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// Roster is what the overview is made of.
type Roster struct {
	Clinic  *plan.Clinic
	Today   unit.Day // the day that the page is for; zero: it says days and calls none overdue
	Rows    []OverviewRow
	Failed  []Failed
	Waiting []string // codes of clients without a block
}

// Failed is a client whose files have mistakes: its earlier pages stay as they were.
type Failed struct {
	Code     string
	Mistakes int
	First    string // the first of them, as check prints it
	Kept     bool   // there is an earlier page
}

// Overview is the therapist's morning page: who needs somebody, in what order, and where the pages are.
func Overview(r Roster, w *words.Words) View {
	s := sheet{w}
	v := View{Format: 1, Kind: "overview", Lang: w.Lang, Dir: w.Dir, Title: s.say("overview-window", "clinic", r.Clinic.Name),
		Running: s.say("overview-running", "clinic", r.Clinic.Name)}
	head := s.part("overview-head", s.note("overview-note", "n", len(r.Rows)+len(r.Failed)+len(r.Waiting)), s.asOf(r.Today))
	head.Title = s.say("overview-title", "clinic", r.Clinic.Name)
	v.Parts = append(v.Parts, head)
	for _, p := range []Part{s.thisWeek(r), s.failures(r.Failed), s.clients(r)} {
		if len(p.Nodes) > 0 {
			v.Parts = append(v.Parts, p)
		}
	}
	return v
}

// asOf says for which day the page was made.
func (s sheet) asOf(today unit.Day) Node {
	if today.IsZero() {
		return s.note("overview-no-day")
	}
	return s.note("overview-as-of", "day", s.w.Day(today))
}

// thisWeek lists who is due for a test, and who has no current block.
func (s sheet) thisWeek(r Roster) Part {
	var due, without []string
	for _, row := range r.Rows {
		if row.dueThisWeek(r.Today) {
			due = append(due, row.Code)
		}
		if row.over(r.Today) {
			without = append(without, row.Code)
		}
	}
	without = append(without, r.Waiting...)
	facts := Node{Kind: "facts", Class: "this-week"}
	if !r.Today.IsZero() {
		facts.Facts = append(facts.Facts, s.jumps("tests-due", due, nil))
	}
	if len(without) > 0 || !r.Today.IsZero() {
		facts.Facts = append(facts.Facts, s.jumps("no-block", without, r.Waiting))
	}
	return s.part("this-week", kept([]Node{facts})...)
}

// jumps is a fact of codes, each a link to its client on the page; those without a row have none.
func (s sheet) jumps(label string, codes, without []string) Fact {
	slices.Sort(codes)
	f := Fact{Label: s.say("fact-" + label), Value: plain(s.say("nobody"))}
	for i, code := range codes {
		span := Span{Text: code, Href: "#" + clientAnchor(code)}
		if slices.Contains(without, code) {
			span.Href = ""
		}
		if i == 0 {
			f.Value = []Span{span}
			continue
		}
		f.Value = append(f.Value, Span{Text: ", "}, span)
	}
	return f
}

func clientAnchor(code string) string { return "client-" + code }

func (s sheet) failures(failed []Failed) Part {
	if len(failed) == 0 {
		return Part{}
	}
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

// clients puts those who need the therapist first, then goes by code.
func (s sheet) clients(r Roster) Part {
	if len(r.Rows) == 0 {
		return s.part("clients", s.note("no-clients"))
	}
	byNeed := func(a, b OverviewRow) int {
		return cmp.Or(cmp.Compare(need(s.calls(b, r.Today)), need(s.calls(a, r.Today))), cmp.Compare(a.Code, b.Code))
	}
	var nodes []Node
	for _, row := range slices.SortedFunc(slices.Values(r.Rows), byNeed) {
		nodes = append(nodes, s.client(row, r.Today))
	}
	return s.part("clients", nodes...)
}

// counted is a number of things in words; nothing where there are none.
func (s sheet) counted(key string, n int) string {
	if n == 0 {
		return ""
	}
	return s.say(key, "n", n)
}

// urgency is above zero where the therapist is asked to act.
func urgency(a plan.Action) int { return max(0, a.Rank()-plan.Pause.Rank()+1) }
