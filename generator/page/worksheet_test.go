package page

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// said is all the text of a view in reading order, one line a text, item, fact or row.
func said(v View) string {
	var b strings.Builder
	b.WriteString(v.Title + "\n" + v.Draft + "\n")
	for _, p := range v.Parts {
		b.WriteString("## " + p.Title + "\n")
		saidNodes(&b, p.Nodes)
	}
	return strings.ReplaceAll(b.String(), "\u00a0", " ")
}

func saidNodes(b *strings.Builder, nodes []Node) {
	for _, n := range nodes {
		if n.Title != "" {
			b.WriteString("### " + n.Title + "\n")
		}
		if len(n.Spans) > 0 {
			b.WriteString(textOf(n.Spans) + "\n")
		}
		for _, item := range n.Items {
			b.WriteString(textOf(item) + "\n")
		}
		for _, f := range n.Facts {
			b.WriteString(f.Label + ": " + textOf(f.Value) + "\n")
		}
		if len(n.Head) > 0 {
			b.WriteString(strings.Join(n.Head, " | ") + "\n")
		}
		for _, row := range n.Rows {
			var cells []string
			for _, c := range row {
				cells = append(cells, textOf(c.Spans))
			}
			b.WriteString(strings.Join(cells, " | ") + "\n")
		}
		saidNodes(b, n.Nodes)
	}
}

func TestWorksheet(t *testing.T) {
	v := Worksheet(deskPlan(), deskWords(t))
	text := said(v)
	if path := os.Getenv("PACELEAF_SHOW"); path != "" {
		os.WriteFile(path, []byte(text), 0o644)
	}
	for _, row := range []struct{ want, why string }{
		{"DRAFT", "nothing is signed"},
		{"12 full weeks", "how long ago"},
		{"stay: repeat the last completed load", "symptoms in words"},
		{"Strength, knee-extension | 102.6 N·m; 1.6 N·m/kg | 127.1 N·m; 1.98 N·m/kg | 80.7 % ± 3.5 %", "the first sheet has both legs"},
		{"Learn to run: not earned yet", "the first sheet says whether the stage is earned"},
		{"Passed: 2 of 3", "what is passed is a count"},
		{"Out of date: bend against the other knee (at least 95 %)", "what is not passed stands there by name"},
		{"Find the weight with the client: Leg curl.", "what only the therapist can do"},
		{"knee-extension.lsi | 80.7 % | at least 80 % | met | running | near | delaware-2012, second-hand", "found, wanted, state, who asks, nearness, source"},
		{"flexion.percent-of-other | – | at least 95 % | out of date | run |", "missing is a dash"},
		{"› hop-single.lsi", "the choices of an any-of stand below it"},
		{"waived by Imbali R., physiotherapist, PT-0000: measured by hand", "who waived, and why"},
		{"Mon 6 April | 331 N / 410 N | 102.61 N·m / 127.1 N·m | 1.6008 N·m/kg / 1.9828 N·m/kg | 2.8328 % / 1.3933 % | 80.7 % | – | belt, isometric, best trial | not tested before the operation", "force, torque, per kg, spread of both legs, symmetry, why there is no ratio"},
		{"knee-extension.deficit = 100 − 80.7 % = 19.3 %", "what symmetry lacks"},
		{"each leg | 105 kg / – | 8 done, 0 in reserve / – | 133 kg", "moved load, set, estimate"},
		{"machine taken", "why a leg was not tested"},
		{"left leg (operated) | 1–2, from 6 April | 2 sets, 10 repetitions, stop when 2 more were possible, rest 120 s | 0° to 70°, pin 2 (75°) | 50 kg (20 + 2.5 a side) | 95 kg | 71.4286 %", "the weeks of the press, once where they ask the same"},
		{"Only week 1 is due. Later weeks are ceilings", "a ceiling"},
		{"find your weight: no lift test on this machine", "why there is no load"},
		{"right leg (other) | 1, from 6 April | 3 sets, hold 5 s, 5 times a day | find", "columns that say nothing are left out"},
		{"added weight is closed until 6 April | left (operated) | 1–2 | knee-extension-machine (quadriceps)", "one reason, two weeks, one line"},
		{"IN FORCE", "which limits win"},
		{"loaded bend | 0° to 70° | Mon 2 February | Mon 20 April | surgeon, Dr Auk, letter, Mon 2 February; instruction | repair under tension at 80° | clients/tern-04/client.toml, limit[0]", "who, when, route, reason, standing, from, lifts, place"},
		{"loaded bend, right (other) | 0° to 90° | Mon 23 February", "the one that lost"},
		{"added weight (only with straightening under load)", "a narrow limit"},
		{"closed: no row covers these days", "a gap is closed"},
		{"sets 3 → 2, left leg, weeks 1 to 4 | travel", "an override with its reason"},
		{"Running: closed, its waiting time ended on Mon 6 April. 2 of 3 passed. Missing: single hop", "an activity, with its day and what is missing"},
		{"left (operated) | straightening under load: from then 20° to 90°", "what loosens"},
		{"University of Delaware, 2012. Rehabilitation guidelines", "a source in full"},
		{"not a substitute for clinical judgement", "the sign-off line"},
		{"strength[0].left.peak_n | 318 N, 331 N | 318 N, 331 N", "what was typed, and where, trials on one line"},
		{"lift[0].left | 60 kg, 8, 0 | 60 kg, 8, 0", "a set in the order of its writing"},
		{"effusion | trace | trace", "a typed word"},
	} {
		if !strings.Contains(text, row.want) {
			t.Errorf("the worksheet does not say %q: %s", row.want, row.why)
		}
	}
	if t.Failed() {
		t.Log(text)
	}
	if unknown := regexp.MustCompile(`‹[^›]*›`).FindAllString(text, -1); len(unknown) > 0 {
		t.Errorf("words that are not there: %v", unknown)
	}
}

