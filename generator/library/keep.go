package library

import (
	"bytes"
	"encoding/json"
	"image"
	"image/color"
	"image/png"
	"math"
)

// What a telephone needs to keep the library: its name, its icon, its colours. Nothing of it leads out of the library's folder.

// manifest is what the telephone is told.
type manifest struct {
	Name      string `json:"name"`
	ShortName string `json:"short_name"`
	ID        string `json:"id"`
	StartURL  string `json:"start_url"`
	Scope     string `json:"scope"`
	Display   string `json:"display"`
	Lang      string `json:"lang"`
	Dir       string `json:"dir"`
	Ground    string `json:"background_color"`
	Theme     string `json:"theme_color"`
	Icons     []icon `json:"icons"`
}

type icon struct {
	Source  string `json:"src"`
	Sizes   string `json:"sizes"`
	Type    string `json:"type"`
	Purpose string `json:"purpose"`
}

// Manifest is the library's web application manifest.
func (s *Shelf) Manifest() ([]byte, error) {
	return json.MarshalIndent(manifest{Name: s.Words.Say("library.title", "clinic", s.Clinic), ShortName: s.Words.Say("library.bar-exercises"),
		ID: "library", StartURL: "index.html", Scope: "./", Display: "standalone", Lang: s.Words.Lang, Dir: s.Words.Dir, Ground: "#f7f4ec", Theme: "#0a4f43",
		Icons: []icon{{"icon-192.png", "192x192", "image/png", "any"}, {"icon-512.png", "512x512", "image/png", "any"}, {"icon-512.png", "512x512", "image/png", "maskable"}}}, "", " ")
}

// Icon is a leaf of paper colour with its midrib on deep green, size by size pixels. The green fills the square, so that a
// telephone may cut any shape out of it.
func Icon(size int) ([]byte, error) {
	green, paper := color.NRGBA{0x0a, 0x4f, 0x43, 0xff}, color.NRGBA{0xf7, 0xf4, 0xec, 0xff}
	img := image.NewPaletted(image.Rect(0, 0, size, size), shades(green, paper))
	for y := range size {
		for x := range size {
			img.SetColorIndex(x, y, uint8(leafShare(x, y, size)))
		}
	}
	var b bytes.Buffer
	err := png.Encode(&b, img)
	return b.Bytes(), err
}

const samples = 16 // sixteen samples a pixel: seventeen shades from ground to leaf

// shades are the mixtures of ground and leaf.
func shades(ground, leaf color.NRGBA) (all color.Palette) {
	mix := func(a, b uint8, n int) uint8 { return uint8((int(a)*(samples-n) + int(b)*n) / samples) }
	for n := range samples + 1 {
		all = append(all, color.NRGBA{mix(ground.R, leaf.R, n), mix(ground.G, leaf.G, n), mix(ground.B, leaf.B, n), 0xff})
	}
	return all
}

// leafShare counts the samples of a pixel that lie in the leaf. Where its corners agree, so does what lies between them: no
// part of the leaf is as thin as a pixel.
func leafShare(x, y, size int) (n int) {
	at := func(i int) bool {
		return inLeaf((float64(x)+float64(i%4)/4+0.125)/float64(size), (float64(y)+float64(i/4)/4+0.125)/float64(size))
	}
	if first := at(0); at(3) == first && at(12) == first && at(15) == first {
		if first {
			return samples
		}
		return 0
	}
	for i := range samples {
		if at(i) {
			n++
		}
	}
	return n
}

// inLeaf reports whether a point of the unit square lies in the leaf: what two circles share, turned by an eighth, without
// the midrib.
func inLeaf(x, y float64) bool {
	u, v := (x-y)/math.Sqrt2, (x+y-1)/math.Sqrt2 // along the leaf, and across it
	within := func(centre float64) bool { return math.Hypot(u, v-centre) < 0.42 }
	return within(0.26) && within(-0.26) && math.Abs(v) > 0.012*(1+u)
}
