package page

// routine is the client's own if–then plan: when and where the training happens, and what happens when something comes between.
// Where nobody has typed it, there are lines to fill in. Such plans raised physical activity in 26 studies (Bélanger-Gravel and
// others 2013, standardised difference 0.31 after and 0.24 later); that a page alone does it, nobody has shown.
func (h handout) routine() Part {
	w, block := h.w, h.Block
	if len(h.Prescriptions) == 0 {
		return Part{}
	}
	plan, hurdle := block.Routine, block.Hurdle
	if plan == "" {
		plan = w.Say("routine.fill-plan")
	}
	if hurdle == "" {
		hurdle = w.Say("routine.fill-hurdle")
	}
	nodes := []Node{paragraph("own", plan), paragraph("own", hurdle)}
	if block.Shown != nil {
		nodes = append(nodes, paragraph("note", w.Say("routine.shown", "day", w.Day(*block.Shown))))
	}
	return h.part("routine", w.Say("routine.title"), nodes...)
}
