package browser_test

import (
	"regexp"
	"strconv"
	"strings"
)

// How full the sheets of a handout are, but for the last: on the average, and each of them. Cards are not split, so one sheet may
// end early; a page whose sheets are half empty may not.
const fullOnAverage, leastFull = 0.65, 0.33

// wellFilled holds how full the sheets of a handout are.
func (p tab) wellFilled(paper string, s sheets) {
	p.Helper()
	all, least := p.full(s)
	if all < fullOnAverage || least < leastFull {
		p.Errorf("%s: the sheets are %.0f %% full on the average, the emptiest %.0f %%; at least %.0f and %.0f", paper, all*100, least*100, fullOnAverage*100, leastFull*100)
	}
	p.Logf("%s: the sheets are %.0f %% full, the emptiest %.0f %%", paper, all*100, least*100)
}

// Words on the sheets of pdftotext -bbox, and their places.
var (
	sheetOf = regexp.MustCompile(`(?s)<page [^>]*>(.*?)</page>`)
	placed  = regexp.MustCompile(`<word xMin="[\d.]+" yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">([^<]*)<`)
)

// full is how far down the text of the sheets goes, of the height from its first line to the running line at the foot: on the
// average, and of the emptiest. The last sheet is left out. Pictures without letters are not seen, so it is rather told too low.
func (p tab) full(s sheets) (average, least float64) {
	p.Helper()
	begins, _, _ := strings.Cut(strings.TrimSpace(p.texts(".running")[0]), " ")
	found := sheetOf.FindAllStringSubmatch(p.poppler("pdftotext", "-bbox", s.file, "-"), -1)
	least = 1
	for _, sheet := range found[:len(found)-1] {
		top, foot, lowest := 1e6, 0.0, 0.0
		words := placed.FindAllStringSubmatch(sheet[1], -1)
		for _, w := range words {
			y, _ := strconv.ParseFloat(w[1], 64)
			top = min(top, y)
			if w[3] == begins {
				foot = max(foot, y)
			}
		}
		for _, w := range words {
			if y, _ := strconv.ParseFloat(w[2], 64); y <= foot+1 {
				lowest = max(lowest, y)
			}
		}
		share := (lowest - top) / (foot - top)
		average, least = average+share/float64(len(found)-1), min(least, share)
	}
	return average, least
}
