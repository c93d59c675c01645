package page

import (
	"bytes"
	"regexp"
)

// blank is more than one empty line.
var blank = regexp.MustCompile(`\n{3,}`)

// Markdown prints the view as plain text that reads as well unrendered.
func (p *Printer) Markdown(v View) ([]byte, error) {
	var b bytes.Buffer
	if err := p.text.ExecuteTemplate(&b, "page.md.tmpl", tidy(v)); err != nil {
		return nil, err
	}
	return append(bytes.TrimSpace(blank.ReplaceAll(b.Bytes(), []byte("\n\n"))), '\n'), nil
}
