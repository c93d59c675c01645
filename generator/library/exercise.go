package library

import (
	"strings"

	"paceleaf/generator/figure"
	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// exercise is the page of one exercise: first what a client reads, then what a therapist looks up.
func (r *reader) exercise(e *program.Exercise) Page {
	w := r.w
	parts := []page.Part{
		part("head", e.Title, text("lead", e.Describe), text("whose", r.whose("exercises/"+e.ID+".toml", "exercises/"+e.ID+".md")),
			r.confirm(string(e.Standing)), text("note", w.Say("library.shown-first"))),
		part("pictures", w.Say("library.pictures"), page.Node{Kind: "group", Class: "figures", Level: 3, Nodes: r.drawings(e)}),
		part("do", w.Say("library.do"), factual("prepare", fact(w.Say("setup.prepare"), e.Words.Setup)), steps("steps", e.Words.Steps), r.levels(e)),
		part("hints", w.Say("library.hints"), named(w.Say("exercise.cues"), cues(e)), named(w.Say("exercise.watch"), e.Words.Faults)),
		part("feel", w.Say("library.feel"), factual("feel plain",
			fact(w.Say("exercise.normal"), e.Words.Normal), fact(w.Say("exercise.ease"), e.Words.EaseOff), fact(w.Say("exercise.stop"), e.Words.Stop))),
		part("need", w.Say("library.need"), text("", r.needsLong(e))),
		part("other", w.Say("library.other"), factual("links", r.neighbour("library.easier", e.Easier), r.neighbour("library.harder", e.Harder))),
		part("limits", w.Say("library.limits"), r.kinds(e)),
		part("reasons", w.Say("library.reasons"), linked("links", "../", r.notesAbout(e))),
		part("desk", w.Say("library-desk.exercise"), r.forTherapists(e)...),
	}
	parts = append(parts, r.explained(link{e.Title, "exercises/" + e.ID + ".html"}, parts), part("links-here", w.Say("library-desk.links-here"), r.linksHere(e)))
	return r.made("exercises/"+e.ID+".html", "../", "exercise-page", e.Title, parts...)
}

func named(title string, items []string) page.Node {
	if len(items) == 0 {
		return page.Node{}
	}
	return group("", title, bullets("", items))
}

// drawings are the pictures, each with the legs that work in it.
func (r *reader) drawings(e *program.Exercise) (nodes []page.Node) {
	for _, p := range r.Pictures(e) {
		d, says := p.Drawing, strings.TrimSpace(p.Says+" "+r.rangeDrawn(e))
		if len(nodes) > 0 {
			says = r.w.Say("library.mirrored")
		}
		d.Play, d.Halt = r.w.Say("figure.play"), r.w.Say("figure.stop")
		nodes = append(nodes, page.Node{Kind: "figure", Title: p.Named, Says: says, Drawing: &d})
	}
	return nodes
}

func cues(e *program.Exercise) (texts []string) {
	for _, c := range e.Words.Cues {
		texts = append(texts, c.Text)
	}
	return texts
}

// rangeDrawn says which range is drawn: all that the exercise has, which is nobody's limit.
func (r *reader) rangeDrawn(e *program.Exercise) string {
	_, _, shown, err := figure.Ends(e.Figure, e.Range)
	if err != nil || !shown {
		return ""
	}
	says := r.w.Say("library.range-drawn", "from", r.angle(e.Range.Straightest), "to", r.angle(e.Range.MostBent))
	if e.Range.Straightest == e.Range.MostBent {
		says = r.w.Say("library.angle-drawn", "at", r.angle(e.Range.MostBent))
	}
	if beside, _ := figure.Beside(e.Figure); beside {
		says += " " + r.w.Say("figure.beside")
	}
	return says
}

// levels are the rungs of a ladder.
func (r *reader) levels(e *program.Exercise) page.Node {
	if len(e.Levels) == 0 {
		return page.Node{}
	}
	n := page.Node{Kind: "list", Class: "levels"}
	for i, l := range e.Levels {
		spans := []page.Span{{Text: r.w.Say("ladder.level", "n", i+1), Strong: true}, {Text: " " + l.Do}}
		if l.Indoor != "" {
			spans = append(spans, page.Span{Text: " " + r.w.Say("ladder.indoors") + " " + l.Indoor})
		}
		n.Items = append(n.Items, spans)
	}
	return group("", r.w.Say("ladder.title"), n)
}

func (r *reader) needsLong(e *program.Exercise) string {
	if len(e.Needs) == 0 {
		return r.w.Say("library.needs-none-long")
	}
	names := make([]string, len(e.Needs))
	for i, d := range e.Needs {
		names[i] = r.w.Say("device." + string(d))
	}
	return r.w.Join(names) + "."
}

// neighbour is the link to an easier or a harder exercise.
func (r *reader) neighbour(label, id string) page.Fact {
	other := r.Catalog.Exercises[id]
	if other == nil {
		return page.Fact{}
	}
	return page.Fact{Label: r.w.Say(label), Value: []page.Span{{Text: other.Title, Href: id + ".html"}}}
}

// kinds are the limits that speak of the exercise, in a client's words.
func (r *reader) kinds(e *program.Exercise) page.Node {
	if len(e.Kinds) == 0 {
		return text("", r.w.Say("library.limits-none"))
	}
	var items []string
	for _, k := range e.Kinds {
		items = append(items, r.w.Say("kind."+string(k)))
	}
	return group("", "", text("", r.w.Say("library.limits-lead")), bullets("", items))
}

// notesAbout are the notes of reasons about the exercise.
func (r *reader) notesAbout(e *program.Exercise) (links []link) {
	for _, n := range r.Catalog.Notes {
		if n.About(e.ID) {
			links = append(links, link{n.Title, "notes/" + n.ID + ".html"})
		}
	}
	return links
}

// linksHere are the pages that name the exercise.
func (r *reader) linksHere(e *program.Exercise) page.Node {
	var phases, neighbours []link
	for _, p := range r.used[e.ID] {
		phases = append(phases, link{r.w.Say("library.phase-of", "phase", p.phase.Title, "program", p.program.Title), "programs/" + p.program.ID + ".html#phase-" + p.phase.ID})
	}
	for _, id := range r.names[e.ID] {
		neighbours = append(neighbours, link{r.Catalog.Exercises[id].Title, "exercises/" + id + ".html"})
	}
	var notes []link
	for _, n := range r.Catalog.Notes {
		if n.About(e.ID) {
			notes = append(notes, link{n.Title, "notes/" + n.ID + colleagues + ".html"})
		}
	}
	nodes := []page.Node{}
	for _, g := range []struct {
		key   string
		links []link
	}{{"library-desk.here-phases", phases}, {"library-desk.here-notes", notes}, {"library-desk.here-neighbours", neighbours}} {
		if len(g.links) > 0 {
			nodes = append(nodes, group("", r.w.Say(g.key), linked("links", "../", g.links)))
		}
	}
	if len(nodes) == 0 {
		nodes = append(nodes, text("", r.w.Say("library-desk.here-nothing")))
	}
	return page.Node{Kind: "group", Class: "links-here", Level: 3, Nodes: nodes}
}

// whose says whether a page ships, is the clinic's own, or stands in the place of a shipped one. files are the page's own,
// the one that makes it first: words of the clinic's for a shipped exercise stand in the place of shipped ones.
func (r *reader) whose(files ...string) string {
	owner := program.Shipped
	for i, file := range files {
		if own, clinics := r.Catalog.Owners[file]; clinics && owner == program.Shipped {
			owner = own
			if i > 0 {
				owner = program.Instead
			}
		}
	}
	return r.w.Say("library.whose-"+string(owner), "clinic", r.Clinic)
}

func (r *reader) angle(d unit.Degrees) string {
	return r.w.Say("angle.deg", "deg", r.w.Number(float64(d), 2))
}
