package plan

import "fmt"

// moreThanAsked reports by how many sessions a week the client trains more than the phase's source asks; 0 where it does not say.
func (p *Plan) moreThanAsked() (days, asked int) {
	asked = p.Stage.Set.SessionsAWeek
	if days = len(p.Client.TrainingDays); asked == 0 || days <= asked {
		return 0, 0
	}
	return days, asked
}

// flagSessions tells of more training days than the phase asks for: they are the client's, so nothing takes one away.
func (p *planner) flagSessions() {
	if days, asked := p.plan.moreThanAsked(); days > 0 {
		p.flag("more-sessions", p.phase.ID, "{a} training days a week, and the phase asks for {b} sessions", days, asked)
	}
}

// moreSessions asks about the same in check.
func moreSessions(plan *Plan) []Mistake {
	days, asked := plan.moreThanAsked()
	if days == 0 {
		return nil
	}
	return []Mistake{{At: plan.Client.At.At("training_days"), Ask: true, What: fmt.Sprintf("%d training days a week, and phase %s asks for %d sessions", days, plan.Stage.Set.ID, asked),
		Instead: fmt.Sprintf("write %d days, or leave it if the others are meant to be in turn", asked)}}
}
