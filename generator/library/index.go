package library

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// index is the first page: everything there is, exercises in groups by what they train first, with what finds them.
func (r *reader) index() Page {
	w := r.w
	parts := []page.Part{
		part("head", w.Say("library.title", "clinic", r.Clinic), text("lead", w.Say("library.lead")), text("note", w.Say("library.no-person"))),
		r.finder()}
	for _, m := range program.Muscle("").Words() {
		var cards []page.Node
		for _, id := range r.gentleFirst(r.ids) {
			if e := r.Catalog.Exercises[id]; len(e.Trains) > 0 && string(e.Trains[0]) == m {
				cards = append(cards, r.card(e))
			}
		}
		parts = append(parts, part("trains-"+m, w.Say("library.muscle-"+m), page.Node{Kind: "cards", Class: "cards", Nodes: cards}))
	}
	parts = append(parts, r.programList(), r.noteList())
	return r.made("index.html", "", "library-index", w.Say("library.title", "clinic", r.Clinic), parts...)
}

// card is one exercise of the index. Its classes are what the script looks for.
func (r *reader) card(e *program.Exercise) page.Node {
	nodes := []page.Node{}
	if e.Figure.Drawn() {
		nodes = append(nodes, page.Node{Kind: "thumb", Class: "thumb", File: "figures/" + e.ID + "-right.svg"})
	}
	nodes = append(nodes,
		page.Node{Kind: "text", Class: "name", Spans: []page.Span{{Text: e.Title, Href: "exercises/" + e.ID + ".html"}}},
		text("", e.Describe),
		text("meta", r.w.Say("library.card-trains", "what", r.muscles(e))),
		text("meta", r.needs(e)))
	return page.Node{Kind: "group", Class: strings.Join(r.tokens(e), " "), ID: e.ID, Nodes: nodes}
}

// tokens are the words by which the script sorts out an exercise.
func (r *reader) tokens(e *program.Exercise) (tokens []string) {
	for _, m := range e.Trains {
		tokens = append(tokens, "muscle-"+string(m))
	}
	for _, d := range e.Needs {
		tokens = append(tokens, "needs-"+string(d))
	}
	if len(e.Needs) == 0 {
		tokens = append(tokens, "needs-nothing")
	}
	tokens = append(tokens, "chain-"+string(e.Chain))
	for _, p := range r.used[e.ID] {
		for _, token := range []string{r.programToken(p.program), r.phaseToken(p.program, p.phase)} {
			if !slices.Contains(tokens, token) {
				tokens = append(tokens, token)
			}
		}
	}
	return tokens
}

// programToken and phaseToken are short, for an exercise may stand in thirty phases: the places of a program and of its phase
// in the lists of the finder.
func (r *reader) programToken(p *program.Program) string {
	return "p" + strconv.Itoa(1+slices.Index(r.Programs, p))
}

func (r *reader) phaseToken(p *program.Program, ph *program.Phase) string {
	return r.programToken(p) + "-" + strconv.Itoa(1+slices.Index(p.Phases, ph))
}

// finder is the form that a script shows: without one it stays hidden, and all exercises stand there.
func (r *reader) finder() page.Part {
	w := r.w
	search := page.Fact{Label: w.Say("library.find-words")}
	form := page.Node{Kind: "facts", Facts: []page.Fact{search,
		r.choice("find-program", r.programChoices()), r.choice("find-phase", r.phaseChoices()),
		r.choice("find-muscle", r.wordChoices("muscle-", program.Muscle("").Words(), "library.muscle-")),
		r.choice("find-needs", r.deviceChoices()), r.choice("find-chain", r.wordChoices("chain-", []string{"open", "closed"}, "library.chain-"))}}
	count := page.Node{Kind: "text", Class: "count", Title: w.Say("library.count", "n", 1), Says: w.Say("library.count"), Spans: plain("0")}
	return part("find", w.Say("library.find"), form, count, text("again", w.Say("library.find-again")))
}

func (r *reader) choice(key string, options []page.Span) page.Fact {
	all := page.Span{Text: r.w.Say("library.find-all"), Href: "#all"}
	return page.Fact{Label: r.w.Say("library." + key), Value: append([]page.Span{all}, options...)}
}

func (r *reader) wordChoices(token string, closed []string, key string) (options []page.Span) {
	for _, word := range closed {
		options = append(options, page.Span{Text: r.w.Say(key + word), Href: "#" + token + word})
	}
	return options
}

func (r *reader) deviceChoices() []page.Span {
	options := []page.Span{{Text: r.w.Say("library.needs-nothing"), Href: "#needs-nothing"}}
	have := map[unit.DeviceKind]bool{}
	for _, e := range r.Catalog.Exercises {
		for _, d := range e.Needs {
			have[d] = true
		}
	}
	for _, d := range unit.DeviceKind("").Words() {
		if have[unit.DeviceKind(d)] {
			options = append(options, page.Span{Text: r.w.Say("device." + d), Href: "#needs-" + d})
		}
	}
	return options
}

func (r *reader) programChoices() (options []page.Span) {
	for _, p := range r.Programs {
		options = append(options, page.Span{Text: p.Title, Href: "#" + r.programToken(p)})
	}
	return options
}

func (r *reader) phaseChoices() (options []page.Span) {
	for _, p := range r.Programs {
		for _, ph := range p.Phases {
			options = append(options, page.Span{Text: r.w.Say("library.phase-of", "phase", ph.Title, "program", p.Title), Href: "#" + r.phaseToken(p, ph)})
		}
	}
	return options
}

func (r *reader) programList() page.Part {
	var links []link
	for _, p := range r.Programs {
		links = append(links, link{p.Title, "programs/" + p.ID + ".html"})
	}
	links = append(links, link{r.w.Say("library-desk.figures-title"), "figures.html"})
	return part("programs", r.w.Say("library.programs"), text("note", r.w.Say("library.programs-note")), linked("links", "", links))
}

func (r *reader) noteList() page.Part {
	var clients, others []link
	for _, n := range r.Catalog.Notes {
		clients = append(clients, link{n.Title, "notes/" + n.ID + ".html"})
		others = append(others, link{n.Title, "notes/" + n.ID + colleagues + ".html"})
	}
	return part("notes", r.w.Say("library.notes"), linked("links", "", clients), group("", r.w.Say("library.notes-colleagues"), linked("links", "", others)))
}

// muscles are what an exercise trains, as a sentence lists it.
func (r *reader) muscles(e *program.Exercise) string {
	names := make([]string, len(e.Trains))
	for i, m := range e.Trains {
		names[i] = r.w.Say("library.trains-" + string(m))
	}
	return r.w.Join(names)
}

// needs is what an exercise is done with.
func (r *reader) needs(e *program.Exercise) string {
	if len(e.Needs) == 0 {
		return r.w.Say("library.needs-none")
	}
	names := make([]string, len(e.Needs))
	for i, d := range e.Needs {
		names[i] = r.w.Say("device." + string(d))
	}
	return r.w.Say("library.card-needs", "what", r.w.Join(names))
}

var dashes = strings.NewReplacer(" ", "-", "+", "")

// dashed writes a closed word as the key of its sentence.
func dashed(word string) string { return dashes.Replace(word) }
