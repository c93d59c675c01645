package words

import (
	"fmt"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// reasonsFile has the fragments that the core makes for the therapist. They are found by their English, not by a key of ours.
const reasonsFile = "reasons.toml"

// reasonTable stands before the English of a fragment among the keys of all sentences.
const reasonTable = "reason."

// Reasons is a file of fragments: pairs of the English and what the language says.
type Reasons struct {
	Texts []Reason `key:"text,required" doc:"a fragment and its words"`
}

// Reason is one pair.
type Reason struct {
	At      basis.Origin
	English string   `key:"en,required" doc:"the English of the fragment, word for word; {a}, {b} are its values" show:"pain {a} the next morning"`
	Say     Sentence `key:"say,required" doc:"what the page says; the first number among the values chooses a plural"`
}

// reasons reads a file of fragments into sentences.
func (l *loader) reasons(name string, data []byte) map[string]Sentence {
	var file Reasons
	l.faults = append(l.faults, source.TOML(name, data, &file)...)
	l.data[name] = data
	flat := map[string]Sentence{}
	for _, r := range file.Texts {
		key := reasonTable + r.English
		if _, twice := flat[key]; twice {
			l.wrong(Sentence{At: r.At.At("en")}, fmt.Sprintf("the fragment %q stands twice", r.English), "keep one of the two")
		}
		flat[key] = r.Say
	}
	return flat
}

// Reason says a fragment of the core. One that the language has no words for is data, an id or what a person typed, and stays as
// it is: a test holds that every fragment of ours has its words.
func (w *Words) Reason(said basis.Said) string {
	key, values := said.Parts()
	text := key
	if s, known := w.sentences[reasonTable+key]; known {
		text = s.form(w.grammar, counted(values))
	}
	return basis.Fill(text, values, w.reasonValue)
}

// Reasons says several fragments one after another; empty ones are left out.
func (w *Words) Reasons(all ...basis.Said) string { return w.Reason(basis.Listed(all...)) }

func (w *Words) reasonValue(v basis.Value) string {
	if v.Said != "" {
		return w.Reason(v.Said)
	}
	return w.written(v.Number) + v.Text
}

// counted is the first number among the values: it chooses the plural.
func counted(values []basis.Value) string {
	for _, v := range values {
		if v.Number != "" {
			return strings.TrimPrefix(v.Number, "-")
		}
	}
	return ""
}
