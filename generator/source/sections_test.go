package source

import (
	"reflect"
	"strings"
	"testing"
)

func TestSections(t *testing.T) {
	rows := []struct {
		name, text string
		want       []Section
		says       string
	}{
		{"two sections", "## Steps\n1. a\n2. b\n\n## Cues\n- c\n", []Section{{"Steps", 1, "1. a\n2. b"}, {"Cues", 5, "- c"}}, ""},
		{"text before the first", "\nhello\n\n## Steps\n", []Section{{"", 2, "hello"}, {"Steps", 4, ""}}, ""},
		{"blank before the first is no section", "\n\n## Steps\na\n", []Section{{"Steps", 3, "a"}}, ""},
		{"no heading at all", "hello\nthere", []Section{{"", 1, "hello\nthere"}}, ""},
		{"deeper headings stay in the body", "## A\n### B\nc", []Section{{"A", 1, "### B\nc"}}, ""},
		{"closing marks", "## A ##  \nb", []Section{{"A", 1, "b"}}, ""},
		{"fenced code is no heading", "## A\n```\n## no\n# no\n```\n## B\n", []Section{{"A", 1, "```\n## no\n# no\n```"}, {"B", 6, ""}}, ""},
		{"a shorter fence does not close", "~~~~\n~~~\n## no\n~~~~\n## A\n", []Section{{"", 1, "~~~~\n~~~\n## no\n~~~~"}, {"A", 5, ""}}, ""},
		{"indented code is no heading", "## A\n    ## no\n", []Section{{"A", 1, "    ## no"}}, ""},
		{"BOM and CRLF", "\xef\xbb\xbf## A\r\nb\r\n", []Section{{"A", 1, "b"}}, ""},
		{"empty file", "", nil, ""},
		{"first level", "# Seated extension\na\n", []Section{{"Seated extension", 1, "a"}},
			`e.md:1: "Seated extension" is a heading of the first level; write ## Seated extension`},
		{"no space", "a\n##Steps\nb\n", []Section{{"", 1, "a\n##Steps\nb"}}, `e.md:2: "##Steps" is no heading; write ## Steps`},
		{"no words", "## \na\n", []Section{{"", 1, "a"}}, `e.md:1: a heading without words; write ## and a title`},
		{"fence not closed", "## A\n```\n## B\n", []Section{{"A", 1, "```\n## B"}}, "e.md:2: a code fence that is not closed; write ``` on a line of its own after the code"},
		{"control character", "## A\n\x1b[0m\n", []Section{{"A", 1, "\x1b[0m"}}, "e.md:2: the control character U+001B; take it out"},
		{"another encoding", "a\n\xff\n", nil, "e.md:2: this line is not UTF-8 text; save the file as UTF-8"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			got, fs := Sections("e.md", []byte(r.text))
			if !reflect.DeepEqual(got, r.want) {
				t.Errorf("got %+v, want %+v", got, r.want)
			}
			if fs.Error() != r.says {
				t.Errorf("\n got %s\nwant %s", fs.Error(), r.says)
			}
		})
	}
}

func TestItems(t *testing.T) {
	rows := []struct {
		name, body string
		want       []string
	}{
		{"hyphens, stars, numbers", "- a\n* b\n1. c\n12) d", []string{"a", "b", "c", "d"}},
		{"continued lines", "1. a\n   b\nc\n2. d", []string{"a b c", "d"}},
		{"text that is no item", "before\n- a\n\nafter\n- b", []string{"a", "b"}},
		{"nested items stand alone", "- a\n  - b", []string{"a", "b"}},
		{"inline Markdown is left", "- a **b** (to 0°)", []string{"a **b** (to 0°)"}},
		{"no list", "a - b\n-c", nil},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			if got := Items(r.body); !reflect.DeepEqual(got, r.want) {
				t.Errorf("got %q, want %q", strings.Join(got, "|"), r.want)
			}
		})
	}
}
