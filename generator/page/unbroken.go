package page

import "strings"

// run is a piece of a text; one that is kept together stands on one line.
type run struct {
	Text string
	Keep bool
}

// runs takes a text apart where lines may break: what a space that does not break joins is kept together by the style, and
// the space itself becomes a plain one.
func runs(text string) (all []run) {
	for i, word := range strings.Split(text, " ") {
		if i > 0 {
			word = " " + word
		}
		bare := strings.TrimPrefix(word, " ")
		switch last := len(all) - 1; {
		case strings.Contains(strings.Trim(bare, "\u00a0"), "\u00a0"):
			if bare != word {
				all = append(all, run{Text: " "})
			}
			all = append(all, run{Text: plainSpaces(bare), Keep: true})
		case last >= 0 && !all[last].Keep:
			all[last].Text += plainSpaces(word)
		default:
			all = append(all, run{Text: plainSpaces(word)})
		}
	}
	return all
}

// plainSpaces writes every space that does not break as a plain one.
func plainSpaces(text string) string { return strings.ReplaceAll(text, "\u00a0", " ") }
