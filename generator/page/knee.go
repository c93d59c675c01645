package page

import "paceleaf/generator/plan"

// kneeSays is how to listen to the knee: the kind of pain before its number, swelling, the next morning, a flare.
func (h handout) kneeSays() Part {
	w := h.w
	return h.part("knee", w.Say("knee-says.title"),
		group("kind", w.Say("knee-says.kind"), 3, spoken("alarm", strong(w.Say("knee-says.alarm"))), paragraph("", w.Say("knee-says.alarm-do"))),
		group("strength", w.Say("knee-says.number"), 3,
			paragraph("", w.Say("knee-says.number-ask")),
			factual("scale",
				fact(w.Say("knee-says.low"), w.Say("knee-says.low-do")),
				fact(w.Say("knee-says.mid"), w.Say("knee-says.mid-do")),
				fact(w.Say("knee-says.high"), w.Say("knee-says.high-do")))),
		group("morning", w.Say("knee-says.morning"), 3,
			paragraph("", w.Say("knee-says.morning-ask")),
			factual("scale",
				fact(w.Say("knee-says.calm"), w.Say("knee-says.calm-do")),
				fact(w.Say("knee-says.sore"), w.Say("knee-says.sore-do")),
				fact(w.Say("knee-says.swollen"), w.Say("knee-says.swollen-do")),
				fact(w.Say("knee-says.much"), w.Say("knee-says.much-do")))),
		group("flare", w.Say("flare.title"), 3,
			paragraph("", w.Say("flare.lead")),
			steps("", h.flareSteps()...)),
	)
}

// flareSteps are the plan for 48 hours. In a pause only the therapist says when to start again.
func (h handout) flareSteps() []string {
	w := h.w
	list := []string{w.Say("flare.stop"), w.Say("flare.move"), w.Say("flare.rest")}
	if h.Symptoms.Action.Rank() < plan.Pause.Rank() {
		list = append(list, w.Say("flare.again"))
	}
	return append(list, w.Say("flare.call"))
}
