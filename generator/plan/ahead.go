package plan

import (
	"fmt"
	"strings"

	"paceleaf/generator/basis"
)

// openedAhead asks about activities that were opened while something was still missing, in one line a client (rules 17).
func openedAhead(p *Plan) []Mistake {
	says, first := aheadOf(p.Activities), ""
	for _, a := range p.Activities {
		if len(a.Ahead) > 0 && first == "" {
			first = a.Activity.ID
		}
	}
	for i := range p.Client.Opened {
		if o := &p.Client.Opened[i]; o.ID == first && says != "" {
			return []Mistake{{At: o.At.At("id"), Ask: true, What: "opened ahead of what was earned: " + says.String(),
				Instead: "type the tests that bear it out, waive by name with a reason, or take the opening back"}}
		}
	}
	return nil
}

// aheadOf names what was opened ahead and what was missing on that day.
func aheadOf(all []ActivityState) basis.Said {
	var says []basis.Said
	for _, a := range all {
		if len(a.Ahead) > 0 {
			says = append(says, basis.Say("{a} on {b} without {c}", a.Activity.ID, a.OpenedFrom, strings.Join(a.Ahead, ", ")))
		}
	}
	return basis.Listed(says...)
}

// stageAhead asks about a recorded stage that the tests do not bear out (rules 16). The stage is the therapist's: nothing is
// taken back. Once all has been passed the question has answered itself; the worksheet goes on to say how it was.
func stageAhead(p *Plan) []Mistake {
	s := p.Stage
	if !s.Ahead || s.Answered {
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
