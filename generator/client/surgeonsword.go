package client

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// A surgeon's word in an override: it may lift a load above the computed one, so it is told like an instruction, with name, date
// and route (rules 6).

var (
	dateSaid = regexp.MustCompile(`\b\d{4}-\d{2}-\d{2}\b`)
	nameSaid = regexp.MustCompile(`\p{Lu}\p{L}+`)
)

// surgeonsWord asks for what is missing behind the reason "surgeon".
func (r *reader) surgeonsWord(o Override) {
	word, said, _ := strings.Cut(o.Reason, ":")
	if strings.TrimSpace(word) != string(BySurgeon) {
		return
	}
	var missing []string
	for _, part := range []struct {
		is    string
		there bool
	}{
		{"who said it", nameSaid.MatchString(said)},
		{"on which day", dateSaid.MatchString(said)},
		{"how it came (" + strings.Join(Route("").Words(), ", ") + ")", slices.ContainsFunc(Route("").Words(), func(route string) bool { return strings.Contains(said, route) })},
	} {
		if !part.there {
			missing = append(missing, part.is)
		}
	}
	if len(missing) > 0 {
		r.ask(o.At.At("reason"), fmt.Sprintf("the reason is the surgeon's, and it does not say %s", strings.Join(missing, ", ")), `write it behind a colon, as in "surgeon: Dr Auk, 2026-02-02, letter"`)
	}
}