// TestWorksheetCanBeRedone: every number of the tables is the result of a line on the page, every line gives its result,
// and every line that computes stands above the lines of its inputs.
func TestWorksheetCanBeRedone(t *testing.T) {
	p := deskPlan()
	text := said(Worksheet(p, deskWords(t)))
	lines := 0
	for _, line := range strings.Split(text, "\n") {
		if strings.Contains(line, " = ") {
			lines++
			if err := redo(line); err != nil {
				t.Error(err)
			}
		}
	}
	if lines < 20 {
		t.Errorf("only %d sums stand on the page", lines)
	}
	for _, root := range rootsOf(p) {
		basis.Walk(root, func(s *basis.Step) {
			if line := Sum(s); !strings.Contains(text, line) {
				t.Errorf("no line on the page for %s", line)
			}
		})
	}
}

// TestWorksheetOfNothing: a client without a test, a limit or an exercise has a worksheet that says so.
func TestWorksheetOfNothing(t *testing.T) {
	p := deskPlan()
	empty := &plan.Plan{Clinic: p.Clinic, Program: p.Program, Client: p.Client, Block: p.Block, AsOf: p.AsOf}
	text := said(Worksheet(empty, deskWords(t)))
	if strings.Contains(text, "How each number came") {
		t.Error("an empty part has a heading")
	}
	for _, want := range []string{"No test is on file", "No limit applies", "No exercise is left", "No flag", "last stage"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing:\n%s", want, text)
		}
	}
}

func TestWorksheetPutsTheOperatedLegFirst(t *testing.T) {
	p := deskPlan()
	p.Event.Side = unit.Right
	text := said(Worksheet(p, deskWords(t)))
	right, left := strings.Index(text, "410 N / 331 N"), strings.Index(text, "right (operated) | left (other)")
	if right < 0 || left < 0 {
		t.Errorf("the operated leg does not come first: %d, %d", right, left)
	}
}

// TestDeskWordsAreComplete: each word of a closed set that a desk page prints has its sentence.
func TestDeskWordsAreComplete(t *testing.T) {
	s := sheet{deskWords(t)}
	for set, all := range map[string][]string{
		"side": unit.Side("").Words(), "grade": unit.Grade("").Words(), "standing": unit.Standing("").Words(), "kind": unit.Kind("").Words(), "work": unit.Work("").Words(),
		"action": plan.Action("").Words(), "other-leg": unit.OtherLeg("").Words(), "pain": client.PainKind("").Words(), "score": client.Trial("").Words(), "set-by": append(client.SetBy("").Words(), "program"),
		"route": client.Route("").Words(), "event": {"operation", "injury", "start"}, "state": {"met", "not met", "not tested", "out of date", "waived"}, "marks-state": {"not met", "not tested", "out of date"}, "since": {"load", "dose", "range", "level", "real change", "within error", "not known"}, "activity-state": {"closed", "open", "suspended"},
		"sense": {"at least", "above", "at most", "below"}, "level": {"block", "week", "session", "exercise"}, "role": {"operated", "other", "index", "both", "donor"},
		"date": {"lifts", "loosens", "tightens", "visit", "ends", "away"}, "allows": {"true", "false"}, "night": {"true", "false"}, "goal-state": {"reached", "not yet", "late", "not tested"}, "verdict": {"real change", "within error", "not known"}, "line": {"straight", "log-time", "resistant"}, "rate": {"multiplied", "linear", "early"}, "read": {"source", "second-hand", "from memory"},
		"delivery": client.Delivery("").Words(), "supervised": client.Supervision("").Words(), "talk": program.Talk("").Words(),
	} {
		for _, word := range all {
			if key := "desk." + set + "-" + dashes.Replace(word); !s.w.Has(key) {
				t.Errorf("desk.toml has no %s", key)
			}
		}
	}
}

// TestDeskSentencesAreUsed: no sentence of desk.toml is left over.
func TestDeskSentencesAreUsed(t *testing.T) {
	var code strings.Builder
	for _, file := range []string{"sheet", "worksheet", "attention", "askedmarks", "desksince", "desksums", "deskdecide", "deskfound", "deskflags", "deskweeks", "remarked", "letter", "lettertrained", "deskread", "deskswelling", "cameback", "asked", "bothlegs", "deskgoals", "prescribed", "weighed", "passedover", "named", "overview", "overviewcalls", "overviewclient", "othertests", "deskchanges", "desktrends", "deskcharts", "deskgroups", "deskload", "floor", "retest", "retestclosed", "cert", "known"} {
		data, err := os.ReadFile(file + ".go")
		if err != nil {
			t.Fatal(err)
		}
		code.Write(data)
	}
	sets := regexp.MustCompile(`word\("([a-z-]+)"`).FindAllStringSubmatch(code.String(), -1)
	for _, key := range deskWords(t).Keys() {
		key, ours := strings.CutPrefix(key, "desk.")
		if !ours {
			continue
		}
		inSet := slices.ContainsFunc(sets, func(s []string) bool { return strings.HasPrefix(key, s[1]+"-") })
		for _, prefix := range []string{"part-", "column-", "fact-", ""} {
			if bare, ok := strings.CutPrefix(key, prefix); ok && strings.Contains(code.String(), `"`+bare+`"`) {
				inSet = true
			}
		}
		if !inSet {
			t.Errorf("no page says desk.%s", key)
		}
	}
}
