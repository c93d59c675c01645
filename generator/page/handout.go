package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// Handout is the page that a client takes home, as a draft: only a signature makes it more.
func Handout(p *plan.Plan, w *words.Words) View {
	h := handout{withoutSport(p), w}
	v := View{Format: 1, Kind: "handout", Lang: w.Lang, Dir: w.Dir, Code: p.Client.Code,
		Title: w.Say("page.title", "knee", h.knee(), "name", h.name(), "n", p.Block.Number, "clinic", p.Clinic.Name),
		Draft: w.Say("page.draft"),
		Running: w.Say("page.running", "code", p.Client.Code, "knee", h.knee(), "n", p.Block.Number,
			"starts", w.Day(p.Block.Starts)),
	}
	for _, part := range []func() Part{h.head, h.symptoms, h.brief, h.stop, h.care, h.notYet, h.weeks, h.exercises, h.kneeSays,
		h.goals, h.finish, h.known, h.dates, h.progress, h.routine, h.tick, h.note, h.together, h.smallPrint} {
		if made := part(); len(made.Nodes) > 0 {
			v.Parts = append(v.Parts, made)
		}
	}
	v.Diary = h.diary()
	if p.Client.Print == plan.LargePrint {
		v.Print = string(plan.LargePrint)
	}
	return v
}

// handout makes the parts of one page.
type handout struct {
	*plan.Plan
	w *words.Words
}

func (h handout) part(id, title string, nodes ...Node) Part {
	return Part{ID: id, Title: title, Nodes: kept(nodes)}
}

// name is what the client is called on the page: the first name that the clinic chose, or the code.
func (h handout) name() string {
	if h.Client.Called != "" {
		return h.Client.Called
	}
	return h.Client.Code
}

// knee is the knee of the event in words: LEFT knee, BOTH knees.
func (h handout) knee() string { return h.w.Say("knee." + string(h.side())) }

func (h handout) side() unit.Side {
	if h.Event == nil || h.Event.Side == "" {
		return unit.Both
	}
	return h.Event.Side
}

func (h handout) operated() bool { return h.Operated() }
func (h handout) injured() bool  { return h.Event != nil && h.Event.Kind == "injury" }

// unhurt reports whether no operation is on file at all: then the page speaks of none, and of no wound.
func (h handout) unhurt() bool {
	return h.Event != nil && !slices.ContainsFunc(h.Client.Events, func(e plan.Event) bool { return e.Kind == "operation" })
}

// ends is the last day of the block: the page is valid until it.
func (h handout) ends() unit.Day { return h.Block.Starts.AddWeeks(h.Block.Weeks).AddDays(-1) }

// aways are the times at another place that touch the block.
func (h handout) aways() (during []plan.Away) {
	for _, a := range h.Client.Away {
		if !a.Until.Before(h.Block.Starts) && !a.From.After(h.ends()) {
			during = append(during, a)
		}
	}
	return during
}

// placeName is a place as the client knows it.
func (h handout) placeName(id string) string {
	for _, p := range h.Clinic.Places {
		if p.ID == id && p.Name != "" {
			return p.Name
		}
	}
	return id
}
