package generator

import (
	"fmt"

	"paceleaf/generator/page"
	"paceleaf/generator/source"
	"paceleaf/generator/words"
)

// Remarks are questions about the pages of a client: how they read, how much they ask for. They stand at the block that
// the pages are of; what the therapist wrote is in note.md.
func (h *House) Remarks(done Planned) (faults source.Faults) {
	if done.Plan == nil {
		return nil
	}
	at := done.Plan.Block.At
	for _, r := range page.Remarks(done.Plan, h.words, h.plainWords()) {
		what := r.What
		if r.Item > 0 {
			what += fmt.Sprintf(" (PEMAT %d)", r.Item)
		}
		faults.Add(source.Fault{File: at.File, Line: max(at.Line, 1), Ask: true, What: what, Instead: r.Instead})
	}
	return faults
}

// noteRemarks are questions about what the therapist wrote to the client, at the line of note.md.
func (h *House) noteRemarks(done Planned) (faults source.Faults) {
	if done.Client == nil {
		return nil
	}
	for _, r := range page.NoteRemarks(done.Client.Note, h.plainWords()) {
		faults.Add(source.Fault{File: "clients/" + done.Client.Code + "/note.md", Line: r.Line, Ask: true, What: r.What, Instead: r.Instead})
	}
	return faults
}

// plainWords are the words that a client may not know; their own mistakes are told where the library is judged.
func (h *House) plainWords() words.PlainWords {
	plain, _ := words.LoadPlain(source.Over(sub(h.Files.Clinic, "templates"), h.Templates), language(h.Clinic))
	return plain
}
