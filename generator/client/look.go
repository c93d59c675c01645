package client

import (
	"fmt"
	"regexp"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Shades are colours of a clinic's own. What is left out stays as shipped.
type Shades struct {
	Paper     string `key:"paper" doc:"ground of the page: # and six digits" show:"#f7f4ec"`
	Sheet     string `key:"sheet" doc:"ground of boxes" show:"#fffdf8"`
	Ink       string `key:"ink" doc:"text" show:"#1c2624"`
	Soft      string `key:"soft" doc:"text that steps back" show:"#45504c"`
	Accent    string `key:"accent" doc:"what to do, links, headings' rules" show:"#0a4f43"`
	Wash      string `key:"accent_wash" doc:"ground behind what to do" show:"#e6efe9"`
	Amber     string `key:"amber" doc:"edge of what to take care with" show:"#8a5a00"`
	AmberWash string `key:"amber_wash" doc:"ground of what to take care with" show:"#f8ecd0"`
}

// Colours are those of a light screen and of a dark one. Paper keeps the shipped ones.
type Colours struct {
	At basis.Origin
	Shades
	Dark Dark `key:"dark" doc:"colours of a dark screen"`
}

// Dark are the colours of a dark screen.
type Dark struct {
	At basis.Origin
	Shades
}

// Named lists the colours that are set, by the key that sets each.
func (s Shades) Named() map[string]unit.Colour {
	all := map[string]unit.Colour{"paper": unit.Colour(s.Paper), "sheet": unit.Colour(s.Sheet), "ink": unit.Colour(s.Ink), "soft": unit.Colour(s.Soft),
		"accent": unit.Colour(s.Accent), "accent_wash": unit.Colour(s.Wash), "amber": unit.Colour(s.Amber), "amber_wash": unit.Colour(s.AmberWash)}
	for key, c := range all {
		if c == "" {
			delete(all, key)
		}
	}
	return all
}

// pictureFile is the name of a logo: a file beside the templates, of a kind that every browser shows.
var pictureFile = regexp.MustCompile(`^[a-z0-9][a-z0-9._-]*\.(svg|png|jpg|jpeg)$`)

// judgeLook holds colours and logo to their form; whether they can be read on each other is judged with the style.
func (c *Clinic) judgeLook(wrong func(at basis.Origin, what, instead string)) {
	for _, set := range []struct {
		at     basis.Origin
		shades Shades
	}{{c.Colours.At, c.Colours.Shades}, {c.Colours.Dark.At, c.Colours.Dark.Shades}} {
		for key, colour := range set.shades.Named() {
			if !colour.Valid() {
				wrong(set.at.At(key), fmt.Sprintf("%q is no colour", colour), `write # and six digits, as in "#0a4f43"`)
			}
		}
	}
	if c.Logo != "" && !pictureFile.MatchString(c.Logo) {
		wrong(c.At.At("logo"), fmt.Sprintf("%q is no name of a picture", c.Logo), `put a file such as logo.svg, logo.png or logo.jpg into templates/ and write its name`)
	}
}
