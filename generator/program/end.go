package program

import (
	"fmt"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// End is what it takes to finish a program. It ends nothing by itself: the therapist does.
type End struct {
	At       basis.Origin
	Needs    []Criterion   `key:"needs,required" doc:"a criterion that must be met"`
	Says     string        `key:"says,required" doc:"what the client reads once all of them are" show:"Keep both thighs strong, twice a week." said:"client"`
	Source   string        `key:"source" doc:"key of the bibliography" show:"kngf-2014"`
	Standing unit.Standing `key:"standing" doc:"how far the source may be trusted"`
	Note     string        `key:"note" doc:"why it is as it is; the worksheet prints it" show:"the marks of the last stage, once more" said:"desk"`
}

// Urgency is how soon a client calls.
type Urgency string

const (
	AtOnce    Urgency = "emergency"
	Today     Urgency = "today"
	SoonToday Urgency = "soon"
)

func (Urgency) Words() []string { return []string{"emergency", "today", "soon"} }

// Stop is one more reason to stop and call, which the condition of a program asks for. It stands first in its level, beside the
// red flags of every page.
type Stop struct {
	At       basis.Origin
	Urgency  Urgency       `key:"urgency,required" doc:"how soon to call"`
	Says     string        `key:"says,required" doc:"the sign, as the client reads it" show:"The wound opens, or pus comes out." said:"client"`
	Source   string        `key:"source" doc:"key of the bibliography" show:"kngf-2014"`
	Standing unit.Standing `key:"standing" doc:"how far the source may be trusted"`
}

// RetestIn is how many weeks lie between two measurements in a phase; 0: the program does not say.
func (p *Program) RetestIn(ph *Phase) int {
	if ph != nil && ph.RetestWeeks > 0 {
		return ph.RetestWeeks
	}
	return p.RetestWeeks
}

// ToldIn are the notes that the client is told about in a phase: the phase's, then the program's, each once.
func (p *Program) ToldIn(ph *Phase) (notes []*Note) {
	ids := p.File.Notes
	if ph != nil {
		ids = append(append([]string{}, ph.Notes...), ids...)
	}
	seen := map[string]bool{}
	for _, id := range ids {
		if n := p.Note(id); n != nil && !seen[id] {
			seen[id] = true
			notes = append(notes, n)
		}
	}
	return notes
}

// judgeEnd holds the end, the reasons to stop and the notes against the rest.
func (r *reader) judgeEnd() {
	if e := r.p.End; e != nil {
		r.vouched(e.Source, e.Standing, e.At)
		r.criteria(e.Needs)
	}
	for _, s := range r.p.Stops {
		r.vouched(s.Source, s.Standing, s.At)
	}
	r.told(r.p.File.Notes, r.p.File.At)
	for _, ph := range r.p.Phases {
		r.told(ph.Notes, ph.At)
	}
}

// told asks that each note that a client is told about is there, and says in short what the client reads.
func (r *reader) told(ids []string, at basis.Origin) {
	for i, id := range ids {
		switch n := r.p.Note(id); {
		case n == nil:
			r.wrong(at.At(fmt.Sprintf("notes[%d]", i)), fmt.Sprintf("there is no note %q", id), r.oneOf("notes", id))
		case strings.TrimSpace(n.Short) == "":
			r.wrong(n.At.At("title"), fmt.Sprintf("the client is told of note %s, but it says nothing in short", id), `write short = "…", one or two sentences for the client`)
		}
	}
}

// sessions holds the sessions of a phase against themselves.
func (r *reader) sessions(ph *Phase) {
	ids := map[string]bool{}
	for _, s := range ph.Sessions {
		if ids[s.ID] {
			r.wrong(s.At.At("id"), fmt.Sprintf("session %q stands twice", s.ID), "give each session an id of its own")
		}
		ids[s.ID] = true
		switch {
		case s.Daily && s.EveryDays > 0:
			r.wrong(s.At.At("every_days"), fmt.Sprintf("session %q is done daily and every %d days", s.ID, s.EveryDays), "keep daily or every_days")
		case s.FromDay > 0 && s.EveryDays == 0:
			r.wrong(s.At.At("from_day"), fmt.Sprintf("session %q has from_day without every_days", s.ID), "write every_days = 2, or take from_day out")
		case s.FromDay > s.EveryDays:
			r.wrong(s.At.At("from_day"), fmt.Sprintf("session %q begins on day %d of every %d", s.ID, s.FromDay, s.EveryDays), fmt.Sprintf("write a day from 1 to %d", s.EveryDays))
		}
	}
}
