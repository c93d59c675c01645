package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

type (
	limitJSON struct {
		Kind unit.Kind   `json:"kind"`
		Side unit.Side   `json:"side,omitempty"`
		On   []unit.Kind `json:"on,omitempty"`
		allowanceJSON
		From     unit.Day      `json:"from"`
		Lifts    unit.Day      `json:"lifts,omitzero"` // absent: until further notice
		SetBy    string        `json:"set_by"`
		Name     string        `json:"name,omitempty"`
		Route    string        `json:"route,omitempty"`
		Said     unit.Day      `json:"said,omitzero"`
		Reason   string        `json:"reason,omitempty"`
		Source   string        `json:"source,omitempty"`
		Standing unit.Standing `json:"standing"`
		Note     string        `json:"note,omitempty"`
		Wins     bool          `json:"wins"`
		Gap      bool          `json:"gap,omitempty"`
		Touches  bool          `json:"touches_block"`
		At       *basis.Origin `json:"at,omitempty"`
		Basis    string        `json:"basis,omitempty"` // of a part of body weight in kg
	}
	allowanceJSON struct {
		Allowed *bool        `json:"allowed,omitempty"`
		Range   []jsonNumber `json:"range_deg,omitempty"`
		Grade   unit.Work    `json:"grade,omitempty"`
		Part    *jsonNumber  `json:"part_percent,omitempty"`
		PartKg  *jsonNumber  `json:"part_kg,omitempty"`
		Locked  *jsonNumber  `json:"locked_deg,omitempty"`
		Night   *bool        `json:"night,omitempty"`
		Both    bool         `json:"both_legs_only,omitempty"`
	}
	symptomsJSON struct {
		Action    plan.Action  `json:"action"`
		Because   string       `json:"because,omitempty"`
		Level     string       `json:"level,omitempty"`
		Exercises []string     `json:"exercises,omitempty"`
		On        unit.Day     `json:"on,omitzero"`
		Held      *heldJSON    `json:"held,omitempty"`
		Signals   []signalJSON `json:"signals,omitempty"`
	}
	heldJSON struct {
		From   unit.Day `json:"from"`
		By     string   `json:"by"`
		Reason string   `json:"reason"`
	}
	signalJSON struct {
		Action   plan.Action `json:"action"`
		Level    string      `json:"level,omitempty"`
		Exercise string      `json:"exercise,omitempty"`
		On       unit.Day    `json:"on,omitzero"`
		Because  string      `json:"because,omitempty"`
		Code     string      `json:"code,omitempty"`
	}
)

func limitsIn(all []plan.Window, t *trail) []limitJSON {
	out := []limitJSON{}
	for _, w := range all {
		out = append(out, limitJSON{Kind: w.Kind, Side: w.Side, On: w.On, allowanceJSON: allowanceIn(w.Allow), From: w.From, Lifts: w.Lifts,
			SetBy: w.SetBy, Name: w.Name, Route: w.Route, Said: w.Said, Reason: w.Reason, Source: w.Source, Standing: w.Standing,
			Note: w.Note, Wins: w.Wins, Gap: w.Gap, Touches: w.Touches, At: placeOf(w.At), Basis: t.id(w.PartLoad.Step())})
	}
	return out
}

func allowanceIn(a unit.Allowance) allowanceJSON {
	return allowanceJSON{a.Allowed, bendPair(a.Range), a.Grade, jsonOptional(a.Part), jsonOptional(a.PartMass), jsonOptional(a.Locked), a.Night, a.BothOnly}
}

func symptomsIn(s plan.Symptoms) symptomsJSON {
	out := symptomsJSON{Action: s.Action, Because: s.Because.String(), Level: s.Level, Exercises: s.Exercises, On: s.On}
	if s.Held != nil {
		out.Held = &heldJSON{s.Held.From, s.Held.By, s.Held.Reason}
	}
	if out.Action == "" {
		out.Action = plan.NoAction
	}
	for _, sig := range s.Signals {
		out.Signals = append(out.Signals, signalJSON{sig.Action, sig.Level, sig.Exercise, sig.On, sig.Because.String(), sig.Code})
	}
	return out
}
