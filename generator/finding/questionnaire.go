package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Score is the score of a questionnaire on one day.
type Score struct {
	On    unit.Day
	ID    string
	Score basis.Num[unit.Points]
}

// questionnaire takes a score, or works it out from the answers.
func (f *finder) questionnaire(d *client.TestDay, q *client.Questionnaire) {
	said := func(q *client.Questionnaire) bool { return q.Score.OK() || len(q.Items) > 0 }
	if !said(q) {
		return
	}
	ids := f.stem(q.ID, d, func(t *client.TestDay) bool {
		for i := range t.Questionnaires {
			if t.Questionnaires[i].ID == q.ID && said(&t.Questionnaires[i]) {
				return true
			}
		}
		return false
	})
	score := q.Score.Named(ids.id("", "score"))
	if !q.Score.OK() {
		score = scored(ids, q)
	}
	score = score.On(d.On)
	f.Scores = append(f.Scores, Score{d.On, q.ID, score})
	if d.On.Before(f.event.Date) {
		return // what a knee felt like before the event opens nothing after it
	}
	f.put(measured(q.ID, score, d.On))
}

// scored works a score out from the answers that were given; the instrument says what a missing one does.
func scored(ids stem, q *client.Questionnaire) basis.Num[unit.Points] {
	instrument, _ := formula.QuestionnaireByID(q.ID)
	items := make(formula.Items, len(q.Items))
	var given []basis.Num[unit.Points]
	for i, a := range q.Items {
		if a.Given {
			items[i] = formula.Answered(a.Points)
			given = append(given, q.Typed(i).Named(ids.id("", "item-"+numeral(i+1))))
		}
	}
	id := ids.id("", "score")
	if instrument.Score == nil || len(given) == 0 {
		return basis.Refused[unit.Points](id, basis.Rule{Name: basis.Said(q.ID)}, "no item was answered: no score")
	}
	return basis.OfList(id, instrument.Rule(items), func([]unit.Points) (unit.Points, error) { return instrument.Score(items) }, given).Because(missingOf(items, instrument))
}

// missingOf says how items without an answer were dealt with; empty where all were answered.
func missingOf(items formula.Items, by formula.Questionnaire) basis.Said {
	if len(items.Given()) == len(items) {
		return ""
	}
	return basis.Say("{a} not answered: {b}", len(items)-len(items.Given()), by.Missing)
}
