// Package library makes the views of the public library: every exercise, program and note of reasons, and the sources that
// they rest on. It holds no person by construction: it imports neither the room of clients nor what follows from them, and a
// [Shelf] has no field that could carry one (TestNoPersonCanGetIn).
package library

import (
	"maps"
	"slices"
	"strings"

	"paceleaf/generator/figure"
	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// Shelf is all that the library is made of.
type Shelf struct {
	Clinic   string // its name
	Programs []*program.Program
	Catalog  *program.Catalog
	Words    *words.Words
	Glossary []Term // words that clients meet; none where the language has no such file
}

// Page is one page of the library, before it is drawn.
type Page struct {
	Path  string // below library/
	View  page.View
	Frame page.Frame
}

// Picture is one drawing that lies in a file of its own.
type Picture struct {
	Path    string // below library/
	Named   string
	Says    string
	Drawing page.Drawing
}

// Pages are all pages, in the order of their paths within each kind.
func (s *Shelf) Pages() []Page {
	r := s.reader()
	all := []Page{r.index(), r.figures(), r.bibliography()}
	for _, id := range r.ids {
		all = append(all, r.exercise(s.Catalog.Exercises[id]))
	}
	for _, n := range s.Catalog.Notes {
		all = append(all, r.noteForClients(n), r.noteForColleagues(n))
	}
	for _, p := range s.Programs {
		all = append(all, r.program(p))
	}
	if len(r.Glossary) > 0 {
		all = append(all, r.glossary())
	}
	return all
}

// Pictures are the drawings of an exercise: of one leg at a time its left and its right one, of both legs the one that the page shows.
func (s *Shelf) Pictures(e *program.Exercise) (all []Picture) {
	if !e.Figure.Drawn() {
		return nil
	}
	for _, side := range sides(e) {
		all = append(all, Picture{Path: "figures/" + e.ID + "-" + string(side) + ".svg", Named: s.named(e, side), Says: e.Describe,
			Drawing: page.Drawing{ID: "fig-" + e.ID + "-" + string(side), Pose: e.Figure, Side: side, Range: e.Range}})
	}
	return all
}

// SVG draws the picture as a file of its own. It fails where the pose cannot be drawn.
func (p Picture) SVG() ([]byte, error) {
	return figure.File(p.Drawing.Pose, figure.Options{ID: p.Drawing.ID, Title: p.Named, Describe: p.Says, Side: p.Drawing.Side, Range: p.Drawing.Range})
}

// sides are the sides that an exercise is drawn from; both legs at work are drawn as right.
func sides(e *program.Exercise) []unit.Side {
	if e.Side == program.BothLegs {
		return []unit.Side{unit.Right}
	}
	return []unit.Side{unit.Left, unit.Right}
}

func (s *Shelf) named(e *program.Exercise, side unit.Side) string {
	if e.Side == program.BothLegs {
		side = unit.Both
	}
	return s.Words.Say("figure.named", "title", e.Title, "leg", s.Words.Say("leg."+string(side)))
}

// reader is a shelf with what each page needs to know of the others.
type reader struct {
	*Shelf
	w        *words.Words
	ids      []string            // of the exercises, by title
	used     map[string][]place  // exercise -> phases that choose it
	names    map[string][]string // exercise -> those that name it as easier or harder
	cited    map[string][]link   // source -> pages that rest on it
	mentions map[string][]link   // term -> pages that use it
}

// place is a phase of a program.
type place struct {
	program *program.Program
	phase   *program.Phase
}

// link is a page of the library by its title.
type link struct{ title, path string }

func (s *Shelf) reader() *reader {
	r := &reader{Shelf: s, w: s.Words, used: map[string][]place{}, names: map[string][]string{}, cited: map[string][]link{}, mentions: map[string][]link{}}
	r.ids = slices.SortedFunc(maps.Keys(s.Catalog.Exercises), func(a, b string) int { return s.before(a, b) })
	for _, p := range s.Programs {
		for _, ph := range p.Phases {
			r.uses(p, ph)
		}
	}
	for _, id := range r.ids {
		e := s.Catalog.Exercises[id]
		for _, neighbour := range []string{e.Easier, e.Harder} {
			if neighbour != "" && !slices.Contains(r.names[neighbour], id) {
				r.names[neighbour] = append(r.names[neighbour], id)
			}
		}
	}
	r.cite()
	return r
}

// before orders exercises as a reader looks for them: by title.
func (s *Shelf) before(a, b string) int {
	return strings.Compare(s.Catalog.Exercises[a].Title+" "+a, s.Catalog.Exercises[b].Title+" "+b)
}

// uses notes which exercises a phase chooses, each once.
func (r *reader) uses(p *program.Program, ph *program.Phase) {
	here := place{p, ph}
	for _, slot := range ph.Slots {
		for _, id := range slot.Choose {
			if all := r.used[id]; len(all) == 0 || all[len(all)-1] != here {
				r.used[id] = append(all, here)
			}
		}
	}
}

// cite notes which pages rest on which source.
func (r *reader) cite() {
	add := func(key string, l link) {
		if key != "" && !slices.Contains(r.cited[key], l) {
			r.cited[key] = append(r.cited[key], l)
		}
	}
	for _, p := range r.Programs {
		for _, key := range sourcesOf(p) {
			add(key, link{p.Title, "programs/" + p.ID + ".html"})
		}
	}
	for _, n := range r.Catalog.Notes {
		for _, key := range n.Sources {
			add(key, link{n.Title, "notes/" + n.ID + colleagues + ".html"})
		}
	}
	for _, id := range r.ids {
		e := r.Catalog.Exercises[id]
		add(e.Source, link{e.Title, "exercises/" + id + ".html"})
	}
}
