package plan_test

import (
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

func held(day, reason string) map[string]string {
	return map[string]string{"clients/tern-04/holds/" + day + ".toml": "by = \"imbali\"\nreason = \"" + reason + "\"\n"}
}

// Rule 30: a pause called between visits stands until the knee has been looked at again.
func TestRule30_AHoldStandsUntilLookedAt(t *testing.T) {
	second := "starts = 2026-05-04\nweeks = 4\nby = \"imbali\"\n"
	for _, row := range []struct {
		name, from string
		more       map[string]string
		tests      map[string]string
		held       string // its first day; "" where none stands
		action     plan.Action
		why        string
	}{
		{"called in the block", "2026-04-15", nil, nil, "2026-04-15", plan.Pause, ""},
		{"on the block's first day", "2026-04-06", nil, nil, "2026-04-06", plan.Pause, ""},
		{"on its last day", "2026-05-03", nil, nil, "2026-05-03", plan.Pause, ""},
		{"on the day after it", "2026-05-04", nil, nil, "", plan.NoAction, "the next block is not asked for yet"},
		{"looked at the day after", "2026-04-15", nil, map[string]string{"2026-04-16": "effusion = \"zero\"\n"}, "", plan.NoAction, "a sweep test is a look"},
		{"looked at, and swollen", "2026-04-15", nil, map[string]string{"2026-04-16": "effusion = \"2+\"\n"}, "2026-04-15", plan.Pause, "a look that itself asks for a pause ends nothing"},
		{"no hold, and swollen in the block", "", nil, map[string]string{"2026-04-16": "effusion = \"2+\"\n"}, "", plan.Pause, "a test day in the block that asks for a pause is heeded at once"},
		{"no hold, and a little more in the block", "", nil, map[string]string{"2026-04-16": "effusion = \"1+\"\n"}, "", plan.NoAction, "less than a pause waits for the next block"},
		{"looked at, and it hurt", "2026-04-15", nil, map[string]string{"2026-04-17": "pain_worst = 8\npain_next_morning = 1\n"}, "2026-04-15", plan.Pause, "a look that asks for a step back is not quiet"},
		{"looked at, and it gave way", "2026-04-15", nil, map[string]string{"2026-04-17": "pain_worst = 1\npain_kind = \"giving-way\"\neffusion = \"zero\"\n"}, "2026-04-15", plan.Pause, "calm but for the kind"},
		{"looked at, and it stays sore", "2026-04-15", nil, map[string]string{"2026-04-17": "pain_worst = 4\npain_next_morning = 1\n"}, "2026-04-15", plan.Pause, "to stay is not quiet either"},
		{"looked at, hurt, then quiet", "2026-04-15", nil, map[string]string{"2026-04-17": "pain_worst = 8\n", "2026-04-20": "pain_worst = 1\neffusion = \"trace\"\n"}, "", plan.NoAction, "quiet at last"},
		{"looked at, swelling fell", "2026-04-15", nil, map[string]string{"2026-04-16": "effusion = \"2+\"\n", "2026-04-20": "effusion = \"1+\"\npain_worst = 1\n"}, "", plan.Stay, "swelling that fell asks to stay, and ends the hold"},
		{"pain was asked", "2026-04-15", nil, map[string]string{"2026-04-17": "pain_worst = 0\n"}, "", plan.NoAction, "asking for pain is a look"},
		{"only the mass was typed", "2026-04-15", nil, map[string]string{"2026-04-17": "mass_kg = 64\n"}, "2026-04-15", plan.Pause, "nobody looked at the knee"},
		{"only bend was measured", "2026-04-15", nil, map[string]string{"2026-04-17": "left.flexion_deg = 120\n"}, "2026-04-15", plan.Pause, "neither swelling nor pain"},
		{"looked at that morning", "2026-04-15", nil, map[string]string{"2026-04-15": "effusion = \"zero\"\n"}, "2026-04-15", plan.Pause, "the hold was called after that look, or because of it"},
		{"looked at before", "2026-04-15", nil, map[string]string{"2026-04-10": calm}, "2026-04-15", plan.Pause, ""},
		{"into the next block", "2026-04-15", map[string]string{"clients/tern-04/blocks/2.toml": second}, nil, "2026-04-15", plan.Pause, "nobody has looked since: the next block begins paused"},
		{"the next block, looked at", "2026-04-15", map[string]string{"clients/tern-04/blocks/2.toml": second}, map[string]string{"2026-05-04": calm}, "", plan.NoAction, "the look of its first morning ends it"},
		{"before the operation", "2025-12-20", nil, nil, "", plan.NoAction, "it was called for another state of the knee"},
		{"called twice", "2026-04-15", held("2026-04-20", "pain"), nil, "2026-04-20", plan.Pause, "the newer speaks"},
		{"called twice, looked at between", "2026-04-15", held("2026-04-20", "pain"), map[string]string{"2026-04-17": calm}, "2026-04-20", plan.Pause, "the newer still stands"},
		{"called twice, looked at after", "2026-04-15", held("2026-04-20", "pain"), map[string]string{"2026-04-22": calm}, "", plan.NoAction, "both are over"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: "2026-04-06", stages: "rebuild 2026-03-02", tests: row.tests, files: held(row.from, "swelling: after a long walk")}
			for name, text := range row.more {
				w.files[name] = text
			}
			s := w.plan(t).Symptoms
			from := ""
			if s.Held != nil {
				from = s.Held.From.String()
			}
			if from != row.held || s.Action != row.action {
				t.Errorf("held from %q, %s; want %q, %s (%s)", from, s.Action, row.held, row.action, row.why)
			}
		})
	}
}

// Rules 27 and 30: a hold is weighed like any other signal: loaded work of that knee rests, the rest goes on, and a stricter
// signal stands above it.
func TestRule30b_WhatAHoldRests(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.files = own(`"leg-press-single"`, `"quad-set"`, `"squat"`)
	w.files["clients/tern-04/holds/2026-04-10.toml"] = held("2026-04-10", "pain")["clients/tern-04/holds/2026-04-10.toml"]
	p := w.plan(t)
	for _, row := range []struct {
		exercise string
		side     unit.Side
		want     bool
		why      string
	}{
		{"leg-press-single", unit.Left, false, "loaded work of the event's knee rests"},
		{"leg-press-single", unit.Right, true, "the other leg goes on"},
		{"squat", unit.Both, false, "both legs together load it too"},
		{"quad-set", unit.Left, true, "quad sets go on"},
	} {
		if got := dose(p, row.exercise, row.side, 1) != nil; got != row.want {
			t.Errorf("%s %s: prescribed %v, want %v (%s)", row.exercise, row.side, got, row.want, row.why)
		}
	}
	paused := false
	for _, d := range p.Dropped {
		paused = paused || d.Exercise == "leg-press-single" && d.Side == unit.Left && d.Paused
	}
	if !paused {
		t.Errorf("nothing says that the press rests because of the hold: %+v", p.Dropped)
	}
	w.tests = map[string]string{"2026-03-01": "effusion = \"2+\"\n", "2026-03-03": "effusion = \"2+\"\n", "2026-03-05": "effusion = \"3+\"\n"}
	if s := w.plan(t).Symptoms; s.Action != plan.Contact || s.Held == nil {
		t.Errorf("%s, held %v: contact stands above the hold, and the hold is not forgotten", s.Action, s.Held)
	}
}
