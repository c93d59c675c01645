package page

import "regexp"

// On a page that runs from right to left, numbers keep their own order only where they are told to: 3 × 10 would read 10 × 3, and −5
// would read 5−. So each run of digits and their signs, and each run of Latin letters with digits, stands in an isolate of its own
// (Unicode bidirectional algorithm, rule X5b). Two letters that nobody sees do it, for HTML, Markdown and pictures alike.

const (
	isolate    = "\u2066" // left to right
	endIsolate = "\u2069"
)

// leftToRight are runs that read from left to right in every language: 3 × 10, −5°, 0.31 m, N·m/kg, tern-04, +44 1632 960 101.
var leftToRight = regexp.MustCompile(`[+−-]?[0-9A-Za-z]+(?:(?:[.·,:/_@#%°()\[\]–−+-]+|[ \x{a0}]?[×÷=−+–][ \x{a0}]?|[ \x{a0}])[0-9A-Za-z]+)*[%°]?`)

// numeral finds what needs the isolate: a letter alone keeps its order by itself.
var numeral = regexp.MustCompile(`[0-9]`)

// isolated puts the runs of a text into isolates.
func isolated(text string) string {
	if !numeral.MatchString(text) {
		return text
	}
	return leftToRight.ReplaceAllStringFunc(text, func(run string) string {
		if !numeral.MatchString(run) {
			return run
		}
		return isolate + run + endIsolate
	})
}

// isolatedIn does so in every text of a view that runs from right to left.
func isolatedIn(v View) View {
	if v.Dir != "rtl" {
		return v
	}
	v.Title, v.Draft, v.Running = isolated(v.Title), isolated(v.Draft), isolated(v.Running)
	for i := range v.Parts {
		v.Parts[i].Title = isolated(v.Parts[i].Title)
		isolateNodes(v.Parts[i].Nodes)
	}
	return v
}

func isolateNodes(nodes []Node) {
	for i := range nodes {
		n := &nodes[i]
		n.Title, n.Says = isolated(n.Title), isolated(n.Says)
		isolateSpans(n.Spans)
		for _, item := range n.Items {
			isolateSpans(item)
		}
		for j := range n.Facts {
			n.Facts[j].Label = isolated(n.Facts[j].Label)
			isolateSpans(n.Facts[j].Value)
		}
		for j := range n.Head {
			n.Head[j] = isolated(n.Head[j])
		}
		for _, row := range n.Rows {
			for _, cell := range row {
				isolateSpans(cell.Spans)
			}
		}
		isolateNodes(n.Nodes)
	}
}

func isolateSpans(spans []Span) {
	for i := range spans {
		spans[i].Text = isolated(spans[i].Text)
	}
}
