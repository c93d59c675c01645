package generator

import (
	"fmt"
	"path"

	"paceleaf/generator/page"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// largestLogo is what a logo may weigh: it stands in each page. Chosen: a third of what a page may weigh when compressed.
const largestLogo = 32 << 10

// logoKinds are the media types of pictures, by the ending of their name.
var logoKinds = map[string]string{".svg": "image/svg+xml", ".png": "image/png", ".jpg": "image/jpeg", ".jpeg": "image/jpeg"}

// Printer reads the templates, the clinic's own over the shipped, and wears the clinic's colours and logo.
func (h *House) Printer() (*page.Printer, error) {
	printer, err := page.NewPrinter(sub(h.Files.Clinic, "templates"), h.Templates)
	if err != nil {
		return nil, err
	}
	look := page.Look{Light: h.Clinic.Colours.Named(), Dark: h.Clinic.Colours.Dark.Named()}
	if h.Clinic.Logo != "" {
		if look.Logo, _, err = h.folder.Read("templates/" + h.Clinic.Logo); err != nil {
			look.Logo = nil // told by judgeLook
		}
		look.LogoKind = logoKinds[path.Ext(h.Clinic.Logo)]
	}
	printer.Wear(look)
	return printer, nil
}

// judgeLook refuses colours that cannot be read on each other, and a logo that is not there or too heavy.
func (h *House) judgeLook(printer *page.Printer) (faults source.Faults) {
	c := h.Clinic
	for _, pair := range printer.Poor() {
		set, at := c.Colours.Named(), c.Colours.At
		if pair.Theme == "dark" {
			set, at = c.Colours.Dark.Named(), c.Colours.Dark.At
		}
		fault := source.Fault{File: "templates/style", What: tooClose(pair), Instead: "choose a darker or a lighter one"}
		for _, key := range []string{pair.Ground, pair.Ink} {
			if _, ours := set[key]; ours && pair.Theme != "print" {
				fault.File, fault.Key = at.File, at.At(key).Key
			}
		}
		faults.Add(fault)
	}
	if c.Logo == "" {
		return faults
	}
	name := "templates/" + c.Logo
	switch data, _, err := h.folder.Read(name); {
	case err != nil:
		faults.Add(source.Fault{File: c.At.File, Key: "logo", What: "there is no " + name, Instead: "put the picture there, or leave the key out"})
	case len(data) > largestLogo:
		faults.Add(source.Fault{File: c.At.File, Key: "logo", What: fmt.Sprintf("%s has %d kB, and stands in every page", name, len(data)>>10),
			Instead: fmt.Sprintf("use a picture of %d kB or less", largestLogo>>10)})
	}
	return faults
}

// tooClose names a pair with the ratio that it has and the one that it needs. What was found is cut, not rounded, so that no
// failing pair reads as one that passes.
func tooClose(p page.PoorPair) string {
	return fmt.Sprintf("%s %s on %s %s (%s) has a contrast of %.1f to 1; text needs %g to 1", p.Ink, p.On, p.Ground, p.Under, p.Theme,
		float64(unit.CutTo(p.Ratio, 0.1)), p.Least())
}
