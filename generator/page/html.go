package page

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	html "html/template"
)

// HTML prints the view as one file that asks for nothing outside itself.
func (p *Printer) HTML(v View) ([]byte, error) {
	var b bytes.Buffer
	script := p.scriptOf(v)
	err := p.html.ExecuteTemplate(&b, "page.html.tmpl", struct {
		View
		Style  html.CSS
		Policy string
		Logo   html.URL
		Script html.JS
		Data   any
	}{tidy(v), p.style, p.policy(script), p.logoOf(v), script, v.data()})
	return b.Bytes(), err
}

// data is what the script of a page works with: the diary, and the digest of the page that it belongs to.
func (v View) data() any {
	if v.Diary == nil {
		return nil
	}
	return struct {
		*Diary
		Digest string `json:"digest"`
	}{v.Diary, v.Digest()}
}

// Digest tells one content of a page from any other: the first 16 hexadecimal digits of the SHA-256 of its canonical JSON.
func (v View) Digest() string {
	sum := sha256.Sum256(v.JSON())
	return hex.EncodeToString(sum[:8])
}

// logoOf is the clinic's picture, on pages that leave the clinic.
func (p *Printer) logoOf(v View) html.URL {
	switch v.Kind {
	case "worksheet", "overview", "floor", "retest":
		return ""
	}
	return p.logo
}
