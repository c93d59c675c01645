package page

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
	"paceleaf/templates"
)

func wearing(t *testing.T, l Look) *Printer {
	t.Helper()
	p, err := NewPrinter(templates.FS)
	if err != nil {
		t.Fatal(err)
	}
	p.Wear(l)
	return p
}

// TestPoorPairs: what the shipped style says passes in each theme, and what a clinic lays over it is judged with it.
func TestPoorPairs(t *testing.T) {
	type shades = map[string]unit.Colour
	for _, row := range []struct {
		look Look
		want string
		why  string
	}{
		{Look{}, "", "the shipped colours can be read"},
		{Look{Light: shades{"accent": "#123a6b", "accent_wash": "#e6ecf5"}}, "", "another deep colour can be read too"},
		{Look{Light: shades{"soft": "#888888"}}, "soft on paper (light); soft on sheet (light); soft on accent_wash (light)", "a pale grey cannot, and each pair is told"},
		{Look{Dark: shades{"ink": "#777777"}}, "ink on paper (dark); ink on sheet (dark); ink on accent_wash (dark); ink on amber_wash (dark)", "the dark screen is judged by itself"},
		{Look{Light: shades{"paper": "#1c2624"}}, "ink on paper (light); soft on paper (light); accent on paper (light)", "a ground is held against each ink"},
	} {
		var found []string
		for _, pair := range wearing(t, row.look).Poor() {
			found = append(found, pair.Ink+" on "+pair.Ground+" ("+pair.Theme+")")
			if pair.Ratio >= pair.Least() {
				t.Errorf("%+v passes", pair)
			}
		}
		if got := strings.Join(found, "; "); got != row.want {
			t.Errorf("%s:\n got %s\nwant %s", row.why, got, row.want)
		}
	}
	for _, theme := range []string{"light", "dark", "print"} {
		shades := shadesOf(string(wearing(t, Look{}).style), theme)
		for _, pair := range textPairs {
			if !shades[pair[0]].Valid() || !shades[pair[1]].Valid() {
				t.Errorf("%s: %v is not in the style, so it is not judged", theme, pair)
			}
		}
	}
	if dark := shadesOf(string(wearing(t, Look{Light: shades{"ink": "#000000"}}).style), "dark"); dark["ink"] != "#eceae2" {
		t.Errorf("a light colour reaches the dark screen: %s", dark["ink"])
	}
}

// TestLogo: the picture stands in the page itself, on pages that leave the clinic, and the policy lets in nothing else.
func TestLogo(t *testing.T) {
	p := wearing(t, Look{Logo: []byte("<svg/>"), LogoKind: "image/svg+xml"})
	v := Handout(samplePlan(), sampleWords(t))
	hand := string(printed(t, p.HTML, v))
	if !strings.Contains(hand, `<img class="logo" alt="" src="data:image/svg&#43;xml;base64,PHN2Zy8&#43;">`) && !strings.Contains(hand, `<img class="logo" alt="" src="data:image/svg+xml;base64,PHN2Zy8+">`) {
		t.Error("no logo on the handout")
	}
	if !strings.Contains(hand, "img-src data:") {
		t.Error("the policy does not let the logo in")
	}
	v.Kind = "worksheet"
	if desk := string(printed(t, p.HTML, v)); strings.Contains(desk, "<img") {
		t.Error("a logo on a page that stays in the clinic")
	}
	if plain := string(printed(t, samplePrinter(t).HTML, v)); strings.Contains(plain, "img-src") {
		t.Error("without a logo the policy lets pictures in")
	}
}
