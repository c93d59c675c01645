package page

import (
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// Hold is the one page that a client gets when the therapist calls a pause between visits: what rests, what goes on,
// when to call. It belongs to the block's page and takes nothing back that stands there.
func Hold(p *plan.Plan, w *words.Words) View {
	h := handout{p, w}
	v := Handout(p, w)
	v.Kind, v.Diary = "hold", nil
	v.Title = w.Say("hold.window", "knee", h.knee(), "name", h.name(), "n", p.Block.Number, "clinic", p.Clinic.Name)
	v.Parts = nil
	for _, part := range []func() Part{h.holdHead, h.holdSymptoms, h.rests, h.goesOnPart, h.flare, h.stop} {
		if made := part(); len(made.Nodes) > 0 {
			v.Parts = append(v.Parts, made)
		}
	}
	return v
}

// holdHead says whose page it is, from which day the pause holds, and whom to call. Days and goal stand on the block's page.
func (h handout) holdHead() Part {
	w, from := h.w, ""
	if h.Symptoms.Held != nil {
		from = w.Say("hold.from", "day", w.Day(h.Symptoms.Held.From), "n", h.Block.Number)
	}
	return h.part("head", w.Say("hold.title", "knee", h.knee()), paragraph("lead", from),
		factual("who", fact(w.Say("head.for"), h.whose()), fact(w.Say("head.also-for"), h.guardian()), fact(w.Say("head.by"), h.issuer())),
		h.help())
}

// holdSymptoms is the part of the block's page without the word of its boxes, for what each leg does is listed here, and without
// saying again that a pause was called, where the knee has a reason of its own.
func (h handout) holdSymptoms() Part {
	bare := *h.Plan
	bare.Prescriptions = nil
	if own := slices.DeleteFunc(slices.Clone(h.Symptoms.Signals), func(g plan.Signal) bool { return g.Code == "hold" }); len(own) > 0 {
		bare.Symptoms.Signals = own
	}
	return handout{&bare, h.w}.symptoms()
}

// rests lists what is left out: of each slot the first exercise that the pause has passed over and that could be done
// where the client trains. What would have come after it was never on the client's page.
func (h handout) rests() Part {
	var order []*program.Exercise
	legs := map[string][]unit.Side{}
	first := map[string]string{} // by slot
	for _, d := range h.Dropped {
		e := h.Program.Exercises[d.Exercise]
		if e == nil || !d.Paused || first[d.Slot] != "" && first[d.Slot] != e.ID || !h.equipped(e, d.Week) {
			continue
		}
		first[d.Slot] = e.ID
		if legs[e.ID] == nil {
			order = append(order, e)
		}
		if !slices.Contains(legs[e.ID], d.Side) {
			legs[e.ID] = append(legs[e.ID], d.Side)
		}
	}
	var titles []string
	for _, e := range order {
		title := e.Title
		if sides := legs[e.ID]; len(sides) == 1 && sides[0] != unit.Both {
			title = h.w.Say("leg.of", "what", e.Title, "leg", h.w.Say("leg."+string(sides[0])))
		}
		if !slices.Contains(titles, title) {
			titles = append(titles, title)
		}
	}
	return h.part("rests", h.w.Say("hold.rests"), bullets("rests", titles...))
}

// equipped reports whether the place of a week has all that an exercise needs; where the plan names no place, nothing is
// held against it.
func (h handout) equipped(e *program.Exercise, week int) bool {
	for _, w := range h.Weeks {
		if w.Number != week || w.Place == nil {
			continue
		}
		for _, kind := range e.Needs {
			if deviceFor(w.Place, []unit.DeviceKind{kind}) == nil {
				return false
			}
		}
	}
	return true
}

// goesOnPart lists what is done all the same, each with its dose.
func (h handout) goesOnPart() Part {
	list := Node{Kind: "list", Class: "goes-on"}
	for _, p := range h.Prescriptions {
		leg := h.w.Say("leg." + string(p.Side))
		line := append([]string{"", leg}, h.work(p, p.Weeks[0])...)
		if often := h.oftenIn(p); often != "" {
			line = append(line, often)
		}
		list.Items = append(list.Items, []Span{strong(p.Exercise.Title), {Text: strings.Join(line, dot)}})
	}
	if len(list.Items) == 0 {
		return Part{}
	}
	return h.part("goes-on", h.w.Say("hold.goes-on"), list)
}

// flare is the plan for 48 hours, as it stands on the block's page.
func (h handout) flare() Part {
	knee := h.kneeSays()
	for _, n := range knee.Nodes {
		if n.Class == "flare" {
			return h.part("flare", n.Title, n.Nodes[1:]...) // the steps; that a flare is nobody's fault stands on the block's page
		}
	}
	return Part{}
}
