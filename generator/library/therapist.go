package library

import (
	"strconv"
	"strings"

	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// forTherapists is what a colleague looks up of an exercise: when to be careful, how it works, what a set-up tells, where it
// comes from.
func (r *reader) forTherapists(e *program.Exercise) []page.Node {
	w := r.w
	say := func(key string) string { return w.Say("library-desk." + key) }
	return []page.Node{
		r.careful(e),
		factual("plain",
			fact(say("id"), e.ID),
			fact(say("trains"), r.list("library.muscle-", textsOf(e.Trains))),
			fact(say("chain"), r.word("library-desk.chain-", string(e.Chain))),
			fact(say("contraction"), r.list("library-desk.contraction-", textsOf(e.Contraction))),
			fact(say("resisted"), r.word("library-desk.resisted-", string(e.ResistedBy))),
			fact(say("legs"), r.legs(e)),
			fact(say("range"), r.reach(e.Range)),
			fact(say("tempo"), r.tempo(e)),
			fact(say("kinds"), r.list("desk.kind-", textsOf(e.Kinds))),
			fact(say("work"), r.word("desk.work-", string(e.Work))),
			fact(say("weight"), r.share(e.WeightOnLeg)),
			fact(say("activity"), e.Activity),
			fact(say("body"), r.word("library-desk.body-", string(e.MovesBody))),
			fact(say("heavy"), r.heavy(e)),
			fact(say("own-dose"), r.ownDose(e)),
			fact(say("setup"), r.setup(e)),
			page.Fact{Label: say("source"), Value: r.sourceOf(e.Source, e.Standing)},
		),
	}
}

// careful are the cautions and what the exercise is not for.
func (r *reader) careful(e *program.Exercise) page.Node {
	var nodes []page.Node
	if len(e.Cautions) > 0 {
		nodes = append(nodes, group("", r.w.Say("library-desk.cautions"), bullets("", e.Cautions)))
	}
	if len(e.NotFor) > 0 {
		nodes = append(nodes, group("", r.w.Say("library-desk.not-for"), bullets("", e.NotFor)))
	}
	if len(nodes) == 0 {
		return text("note", r.w.Say("library-desk.no-cautions"))
	}
	return page.Node{Kind: "group", Class: "caution", Level: 3, Nodes: nodes}
}

func textsOf[T ~string](values []T) []string {
	texts := make([]string, len(values))
	for i, v := range values {
		texts[i] = string(v)
	}
	return texts
}

// word is the word of a closed set; nothing where there is none.
func (r *reader) word(key, value string) string {
	if value == "" {
		return ""
	}
	return r.w.Say(key + dashed(value))
}

func (r *reader) list(key string, values []string) string {
	names := make([]string, len(values))
	for i, v := range values {
		names[i] = r.word(key, v)
	}
	return strings.Join(names, ", ")
}

func (r *reader) legs(e *program.Exercise) string {
	if e.LoadsBoth {
		return r.w.Say("library-desk.legs-loads-both")
	}
	return r.w.Say("library-desk.legs-" + string(e.Side))
}

func (r *reader) reach(reach *unit.Reach) string {
	if reach == nil {
		return ""
	}
	if reach.Straightest == reach.MostBent {
		return r.w.Say("desk.reach-at", "bend", r.angle(reach.MostBent))
	}
	return r.w.Say("desk.reach", "straightest", r.angle(reach.Straightest), "bent", r.angle(reach.MostBent))
}

// tempo is up, held and down in seconds.
func (r *reader) tempo(e *program.Exercise) string {
	var all []string
	for _, t := range []struct {
		key string
		s   unit.Seconds
	}{{"lift", e.Lift}, {"hold", e.Hold}, {"lower", e.Lower}} {
		if t.s > 0 {
			all = append(all, r.w.Say("tempo."+t.key, "time", r.seconds(t.s)))
		}
	}
	return strings.Join(all, ", ")
}

func (r *reader) seconds(s unit.Seconds) string {
	return r.w.Say("time.s", "n", r.w.Number(float64(s), 1))
}

func (r *reader) share(p *unit.Percent) string {
	if p == nil {
		return ""
	}
	return r.w.Say("library-desk.of-weight", "share", r.w.Number(float64(*p), 0))
}

func (r *reader) heavy(e *program.Exercise) string {
	if !e.Heavy {
		return ""
	}
	return r.w.Say("library-desk.heavy-yes")
}

func (r *reader) ownDose(e *program.Exercise) string {
	if e.Own == nil {
		return ""
	}
	return r.dose(*e.Own)
}

// setup are the keys of [setup.ID] in a client's file that this exercise has a use for.
func (r *reader) setup(e *program.Exercise) string {
	var keys []string
	if e.ResistedBy == program.External {
		keys = append(keys, "device")
	}
	for _, d := range e.Needs {
		switch d {
		case "angled-leg-press", "horizontal-leg-press", "hack-squat":
			keys = append(keys, "seat", "back", "pins_deg")
		case "knee-extension-stack", "leg-curl-stack", "leg-curl-seated-stack":
			keys = append(keys, "seat", "back", "pad", "pins_deg")
		case "bike":
			keys = append(keys, "seat")
		}
	}
	return strings.Join(keys, ", ")
}

// sourceOf names a source by its authors and year with its standing, and leads to its entry.
func (r *reader) sourceOf(key string, standing unit.Standing) []page.Span {
	how := r.word("desk.standing-", string(standing))
	if key == "" {
		return plain(how)
	}
	return []page.Span{{Text: r.short(key), Href: "../sources.html#" + key}, {Text: " " + r.w.Say("library-desk.stands", "standing", how)}}
}

// short is a source as a text cites it: first author and year; its key where neither is known.
func (r *reader) short(key string) string {
	s, known := r.Catalog.Sources[key]
	if !known || s.By == "" || s.Year == 0 {
		return key
	}
	first, _, several := strings.Cut(s.By, ",")
	if several {
		first = strings.TrimSpace(first)
		if name, initials, two := lastSpace(first); two && initials == strings.ToUpper(initials) {
			first = name
		}
	}
	return first + " " + strconv.Itoa(s.Year)
}

func lastSpace(s string) (before, after string, found bool) {
	i := strings.LastIndexByte(s, ' ')
	if i < 0 {
		return s, "", false
	}
	return s[:i], s[i+1:], true
}
