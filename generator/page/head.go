package page

import "paceleaf/generator/plan"

// head says what the page is, whose, which knee, for which days, and who issued it.
func (h handout) head() Part {
	w := h.w
	issued := h.issuer()
	return h.part("head", w.Say("head.title", "knee", h.knee(), "n", h.Block.Number),
		factual("who",
			fact(w.Say("head.for"), h.whose()),
			fact(w.Say("head.also-for"), h.guardian()),
			fact(w.Say("head.knee"), h.knee()),
			fact(w.Say("head.days"), w.Say("head.span", "from", w.Day(h.Block.Starts), "to", w.Day(h.ends()), "n", h.Block.Weeks)),
			fact(w.Say("head.by"), issued),
			fact(w.Say("head.goal"), h.Client.Goal)),
		h.help(),
	)
}

// help is whom to call, in one line: it must stand on the first screen. The part below says when.
func (h handout) help() Node {
	w := h.w
	spans := []Span{strong(w.Say("head.help")), {Text: " " + w.Say("head.help-emergency") + " "}, dial(h.Clinic.Emergency)}
	spans = append(spans, h.helpAway()...)
	for _, p := range h.Clinic.Phones {
		spans = append(spans, Span{Text: dot + p.Who + " "}, dial(p.Number))
	}
	return spoken("help", append(spans, Span{Text: dot}, Span{Text: w.Say("head.help-when"), Href: "#stop"})...)
}

// helpAway is the emergency number of each time away, where it is another one, with the days on which it holds.
func (h handout) helpAway() (spans []Span) {
	for _, a := range h.aways() {
		if a.Emergency != "" && a.Emergency != h.Clinic.Emergency {
			spans = append(spans, Span{Text: dot + h.w.Say("head.help-away", "when", h.runs(a.From, a.Until)) + " "}, dial(a.Emergency))
		}
	}
	return spans
}

// whose is the name with the code, or the code alone.
func (h handout) whose() string {
	if h.Client.Called == "" {
		return h.Client.Code
	}
	return h.w.Say("head.named", "name", h.Client.Called, "code", h.Client.Code)
}

func (h handout) therapist() *plan.Therapist {
	for i := range h.Clinic.Therapists {
		if h.Clinic.Therapists[i].ID == h.Block.By {
			return &h.Clinic.Therapists[i]
		}
	}
	return nil
}

func (h handout) issuer() string {
	t := h.therapist()
	if t == nil {
		return h.Clinic.Name
	}
	return h.w.Say("head.issuer", "name", t.Name, "role", t.Role, "clinic", h.Clinic.Name)
}
