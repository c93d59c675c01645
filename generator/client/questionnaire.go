package client

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Questionnaire is a score, or the answers that it is made of; no item text is shipped.
type Questionnaire struct {
	At    basis.Origin
	ID    string                 `key:"id,required" doc:"id of the instrument" show:"acl-rsi"`
	Score basis.Num[unit.Points] `key:"score" doc:"the instrument's own score" range:"0 1000" show:"58"`
	Items []Answer               `key:"items" doc:"the answers in the order of the instrument, each a number or \"-\" for none" show:"[4, 3, \"-\", 2]"`
}

// Answer is the answer to one item; the zero Answer was not given, and is never a nought.
type Answer struct {
	Points unit.Points
	Given  bool
}

// unanswered is how an item without an answer is written.
const unanswered = "-"

// KeyEndings says that answers stand under a bare key.
func (*Answer) KeyEndings() []unit.Ending { return []unit.Ending{{Factor: 1}} }

// KeyWords is how an item without an answer is written.
func (*Answer) KeyWords(unit.Ending) []string { return []string{unanswered} }

// FromKeyed takes an answer from a number, or from "-".
func (a *Answer) FromKeyed(_ unit.Ending, value any) error {
	switch v := value.(type) {
	case float64:
		*a = Answer{unit.Points(v), true}
	case int64:
		*a = Answer{unit.Points(v), true}
	case string:
		if v != unanswered {
			return fmt.Errorf("%q is no answer; write a number, or \"-\" for an item that was not answered", v)
		}
	}
	return nil
}

// Typed is the answer with the place where it stands.
func (q *Questionnaire) Typed(i int) basis.Num[unit.Points] {
	a := q.Items[i]
	return basis.Typed(a.Points, strconv.FormatFloat(float64(a.Points), 'f', -1, 64), q.At.At(fmt.Sprintf("items[%d]", i)))
}

// Instrument is what a file may say of a questionnaire: how many answers, in which span, and the span of the score. How it
// is scored, package formula knows; a test holds that both know the same instruments.
type Instrument struct {
	ID          string
	Items       int
	Low, High   unit.Points // of an answer; some items may end lower
	Worst, Best unit.Points // of the score; Worst lies above Best where more is worse
}

// Instruments are the questionnaires that can be typed.
var Instruments = []Instrument{
	{"ikdc", 18, 0, 10, 0, 100},
	{"koos-pain", 9, 0, 4, 0, 100},
	{"koos-symptoms", 7, 0, 4, 0, 100},
	{"koos-adl", 17, 0, 4, 0, 100},
	{"koos-sport", 5, 0, 4, 0, 100},
	{"koos-qol", 4, 0, 4, 0, 100},
	{"kos-adls", 14, 0, 5, 0, 100},
	{"acl-rsi", 12, 0, 100, 0, 100},
	{"acl-rsi-short", 6, 0, 100, 0, 100},
	{"lefs", 20, 0, 4, 0, 80},
	{"tsk-11", 11, 1, 4, 44, 11},
	{"tegner", 1, 0, 10, 0, 10},
}

// questionnaires are the ids of the instruments.
var questionnaires = func() (ids []string) {
	for _, in := range Instruments {
		ids = append(ids, in.ID)
	}
	return ids
}()

// questionnaire holds what was typed against the instrument.
func (r *reader) questionnaire(q *Questionnaire) {
	i := slices.IndexFunc(Instruments, func(in Instrument) bool { return in.ID == q.ID })
	if q.ID == "" || r.spoilt(q.At) {
		return
	}
	if i < 0 {
		r.wrong(q.At.At("id"), fmt.Sprintf("questionnaire %q is not known", q.ID), "write one of "+strings.Join(questionnaires, ", "))
		return
	}
	in := Instruments[i]
	switch {
	case q.Score.OK() && q.Items != nil:
		r.wrong(q.At.At("items"), fmt.Sprintf("score and items of %s together", q.ID), "keep one of the two: from items the score is worked out")
	case q.Score.OK():
		r.scoreInRange(q, in)
	case len(q.Items) != in.Items && q.Items != nil:
		r.wrong(q.At.At("items"), fmt.Sprintf("%s has %d items, not %d", q.ID, in.Items, len(q.Items)), `write one answer an item in the order of the instrument, "-" for one that was not answered`)
	default:
		r.answersInRange(q, in)
	}
}

func (r *reader) scoreInRange(q *Questionnaire, in Instrument) {
	low, high, score := min(in.Worst, in.Best), max(in.Worst, in.Best), q.Score.Or(0)
	if score < low || score > high {
		r.wrong(q.At.At("score"), fmt.Sprintf("score %g of %s is outside %g to %g", float64(score), q.ID, float64(low), float64(high)), "write the score of the instrument itself")
	}
}

func (r *reader) answersInRange(q *Questionnaire, in Instrument) {
	for i, a := range q.Items {
		if a.Given && (a.Points < in.Low || a.Points > in.High) {
			r.wrong(q.At.At(fmt.Sprintf("items[%d]", i)), fmt.Sprintf("answer %g of %s, item %d, is outside %g to %g", float64(a.Points), q.ID, i+1, float64(in.Low), float64(in.High)),
				"write the answer as the instrument codes it")
		}
	}
}
