package page

import (
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/Masterminds/sprig/v3"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
	"paceleaf/templates"
)

// built are the keys that the handout makes of a closed set. Those of an open set are only asked for with Has.
var built = map[string][]string{
	"knee.": {"left", "right", "both"}, "leg.": {"left", "right", "both"},
	"stop.": {"emergency", "today", "soon"},
	"flag.": slices.Concat(flagsEmergency, flagsEarly, flagsLater, flagsTodayToo, flagsSoon),
	"now.":  {"stay-until", "step-back-until", "pause", "pause-until", "contact", "contact-until"},
	"kind.": unit.Kind("").Words(), "set-by.": client.SetBy("").Words(),
	"tempo.":                {"lift", "hold", "lower"},
	"limit.hamstring-work-": {"none", "active", "resisted"},
	"limit.":                limitKeys(),
	"topic.":                {"walking", "brace", "bending", "straightening", "hamstrings", "effort", "kneeling", "sport"},
	"landmark.":             landmarkKeys(),
	"chart.":                {"knee-extension", "knee-flexion", "leg-left", "leg-right", "leg-both", "dates-limit", "dates-start", "dates-visit"},
	"role.":                 {"operated", "operated-too", "index", "injured", "other", "donor"},
	"goal.":                 {"quads-lag", "pain", "extension", "effusion", "flexion-percent-of-other", "knee-extension-lsi", "knee-flexion-lsi"},
	"diary.":                slices.Sorted(maps.Values(logWords)),
	"measure.":              nil, "device.": unit.DeviceKind("").Words(), "signal.": {"effusion", "effusion-rise", "pain-kind", "pain-middle", "pain-high", "pain-morning", "pain-morning-unknown", "stopped-for-pain", "report-swelling", "report-swelling-much"},
}

func limitKeys() (keys []string) {
	for _, k := range closable {
		keys = append(keys, string(k)+"-closed")
	}
	for _, k := range []unit.Kind{unit.PassiveBend, unit.ActiveBend, unit.LoadedBend} {
		keys = append(keys, string(k)+"-upto", string(k)+"-between")
	}
	return keys
}

func landmarkKeys() (keys []string) {
	for _, l := range landmarks {
		keys = append(keys, l.key)
	}
	return keys
}

// handoutFiles say only what stands in client.toml; the desk's files have a test of their own.
var handoutFiles = []string{"care", "charts", "closed", "equipment", "dateline", "diary", "hold", "allow", "angle", "brief", "dates", "exercises", "figures", "handout", "head", "knee", "known", "later", "legbox", "load", "move",
	"note", "notyet", "gate", "walking", "legs", "length", "ladder", "goals", "young", "sport", "away", "sets", "reasons", "smallprint", "stop", "routine", "symptoms", "pause", "onpage", "braceon", "school", "tightens", "tick", "timed", "weeks"}

// saidKeys are the keys that the handout's files say, and the beginnings of those that they build.
func saidKeys(t *testing.T) (whole, begun map[string]bool) {
	t.Helper()
	whole, begun = map[string]bool{}, map[string]bool{}
	for _, name := range handoutFiles {
		file, err := parser.ParseFile(token.NewFileSet(), name+".go", nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			lit, ok := n.(*ast.BasicLit)
			if !ok || lit.Kind != token.STRING {
				return true
			}
			if text, err := strconv.Unquote(lit.Value); err == nil {
				table, key, dotted := strings.Cut(text, ".")
				if dotted && table != "" && key == "" {
					begun[text] = true
				}
				if dotted && table != "" && key != "" && !strings.ContainsAny(text, " {:/") && strings.ToLower(text) == text && !strings.HasSuffix(text, ".html") {
					whole[text] = true
				}
			}
			return true
		})
	}
	return whole, begun
}

// TestEverySentenceIsThereAndUsed: no page says a key that the file does not have, no key stands there for nothing.
func TestEverySentenceIsThereAndUsed(t *testing.T) {
	w := sampleWords(t)
	whole, begun := saidKeys(t)
	for prefix, ends := range built {
		for _, end := range ends {
			whole[prefix+end] = true
		}
	}
	for key := range whole {
		if !w.Has(key) && !strings.HasSuffix(key, "-") {
			t.Errorf("the handout says %q, which client.toml does not have", key)
		}
	}
	for prefix := range begun {
		if _, listed := built[prefix]; !listed && prefix != "limit." {
			t.Errorf("the keys %q… are built; list their ends beside this test", prefix)
		}
	}
	for _, key := range clientKeys(t) {
		open := strings.HasPrefix(key, "measure.") || strings.HasPrefix(key, "signal.")
		calendar := slices.ContainsFunc([]string{"language.", "list.", "date.", "month.", "weekday.", "weekday-short."}, func(p string) bool { return strings.HasPrefix(key, p) })
		if !whole[key] && !open && !calendar {
			t.Errorf("nothing says %q of client.toml", key)
		}
	}
}

