package page

import (
	"bytes"
	html "html/template"
)

// HTML prints the view as one file that asks for nothing outside itself.
func (p *Printer) HTML(v View) ([]byte, error) {
	var b bytes.Buffer
	err := p.html.ExecuteTemplate(&b, "page.html.tmpl", struct {
		View
		Style  html.CSS
		Policy string
	}{tidy(v), p.style, p.policy})
	return b.Bytes(), err
}
