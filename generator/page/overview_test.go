package page

import (
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

func TestOverviewOf(t *testing.T) {
	row := OverviewOf(deskPlan())
	if row.Code != "tern-04" || row.Ends != civil("2026-05-03") || row.Action != plan.Stay || len(row.Missing) != 1 || row.Missing[0].Measure != "flexion.percent-of-other" ||
		strings.Join(row.Stale, " ") != "flexion.percent-of-other" || len(row.Flags) != 1 || row.What != "acl-reconstruction" || row.Side != unit.Left {
		t.Errorf("the row of the sample is %+v", row)
	}
}

// A stage that was set ahead calls for the therapist until all has been passed; what a client told is of the gravest report.
func TestOverviewCallsNoLongerThanItMust(t *testing.T) {
	p := deskPlan()
	p.Stage.Ahead = true
	if !OverviewOf(p).Ahead {
		t.Error("a stage ahead calls")
	}
	p.Stage.Answered = true
	if OverviewOf(p).Ahead {
		t.Error("what was passed since calls no more")
	}
	p.Symptoms.Told = []plan.Signal{{Action: plan.Stay, Because: "mild"}, {Action: plan.StepBack, Because: "grave"}, {Action: plan.Stay, Because: "mild again"}}
	if got := OverviewOf(p).Told; got != "grave" {
		t.Errorf("told %q, want the gravest", got)
	}
}

// TestOverviewRowStaysSmall: a row is a note in the manifest, whose room is limited.
func TestOverviewRowStaysSmall(t *testing.T) {
	p := deskPlan()
	for range 50 {
		p.Flags = append(p.Flags, plan.Flag{ID: "x", About: "knee-extension.lsi", Says: basis.Said(strings.Repeat("long ", 100))})
	}
	row := OverviewOf(p)
	if len(row.Flags) != flagsKept || row.MoreFlags != 51-flagsKept {
		t.Errorf("%d flags kept and %d counted of 51", len(row.Flags), row.MoreFlags)
	}
	for _, f := range row.Flags {
		if len([]rune(f.Says)) > lettersOf+1 {
			t.Errorf("a flag of %d letters", len(f.Says))
		}
	}
}

func overviewRoster() Roster {
	stay := OverviewOf(deskPlan())
	stay.Stale, stay.Starts, stay.Ends = nil, civil("2026-06-01"), civil("2026-06-28")
	row := func(code string) OverviewRow {
		return OverviewRow{Code: code, Recorded: true, Starts: civil("2026-06-01"), Ends: civil("2026-06-28"), NextVisit: civil("2026-06-29"), LastTest: civil("2026-05-29")}
	}
	quiet, contact, told, pause, over, missed, near := row("auk-01"), row("wren-02"), row("linnet-13"), row("knot-09"), row("ruff-05"), row("dotterel-06"), row("snipe-08")
	contact.Action, contact.Because = plan.Contact, "2+ at the session after"
	told.Told = "reported: pain of the giving-way kind on 2026-06-05"
	pause.Action, pause.Held = plan.Pause, true
	over.Starts, over.Ends, over.LastTest = civil("2026-05-01"), civil("2026-05-28"), civil("2026-06-29")
	missed.NextVisit = civil("2026-06-05")
	near.Missing = []OverviewMark{{Measure: "hop-single.lsi", Near: true}, {Measure: "own.measure"}, {Measure: "run.any-4", AnyOf: []string{"hop-single.lsi", "acl-rsi"}}}
	return Roster{Clinic: &client.Clinic{Name: "Saltmarsh Knee Clinic"}, Today: civil("2026-06-08"), Rows: []OverviewRow{quiet, near, stay, missed, over, told, pause, contact},
		Failed: []Failed{{Code: "gull-03", Mistakes: 2, First: "clients/gull-03/client.toml:4: no side", Kept: true}, {Code: "eider-11", Mistakes: 1}}, Waiting: []string{"plover-10"}}
}

func TestOverviewOrder(t *testing.T) {
	text := said(Overview(overviewRoster(), deskWords(t)))
	last := -1
	for _, row := range []struct{ want, why string }{
		{"Test due within 7 days: dotterel-06", "whose visit is past is due"},
		{"No current block: plover-10, ruff-05", "whose block is over, and who never had one"},
		{"eider-11 | 1 | – | there are none", "mistakes first, by code"},
		{"gull-03 | 2 | clients/gull-03/client.toml:4: no side | left as they were", "the earlier page is kept"},
		{"CONTACT the responsible clinician, and pause: 2+ at the session after", "contact first, in words and with its reason"},
		{"PAUSE loaded", "then pause"},
		{"Told in a log, and on no page: reported: pain of the giving-way kind on 2026-06-05. Ask the client.", "then what a client told"},
		{"Block 0 ended on", "then who has no block"},
		{"The visit of Fri 5 June", "then who was not tested again"},
		{"stay: repeat the last completed load", "then symptoms that stay"},
		{"Near the mark of the next stage: single hop.", "then near marks"},
		{"single hop, own.measure; single hop or ACL-RSI", "an any-of says its choices, and a measure without a word its id"},
		{"Nothing calls for you first.", "and last who needs nothing"},
	} {
		at := strings.Index(text, row.want)
		if at <= last {
			t.Errorf("%q stands at %d after %d: %s", row.want, at, last, row.why)
		}
		last = at
	}
	if strings.Contains(text, "‹") {
		t.Error("words that are not there")
	}
	if t.Failed() {
		t.Log(text)
	}
}

func TestOverviewKnowsNoDayUnlessTold(t *testing.T) {
	r := overviewRoster()
	r.Today = unit.Day{}
	text := said(Overview(r, deskWords(t)))
	for _, judged := range []string{"OVER", "ended on", "is past", "Test due within"} {
		if strings.Contains(text, judged) {
			t.Errorf("%q is said without a day", judged)
		}
	}
}

func TestOverviewLinksAndFolds(t *testing.T) {
	r := overviewRoster()
	for i := range 5 {
		r.Rows[0].Flags = append(r.Rows[0].Flags, plan.Flag{ID: "gap", About: "brace", Says: basis.Said("flag number " + string(rune('1'+i)))})
	}
	v := Overview(r, deskWords(t))
	page := string(printed(t, samplePrinter(t).HTML, v))
	for _, want := range []string{`<a href="../hand/auk-01/handout.html">`, `<a href="../hand/auk-01/handout.md">`, `<a href="auk-01/worksheet.html">`, `<a href="auk-01/retest.html">`,
		`<a href="../hand/knot-09/hold.html">`, `<a href="#client-ruff-05">`, `id="client-ruff-05"`, "<summary>2 more flags</summary>"} {
		if !strings.Contains(page, want) {
			t.Errorf("not on the page: %s", want)
		}
	}
	if strings.Contains(page, "hand/auk-01/hold.html") || strings.Contains(page, `href="#client-plover-10"`) {
		t.Error("a link to a page or place that is not there")
	}
	if folded := strings.Index(page, "<details"); strings.Index(page, "flag number 3") > folded || strings.Index(page, "flag number 4") < folded {
		t.Error("three flags stand open, the others are folded")
	}
	lawHolds(t, samplePrinter(t), v)
}

// TestOnlyPagesOfOursAreLinked: a relative link may lead to a client's pages and nowhere else.
func TestOnlyPagesOfOursAreLinked(t *testing.T) {
	for href, kept := range map[string]bool{"../hand/tern-04/handout.html": true, "tern-04/worksheet.html": true, "tern-04/retest.html": true, "../hand/tern-04/hold.md": true,
		"../../etc/passwd": false, "../hand/../x/handout.html": false, "../hand/tern-04/plan.json": false, "/tern-04/worksheet.html": false, "file:///x/handout.html": false,
		"../hand/tern-04/handout.html#x": false} {
		if got := destination(href); (got != "") != kept {
			t.Errorf("%s is let through: %q", href, got)
		}
	}
}
