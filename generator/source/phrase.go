package source

import (
	"fmt"
	"strings"
)

// either joins choices for a sentence: a, b or c.
func either(choices []string) string {
	switch n := len(choices); n {
	case 0:
		return ""
	case 1:
		return choices[0]
	default:
		return strings.Join(choices[:n-1], ", ") + " or " + choices[n-1]
	}
}

// quoted puts each choice in quotes.
func quoted(choices []string) []string {
	q := make([]string, len(choices))
	for i, c := range choices {
		q[i] = fmt.Sprintf("%q", c)
	}
	return q
}

// clipped shortens a wrong value to what a message can hold.
func clipped(s string) string {
	runes := []rune(s)
	if len(runes) <= maxShown {
		return s
	}
	return string(runes[:maxShown]) + "…"
}

// counted is a number of things: 1 cell, 2 cells.
func counted(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}
