package page

import (
	"fmt"
	html "html/template"
	"io/fs"
	"maps"
	"slices"
	"strings"
	text "text/template"

	"github.com/Masterminds/sprig/v3"

	"paceleaf/generator/figure"
)

// allowed are the functions that a template may call besides the language's own: they shape text and lists, and know
// nothing but what they are given.
var allowed = []string{"default", "dict", "empty", "indent", "join", "list", "repeat", "replace", "ternary", "trim"}

// Printer turns views into HTML and Markdown. It may be used by many at once.
type Printer struct {
	html    *html.Template
	text    *text.Template
	style   html.CSS
	styled  string             // hash of the style
	scripts map[string]html.JS // by the kind of page
	logo    html.URL           // of the clinic, in the page itself; empty: none
}

// NewPrinter reads page.html.tmpl, page.md.tmpl, parts/, style/ and script/ from layers of templates, the first on top.
func NewPrinter(layers ...fs.FS) (*Printer, error) {
	files, err := gather(layers)
	if err != nil {
		return nil, err
	}
	style, err := files.style()
	if err != nil {
		return nil, err
	}
	p := &Printer{html: html.New("html").Funcs(html.FuncMap(sprigs())).Funcs(html.FuncMap{"inline": inHTML}),
		text: text.New("md").Funcs(sprigs()).Funcs(text.FuncMap{"inline": inMarkdown, "line": escapedStart, "number": numbered})}
	p.wear(style, "")
	if p.scripts, err = files.scripts(); err != nil {
		return nil, err
	}
	for _, name := range slices.Sorted(maps.Keys(files)) {
		if err := p.parse(name, files[name]); err != nil {
			return nil, err
		}
	}
	if p.html.Lookup("page.html.tmpl") == nil || p.text.Lookup("page.md.tmpl") == nil {
		return nil, fmt.Errorf("templates: page.html.tmpl or page.md.tmpl is missing; both must be there")
	}
	return p, nil
}

// Wear lays a clinic's look over the style. It is called before the printer is used, if at all.
func (p *Printer) Wear(l Look) { p.wear(string(p.style)+"\n"+l.css(), l.logo()) }

// Poor are the pairs of colours that cannot be read well, with the clinic's look and style on.
func (p *Printer) Poor() []PoorPair { return poor(string(p.style)) }

// wear sets the style and the picture.
func (p *Printer) wear(style string, logo html.URL) {
	p.style, p.styled, p.logo = html.CSS(style), hashed(style), logo
}

// policy lets in the style, the picture and one script, and nothing else.
func (p *Printer) policy(script html.JS) string {
	says := "default-src 'none'; style-src '" + p.styled + "'; base-uri 'none'; form-action 'none'"
	if script != "" {
		says += "; script-src '" + hashed(string(script)) + "'"
	}
	if p.logo != "" {
		says += "; img-src data:"
	}
	return says
}

func (p *Printer) parse(name, body string) (err error) {
	switch {
	case strings.HasSuffix(name, ".html.tmpl"):
		_, err = p.html.New(name).Parse(body)
	case strings.HasSuffix(name, ".md.tmpl"):
		_, err = p.text.New(name).Parse(body)
	}
	return err
}

// sprigs is the allow-list with its functions.
func sprigs() map[string]any {
	all, kept := sprig.HermeticTxtFuncMap(), map[string]any{}
	for _, name := range allowed {
		kept[name] = all[name]
	}
	return kept
}

// numbered is the mark of an item: its number, or a dash.
func numbered(ordered bool, index int) string {
	if ordered {
		return fmt.Sprintf("%d.", index+1)
	}
	return "-"
}

// sources are the files of templates, by name.
type sources map[string]string

// gather reads the files of all layers; of two with one name the upper's.
func gather(layers []fs.FS) (sources, error) {
	files := sources{}
	for _, layer := range layers {
		if layer == nil {
			continue
		}
		for _, pattern := range []string{"*.tmpl", "parts/*.tmpl", "style/*.css", "script/*.js"} {
			names, err := fs.Glob(layer, pattern)
			if err != nil {
				return nil, err
			}
			for _, name := range names {
				if _, above := files[name]; above {
					continue
				}
				body, err := fs.ReadFile(layer, name)
				if err != nil {
					return nil, err
				}
				files[name] = string(body)
			}
		}
	}
	return files, nil
}

// style joins the style sheets, that of the figures and then all by name, and refuses what would reach out of the page or end it.
func (s sources) style() (string, error) {
	var all strings.Builder
	all.WriteString("\n" + strings.TrimSpace(figure.Style()) + "\n") // first, so that a page may say otherwise
	for _, name := range slices.Sorted(maps.Keys(s)) {
		if !strings.HasSuffix(name, ".css") {
			continue
		}
		lower := strings.ToLower(s[name])
		for _, bad := range []string{"</", "<!--", "@import", "url(", "image-set(", "src(", "expression("} {
			if strings.Contains(lower, bad) {
				return "", fmt.Errorf("templates/%s: %q reaches out of the page; a style may only use what the page holds", name, bad)
			}
		}
		if strings.Count(lower, "{") != strings.Count(lower, "}") {
			return "", fmt.Errorf("templates/%s: braces do not close; count { and }", name)
		}
		all.WriteString("\n" + strings.TrimSpace(s[name]) + "\n")
	}
	return all.String(), nil
}
