package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// symptoms stands first where the knee asks for less: what is paused, what goes on. It says so calmly.
func (h handout) symptoms() Part {
	s := h.Symptoms
	if s.Action == "" || s.Action == plan.NoAction {
		return Part{}
	}
	w := h.w
	key := map[plan.Action]string{plan.Stay: "stay", plan.StepBack: "step-back", plan.Pause: "pause", plan.Contact: "contact"}[s.Action]
	nodes := []Node{
		spoken("lead", strong(h.asks(key))),
		paragraph("", h.because()),
		paragraph("", h.only()),
		paragraph("", h.firstWeek()),
		paragraph("", h.noImpactUntil()),
		paragraph("", h.goesOnLead()),
		bullets("goes-on", h.goesOn()...),
		paragraph("", w.Say("now."+key+"-until")),
	}
	if s.Action == plan.Contact {
		nodes = append(nodes, h.phones()...)
	}
	return h.part("now", w.Say("now.title"), nodes...)
}

// asks is what the knee asks for, in one or two sentences, of what the page has.
func (h handout) asks(key string) string {
	w := h.w
	switch key {
	case "stay":
		says := w.Say("now.stay")
		if h.replaces() == "" {
			says = w.Say("now.stay-first") // there was no week before
		}
		return nonEmpty(" ", says, h.staying())
	case "step-back":
		return w.Say("now.step-back", "what", h.less())
	}
	return w.Say("now."+key, "knee", h.kneeIn(h.side()))
}

// because names the signals in plain words, each once; a code that the words do not know is left to the therapist.
func (h handout) because() (says string) {
	seen := map[string]bool{}
	for _, s := range h.Symptoms.Signals {
		key := "signal." + s.Code
		if s.Action == plan.NoAction || seen[key] || !h.w.Has(key) {
			continue
		}
		seen[key] = true
		if says != "" {
			says += " "
		}
		says += h.w.Say(key, "knee", h.kneeIn(h.side()))
	}
	return says
}

// only names the exercises that are meant, where it is not the whole plan.
func (h handout) only() string {
	if h.Symptoms.Level != "exercise" {
		return ""
	}
	var titles []string
	for _, id := range h.Symptoms.Exercises {
		titles = append(titles, h.exerciseTitle(id))
	}
	if len(titles) == 0 {
		return ""
	}
	return h.w.Say("now.only", "what", h.w.Join(titles))
}

// firstWeek says how long it holds, where the client told of one session alone.
func (h handout) firstWeek() string {
	if h.Symptoms.Level != "session" {
		return ""
	}
	return h.w.Say("now.first-week", "knee", h.kneeIn(h.side()))
}

// noImpactUntil says how long jumping and running rest after a step back of more than one session.
func (h handout) noImpactUntil() string {
	impact := h.has(unit.Impact) || h.has(unit.Running)
	if h.Symptoms.Action != plan.StepBack || h.Symptoms.Level == "session" || h.Symptoms.Level == "exercise" || !impact {
		return ""
	}
	return h.w.Say("now.no-impact-until")
}

func (h handout) goesOnLead() string {
	if !h.paused() {
		return ""
	}
	return h.w.Say("now.on")
}

// trains reports whether a leg has work of its own on this page.
func (h handout) trains(leg unit.Side) bool {
	return slices.ContainsFunc(h.Prescriptions, func(p plan.Prescription) bool { return p.Side == leg })
}

// ownBoxes are the exercises of the paused knee that have a box, by name, each once.
func (h handout) ownBoxes() (titles []string) {
	for _, m := range h.moves() {
		own := func(p plan.Prescription) bool {
			return p.Side == h.side() || p.Side == unit.Both || h.side() == unit.Both
		}
		if slices.ContainsFunc(m.Legs, own) && !slices.Contains(titles, m.Exercise.Title) {
			titles = append(titles, m.Exercise.Title)
		}
	}
	return titles
}

// goesOn lists what may be done in a pause: what is always right for a knee that rests, and by name what stands in a box.
func (h handout) goesOn() []string {
	if !h.paused() {
		return nil
	}
	w := h.w
	on := []string{h.gently("now.on-bend", "now.on-bend-brace"), w.Say("now.on-squeeze"), w.Say("now.on-swelling")}
	if own := h.ownBoxes(); len(own) > 0 {
		on = append(on, w.Say("now.on-boxes", "what", w.Join(own)))
	}
	if other := h.side().Opposite(); h.side() != unit.Both && h.trains(other) {
		on = append(on, w.Say("now.on-other", "leg", w.Say("leg."+string(h.side().Opposite()))))
	}
	return on
}
