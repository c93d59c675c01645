package page

import (
	"bytes"
	"encoding/binary"
	"math/rand"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"
	"golang.org/x/net/html"
)

// The law of equal text: what the HTML says in reading order, the Markdown says, word for word.

func TestLawOfEqualText(t *testing.T) {
	p, w := samplePrinter(t), sampleWords(t)
	for name, plan := range samples() {
		t.Run(name, func(t *testing.T) { lawHolds(t, p, Handout(plan, w)) })
	}
}

// hostile texts: each must come out as it went in, and do nothing on the way.
var hostile = []string{"<script>alert(1)</script>", "</style><script>x</script>", "\" onload=\"x", "# head", "- item", "1. item", "12) item", "> quote",
	"| a | b |", "a|b", "*star*", "**bold**", "_under_", "`code`", "[link](javascript:alert(1))", "![img](https://x.example/y.png)", "https://x.example/y",
	"www.example.org", "a@b.example", "&amp; &lt; &#35;", "\\", "\\|", "a\\", "---", "===", "```", "~~~", "~~gone~~", "<b>", "<!-- -->", "{{.}}", "${x}", "$x$",
	"line\nline", "line\n# head", "a  \nb", "\tx", "+ x", "= x", ": x", "[ ] x", "[x]: https://x.example", "\u202eabc", "\x00\x07", "", " ", "\u00a0", "é 漢 🦵", "3 × 10", "2.5", "\xff"}

func TestHostileTextIsOnlyText(t *testing.T) {
	p := samplePrinter(t)
	for _, bad := range hostile {
		t.Run(bad, func(t *testing.T) {
			v := everywhere(bad)
			lawHolds(t, p, v)
			page := printed(t, p.HTML, v)
			if script := bytes.Contains(page, []byte("<script")); script {
				t.Error("a script came through")
			}
			if want := asRead(bad); want != "" && !strings.Contains(htmlText(t, page), want) {
				t.Errorf("the text %q is not on the page", want)
			}
		})
	}
}

// everywhere puts one text into every place of a view that holds text.
func everywhere(bad string) View {
	spans := []Span{{Text: bad}, {Text: bad, Strong: true}, {Text: bad, Em: true}, {Text: bad, Strong: true, Em: true}, {Text: bad, Href: bad}, {Text: bad, Href: "https://x.example/(a)_b_*c*?d=1&copy=2"}, {Text: " " + bad + " ", Strong: true}}
	cells := []Cell{{Spans: spans, Head: true, Class: bad}, {Spans: spans[:1]}, {}}
	nodes := []Node{
		{Kind: "text", Class: bad, ID: bad, Spans: spans}, {Kind: "list", Items: [][]Span{spans, spans[:1]}}, {Kind: "list", Ordered: true, Items: [][]Span{spans}},
		{Kind: "facts", Facts: []Fact{{Label: bad, Value: spans}}}, {Kind: "table", Title: bad, Head: []string{bad, bad}, Rows: [][]Cell{cells}},
		{Kind: "grid", Title: bad, Rows: [][]Cell{cells, nil}}, {Kind: "figure", ID: bad, Title: bad, Says: bad}, samplePicture(bad), {Kind: bad, Title: bad},
	}
	nodes = append(nodes, Node{Kind: "group", Class: bad, Title: bad, Level: 4, Nodes: nodes}, Node{Kind: "fold", Class: bad, ID: bad, Title: bad, Nodes: nodes})
	return View{Kind: bad, Lang: bad, Dir: bad, Title: bad, Draft: bad, Code: bad, Running: bad, Parts: []Part{{ID: bad, Title: bad, Nodes: nodes}, {Title: bad}}}
}

// FuzzLawOfEqualText draws views from a seed and one text of the fuzzer's.
func FuzzLawOfEqualText(f *testing.F) {
	for i, bad := range hostile {
		f.Add(uint64(i), bad)
	}
	p := samplePrinter(f)
	f.Fuzz(func(t *testing.T, seed uint64, text string) {
		if len(text) > 400 {
			return
		}
		lawHolds(t, p, everywhere(text))
		lawHolds(t, p, drawn(rand.New(rand.NewSource(int64(seed))), text))
	})
}

