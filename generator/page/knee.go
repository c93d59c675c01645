package page

// kneeSays is how to listen to the knee: the kind of pain before its number, swelling, the next morning, a flare.
func (h handout) kneeSays() Part {
	w := h.w
	return h.part("knee", w.Say("knee-says.title"),
		group("kind", w.Say("knee-says.kind"), 3, spoken("alarm", strong(w.Say("knee-says.alarm"))), paragraph("", w.Say("knee-says.alarm-do"))),
		group("strength", w.Say("knee-says.number"), 3,
			paragraph("", w.Say("knee-says.number-ask")),
			factual("scale",
				fact(w.Say("knee-says.low"), w.Say("knee-says.low-do")),
				fact(w.Say("knee-says.mid"), h.byWeight("knee-says.mid-do", "knee-says.mid-do-light")),
				fact(w.Say("knee-says.high"), w.Say("knee-says.high-do", "what", h.less())))),
		group("morning", w.Say("knee-says.morning"), 3,
			paragraph("", w.Say("knee-says.morning-ask")),
			factual("scale",
				fact(w.Say("knee-says.calm"), w.Say("knee-says.calm-do")),
				fact(w.Say("knee-says.sore"), w.Say("knee-says.sore-do")),
				fact(w.Say("knee-says.swollen"), w.Say("knee-says.swollen-do")),
				fact(w.Say("knee-says.much"), w.Say("knee-says.much-do"))),
			paragraph("", h.calmIsNoEnd())),
		group("flare", w.Say("flare.title"), 3,
			paragraph("", w.Say("flare.lead")),
			steps("", h.flareSteps()...)),
	)
}

// flareSteps are the plan for 48 hours. In a pause only the therapist says when to start again.
func (h handout) flareSteps() []string {
	w := h.w
	var list []string
	if !h.pausedThroughout() { // else it rests anyway
		list = append(list, w.Say("flare.stop", "what", h.hard()))
	}
	list = append(list, h.gently("flare.move", "flare.move-brace"), w.Say("flare.rest"))
	if !h.paused() {
		list = append(list, h.byWeight("flare.again", "flare.again-light"))
	}
	return append(list, w.Say("flare.call"))
}

// calmIsNoEnd says that a calm day ends no pause: only a look does (rules 30).
func (h handout) calmIsNoEnd() string {
	if !h.pausedThroughout() {
		return ""
	}
	return h.w.Say("knee-says.pause-stands")
}
