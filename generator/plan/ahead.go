package plan

import (
	"fmt"
	"strings"
)

// stageAhead asks about a recorded stage that the tests do not bear out (rules 16). The stage is the therapist's: nothing is
// taken back.
func stageAhead(p *Plan) []Mistake {
	s := p.Stage
	if !s.Ahead {
		return nil
	}
	for _, rec := range p.Client.Stages {
		if rec.ID == s.Set.ID && rec.From == s.Since {
			return []Mistake{{At: rec.At.At("id"), Ask: true,
				What:    fmt.Sprintf("stage %s was set on %s ahead of what was earned (%s); not passed: %s", s.Set.ID, s.Since, s.Earned.ID, strings.Join(missing(s.Short), ", ")),
				Instead: "type the tests that bear it out, waive by name with a reason, or set the stage that is earned"}}
		}
	}
	return nil
}