// TestNoKeyShows: no sample shows ‹key›, or a place that was not filled.
func TestNoKeyShows(t *testing.T) {
	p, w := samplePrinter(t), sampleWords(t)
	for name, plan := range samples() {
		if md := string(printed(t, p.Markdown, Handout(plan, w))); strings.ContainsAny(md, "‹{") {
			t.Errorf("%s: %s", name, md[strings.IndexAny(md, "‹{"):][:60])
		}
	}
}

// TestAllowedFunctionsKnowNothing: what a template may call reads no clock, no chance, no environment, no network.
func TestAllowedFunctionsKnowNothing(t *testing.T) {
	hermetic := sprig.HermeticTxtFuncMap()
	reachingOut := []string{"now", "date", "ago", "env", "rand", "uuid", "gethost", "gen", "htpasswd", "bcrypt", "derive", "build", "crypt", "os", "shuffle", "fail", "unix", "duration"}
	for _, name := range allowed {
		if hermetic[name] == nil {
			t.Errorf("sprig has no hermetic function %q", name)
		}
		for _, bad := range reachingOut {
			if strings.HasPrefix(strings.ToLower(name), bad) {
				t.Errorf("%q may reach out of the template", name)
			}
		}
	}
}

// TestCuesKeepTheLimit: a cue is printed only where every week shown, of every leg, reaches its angle.
func TestCuesKeepTheLimit(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	cues := strings.Join(h.cues(h.moves()[0]), " ")
	if !strings.Contains(cues, "Straighten fully") || strings.Contains(cues, "right angle") {
		t.Errorf("0° is allowed to both legs and 90° to one: %s", cues)
	}
	h.Prescriptions[1].Weeks[2].Range = reach(10, 70)
	if cues := strings.Join(h.cues(h.moves()[0]), " "); strings.Contains(cues, "Straighten fully") {
		t.Errorf("week 3 ends at 10°: %s", cues)
	}
	early := handout{sampleEarly(), sampleWords(t)}
	if cues := early.cues(early.moves()[0]); len(cues) > 0 {
		t.Errorf("no range says that 0° is allowed: %s", cues)
	}
}

// TestEveryFlagStandsOnEveryPage: the week changes the order of the red flags, and nothing else.
func TestEveryFlagStandsOnEveryPage(t *testing.T) {
	p, w := samplePrinter(t), sampleWords(t)
	var first []string
	for _, plan := range []*plan.Plan{sampleEarly(), samplePlan()} {
		md := string(printed(t, p.Markdown, Handout(plan, w)))
		for _, f := range built["flag."] {
			if !strings.Contains(md, w.Say("flag."+f)) {
				t.Errorf("the flag %s is missing", f)
			}
		}
		calf, pop := strings.Index(md, w.Say("flag.calf")), strings.Index(md, w.Say("flag.pop"))
		first = append(first, map[bool]string{true: "calf", false: "pop"}[calf < pop])
	}
	if !slices.Equal(first, []string{"calf", "pop"}) {
		t.Errorf("first flags %v, want calf in the first weeks and pop later", first)
	}
}

// TestOwnLegStandsFirst: also where the plan has it the other way round.
func TestOwnLegStandsFirst(t *testing.T) {
	md := string(printed(t, samplePrinter(t).Markdown, Handout(samplePlan(), sampleWords(t))))
	if left, right := strings.Index(md, "LEFT leg (operated)"), strings.Index(md, "RIGHT leg (other)"); left < 0 || right < left {
		t.Errorf("the operated leg stands at %d, the other at %d", left, right)
	}
}

// clientKeys are the keys of client.toml alone.
func clientKeys(t *testing.T) (keys []string) {
	t.Helper()
	file, err := templates.FS.ReadFile("words/en-GB/client.toml")
	if err != nil {
		t.Fatal(err)
	}
	table := ""
	for _, line := range strings.Split(string(file), "\n") {
		if name, ok := strings.CutPrefix(line, "["); ok {
			table = strings.TrimSuffix(name, "]") + "."
		} else if key, _, ok := strings.Cut(line, " = "); ok && !strings.HasPrefix(line, "#") {
			keys = append(keys, table+key)
		}
	}
	return keys
}

// TestHandoutReadsEasily: our own sentences, on whole pages, stay at grade 6 or below by both formulas.
func TestHandoutReadsEasily(t *testing.T) {
	w := sampleWords(t)
	for name, plan := range samples() {
		var texts []string
		for _, p := range Handout(plan, w).Parts {
			texts = append(texts, p.Title)
			texts = append(texts, readAloud(p.Nodes)...)
		}
		c := words.Count(texts...)
		if g := c.Grade(); g.ColemanLiau > 6 || g.ARI > 6 {
			t.Errorf("%s: %+v of %+v", name, g, c)
		}
	}
}

// readAloud are the texts of nodes, one a line that a reader sees.
func readAloud(nodes []Node) (texts []string) {
	for _, n := range nodes {
		texts = append(texts, n.Title, textOf(n.Spans))
		for _, i := range n.Items {
			texts = append(texts, textOf(i))
		}
		for _, f := range n.Facts {
			texts = append(texts, f.Label, textOf(f.Value))
		}
		texts = append(texts, readAloud(n.Nodes)...)
	}
	return texts
}
