package page

import (
	"encoding/xml"
	"fmt"
	"regexp"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/figure"
	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Charts on a page: what they say, that their table says the same, and what a client's must not show.

func hasChart(n Node) bool { return n.Chart != nil }

func nm(v float64) basis.Num[unit.NewtonMetres] {
	return basis.Given("torque", basis.Rule{Name: "for a test"}, unit.NewtonMetres(v), "")
}

// tests are tests of knee extension, 14 days apart from the event on: left and right; a leg of 0 was not tested.
func testsOf(event unit.Day, values ...[2]float64) (all []finding.StrengthTest) {
	for i, v := range values {
		t := finding.StrengthTest{On: event.AddDays(14 * i), Test: "knee-extension"}
		for k, leg := range []*finding.Leg{&t.Left, &t.Right} {
			if v[k] > 0 {
				leg.Torque = nm(v[k])
			}
		}
		all = append(all, t)
	}
	return all
}

// chartedPlan is the sample with tests of strength.
func chartedPlan(change func([]finding.StrengthTest), values ...[2]float64) *plan.Plan {
	p := samplePlan()
	tests := testsOf(p.Event.Date, values...)
	if change != nil {
		change(tests)
	}
	p.Found = &finding.Findings{Strength: tests}
	return p
}

func TestStrengthChartOfLittle(t *testing.T) {
	w := sampleWords(t)
	for _, tt := range []struct {
		name       string
		plan       *plan.Plan
		dots       int
		says, bare []string // sentences that stand there, and that do not
	}{
		{"no test", chartedPlan(nil), 0, []string{"chart.none"}, []string{"chart.how"}},
		{"tests of which none gave a value", chartedPlan(nil, [2]float64{0, 0}), 0, []string{"chart.none"}, []string{"chart.how"}},
		{"one test", chartedPlan(nil, [2]float64{80, 100}), 2, []string{"chart.how", "chart.one"}, []string{"chart.none", "chart.gap", "chart.anew"}},
		{"one leg of one test", chartedPlan(nil, [2]float64{80, 0}), 1, []string{"chart.one", "chart.gap"}, []string{"chart.none"}},
		{"equal values", chartedPlan(nil, [2]float64{90, 90}, [2]float64{90, 90}), 4, []string{"chart.how"}, []string{"chart.one", "chart.gap", "chart.anew", "chart.band"}},
		{"a gap", chartedPlan(nil, [2]float64{80, 100}, [2]float64{0, 100}, [2]float64{90, 100}), 5, []string{"chart.gap"}, []string{"chart.anew"}},
		{"another gauge", chartedPlan(func(all []finding.StrengthTest) { all[1].Alike.Gauge = "another" }, [2]float64{80, 100}, [2]float64{90, 100}), 4, []string{"chart.anew"}, []string{"chart.gap"}},
		{"before the event", chartedPlan(func(all []finding.StrengthTest) { all[0].On = all[0].On.AddDays(-7) }, [2]float64{80, 100}, [2]float64{90, 100}), 4, []string{"chart.early"}, []string{"chart.anew"}},
	} {
		node := handout{tt.plan, w}.strongChart()
		says, dots := said(View{Parts: []Part{{Nodes: []Node{node}}}}), 0
		for _, n := range inside([]Node{node}, hasChart) {
			dots += strings.Count(string(n.Picture()), "<circle")
			says += n.Says
		}
		if dots != tt.dots {
			t.Errorf("%s: %d dots, want %d", tt.name, dots, tt.dots)
		}
		for _, key := range tt.says {
			if !strings.Contains(says, w.Say(key)) {
				t.Errorf("%s: %q is not said in %q", tt.name, w.Say(key), says)
			}
		}
		for _, key := range tt.bare {
			if strings.Contains(says, w.Say(key)) {
				t.Errorf("%s: %q is said", tt.name, w.Say(key))
			}
		}
	}
}

// A line is in pieces where a test is missing, was made in another way, or the event lies between.
func TestNoLineJoinsWhatIsApart(t *testing.T) {
	three := [][2]float64{{80, 100}, {85, 101}, {90, 102}}
	for _, tt := range []struct {
		name   string
		change func([]finding.StrengthTest)
		want   [2]int // pieces of the own and of the other leg
	}{
		{"alike", nil, [2]int{1, 1}},
		{"another gauge", func(all []finding.StrengthTest) { all[2].Alike.Gauge = "b" }, [2]int{2, 2}},
		{"another lever", func(all []finding.StrengthTest) { all[1].Alike.Levers[0] = 0.3; all[2].Alike.Levers[0] = 0.3 }, [2]int{2, 2}},
		{"a leg missing", func(all []finding.StrengthTest) { all[1].Left = finding.Leg{NotTested: "sore"} }, [2]int{2, 1}},
		{"another way while a leg is missing", func(all []finding.StrengthTest) {
			all[1].Left = finding.Leg{}
			all[1].Alike.Gauge = "b"
			all[2].Alike.Gauge = "b"
		}, [2]int{2, 2}},
		{"the event between", func(all []finding.StrengthTest) { all[0].On = all[0].On.AddDays(-1) }, [2]int{2, 2}},
	} {
		p := chartedPlan(tt.change, three...)
		lines := strengthCourse(p, "knee-extension", [2]unit.Side{unit.Left, unit.Right}, false).lines([2]string{"a", "b"})
		for k, l := range lines {
			pieces := 0
			for i, s := range l.Spots {
				if i == 0 || s.Breaks {
					pieces++
				}
			}
			if pieces != tt.want[k] {
				t.Errorf("%s: line %d has %d pieces, want %d", tt.name, k, pieces, tt.want[k])
			}
		}
	}
}

// TestChartsOfTheDemo holds every chart of the invented clinic: light, named by its own words, as many dots as its table has values,
// letters that keep apart, and on the client's page no ratio, no mark and no span of weeks to come.
func TestChartsOfTheDemo(t *testing.T) {
	w, d := sampleWords(t), deskWords(t)
	charts, spans, dates := 0, 0, 0
	for _, p := range demoPlans(t) {
		for _, v := range []View{Handout(p, w), Worksheet(p, d)} {
			for _, part := range v.Parts {
				for _, n := range inside(part.Nodes, hasChart) {
					name := fmt.Sprintf("%s, %s, %s", p.Client.Code, v.Kind, n.Title)
					charts++
					keptApart(t, name, n)
					if len(n.Picture()) > 8192 {
						t.Errorf("%s: %d bytes", name, len(n.Picture()))
					}
					if r := readPicture(t, n); r.Says.Text != asRead(n.Says) || r.Title.Text == "" || r.Role != "img" {
						t.Errorf("%s: the ear hears %q", name, r.Says.Text)
					}
					c := n.Chart.Course
					if c == nil {
						dates++
						continue
					}
					if c.Weeks != nil {
						spans++
					}
					if v.Kind == "handout" && (c.Unit == "%" || c.Weeks != nil || len(c.Marks) > 0 || strings.Contains(n.Says, "%")) {
						t.Errorf("%s: a ratio, a mark or a span stands on the client's page", name)
					}
				}
				for _, g := range inside(part.Nodes, ofClass("chart-group")) {
					sameNumbers(t, p.Client.Code+", "+v.Kind, g)
				}
			}
		}
	}
	if charts < 30 || spans < 1 || dates < 5 {
		t.Errorf("only %d charts, %d spans, %d lines of dates", charts, spans, dates)
	}
}

// sameNumbers holds that the table of a chart has as many values as the chart has dots.
func sameNumbers(t *testing.T, name string, g Node) {
	t.Helper()
	dots, values := 0, 0
	for _, n := range inside(g.Nodes, hasChart) {
		dots += strings.Count(string(n.Picture()), "<circle")
	}
	for _, table := range inside(g.Nodes, func(n Node) bool { return n.Kind == "table" }) {
		for _, row := range table.Rows {
			for _, cell := range row[1:] {
				if regexp.MustCompile(`\d`).MatchString(textOf(cell.Spans)) {
					values++
				}
			}
		}
	}
	if dots == 0 || dots != values {
		t.Errorf("%s: %d dots, %d values in the table", name, dots, values)
	}
}

// keptApart holds that no two texts of a chart lie on each other, with letters as wide as those of a common face.
func keptApart(t *testing.T, name string, n Node) {
	t.Helper()
	var svg struct {
		Texts []struct {
			Class string  `xml:"class,attr"`
			X     float64 `xml:"x,attr"`
			Y     float64 `xml:"y,attr"`
			Text  string  `xml:",chardata"`
		} `xml:"text"`
	}
	if err := xml.Unmarshal([]byte(n.Picture()), &svg); err != nil {
		t.Fatal(err)
	}
	const size = 13.0
	left := make([]float64, len(svg.Texts))
	wide := make([]float64, len(svg.Texts))
	for i, a := range svg.Texts {
		wide[i] = float64(len([]rune(a.Text))) * 0.55 * size
		left[i] = a.X - wide[i]*map[string]float64{"c-y": 1, "c-x": 0.5}[a.Class]
		for k, b := range svg.Texts[:i] {
			if left[i] < left[k]+wide[k] && left[k] < left[i]+wide[i] && a.Y-b.Y < size*0.9 && b.Y-a.Y < size*0.9 {
				t.Errorf("%s: %q lies on %q", name, a.Text, b.Text)
			}
		}
	}
}

// Whatever stands in a chart comes out as it went in, and does nothing.
func TestChartOfHostileTextOnAPage(t *testing.T) {
	p := samplePrinter(t)
	for _, bad := range append(hostile, "</title><script>x</script>", "' onload='x") {
		c := figure.Chart{ID: "c" + bad, Unit: bad, Across: bad, Lines: []figure.Course{{Name: bad, Spots: []figure.Spot{{X: 1, Y: 2}}}}, Marks: []figure.Level{{At: 1, Name: bad}}}
		d := figure.DateLine{ID: "d" + bad, Across: bad, Days: []figure.LineDay{{X: 1, Name: bad, Kinds: []figure.DateKind{figure.StartDay}}}}
		v := View{Kind: "hold", Parts: []Part{{ID: "p", Title: "p", Nodes: []Node{charted(bad+" n", bad, bad+" s", c), dated(bad+" n", bad, bad+" s", d)}}}}
		if n := v.Parts[0].Nodes; n[0].Chart == nil || n[1].Chart == nil {
			t.Fatalf("%q: not drawn", bad)
		}
		for _, n := range v.Parts[0].Nodes {
			if got := readPicture(t, n); got.Title.Text != asRead(bad+" n") {
				t.Errorf("%q: the title is %q", bad, got.Title.Text)
			}
		}
		lawHolds(t, p, v)
		if page := string(printed(t, p.HTML, v)); regexp.MustCompile(`<script|<[^>]*\son[a-z]+=`).MatchString(page) {
			t.Errorf("%q came alive", bad)
		}
	}
}

// A weight of the chart is what stands in the box, and what is a ceiling has its bar.
func TestWeightsAreThoseOfTheBox(t *testing.T) {
	w, dots := sampleWords(t), 0
	for _, p := range demoPlans(t) {
		h := handout{p, w}
		for _, r := range p.Prescriptions {
			for _, s := range h.weights(r) {
				d, _ := doseOf(r, int(s.X))
				dots++
				if text := h.loadOf(r, d); !strings.Contains(text, h.w.Number(s.Y, 2)) || s.Ceiling == d.Due {
					t.Errorf("%s, %s, week %g: drawn %g, ceiling %t; the box says %s", p.Client.Code, r.Exercise.ID, s.X, s.Y, s.Ceiling, text)
				}
			}
		}
	}
	if dots < 20 {
		t.Errorf("only %d weights", dots)
	}
}
