package client_test

import (
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Both rooms know the same instruments: what may be typed here is what is scored there.
func TestInstruments(t *testing.T) {
	if len(client.Instruments) != len(formula.Questionnaires) {
		t.Fatalf("%d can be typed, %d can be scored", len(client.Instruments), len(formula.Questionnaires))
	}
	for _, in := range client.Instruments {
		q, known := formula.QuestionnaireByID(in.ID)
		highest := unit.Points(0)
		for i := range q.Items {
			highest = max(highest, q.Most(i))
		}
		if !known || in.Items != q.Items || in.Low != q.Low || in.High != highest || in.Worst != q.Worst || in.Best != q.Best {
			t.Errorf("%+v is typed, %d items %v to %v for %v to %v is scored", in, q.Items, q.Low, highest, q.Worst, q.Best)
		}
	}
}

func TestQuestionnaires(t *testing.T) {
	for _, row := range []struct{ name, text, want, why string }{
		{"a score", "id = \"lefs\"\nscore = 62", "", "0 to 80"},
		{"answers with one missing", "id = \"koos-qol\"\nitems = [1, \"-\", 2, 0]", "", "the instrument has a rule for it"},
		{"an unknown one", "id = \"koos\"\nscore = 60", `questionnaire "koos" is not known; write one of ikdc, koos-pain`, "there is no score of all five together"},
		{"outside", "id = \"tsk-11\"\nscore = 8", "score 8 of tsk-11 is outside 11 to 44", "more is worse, yet the span is the span"},
		{"both", "id = \"tegner\"\nscore = 6\nitems = [6]", "score and items of tegner together", "two truths"},
		{"an answer too few", "id = \"koos-qol\"\nitems = [1, 2, 0]", "koos-qol has 4 items, not 3", "a slipped answer"},
		{"an answer outside", "id = \"koos-qol\"\nitems = [1, 2, 0, 5]", "answer 5 of koos-qol, item 4, is outside 0 to 4", "a slip of the pen"},
		{"a word", "id = \"koos-qol\"\nitems = [1, 2, 0, \"x\"]", `"x" is no answer; write a number, or "-"`, "only - stands for none"},
	} {
		files := map[string]string{"tests/2026-05-04.toml": "[[questionnaire]]\n" + row.text + "\n"}
		_, faults := read(t, operation("2026-01-05", "left", gave), files)
		if said := faults.Error(); row.want == "" && said != "" || !strings.Contains(said, row.want) {
			t.Errorf("%s: said %q, want %q (%s)", row.name, said, row.want, row.why)
		}
	}
}
