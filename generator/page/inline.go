package page

import (
	html "html/template"
	"strings"
)

// inHTML writes spans as one line of HTML: every text escaped, links only to where destination lets them. It is the twin of
// inMarkdown, and Go rather than a template because a worksheet has thousands of cells.
func inHTML(spans []Span) html.HTML {
	var b strings.Builder
	for _, s := range spans {
		text := inRuns(s.Text)
		if s.Em {
			text = "<em>" + text + "</em>"
		}
		if s.Strong {
			text = "<strong>" + text + "</strong>"
		}
		if s.Href != "" {
			text = `<a href="` + html.HTMLEscapeString(destination(s.Href)) + `">` + text + "</a>"
		}
		b.WriteString(text)
	}
	return html.HTML(b.String())
}

// inRuns writes a text; what must not break stands in a span of its own.
func inRuns(text string) string {
	if !strings.Contains(text, "\u00a0") {
		return html.HTMLEscapeString(text)
	}
	var b strings.Builder
	for _, r := range runs(text) {
		escaped := html.HTMLEscapeString(r.Text)
		if r.Keep {
			escaped = `<span class="keep">` + escaped + "</span>"
		}
		b.WriteString(escaped)
	}
	return b.String()
}