// drawn is a view of chance, built from hostile texts and one more.
func drawn(r *rand.Rand, text string) View {
	say := func() string {
		s := hostile[r.Intn(len(hostile))]
		if r.Intn(3) == 0 {
			s = text
		}
		return strings.Repeat(" ", r.Intn(2)) + s + strings.Repeat(" ", r.Intn(2))
	}
	spans := func() (all []Span) {
		for range r.Intn(5) {
			all = append(all, Span{Text: say(), Strong: r.Intn(3) == 0, Em: r.Intn(3) == 0, Href: []string{"", "", "#a", "tel:999", "https://x.example/_a_", "../hand/tern-04/handout.html"}[r.Intn(6)]})
		}
		return all
	}
	var node func(depth int) Node
	node = func(depth int) Node {
		n := Node{Kind: []string{"text", "list", "facts", "table", "group", "figure", "grid", "fold"}[r.Intn(8)], Title: say(), Says: say(), Level: r.Intn(8), Ordered: r.Intn(2) == 0, Spans: spans()}
		for range r.Intn(3) {
			n.Items = append(n.Items, spans())
			n.Facts = append(n.Facts, Fact{say(), spans()})
			n.Head = append(n.Head, say())
			n.Rows = append(n.Rows, []Cell{{Spans: spans()}, {Spans: spans(), Head: true}}[:r.Intn(3)])
			if depth > 0 {
				n.Nodes = append(n.Nodes, node(depth-1))
			}
		}
		return n
	}
	v := View{Draft: say(), Running: say()}
	for range r.Intn(4) {
		v.Parts = append(v.Parts, Part{ID: "x", Title: say(), Nodes: []Node{node(2), node(2)}})
	}
	return v
}

func TestDrawnViewsObeyTheLaw(t *testing.T) {
	p := samplePrinter(t)
	var seed [8]byte
	for i := range 400 {
		binary.LittleEndian.PutUint64(seed[:], uint64(i))
		lawHolds(t, p, drawn(rand.New(rand.NewSource(int64(i))), string(seed[:2])))
	}
}

func lawHolds(t *testing.T, p *Printer, v View) {
	t.Helper()
	page, md := printed(t, p.HTML, v), printed(t, p.Markdown, v)
	var back bytes.Buffer
	if err := goldmark.New(goldmark.WithExtensions(extension.GFM)).Convert(md, &back); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(htmlText(t, page), htmlText(t, back.Bytes())); diff != "" {
		t.Fatalf("HTML and Markdown do not say the same (-HTML +Markdown):\n%s\n%s", diff, md)
	}
	if bytes.Contains(back.Bytes(), []byte("<script")) || bytes.Contains(back.Bytes(), []byte("<img")) || bytes.Contains(back.Bytes(), []byte("javascript:\"")) {
		t.Fatalf("something of a text came alive:\n%s", back.Bytes())
	}
}

func printed(t *testing.T, print func(View) ([]byte, error), v View) []byte {
	t.Helper()
	b, err := print(v)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// asRead is a text as a reader counts it: what stands between spaces.
func asRead(text string) string { return strings.Join(strings.Fields(oneLine(text)), " ") }

// htmlText is what a page says in reading order, without its head. Only tags inside a sentence do not part words. The words
// of a picture are those of the line below it, which TestPictureSaysItsCaption holds, and its digits are a picture.
func htmlText(t *testing.T, page []byte) string {
	t.Helper()
	root, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	var walk func(*html.Node)
	walk = func(n *html.Node) {
		inline := n.Data == "strong" || n.Data == "em" || n.Data == "a" || n.Data == "span"
		switch {
		case n.Type == html.TextNode:
			b.WriteString(n.Data)
		case n.Type == html.ElementNode && (n.Data == "head" || n.Data == "svg" || n.Data == "script"):
			return
		case n.Type == html.ElementNode && !inline:
			b.WriteByte(' ')
			defer b.WriteByte(' ')
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c)
		}
	}
	walk(root)
	return strings.Join(strings.Fields(b.String()), " ")
}
