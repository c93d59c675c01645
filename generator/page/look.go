package page

import (
	"encoding/base64"
	"fmt"
	"html/template"
	"maps"
	"regexp"
	"slices"
	"strings"

	"paceleaf/generator/unit"
)

// Look is what a clinic lays over our colours, and its logo.
type Look struct {
	Light, Dark map[string]unit.Colour // by the key that sets each: paper, ink, accent …
	Logo        []byte
	LogoKind    string // media type, as in image/png
}

// property is the custom property of the style that a key of clinic.toml sets.
var property = map[string]string{"paper": "paper", "sheet": "sheet", "ink": "ink", "soft": "soft", "accent": "green", "accent_wash": "green-wash",
	"amber": "amber", "amber_wash": "amber-wash"}

// css is the style that sets the colours, on screens: paper keeps the shipped ones, which a black and white printer knows.
func (l Look) css() string {
	var all strings.Builder
	for _, theme := range []struct {
		scheme string
		shades map[string]unit.Colour
	}{{"light", l.Light}, {"dark", l.Dark}} {
		if len(theme.shades) == 0 {
			continue
		}
		all.WriteString("@media screen and (prefers-color-scheme:" + theme.scheme + "){:root{")
		for _, key := range slices.Sorted(maps.Keys(theme.shades)) {
			fmt.Fprintf(&all, "--%s:%s;", property[key], strings.ToLower(string(theme.shades[key])))
		}
		all.WriteString("}}\n")
	}
	return all.String()
}

// logo is the picture as the value of an image's source; it asks nothing of a network.
func (l Look) logo() template.URL {
	if len(l.Logo) == 0 {
		return ""
	}
	return template.URL("data:" + l.LogoKind + ";base64," + base64.StdEncoding.EncodeToString(l.Logo))
}

// textPairs are ink and ground that stand on each other as text, by the names of the style. Body and dose are held to the
// 7 to 1 of WCAG 1.4.6.
var textPairs = [][2]string{{"ink", "paper"}, {"ink", "sheet"}, {"ink", "green-wash"}, {"ink", "amber-wash"}, {"soft", "paper"}, {"soft", "sheet"},
	{"soft", "green-wash"}, {"green", "paper"}, {"green", "sheet"}, {"green", "green-wash"}, {"green", "amber-wash"}, {"on-stop", "stop"}}

const leastContrast = 7

// PoorPair is a text that cannot be read well on its ground.
type PoorPair struct {
	Theme       string // light, dark, print
	Ink, Ground string // by the key that sets each, or the name of the style where no key does
	On, Under   unit.Colour
	Ratio       float64
}

// Least is the ratio that a pair needs.
func (PoorPair) Least() float64 { return leastContrast }

// Poor are the pairs of a style that cannot be read well, in each of its themes.
func poor(style string) (pairs []PoorPair) {
	key := map[string]string{}
	for k, name := range property {
		key[name] = k
	}
	named := func(name string) string {
		if k, ok := key[name]; ok {
			return k
		}
		return name
	}
	for _, theme := range []string{"light", "dark", "print"} {
		shades := shadesOf(style, theme)
		for _, pair := range textPairs {
			on, under := shades[pair[0]], shades[pair[1]]
			if ratio := on.Contrast(under); on.Valid() && under.Valid() && ratio < leastContrast {
				pairs = append(pairs, PoorPair{theme, named(pair[0]), named(pair[1]), on, under, ratio})
			}
		}
	}
	return pairs
}

var customColour = regexp.MustCompile(`--([a-z-]+):(#[0-9a-fA-F]{6})\b`)

// shadesOf are the custom colours that a style sets on :root under a theme, the later over the earlier.
func shadesOf(style, theme string) map[string]unit.Colour {
	shades := map[string]unit.Colour{}
	var around []string // what stands before each open brace
	start := 0
	for i, r := range style {
		switch r {
		case ';':
			start = i + 1
		case '{':
			around = append(around, strings.TrimSpace(style[start:i]))
			start = i + 1
		case '}':
			if n := len(around); n > 0 {
				if strings.HasSuffix(around[n-1], ":root") && holds(around[:n-1], theme) {
					from := strings.LastIndex(style[:i], "{")
					for _, m := range customColour.FindAllStringSubmatch(style[from:i], -1) {
						shades[m[1]] = unit.Colour(m[2])
					}
				}
				around = around[:n-1]
			}
			start = i + 1
		}
	}
	return shades
}

// holds reports whether the media around a rule are those of a theme.
func holds(media []string, theme string) bool {
	for _, m := range media {
		is := ""
		for word, of := range map[string]string{"scheme:dark": "dark", "scheme: dark": "dark", "scheme:light": "light", "scheme: light": "light", "print": "print"} {
			if strings.Contains(m, word) {
				is = of
			}
		}
		if is != theme {
			return false // another theme, or one that we do not judge, as more contrast and forced colours
		}
	}
	return true
}
