package words

import (
	"fmt"
	"strings"
)

// instead names the key that was probably meant: the one that shares most of its beginning and end.
func instead(written string, shipped map[string]Sentence) string {
	best, most := "", 0
	for _, key := range sortedKeys(shipped) {
		if n := shared(written, key); n > most && 2*n > len(written) {
			best, most = key, n
		}
	}
	if best == "" {
		table, _, _ := strings.Cut(written, ".")
		return fmt.Sprintf("look in the shipped file for the keys of [%s], or remove it", table)
	}
	return fmt.Sprintf("did you mean %q?", best)
}

// shared counts the letters that two keys have in common at their beginning and at their end.
func shared(a, b string) int {
	n := min(len(a), len(b))
	start := 0
	for start < n && a[start] == b[start] {
		start++
	}
	end := 0
	for end < n-start && a[len(a)-1-end] == b[len(b)-1-end] {
		end++
	}
	return start + end
}
