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
		spoken("lead", strong(w.Say("now."+key, "knee", h.kneeIn(h.side())))),
		paragraph("", h.because()),
		paragraph("", h.only()),
		paragraph("", h.firstWeek()),
		paragraph("", h.noImpactUntil()),
		paragraph("", h.goesOnLead(key)),
		bullets("goes-on", h.goesOn(key)...),
		paragraph("", w.Say("now."+key+"-until")),
	}
	if s.Action == plan.Contact {
		nodes = append(nodes, h.phones()...)
	}
	return h.part("now", w.Say("now.title"), nodes...)
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
	if h.Symptoms.Action != plan.StepBack || h.Symptoms.Level == "session" || h.Symptoms.Level == "exercise" {
		return ""
	}
	return h.w.Say("now.no-impact-until")
}

// paused reports whether hard work rests for now.
func paused(key string) bool { return key == "pause" || key == "contact" }

func (h handout) goesOnLead(key string) string {
	if !paused(key) {
		return ""
	}
	return h.w.Say("now.on")
}

// trains reports whether a leg has work of its own on this page.
func (h handout) trains(leg unit.Side) bool {
	return slices.ContainsFunc(h.Prescriptions, func(p plan.Prescription) bool { return p.Side == leg })
}

// goesOn lists what may be done in a pause.
func (h handout) goesOn(key string) []string {
	if !paused(key) {
		return nil
	}
	w := h.w
	on := []string{w.Say("now.on-bend"), w.Say("now.on-squeeze"), w.Say("now.on-swelling")}
	if other := h.side().Opposite(); h.side() != unit.Both && h.trains(other) {
		on = append(on, w.Say("now.on-other", "leg", w.Say("leg."+string(h.side().Opposite()))))
	}
	return on
}
