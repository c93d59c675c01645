package page

import (
	"regexp"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// marks are the letters that mean something anywhere in Markdown, each with its harmless writing.
var marks = strings.NewReplacer(`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "[", `\[`, "]", `\]`, "<", `\<`, ">", `\>`,
	"#", `\#`, "~", `\~`, "&", `\&`, "$", `\$`, "@", `\@`, "|", "&#124;", "://", `\://`)

// starts are what means something only at the beginning of a line.
var starts = regexp.MustCompile(`^([-+=:]|\d{1,9}[.)])`)

// web is an address that some readers turn into a link although nobody asked.
var web = regexp.MustCompile(`(?i)\b(www)\.`)

// escaped writes a text in the middle of a line of Markdown so that it is only a text.
func escaped(text string) string { return web.ReplaceAllString(marks.Replace(text), `$1\.`) }

// escapedStart writes a text that begins a line.
func escapedStart(text string) string {
	return starts.ReplaceAllStringFunc(escaped(text), func(s string) string {
		return s[:len(s)-1] + `\` + s[len(s)-1:]
	})
}

// inMarkdown writes spans as one line of Markdown. The spans are tidy.
func inMarkdown(spans []Span) string {
	line := ""
	for i, s := range spans {
		s.Text = plainSpaces(s.Text)
		core := strings.TrimFunc(s.Text, unicode.IsSpace)
		before, after, _ := strings.Cut(s.Text, core)
		if core == "" {
			line += s.Text
			continue
		}
		text := escaped(core)
		if line == "" {
			text = escapedStart(core)
		}
		around := neighbours{last(line + before), first(after + next(spans[i+1:]))}
		if before == "" && s.Href != "" && strings.HasSuffix(line, "!") {
			line = strings.TrimSuffix(line, "!") + `\!` // a mark of exclamation before a link makes it a picture
		}
		line += before + linkedText(s.Href, emphasised(s, text, around)) + after
	}
	return line
}

// neighbours are the letters on both sides of a run; a space stands for the end of the line.
type neighbours struct{ before, after rune }

// apart reports whether stars around the run can only be read as its emphasis. Where they might be read otherwise
// the words are printed without.
func (n neighbours) apart() bool {
	const harmless = ".,;:!?()"
	return (unicode.IsSpace(n.before) || strings.ContainsRune(harmless, n.before)) && (unicode.IsSpace(n.after) || strings.ContainsRune(harmless, n.after))
}

func emphasised(s Span, text string, n neighbours) string {
	if s.Href != "" {
		n = neighbours{'(', ')'}
	}
	switch {
	case !n.apart():
		return text
	case s.Strong && s.Em:
		return "***" + text + "***"
	case s.Strong:
		return "**" + text + "**"
	case s.Em:
		return "*" + text + "*"
	}
	return text
}

func linkedText(href, text string) string {
	if href == "" {
		return text
	}
	if text == "x" || text == "X" {
		text = "&#" + strconv.Itoa(int(text[0])) + ";" // [x] is a box that has been ticked
	}
	return "[" + text + "](" + strings.ReplaceAll(href, "&", "&amp;") + ")"
}

func next(spans []Span) string {
	switch {
	case len(spans) == 0:
		return ""
	case spans[0].Href != "":
		return "["
	}
	return spans[0].Text
}

func first(s string) rune {
	if s == "" {
		return ' '
	}
	r, _ := utf8.DecodeRuneInString(s)
	return r
}

func last(s string) rune {
	if s == "" {
		return ' '
	}
	r, _ := utf8.DecodeLastRuneInString(s)
	return r
}
