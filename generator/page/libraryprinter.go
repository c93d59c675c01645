package page

import (
	"bytes"
	"fmt"
	html "html/template"
	"io/fs"
	"path"
	"slices"
	"strings"
)

// LibraryPrinter prints the pages of the library. They share parts and style with the other pages, and lie beside one
// another: so they have a bar of links, a script that finds exercises, and may be kept by a telephone. It may be used by
// many at once.
type LibraryPrinter struct {
	*Printer
	script html.JS
	worker string
}

// Frame is what stands around every page of the library.
type Frame struct {
	Root string // from the page to the library's folder: empty, or ../
	Skip string // the words of the link that leads past the bar
	Bar  []Span // links
}

// notForLibrary are the style sheets that no page of the library needs.
var notForLibrary = []string{"style/4-desk.css", "style/5-floor.css", "style/6-retest.css"}

// libraryJobs are the scripts of the library, one job a file.
var libraryJobs = []string{"script/motion.js", "library/library.js"}

// NewLibraryPrinter reads, besides what NewPrinter reads, library.html.tmpl and library/ from layers of templates, the
// first on top.
func NewLibraryPrinter(layers ...fs.FS) (*LibraryPrinter, error) {
	p, err := NewPrinter(layers...)
	if err != nil {
		return nil, err
	}
	if p.html.Lookup("library.html.tmpl") == nil {
		return nil, fmt.Errorf("templates: library.html.tmpl is missing; it must be there")
	}
	files, err := gather(layers)
	if err != nil {
		return nil, err
	}
	for _, name := range notForLibrary {
		delete(files, name)
	}
	own := map[string]string{}
	for _, name := range append([]string{"library/library.css", "library/sw.js"}, libraryJobs...) {
		if own[name], err = topmost(layers, name); err != nil {
			return nil, err
		}
	}
	files["style/library.css"] = own["library/library.css"] // after all others, by its name
	style, err := files.style()
	if err != nil {
		return nil, err
	}
	script := "(() => {\"use strict\";\n"
	for _, name := range libraryJobs {
		if strings.Contains(own[name], "</") {
			return nil, fmt.Errorf("templates/%s: %q would end the script; write it in another way", name, "</")
		}
		script += own[name]
	}
	short, err := smallScript(script+"})()\n", "templates/library")
	if err != nil {
		return nil, err
	}
	l := &LibraryPrinter{Printer: p, script: html.JS(short), worker: own["library/sw.js"]}
	l.wear(style, "")
	return l, nil
}

// policy lets in the style, the script, and what lies beside the page. A page that was opened from a folder may not call
// the folder itself: hence file:.
func (l *LibraryPrinter) policy() string {
	return "default-src 'none'; style-src '" + l.styled + "'; script-src '" + hashed(string(l.script)) +
		"'; img-src 'self' file:; manifest-src 'self'; worker-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'"
}

// Dress tells one style and script from any other: pages in another dress are other pages.
func (l *LibraryPrinter) Dress() string { return l.styled + " " + hashed(string(l.script)) }

// topmost reads a file of the first layer that has it.
func topmost(layers []fs.FS, name string) (string, error) {
	for _, layer := range layers {
		if layer == nil {
			continue
		}
		if body, err := fs.ReadFile(layer, name); err == nil {
			return string(body), nil
		}
	}
	return "", fmt.Errorf("templates: %s is missing; it must be there", name)
}

// Page prints a view in its frame.
func (l *LibraryPrinter) Page(v View, f Frame) ([]byte, error) {
	drawn, err := Drawn(v)
	if err != nil {
		return nil, err
	}
	bar := tidySpans(f.Bar)
	var b bytes.Buffer
	err = l.html.ExecuteTemplate(&b, "library.html.tmpl", struct {
		View
		Frame
		Bar    []Span
		Style  html.CSS
		Script html.JS
		Policy string
	}{tidy(drawn), f, bar, l.style, l.script, l.policy()})
	return b.Bytes(), err
}

// Worker is the script that keeps the library on a telephone: what is kept, and under which name, stands at its head.
func (l *LibraryPrinter) Worker(name string, first, later []string) []byte {
	var b strings.Builder
	fmt.Fprintf(&b, "const keep = %q;\nconst first = %s;\nconst later = %s;\n%s", name, quoted(first), quoted(later), l.worker)
	return []byte(b.String())
}

// quoted writes names of files as a list of JavaScript; they hold nothing that would have to be escaped (site.checkPath).
func quoted(names []string) string {
	all := slices.Sorted(slices.Values(names))
	for i, name := range all {
		all[i] = `"` + path.Clean(name) + `"`
	}
	return "[" + strings.Join(all, ",") + "]"
}
