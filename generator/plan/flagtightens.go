package plan

// flagTightens says of a limit that becomes stricter within the block: the boxes of a week have the strictest of its days, and the
// page says from which day on it holds, but a client who reads it once may have read it before that day.
func (p *planner) flagTightens() {
	end := p.block.Starts.AddWeeks(p.block.Weeks)
	for _, d := range p.plan.Dates {
		if d.Kind == "tightens" && d.On.Before(end) {
			p.flag("limit-tightens", d.What, "{a} becomes stricter on {b} ({c}): tell the client on that day at the latest", d.What, d.On, d.SetBy)
		}
	}
}
