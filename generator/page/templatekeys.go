package page

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
)

// What a template may use, for whoever lays parts of their own over ours: printed by paceleaf keys template. A test holds
// these tables to the structs and to the functions that templates are really given.

// shown are the structs that a template meets, in the order in which it meets them.
var shown = []struct {
	name, about string
	of          reflect.Type
}{
	{"page", "what page.html.tmpl and page.md.tmpl are given", reflect.TypeFor[View]()},
	{"part", "a section; the template part is given First (is it the first of the page) and Part", reflect.TypeFor[Part]()},
	{"node", "one thing in a part; Kind says which fields count", reflect.TypeFor[Node]()},
	{"span", "a run of text; inline makes HTML or Markdown of a list of them", reflect.TypeFor[Span]()},
	{"fact", "a label with its value", reflect.TypeFor[Fact]()},
	{"cell", "a field of a table", reflect.TypeFor[Cell]()},
}

// fieldSays is what each field holds, by the name of its struct and its own.
var fieldSays = map[string]string{
	"page.Format": "1", "page.Kind": "handout, hold, worksheet, overview, floor, retest; the class of the body", "page.Lang": "language of the words", "page.Dir": "ltr or rtl",
	"page.Title": "of the window; DRAFT stands in it until the page is signed", "page.Draft": "the word and sentence of a draft; it must be printed", "page.Code": "of the client",
	"page.Running": "the line for each sheet of paper: code, side, day", "page.Parts": "the sections, in reading order; all must be printed",
	"page.Print": "large where the client reads large print",
	"page.Diary": "of a handout: what its script works with; the template is given it with its digest as Data, and the script as Script",
	"part.ID":    "its anchor", "part.Title": "its heading", "part.Nodes": "what stands in it, in reading order",
	"node.Kind": "text, list, facts, table, group, fold, figure, grid, cards, thumb", "node.Class": "what it is for the reader", "node.ID": "its anchor", "node.Title": "heading of a group, line of a fold, caption of a table, name of a figure",
	"node.Level": "of a heading: 3 or 4", "node.Spans": "of text", "node.Ordered": "a numbered list", "node.Items": "of a list, each a list of spans", "node.Facts": "of facts", "node.Head": "heads of the columns of a table or grid",
	"node.Rows": "of a table or grid, each a list of cells", "node.Nodes": "inside a group or fold", "node.Says": "of a figure: what it shows, in words", "node.Drawing": "of a figure: the pose and its limits; .Picture is the drawing, .Drawing.Play and .Drawing.Halt the words of its button",
	"node.Chart": "of a figure: what is drawn from numbers", "node.File": "of a thumb: the file of the picture in the library",
	"span.Text": "the text", "span.Strong": "set strong", "span.Em": "steps back", "span.Href": "where it leads: https:, tel:, # or a page of ours",
	"fact.Label": "the label", "fact.Value": "a list of spans", "cell.Spans": "a list of spans; empty: a place to write", "cell.Head": "heads its row", "cell.Class": "what it is for the reader",
}

// functionSays is what each function of templates does, beside those of the template language itself.
var functionSays = map[string]string{
	"default": "a value, or another where it is empty", "dict": "pairs of key and value as one value, to hand to a part", "empty": "is it empty, zero or false", "indent": "a text with spaces before each line",
	"join": "a list as one text, with something between", "list": "values as one list", "repeat": "a text some times over", "replace": "one text for another within a third", "ternary": "one of two values, by a third",
	"trim":   "a text without spaces around it",
	"inline": "a list of spans as HTML or as Markdown; nothing that a person typed comes through it alive", "line": "Markdown alone: a text that may begin a line", "number": "Markdown alone: the mark of an item",
}

// TemplateReference is the page of what templates may use.
func TemplateReference() string {
	var b strings.Builder
	b.WriteString("## template: templates/page.html.tmpl, templates/page.md.tmpl, templates/parts/NAME.html.tmpl, templates/parts/NAME.md.tmpl\n\n" +
		"A file of the same name in your clinic's templates/ takes the place of the shipped one. A template prints; it does not compute: it has no clock,\n" +
		"no environment, no network and no random number, and HTML and Markdown must hold the same text. Escaping is done for you.\n\n")
	for _, s := range shown {
		fmt.Fprintf(&b, "### .%s: %s\n\n| field | type | what it is |\n| --- | --- | --- |\n", s.name, s.about)
		for i := range s.of.NumField() {
			f := s.of.Field(i)
			fmt.Fprintf(&b, "| `.%s` | %s | %s |\n", f.Name, typeName(f.Type), fieldSays[s.name+"."+f.Name])
		}
		b.WriteString("\n")
	}
	b.WriteString("page.html.tmpl is also given `.Style`, `.Policy` and `.Logo`; keep all three, or the page loses its look or its lock.\n\n### functions\n\n| function | gives |\n| --- | --- |\n")
	for _, name := range functions() {
		fmt.Fprintf(&b, "| `%s` | %s |\n", name, functionSays[name])
	}
	b.WriteString("\nBeside these only what the template language has by itself: if, range, with, template, and, or, not, eq, len, index, print and their like.\n")
	return b.String()
}

// functions are the names that templates may call, sorted.
func functions() []string {
	names := append(slices.Clone(allowed), "inline", "line", "number")
	slices.Sort(names)
	return names
}

func typeName(t reflect.Type) string {
	switch t.Kind() {
	case reflect.Slice:
		return "list of " + typeName(t.Elem())
	case reflect.Pointer:
		return typeName(t.Elem()) + " or nothing"
	case reflect.Struct:
		return strings.ToLower(t.Name())
	case reflect.String:
		return "text"
	case reflect.Bool:
		return "true or false"
	}
	return "number"
}
