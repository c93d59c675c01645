package page

import (
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// firstWeeks is how long after the event clots and infection lead the list. Chosen: rules 31.
const firstWeeks = 6

// The red flags, each in its level. All stand on every page, but a wound's where there was no operation; the week only
// changes their order.
var (
	flagsEmergency  = []string{"chest", "blood", "faint", "foot", "bleeding"}
	flagsEarly      = []string{"calf", "fever", "wound", "hot-knee"}
	flagsLater      = []string{"pop", "giving-way", "locked", "sudden-swelling"}
	flagsTodayToo   = []string{"weak-foot", "worst-pain"}
	flagsSoon       = []string{"less-straight", "still-swollen", "touch", "numb", "unsure"}
	flagOfAWound    = "wound" // left out where there was no operation at all
	onlyInThePhones = "0123456789"
)

// stop is the part that may matter most: when to stop, whom to call, in three levels.
func (h handout) stop() Part {
	w := h.w
	today := append(append([]string{}, flagsEarly...), flagsLater...)
	lead := w.Say("stop.lead-early")
	switch late := h.weeksSince() >= h.firstSigns(); {
	case h.onlyBegan():
		today = append(append([]string{}, flagsLater...), flagsEarly...)
		lead = w.Say("stop.lead-start")
	case late:
		today = append(append([]string{}, flagsLater...), flagsEarly...)
		lead = w.Say("stop.lead-later")
	case h.unhurt():
		lead = w.Say("stop.lead-injury")
	}
	if h.unhurt() {
		today = slices.DeleteFunc(today, func(f string) bool { return f == flagOfAWound })
	}
	return h.part("stop", w.Say("stop.title"),
		paragraph("lead", lead),
		h.level("emergency", flagsEmergency, h.emergency()),
		h.level("today", append(today, flagsTodayToo...), h.phones()),
		h.level("soon", flagsSoon, []Node{paragraph("call", w.Say("stop.soon-how"))}),
	)
}

// onlyBegan reports whether weeks count from the day on which a program began: no injury and no operation is that new.
func (h handout) onlyBegan() bool { return h.Event != nil && h.Event.Kind == "start" }

// firstSigns is for how many weeks clots and infection lead the list: the program's word, else rules 31.
func (h handout) firstSigns() int {
	if h.Program != nil && h.Program.FirstSignsWeeks != nil {
		return *h.Program.FirstSignsWeeks
	}
	return firstWeeks
}

// level is one level of urgency: whom to call, then the signs.
func (h handout) level(id string, flags []string, call []Node) Node {
	signs := make([]string, len(flags))
	for i, f := range flags {
		signs[i] = h.w.Say("flag." + f)
	}
	nodes := append(append([]Node{}, call...), bullets("signs", append(h.signsOfProgram(id), signs...)...))
	return group("stop stop-"+id, h.w.Say("stop."+id), 3, nodes...)
}

// signsOfProgram are the reasons to stop that the program adds to a level.
func (h handout) signsOfProgram(level string) (signs []string) {
	if h.Program == nil {
		return nil
	}
	for _, s := range h.Program.Stops {
		if string(s.Urgency) == level {
			signs = append(signs, s.Says)
		}
	}
	return signs
}

// weeksSince is the full weeks since the event on the block's first day.
func (h handout) weeksSince() int {
	if h.Event == nil {
		return h.Stage.WeeksSince
	}
	return h.Block.Starts.WeeksSince(h.Event.Date)
}

// emergency is the number at home, and the one of each place away.
func (h handout) emergency() (nodes []Node) {
	nodes = append(nodes, spoken("call", Span{Text: h.w.Say("stop.dial") + " "}, dial(h.Clinic.Emergency)))
	for _, a := range h.aways() {
		if a.Emergency != "" {
			nodes = append(nodes, spoken("call", Span{Text: h.w.Say("stop.dial-away", "place", h.placeName(a.Place), "when", h.runs(a.From, a.Until)) + " "},
				dial(a.Emergency)))
		}
	}
	return nodes
}

// phones are the clinic's numbers with their hours. Where nobody but the clinic answers, the page says what to do when it is
// closed (rules 31).
func (h handout) phones() []Node {
	list := Node{Kind: "list", Class: "phones"}
	for _, p := range h.Clinic.Phones {
		list.Items = append(list.Items, h.phone(p))
	}
	nodes := []Node{paragraph("call", h.w.Say("stop.today-how")), list}
	if len(h.Clinic.Phones) < plan.EnoughPhones {
		nodes = append(nodes, spoken("call", Span{Text: h.w.Say("stop.other-hours") + " "}, dial(h.Clinic.Emergency)))
	}
	return nodes
}

func (h handout) phone(p plan.Phone) []Span {
	return []Span{{Text: p.Who + " "}, dial(p.Number), {Text: " " + h.w.Say("stop.hours", "hours", p.Hours)}}
}

// dial is a number that a phone can call.
func dial(number string) Span {
	digits := strings.Map(func(r rune) rune {
		if strings.ContainsRune(onlyInThePhones, r) {
			return r
		}
		return -1
	}, number)
	if strings.HasPrefix(strings.TrimSpace(number), "+") {
		digits = "+" + digits
	}
	if digits == "" || digits == "+" {
		return strong(number)
	}
	return Span{Text: number, Strong: true, Href: "tel:" + digits}
}

// inForce reports whether a stretch holds on a day; a zero end is until further notice.
func inForce(from, lifts, on unit.Day) bool {
	return !from.After(on) && (lifts.IsZero() || lifts.After(on))
}
