package page

import (
	"strings"
	"testing"

	"paceleaf/generator/source"
	"paceleaf/generator/words"
	"paceleaf/templates"
)

// TestNoteRemarks: what a therapist may write, and what is asked about, at its line.
func TestNoteRemarks(t *testing.T) {
	plain, _ := words.LoadPlain(source.Over(templates.FS), words.Shipped)
	for _, row := range []struct {
		note, want, why string
	}{
		{"Dear Jo,\n\nyou did well. Keep 20 kg.", "", "plain words and weights"},
		{"Good.\nThe patient may run.", `2: the note says "The patient"`, "the client is you, and the line is told"},
		{"Use 80 % of it.", `1: the note says "80 %"`, "a client computes nothing"},
		{"Your effusion is less.", `1: the note says "effusion", which a client may not know`, "a word of the trade"},
		{"Mind the extensions of your hair.", "", "a trade word inside another word is none"},
		{"Do 1/2 of it.", `1: the note says "1/2"`, "no fractions"},
		{"You are cleared for sport.", `1: the note says "cleared"`, "nothing is cleared by a page"},
		{strings.Repeat("on ", 16) + "end.", `1: a sentence of 17 words`, "longer than 15 words"},
		{strings.Repeat("on ", 14) + "end.", "", "15 words are enough"},
	} {
		var said []string
		for _, r := range NoteRemarks(row.note, plain) {
			said = append(said, strings.TrimSpace(strings.Join([]string{string(rune('0'+r.Line)) + ":", r.What}, " ")))
		}
		got := strings.Join(said, "; ")
		if row.want == "" && got != "" || !strings.HasPrefix(got, row.want) {
			t.Errorf("%q: %q, want %q: %s", row.note, got, row.want, row.why)
		}
	}
}

// TestRemarksCanBeMade: each kind of remark is made of a page that gives cause for it.
func TestRemarksCanBeMade(t *testing.T) {
	p := samplePlan()
	p.Client.Note = "Do half your load. " + strings.Repeat("The effusion of the patient is a very long story indeed and goes on and on. ", 12)
	for i := range p.Prescriptions {
		e := *p.Prescriptions[i].Exercise
		e.ID += string(rune('a' + i))
		e.Words.Steps = e.Words.Steps[:min(1, len(e.Words.Steps))]
		p.Prescriptions[i].Exercise = &e
	}
	made := map[string]bool{}
	plain, _ := words.LoadPlain(source.Over(templates.FS), words.Shipped)
	for _, r := range Remarks(p, deskWords(t), plain) {
		made[r.ID] = true
		if r.What == "" || r.Instead == "" {
			t.Errorf("%+v says too little", r)
		}
	}
	for _, id := range []string{"words", "hard-word", "long-paragraph", "steps", "picture", "sentence"} {
		if !made[id] {
			t.Errorf("no remark of kind %s", id)
		}
	}
}
