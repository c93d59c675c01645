package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

type (
	findingJSON struct {
		ID     string      `json:"id"`
		Value  *jsonNumber `json:"value,omitempty"`
		Text   string      `json:"text,omitempty"`
		Unit   string      `json:"unit,omitempty"`
		On     unit.Day    `json:"on,omitzero"`
		SEM    *jsonNumber `json:"sem,omitempty"`
		Doubts []string    `json:"doubts,omitempty"`
		Reason string      `json:"reason,omitempty"` // why there is no value
		Basis  string      `json:"basis,omitempty"`
	}
	criterionJSON struct {
		ID        string          `json:"id"`
		Of        string          `json:"of"`
		State     plan.State      `json:"state"`
		Near      *bool           `json:"near"` // null: the error of the test is not known
		Measure   string          `json:"measure,omitempty"`
		Found     any             `json:"found,omitempty"` // a number or a word
		Sense     string          `json:"sense,omitempty"`
		Wanted    any             `json:"wanted,omitempty"`
		Unit      string          `json:"unit,omitempty"`
		On        unit.Day        `json:"on,omitzero"`
		NotBefore unit.Day        `json:"not_before,omitzero"`
		Reason    string          `json:"reason,omitempty"`
		Doubt     string          `json:"doubt,omitempty"`
		Waived    *waivedJSON     `json:"waived,omitempty"`
		Source    string          `json:"source,omitempty"`
		Standing  unit.Standing   `json:"standing,omitempty"`
		Any       []criterionJSON `json:"any,omitempty"`
		All       []criterionJSON `json:"all,omitempty"`
		Basis     string          `json:"basis,omitempty"`
	}
	waivedJSON struct {
		By     string `json:"by"`
		Reason string `json:"reason"`
	}
	activityJSON struct {
		ID        string      `json:"id"`
		State     string      `json:"state"`
		NotBefore unit.Day    `json:"not_before,omitzero"`
		Missing   []string    `json:"missing"`
		Because   string      `json:"because,omitempty"`
		Opened    *openedJSON `json:"opened,omitempty"`
	}
	openedJSON struct {
		By   string   `json:"by"`
		From unit.Day `json:"from,omitzero"`
	}
)

func findingsIn(p *plan.Plan, t *trail) []findingJSON {
	out := []findingJSON{}
	if p.Found == nil {
		return out
	}
	for _, name := range p.Found.Order {
		m := p.Found.Measures[name]
		f := findingJSON{ID: name, On: m.On, Unit: m.Unit, SEM: jsonOptional(m.SEM), Doubts: inEnglish(m.Doubts), Reason: basis.Listed(m.Reason, m.HiddenBy).String(), Basis: t.id(m.Value)}
		f.Value, f.Text = numberOf(m.Value), wordOf(m.Value)
		out = append(out, f)
	}
	return out
}

// numberOf is the number of a step; nil where it is a word or nothing.
func numberOf(s *basis.Step) *jsonNumber {
	if s == nil || s.Refuse || s.Text != "" {
		return nil
	}
	return jsonNumberOf(s.Value)
}

// wordOf is the word of a step; empty where it is a number or nothing.
func wordOf(s *basis.Step) string {
	if s == nil || s.Refuse {
		return ""
	}
	return s.Text
}

// allCriteriaAtTop are the criteria of stages and activities; the choices of an any-of stay in it.
func allCriteriaAtTop(p *plan.Plan) []plan.Criterion {
	all := append([]plan.Criterion{}, p.Stage.Criteria...)
	for _, a := range p.Activities {
		all = append(all, a.Criteria...)
	}
	if p.End != nil {
		all = append(all, p.End.Criteria...)
	}
	return all
}

func criteriaIn(criteria []plan.Criterion, t *trail) []criterionJSON {
	out := []criterionJSON{}
	for _, c := range criteria {
		out = append(out, criterionIn(c, t))
	}
	return out
}

func criterionIn(c plan.Criterion, t *trail) criterionJSON {
	out := criterionJSON{ID: c.ID, Of: c.Of, State: c.State, Near: c.Near, Measure: c.Measure, Sense: c.Sense, Unit: c.Wanted.Unit,
		On: c.On, NotBefore: c.NotBefore, Reason: c.Reason.String(), Doubt: c.Doubt.String(), Basis: t.id(c.Found)}
	if n := numberOf(c.Found); n != nil {
		out.Found = n
	} else if word := wordOf(c.Found); word != "" {
		out.Found = word
	}
	switch {
	case c.Wanted.Grade != "":
		out.Wanted = c.Wanted.Grade
	case c.Sense != "":
		out.Wanted = jsonNumber(c.Wanted.Number)
	}
	if c.Waived != nil {
		out.Waived = &waivedJSON{c.Waived.By, c.Waived.Reason}
	}
	if c.Rule != nil {
		out.Source, out.Standing = c.Rule.Source, c.Rule.Standing
	}
	switch {
	case c.Together:
		out.All = criteriaIn(c.Any, t)
	case len(c.Any) > 0:
		out.Any = criteriaIn(c.Any, t)
	}
	return out
}

func activitiesIn(all []plan.ActivityState) []activityJSON {
	out := []activityJSON{}
	for _, a := range all {
		one := activityJSON{ID: a.Activity.ID, State: a.State, NotBefore: a.NotBefore, Missing: append([]string{}, a.Missing...), Because: a.Because.String()}
		if a.OpenedBy != "" {
			one.Opened = &openedJSON{a.OpenedBy, a.OpenedFrom}
		}
		out = append(out, one)
	}
	return out
}
