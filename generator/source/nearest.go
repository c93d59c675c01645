package source

import (
	"slices"
	"strings"
)

// Meant returns the choice that was probably meant, or "": for the heads of a day sheet.
func Meant(written string, choices []string) string { return meant(written, choices) }

// Closest returns up to n choices that look most like what was written, the closest first; what differs in more than half of
// its letters is left out.
func Closest(written string, choices []string, n int) []string {
	alike := func(choice string) bool { return 2*distance(written, choice) <= max(len(written), len(choice)) }
	near := slices.DeleteFunc(slices.Clone(choices), func(c string) bool { return !alike(c) })
	slices.SortStableFunc(near, func(a, b string) int { return distance(written, a) - distance(written, b) })
	return near[:min(n, len(near))]
}

// distance counts the slips between two words, hyphens and case aside; a beginning of a choice is as close as can be.
func distance(written, choice string) int {
	a, b := hyphenless.Replace(strings.ToLower(written)), hyphenless.Replace(strings.ToLower(choice))
	if len(a) >= startBytes && strings.HasPrefix(b, a) {
		return 0
	}
	return slips(a, b)
}

var hyphenless = strings.NewReplacer("-", "")

// meant returns the choice that was probably meant, or "".
func meant(written string, choices []string) string {
	best, bestFar := "", far
	for _, c := range choices {
		if f := farness(written, c); f < bestFar {
			best, bestFar = c, f
		}
	}
	return best
}

// nearest orders choices by how near they are to what was written; those that are not near keep their order.
func nearest(written string, choices []string) []string {
	sorted := slices.Clone(choices)
	slices.SortStableFunc(sorted, func(a, b string) int { return farness(written, a) - farness(written, b) })
	return sorted
}

// Farness of a choice, chosen by trying what people mistype: letters in another case, up to two slips in a word that is
// longer than the slips, a word cut short.
const (
	maxSlips   = 2
	sameStart  = maxSlips + 1
	far        = sameStart + 1
	startBytes = 3
)

func farness(written, choice string) int {
	a, b := strings.ToLower(written), strings.ToLower(choice)
	if len(a)-len(b) <= maxSlips && len(b)-len(a) <= maxSlips {
		if d := slips(a, b); d <= maxSlips && 2*d <= max(len(a), len(b)) {
			return d
		}
	}
	if len(a) >= startBytes && len(b) >= startBytes && a[:startBytes] == b[:startBytes] {
		return sameStart
	}
	return far
}

// slips counts letters that were left out, added, changed, or swapped with their neighbour.
func slips(a, b string) int {
	before, row := make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		next := make([]int, len(b)+1)
		next[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			next[j] = min(row[j]+1, next[j-1]+1, row[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				next[j] = min(next[j], before[j-2]+1)
			}
		}
		before, row = row, next
	}
	return row[len(b)]
}
