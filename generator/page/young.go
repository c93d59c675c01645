package page

// A young client does not read the page alone: a guardian is named in its head and signs with the client.

// guardian is who reads with a young client; "" where the client is of age.
func (h handout) guardian() string {
	switch {
	case !h.Young():
		return ""
	case h.Client.Guardian == "":
		return h.w.Say("head.guardian")
	}
	return h.Client.Guardian
}

// together is where a young client and the guardian sign that they have read the page.
func (h handout) together() Part {
	if !h.Young() {
		return Part{}
	}
	w := h.w
	return h.part("together", w.Say("together.title"), paragraph("lead", w.Say("together.lead")),
		factual("signature", fact(h.name(), w.Say("together.line")), fact(h.guardian(), w.Say("together.line"))))
}

// smallYoung is the line of the small print for a young client.
func (h handout) smallYoung() string {
	if !h.Young() {
		return ""
	}
	return h.w.Say("small.young")
}
