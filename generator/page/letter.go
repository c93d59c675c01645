package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// Letter is one sheet to the surgeon or whoever referred the client, and to the general practitioner. It is drafted from the plan for the
// therapist to change and sign; it names the client by code alone, and stays on the desk until somebody sends it.
func Letter(p *plan.Plan, w *words.Words) View {
	l := &letter{desk{sheet: sheet{w}, p: p}}
	code, day := p.Client.Code, w.Day(p.AsOf)
	v := View{
		Format: 1, Kind: "letter", Lang: w.Lang, Dir: w.Dir, Code: code,
		Title:   l.say("letter-window", "code", code, "day", day),
		Draft:   l.say("letter-draft"),
		Running: l.say("letter-running", "code", code, "day", day),
		Parts:   []Part{l.letterHead(), l.letterFound(), l.trained(), l.limitsKept(), l.notOpen(), l.questions(), l.contested(), l.after()},
	}
	v.Parts = slices.DeleteFunc(v.Parts, func(p Part) bool { return len(kept(p.Nodes)) == 0 })
	return v
}

// letter is a letter in the making.
type letter struct{ desk }

func (l *letter) letterHead() Part {
	p := l.p
	head := l.part("letter-head", factual("who",
		l.labelled("letter-to", l.say("to-fill")),
		l.labelled("letter-about", nonEmpty(", ", p.Client.Code, l.about())),
		l.labelled("letter-from", nonEmpty(", ", l.therapist(p.Block.By), l.clinic())),
		l.labelled("letter-block", l.say("span", "from", l.w.Day(p.Block.Starts), "to", l.w.Day(blockEnd(p)))),
	), paragraph("greeting", l.greeting()))
	head.Title = l.say("letter-title", "code", p.Client.Code)
	return head
}

// about is the event, its side and its week.
func (l *letter) about() string {
	return nonEmpty(", ", l.event(), weekSince(&l.desk, l.p.Event))
}

func (l *letter) clinic() string {
	if l.p.Clinic == nil {
		return ""
	}
	return l.p.Clinic.Name
}

// greeting is where the knee stands, in one or two sentences.
func (l *letter) greeting() string {
	s, symptoms := l.p.Stage, ""
	if l.p.Symptoms.Action.Rank() > plan.NoAction.Rank() {
		symptoms = l.say("letter-symptoms", "why", l.reason(l.p.Symptoms.Because), "action", l.word("letter-action", string(l.p.Symptoms.Action)))
	}
	return nonEmpty(" ", l.say("letter-stage", "program", l.p.Program.Title, "stage", phaseTitle(s.Set)), symptoms)
}

// letterFound is the same dozen lines that the first sheet of the worksheet has.
func (l *letter) letterFound() Part {
	return l.part("letter-found", l.found(false))
}

// limitsKept are the limits of the block, each with whose word it is; one that begins within the block says from when.
func (l *letter) limitsKept() Part {
	var lasting []plan.Window // those that follow each other without a gap and allow the same, in one
	for _, window := range l.p.Limits {
		if !window.Wins || !window.Touches || window.Gap || window.Allow.Free() {
			continue
		}
		i := slices.IndexFunc(lasting, func(have plan.Window) bool {
			return l.limitName(have) == l.limitName(window) && l.allows(have) == l.allows(window) && have.SetBy == window.SetBy && goesOn(have, window)
		})
		switch {
		case i < 0:
			lasting = append(lasting, window)
		case window.Lifts.IsZero() || window.Lifts.After(lasting[i].Lifts) && !lasting[i].Lifts.IsZero():
			window.From = lasting[i].From
			lasting[i] = window
		}
	}
	lines := make([]string, len(lasting))
	for i, window := range lasting {
		lines[i] = l.say("letter-limit", "limit", l.limitName(window), "allows", l.allows(window), "until", nonEmpty(", ", l.fromOf(window), l.untilOf(window)), "whose", l.whoseWord(window))
	}
	if len(lines) == 0 {
		return l.part("letter-limits", l.note("no-limits"))
	}
	return l.part("letter-limits", bullets("limits", lines...))
}

// goesOn reports whether a window begins before an earlier one has lifted, or on that day.
func goesOn(have, window plan.Window) bool {
	return have.Lifts.IsZero() || !window.From.After(have.Lifts)
}

// fromOf is the day on which a limit begins, where that is still to come.
func (l *letter) fromOf(window plan.Window) string {
	if !window.From.After(l.p.AsOf) {
		return ""
	}
	return l.say("letter-begins", "day", l.nearDay(window.From))
}

func (l *letter) untilOf(window plan.Window) string {
	if window.Lifts.IsZero() {
		return l.say("until-further-notice")
	}
	return l.say("letter-until", "day", l.nearDay(window.Lifts))
}

