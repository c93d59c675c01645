package page

import (
	"strings"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/text"
)

// note is the therapist's own words, Markdown turned into nodes. Raw HTML is dropped; links go to https only.
func (h handout) note() Part {
	title := h.w.Say("note.title-clinic")
	if t := h.therapist(); t != nil {
		title = h.w.Say("note.title", "name", t.Name)
	}
	return h.part("note", title, fromMarkdown(h.Client.Note)...)
}

// fromMarkdown turns a person's Markdown into nodes: headings, paragraphs and flat lists; the rest becomes text.
func fromMarkdown(source string) []Node {
	src := []byte(source)
	return blocks(goldmark.DefaultParser().Parse(text.NewReader(src)), src)
}

func blocks(parent ast.Node, src []byte) (nodes []Node) {
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.HTMLBlock, *ast.ThematicBreak:
		case *ast.Heading:
			nodes = append(nodes, Node{Kind: "text", Class: "note-heading", Spans: []Span{strong(textOf(inline(n, src, Span{})))}})
		case *ast.List:
			nodes = append(nodes, Node{Kind: "list", Ordered: n.IsOrdered(), Items: items(n, src)})
		case *ast.CodeBlock, *ast.FencedCodeBlock:
			nodes = append(nodes, paragraph("", string(n.Lines().Value(src))))
		case *ast.Blockquote:
			nodes = append(nodes, blocks(n, src)...)
		default:
			nodes = append(nodes, spoken("", inline(n, src, Span{})...))
		}
	}
	return nodes
}

// items flattens a list: an item inside an item follows it.
func items(list *ast.List, src []byte) (all [][]Span) {
	for item := list.FirstChild(); item != nil; item = item.NextSibling() {
		var own []Span
		var below [][]Span
		for b := item.FirstChild(); b != nil; b = b.NextSibling() {
			switch inner := b.(type) {
			case *ast.List:
				below = append(below, items(inner, src)...)
			case *ast.HTMLBlock:
			default:
				if len(own) > 0 {
					own = append(own, Span{Text: " "})
				}
				own = append(own, inline(b, src, Span{})...)
			}
		}
		all = append(append(all, own), below...)
	}
	return all
}

// inline gathers the runs of text of a block with the style that they stand in.
func inline(parent ast.Node, src []byte, style Span) (spans []Span) {
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		inner := style
		switch n := n.(type) {
		case *ast.RawHTML:
			continue
		case *ast.Text:
			inner.Text = unescaped(n.Segment.Value(src), n.IsRaw())
			if n.SoftLineBreak() || n.HardLineBreak() {
				inner.Text += " "
			}
			spans = append(spans, inner)
			continue
		case *ast.String:
			inner.Text = string(n.Value)
			spans = append(spans, inner)
			continue
		case *ast.AutoLink:
			inner.Text = string(n.Label(src))
			spans = append(spans, linked(inner, string(n.URL(src))))
			continue
		case *ast.Link:
			inner = linked(inner, string(n.Destination))
		case *ast.Emphasis:
			inner.Strong, inner.Em = inner.Strong || n.Level > 1, inner.Em || n.Level == 1
		}
		spans = append(spans, inline(n, src, inner)...)
	}
	return spans
}

func linked(s Span, href string) Span {
	if strings.HasPrefix(href, "https://") {
		s.Href = href
	}
	return s
}
