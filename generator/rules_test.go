package generator_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"paceleaf/generator/client"
	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	lexicon "paceleaf/generator/words"
	"paceleaf/templates"
)

// The rules of the trade that speak of the client's page (10, 18, 30 to 32), held on the pages themselves: of the invented
// clients, of variations of them, and of the demo clinic with a line changed. The other rules are tested in plan.

// lastRule is the number of the last rule in DEVELOPERS.md.
const lastRule = 32

// TestEveryRuleHasATest: each rule of DEVELOPERS.md has a test that bears its number.
func TestEveryRuleHasATest(t *testing.T) {
	if n := strings.Count(document(t, "DEVELOPERS.md"), fmt.Sprintf("\n%d. ", lastRule)); n != 1 {
		t.Fatalf("rule %d stands %d times in DEVELOPERS.md", lastRule, n)
	}
	tests := map[string][]string{}
	named := regexp.MustCompile(`^TestRule(\d\d)[a-z]?_`)
	err := filepath.WalkDir(".", func(name string, e fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(name, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		for _, d := range file.Decls {
			if f, is := d.(*ast.FuncDecl); is {
				if m := named.FindStringSubmatch(f.Name.Name); m != nil {
					tests[m[1]] = append(tests[m[1]], f.Name.Name)
				}
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for n := 1; n <= lastRule; n++ {
		if number := fmt.Sprintf("%02d", n); len(tests[number]) == 0 {
			t.Errorf("no test is named TestRule%s_…", number)
		}
	}
}

// issued is a client's plan and the page made of it.
type issued struct {
	*plan.Plan
	page.View
}

// handed are the pages of everybody, with the words that they are made of.
var handed = sync.OnceValues(func() (all []issued, w *lexicon.Words) {
	_, base, clinic := population(&testing.T{})
	w = open(&testing.T{}, town(clinic, nil, nil)).Words()
	for _, p := range base {
		all = append(all, issued{p, page.Handout(p, w)})
	}
	return all, w
})

// changed is the demo's client tern-04 with a text replaced in one of its files, and its page.
func changed(t *testing.T, name, old, now string) (issued, *lexicon.Words) {
	t.Helper()
	files := demoFiles(t)
	name = "clients/tern-04/" + name
	text := string(files[name].Data)
	if strings.Count(text, old) != 1 {
		t.Fatalf("%q stands %d times in %s", old, strings.Count(text, old), name)
	}
	files[name].Data = []byte(strings.Replace(text, old, now, 1))
	house := open(t, files)
	done := house.Plan("tern-04")
	if done.Plan == nil {
		t.Fatal(done.Faults)
	}
	return issued{done.Plan, page.Handout(done.Plan, house.Words())}, house.Words()
}

// part is a section of a page; the empty one where it has none.
func (i issued) part(id string) page.Part {
	for _, p := range i.Parts {
		if p.ID == id {
			return p
		}
	}
	return page.Part{}
}

// texts are the lines of nodes in reading order: a heading, a paragraph, an item, a label with its value, a row.
func texts(nodes []page.Node) (lines []string) {
	for _, n := range nodes {
		if n.Title != "" {
			lines = append(lines, n.Title)
		}
		lines = append(lines, spans(n.Spans))
		for _, item := range n.Items {
			lines = append(lines, spans(item))
		}
		for _, f := range n.Facts {
			lines = append(lines, f.Label+" "+spans(f.Value))
		}
		for _, row := range n.Rows {
			var cells []string
			for _, c := range row {
				cells = append(cells, spans(c.Spans))
			}
			lines = append(lines, strings.Join(cells, " "))
		}
		lines = append(lines, texts(n.Nodes)...)
	}
	return slices.DeleteFunc(lines, func(s string) bool { return s == "" })
}

func spans(list []page.Span) (s string) {
	for _, span := range list {
		s += span.Text
	}
	return s
}

func (p issued) whole() (lines []string) {
	for _, part := range p.Parts {
		lines = append(append(lines, part.Title), texts(part.Nodes)...)
	}
	return lines
}

// groups are the groups of nodes whose class holds a word, wherever they stand.
func groups(nodes []page.Node, class string) (found []page.Node) {
	for _, n := range nodes {
		if n.Kind == "group" && slices.Contains(strings.Fields(n.Class), class) {
			found = append(found, n)
		}
		found = append(found, groups(n.Nodes, class)...)
	}
	return found
}

// Rule 10: a cue that contradicts the limit is not printed, and range and cue come from one number.
func TestRule10_CuesObeyTheLimit(t *testing.T) {
	const cue = "Straighten all the way and squeeze."
	for _, row := range []struct {
		name, limit string
		want        bool
		degrees     string
		why         string
	}{
		{"free to straighten", "", true, "straight (0°)", "nothing forbids the end of the movement"},
		{"straightening from 30°", "[30, 90]", false, "30°", "the knee may not go straight, so nobody says so"},
		{"straightening from 1°", "[1, 90]", false, "1°", "one degree is enough"},
		{"less bend only", "[0, 60]", true, "60°", "the straight end is allowed"},
	} {
		limit := ""
		if row.limit != "" {
			limit = "[[limit]]\nkind = \"straightening-under-load\"\nrange_deg = " + row.limit +
				"\nfrom = 2026-02-02\nset_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = 2026-02-02\nroute = \"letter\"\n"
		}
		p, _ := changed(t, "client.toml", "[setup.knee-extension]", limit+"[setup.knee-extension]")
		var exercise []string
		for _, g := range groups(p.part("exercises").Nodes, "exercise") {
			if strings.Contains(g.Title, "Seated knee extension") {
				exercise = texts([]page.Node{g})
			}
		}
		text := strings.Join(exercise, "\n")
		if len(exercise) == 0 || strings.Contains(text, cue) != row.want {
			t.Errorf("%s: the cue is printed: %v, want %v (%s)\n%s", row.name, !row.want, row.want, row.why, text)
		}
		if !strings.Contains(text, row.degrees) {
			t.Errorf("%s: the range does not say %s\n%s", row.name, row.degrees, text)
		}
	}
}

// Rule 10: on no page of anybody stands a cue beyond the range of the leg's weeks.
func TestRule10b_NoCueBeyondTheRange(t *testing.T) {
	all, _ := handed()
	kept, dropped := 0, 0
	for _, p := range all {
		slots, beyond, cues := map[string]map[string]bool{}, map[string]bool{}, map[string]string{}
		for _, r := range p.Prescriptions {
			title := r.Exercise.Title
			if slots[title] == nil {
				slots[title] = map[string]bool{}
			}
			slots[title][r.Slot.ID] = true
			for _, c := range r.Exercise.Words.Cues {
				if c.ReachesDeg == nil {
					continue
				}
				cues[title] = c.Text
				beyond[title] = beyond[title] || slices.ContainsFunc(r.Weeks, func(w plan.WeekDose) bool {
					return w.Range == nil || *c.ReachesDeg < w.Range.Straightest || *c.ReachesDeg > w.Range.MostBent
				})
			}
		}
		for _, g := range groups(p.part("exercises").Nodes, "exercise") {
			_, title, _ := strings.Cut(g.Title, ". ")
			if cues[title] == "" || len(slots[title]) > 1 {
				continue // an exercise of two slots stands twice, each with its own weeks
			}
			switch stands := slices.Contains(texts([]page.Node{g}), cues[title]); {
			case beyond[title] && stands:
				t.Errorf("%s: %q is printed, and %s may not go there in every week of each leg", p.Client.Code, cues[title], title)
			case beyond[title]:
				dropped++
			case stands:
				kept++
			default:
				t.Errorf("%s: %q is not printed, though every week of %s reaches it", p.Client.Code, cues[title], title)
			}
		}
	}
	if kept < 10 || dropped < 10 {
		t.Errorf("%d cues were kept and %d dropped: is the law still looking?", kept, dropped)
	}
}

const toldFirst = "only after your physiotherapist says so"

// Rule 18: on the client's page a closed activity has no date but a "not before", what is missing, and who decides.
func TestRule18b_NotBeforeOnThePage(t *testing.T) {
	all, w := handed()
	dated := 0
	for _, p := range all {
		var lines []string
		for _, id := range []string{"not-yet", "dates"} {
			lines = append(lines, texts(p.part(id).Nodes)...)
		}
		for _, a := range p.Activities {
			day := w.Day(a.NotBefore)
			for _, line := range lines {
				if !strings.HasPrefix(line, a.Activity.Title+" ") && !strings.Contains(line, " "+a.Activity.Title+":") {
					continue
				}
				if a.State == "open" {
					t.Errorf("%s: %s is open, and the page says %q", p.Client.Code, a.Activity.ID, line)
				}
				if !a.NotBefore.IsZero() && strings.Contains(line, day) {
					dated++
					if before, _, _ := strings.Cut(line, day); !strings.Contains(strings.ToLower(before), "not before") && !strings.Contains(line, "not before this day") {
						t.Errorf("%s: a date without its \"not before\": %q", p.Client.Code, line)
					}
				}
			}
		}
		for _, line := range texts(p.part("not-yet").Nodes) {
			if strings.Contains(line, "ot before") && !strings.Contains(line, toldFirst) && !strings.Contains(line, strings.ToUpper(toldFirst[:1])+toldFirst[1:]) {
				t.Errorf("%s: a date, and not who decides: %q", p.Client.Code, line)
			}
		}
	}
	if dated < 50 {
		t.Errorf("only %d dates of activities were met: is the rule still looking?", dated)
	}
}

// Rule 23: a load from a logged set, on the road that a clinic takes: the demo's heron-07 has lifted no leg curl, and its log
// gives the other leg's. Its steps end in the log's own line, and without the log the weight is to be found.
func TestRule23c_ALoadFromTheDemosLog(t *testing.T) {
	const id = "leg-curl-machine.left.w1.load"
	files := demoFiles(t)
	name := "clients/heron-07/logs/2026-04-06.json"
	house := open(t, files)
	why, ok := page.WhyText(house.Plan("heron-07").Plan, id, house.Line)
	if !ok || !strings.Contains(why, "70 lb") || !regexp.MustCompile(regexp.QuoteMeta(name)+`:\d+, done\[`).MatchString(why) {
		t.Errorf("%s", why)
	}
	delete(files, name)
	if why, _ := page.WhyText(open(t, files).Plan("heron-07").Plan, id, nil); !strings.Contains(why, "find your weight") || regexp.MustCompile(`\d (kg|lb)`).MatchString(why) {
		t.Errorf("a load without lift and log: %s", why)
	}
}

// Rule 30: every page carries the plan for a flare of 48 hours, and says what a swollen knee does.
func TestRule30c_TheFlarePlanOnEveryPage(t *testing.T) {
	all, w := handed()
	for _, p := range all {
		flares := 0
		for _, n := range p.part("knee").Nodes {
			if strings.Contains(n.Class, "flare") {
				flares++
				if lines := texts([]page.Node{n}); !strings.Contains(n.Title, "48") || len(lines) < 5 {
					t.Errorf("%s: the plan for a flare is %q", p.Client.Code, lines)
				}
			}
		}
		if flares != 1 {
			t.Errorf("%s: %d plans for a flare, want 1", p.Client.Code, flares)
		}
	}
	if w.Say("flare.title") == "" {
		t.Error("no words")
	}
}

// Rule 30: a hold makes one page of the pause: what rests, what goes on, the plan for 48 hours, when to stop and call. It
// opens nothing that the block's page does not have.
func TestRule30d_ThePageOfAHold(t *testing.T) {
	files := demoFiles(t)
	house := open(t, files)
	before := house.Plan("tern-04").Plan
	files["clients/tern-04/holds/2026-04-15.toml"] = &fstest.MapFile{Data: []byte("by = \"imbali\"\nreason = \"swelling: after a long walk\"\n")}
	now := open(t, files).Plan("tern-04").Plan
	if now == nil || now.Symptoms.Held == nil {
		t.Fatal("no hold stands")
	}
	v := issued{now, page.Hold(now, house.Words())}
	for _, id := range []string{"head", "rests", "goes-on", "stop"} {
		if len(v.part(id).Nodes) == 0 {
			t.Errorf("the page of the hold has no part %s", id)
		}
	}
	text := strings.Join(v.whole(), "\n")
	for _, want := range []string{house.Words().Day(now.Symptoms.Held.From), "Leg press, one leg", now.Clinic.Phones[0].Number, now.Clinic.Emergency,
		house.Words().Say("flare.title"), house.Words().Say("flare.move")} {
		if !strings.Contains(text, want) {
			t.Errorf("the page of the hold does not say %q", want)
		}
	}
	if strings.Contains(text, "long walk") {
		t.Error("the therapist's reason stands on the client's page")
	}
	had := byLeg(before)
	for k, d := range byLeg(now) {
		if d.place < had[k].place {
			t.Errorf("%v: the hold brings %s, before it was %q", k, d.exercise, had[k].exercise)
		}
	}
	if len(texts(v.part("goes-on").Nodes)) >= len(texts(issued{before, page.Handout(before, house.Words())}.part("exercises").Nodes)) {
		t.Error("nothing rests")
	}
}

// redFlags are the signs that the words file knows, by key.
func redFlags(t *testing.T) (keys []string) {
	t.Helper()
	data, err := templates.FS.ReadFile("words/en-GB/client.toml")
	if err != nil {
		t.Fatal(err)
	}
	_, section, _ := strings.Cut(string(data), "\n[flag]\n")
	section, _, _ = strings.Cut(section, "\n[")
	for _, m := range regexp.MustCompile(`(?m)^([a-z-]+) =`).FindAllStringSubmatch(section, -1) {
		keys = append(keys, m[1])
	}
	if len(keys) < 15 {
		t.Fatalf("only %d red flags were found", len(keys))
	}
	return keys
}

// Rule 31: all red flags stand on every page, but that of a wound where nobody was operated on; in the first six weeks calf, chest, fever and wound come first, later the pop,
// the giving way, the locked knee and the sudden swelling.
func TestRule31_RedFlagsOnEveryPage(t *testing.T) {
	all, w := handed()
	flags := redFlags(t)
	early, late := 0, 0
	for _, p := range all {
		lines := texts(p.part("stop").Nodes)
		operated := slices.ContainsFunc(p.Client.Events, func(e client.Event) bool { return e.Kind == client.Operation })
		for _, f := range flags {
			if f == "wound" && !operated {
				continue
			}
			if !slices.Contains(lines, w.Say("flag."+f)) {
				t.Errorf("%s: the red flag %q is missing", p.Client.Code, f)
			}
		}
		place := func(flag string) int { return slices.Index(lines, w.Say("flag."+flag)) }
		first, second := []string{"calf", "fever", "wound"}, []string{"pop", "giving-way", "locked", "sudden-swelling"}
		if p.Stage.WeeksSince >= 6 {
			first, second, late = second, first, late+1
		} else {
			early++
		}
		for _, a := range first {
			for _, b := range second {
				if place(a) >= 0 && place(b) >= 0 && place(a) > place(b) && (operated || p.Event.Kind == client.Injury) {
					t.Errorf("%s, week %d: %s stands after %s", p.Client.Code, p.Stage.WeeksSince, a, b)
				}
			}
		}
		if chest := place("chest"); chest > place("calf") || chest > place("pop") {
			t.Errorf("%s: the chest does not come first", p.Client.Code)
		}
	}
	if early < 5 || late < 20 {
		t.Errorf("%d early pages and %d later ones: is the rule still looking?", early, late)
	}
}

// Rule 31: each number with its hours, and abroad that country's emergency number while the block touches the time away.
func TestRule31b_NumbersToCall(t *testing.T) {
	all, _ := handed()
	for _, p := range all {
		stop := strings.Join(texts(p.part("stop").Nodes), "\n")
		for _, phone := range p.Clinic.Phones {
			if !strings.Contains(stop, phone.Number) || !strings.Contains(stop, phone.Hours) {
				t.Errorf("%s: %s, %s, %s is not on the page", p.Client.Code, phone.Who, phone.Number, phone.Hours)
			}
		}
		if !strings.Contains(stop, p.Clinic.Emergency) {
			t.Errorf("%s: no emergency number", p.Client.Code)
		}
	}
	for _, row := range []struct {
		name, from, until string
		want              bool
		why               string
	}{
		{"after the block", "2026-05-11", "2026-05-17", false, "the next page will say it"},
		{"in the block", "2026-04-13", "2026-04-17", true, ""},
		{"its last day", "2026-05-03", "2026-05-17", true, "one day is enough"},
		{"the day after its last", "2026-05-04", "2026-05-17", false, ""},
		{"until its first day", "2026-04-01", "2026-04-06", true, ""},
	} {
		p, _ := changed(t, "client.toml", "from = 2026-05-11\nuntil = 2026-05-17", "from = "+row.from+"\nuntil = "+row.until)
		stop := strings.Join(texts(p.part("stop").Nodes), "\n")
		if got := strings.Contains(stop, "112"); got != row.want || !strings.Contains(stop, "999") {
			t.Errorf("%s: 112 stands on the page: %v, want %v beside 999 (%s)", row.name, got, row.want, row.why)
		}
	}
}

var (
	stopWith  = regexp.MustCompile(`(?i)\bstop with\b`)
	plainDate = regexp.MustCompile(`\b\d{4}-\d{2}-\d{2}\b|\b\d{1,2}[./]\d{1,2}[./]\d{2,4}\b`)
	bareReach = regexp.MustCompile(`\b\d+°(?:\s*(?:to|–|-)\s*\d+°)?`)
)

// Rule 32: "stop when 2 more were possible", never "stop with 2 left"; dates have their month in letters.
func TestRule32_HowThePageSpeaks(t *testing.T) {
	all, w := handed()
	reserves := 0
	for _, p := range all {
		for _, line := range p.whole() {
			switch {
			case stopWith.MatchString(line):
				t.Errorf("%s: %q", p.Client.Code, line)
			case plainDate.MatchString(line) && !strings.Contains(line, "Paceleaf"):
				t.Errorf("%s: a date in digits: %q", p.Client.Code, line)
			}
		}
		text := strings.Join(p.whole(), "\n")
		for _, r := range p.Prescriptions {
			if n := r.Weeks[0].Dose.Reserve; n != nil && *n > 1 {
				reserves++
				if want := fmt.Sprintf("stop when %d more were possible", *n); !strings.Contains(text, want) {
					t.Errorf("%s: %s does not say %q", p.Client.Code, r.Exercise.ID, want)
				}
			}
		}
		ends := p.Block.Starts.AddWeeks(p.Block.Weeks).AddDays(-1)
		for _, want := range []string{w.Day(p.Block.Starts), w.Day(ends)} {
			if !strings.Contains(text, want) {
				t.Errorf("%s: the page does not say %s", p.Client.Code, want)
			}
		}
	}
	if reserves < 100 {
		t.Errorf("only %d boxes with a reserve", reserves)
	}
}

// Rule 32: one box a leg, the operated leg first, word and side in each.
func TestRule32b_OneBoxALeg(t *testing.T) {
	all, w := handed()
	boxes := 0
	for _, p := range all {
		for _, exercise := range groups(p.part("exercises").Nodes, "exercise") {
			var sides []string
			for _, box := range groups(exercise.Nodes, "leg") {
				boxes++
				for _, side := range []unit.Side{unit.Left, unit.Right, unit.Both} {
					if strings.Contains(" "+box.Class+" ", " side-"+string(side)+" ") {
						sides = append(sides, string(side))
						if word := w.Say("leg." + string(side)); !strings.HasPrefix(box.Title, word) || side != unit.Both && box.Title == word {
							t.Errorf("%s: a box of the %s leg is headed %q: want side and word", p.Client.Code, side, box.Title)
						}
					}
				}
			}
			own, other := slices.Index(sides, string(p.Event.Side)), slices.Index(sides, string(p.Event.Side.Opposite()))
			if own > other && other >= 0 {
				t.Errorf("%s: %s has its boxes in the order %v; the %s leg was operated", p.Client.Code, exercise.Title, sides, p.Event.Side)
			}
			if len(sides) == 0 {
				t.Errorf("%s: %s has no box", p.Client.Code, exercise.Title)
			}
		}
	}
	if boxes < 200 {
		t.Errorf("only %d boxes", boxes)
	}
}

// Rule 32: degrees stand with a landmark, and the pin where one is typed.
func TestRule32c_DegreesWithALandmark(t *testing.T) {
	all, w := handed()
	ranges, pins := 0, 0
	for _, p := range all {
		text := strings.Join(texts(p.part("exercises").Nodes), "\n")
		for _, box := range groups(p.part("exercises").Nodes, "leg") {
			for _, n := range box.Nodes {
				if n.Class != "range" {
					continue
				}
				ranges++
				line := spans(n.Spans)
				if bareReach.MatchString(line) && !strings.Contains(line, "(") {
					t.Errorf("%s: degrees without a landmark: %q", p.Client.Code, line)
				}
			}
		}
		for _, r := range p.Prescriptions {
			if d := r.Weeks[0]; d.NearPin > 0 && d.Range != nil {
				pins++
				if want := fmt.Sprintf("Pin %d stops you at", d.NearPin); !strings.Contains(text, want) {
					t.Errorf("%s: %s does not say %q", p.Client.Code, r.Exercise.ID, want)
				}
			}
		}
	}
	if ranges < 200 || pins < 10 || w.Lang == "" {
		t.Errorf("%d ranges and %d pins: is the rule still looking?", ranges, pins)
	}
}

// Rule 32: missed sessions are not made up; the page says what it replaces and until when it holds.
func TestRule32d_MissedReplacedValid(t *testing.T) {
	demo := demoFiles(t)
	house := open(t, demo)
	p := house.Plan("tern-04").Plan
	text := strings.ReplaceAll(strings.Join(issued{p, page.Handout(p, house.Words())}.whole(), "\n"), "\u00a0", " ")
	for _, want := range []string{"A session: leave it out.", "no catching up", "replaces the page of block 2", "Throw the old one away", "Valid until Sun 3 May 2026"} {
		if !strings.Contains(text, want) {
			t.Errorf("the page does not say %q", want)
		}
	}
	first, _ := handed()
	for _, i := range first {
		if text := strings.Join(i.whole(), "\n"); len(i.Client.Blocks) == 1 && strings.Contains(text, "replaces the page") {
			t.Errorf("%s: the first page replaces nothing", i.Client.Code)
		}
	}
}