// whoseWord is who set a limit: a person with the day, or our program with the work that it rests on.
func (l *letter) whoseWord(window plan.Window) string {
	if window.SetBy != "program" {
		return l.setBy(window)
	}
	source := ""
	if s, known := l.p.Program.Sources[window.Source]; known {
		source = handout{l.p, l.w}.shortly(s)
	}
	return l.say("letter-our-row", "source", nonEmpty(", ", source, l.word("standing", string(window.Standing))))
}

// notOpen is what the next stage and the activities still wait for.
func (l *letter) notOpen() Part {
	stage := l.decideStage()
	nodes := []Node{paragraph("", stage.Title)}
	if l.p.Stage.Next != nil {
		open := slices.DeleteFunc(slices.Clone(criteriaOf(l.p.Stage, l.p.Stage.Next.ID)), func(c plan.Criterion) bool { return c.Passed() })
		if len(open) > 0 {
			nodes = []Node{paragraph("", l.say("letter-stage-waits", "stage", l.p.Stage.Next.Title, "for", l.markNames(open, true)))}
		}
	}
	return l.part("letter-not-open", append(nodes, l.closedOnes().Nodes...)...)
}

// closedOnes are the activities that are not open: those that come next with what is missing, of the others only their days.
func (l *letter) closedOnes() Node {
	only := *l.p
	only.Activities = slices.DeleteFunc(slices.Clone(l.p.Activities), func(a plan.ActivityState) bool { return a.State == "open" })
	shut := desk{sheet: l.sheet, p: &only}
	return shut.decideActivities()
}

// questions are what the plan wants asked, and which goals are late. Without one the letter asks whether the limits are right.
func (l *letter) questions() Part {
	lines := append(l.flagged(forSurgeon), l.tellSurgeon()...)
	return l.part("letter-questions", bullets("", append(lines, l.say("letter-always"))...))
}

// contested are the decisions of this plan on which people disagree, each by the title of its note, with the text for colleagues where the
// clinic's library is served.
func (l *letter) contested() Part {
	h := handout{l.p, l.w}
	spans := []Span{{Text: l.say("letter-contested") + " "}}
	for _, n := range l.p.Program.Notes {
		if !l.applies(n) {
			continue
		}
		if len(spans) > 1 {
			spans = append(spans, Span{Text: "; "})
		}
		spans = append(spans, Span{Text: n.Title, Href: h.ofLibrary("notes/" + n.ID + "-colleagues.html")})
	}
	if len(spans) == 1 {
		return Part{}
	}
	return l.part("letter-contested", spoken("", spans...))
}

// applies reports whether a note is about an exercise of the plan, a limit in force on some day of the block, or, of one that names neither, about
// symmetry where a test of strength stands behind the plan.
func (l *letter) applies(n *program.Note) bool {
	if slices.ContainsFunc(l.p.Prescriptions, func(pr plan.Prescription) bool { return n.About(pr.Exercise.ID) }) {
		return true
	}
	if len(n.Kinds)+len(n.Exercises) == 0 {
		return l.p.Found != nil && len(l.p.Found.Strength) > 0
	}
	return slices.ContainsFunc(l.p.Limits, func(window plan.Window) bool {
		return window.Wins && window.Touches && !window.Allow.Free() && slices.ContainsFunc(append([]unit.Kind{window.Kind}, window.On...), func(k unit.Kind) bool { return slices.Contains(n.Kinds, k) })
	})
}

// nextMeasure is the day on which the program wants the next measurement, else the visit.
func (l *letter) nextMeasure() string {
	if r := l.p.Retest; r != nil {
		return l.w.Day(r.Due)
	}
	return l.say("letter-at-visit")
}

// after is when the client is seen and measured next, whom to call, and where the therapist signs.
func (l *letter) after() Part {
	var phones []Span
	if l.p.Clinic != nil {
		for _, phone := range l.p.Clinic.Phones[:min(1, len(l.p.Clinic.Phones))] {
			phones = append(phones, Span{Text: phone.Who + " "}, dial(phone.Number), Span{Text: ", " + phone.Hours})
		}
	}
	facts := factual("who", l.labelled("next-visit", l.visitDay()), l.labelled("measure", l.nextMeasure()))
	if len(phones) > 0 {
		facts.Facts = append(facts.Facts, Fact{Label: l.say("fact-letter-call"), Value: phones})
	}
	facts.Facts = append(facts.Facts, l.labelled("signed-by", l.say("to-fill")), l.labelled("signed-on", l.say("to-fill")))
	return l.part("letter-after", facts)
}
