package plan_test

import (
	"maps"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// Rule 30: what was done before a pause counts by the page of then, whatever brought the pause to light, and comes back as a line
// of its exercise although the page of now asks for it no more.
func TestRule30_WhatCameBackFromBeforeAPause(t *testing.T) {
	sets := []string{"2026-04-13 left 50 10,10,10 2", "2026-04-15 left 50 10,10,10 2"}
	calm := map[string]string{"2026-04-08": "effusion = \"zero\"\n"}
	much := func(day string) []string {
		return []string{`{ "on": "` + day + `", "pain": 1, "pain_am": 0, "kind": "ache", "swelling": "much more" }`}
	}
	for _, row := range []struct {
		name       string
		knee       []string
		tests      map[string]string
		hold       string
		asked      int // lines that nobody asked for
		all, done  int // sessions of the press that were asked for and done; 0 where no line came back
		why        string
		stillAsked bool
	}{
		{"no pause", nil, nil, "", 0, 6, 2, "two weeks of three sessions, as far as the log reaches", true},
		{"a hold after both", nil, nil, "2026-04-16", 0, 5, 2, "five sessions stood before the pause", false},
		{"a calm look, then a hold", nil, calm, "2026-04-16", 0, 5, 2, "a calm look is no other page", false},
		{"a hold between them", nil, nil, "2026-04-14", 1, 4, 1, "the second day's sets were done in a pause", false},
		{"much more swelling, reported after the second session", much("2026-04-15"), nil, "", 0, 5, 2, "the day's own session was before it", false},
		{"much more swelling, reported after the first", much("2026-04-13"), nil, "", 1, 4, 1, "the next day is in the pause", false},
		{"a look that pauses", nil, map[string]string{"2026-04-16": "effusion = \"2+\"\n"}, "", 0, 5, 2, "seen on the day after", false},
		{"two looks that pause", nil, map[string]string{"2026-04-14": "effusion = \"2+\"\n", "2026-04-16": "effusion = \"2+\"\n"}, "", 1, 4, 1, "the first of them did", false},
		{"one that does not, then one that pauses", nil, map[string]string{"2026-04-14": "effusion = \"1+\"\n", "2026-04-16": "effusion = \"2+\"\n"}, "", 0, 5, 2, "1+ pauses nothing", false},
	} {
		w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
		w.files["clients/tern-04/logs/2026-04-17.json"] = logWith(row.knee, sets...)
		maps.Copy(w.tests, row.tests)
		if row.hold != "" {
			maps.Copy(w.files, held(row.hold, "swelling"))
		}
		p, faults := w.planned(t)
		if got := strings.Count(faults.Error(), "was not asked for on"); got != row.asked {
			t.Errorf("%s: %d lines were not asked for, want %d (%s): %s", row.name, got, row.asked, row.why, faults)
		}
		if still := dose(p, "leg-press-single", unit.Left, 1) != nil; still != row.stillAsked {
			t.Errorf("%s: the page of now asks for the press: %v", row.name, still)
		}
		all, done := 0, 0
		for _, back := range p.CameBack {
			for _, l := range back.Lines {
				all, done = all+l.Asked, done+l.Done
			}
		}
		if all != row.all || done != row.done {
			t.Errorf("%s: %d of %d sessions came back, want %d of %d (%s)", row.name, done, all, row.done, row.all, row.why)
		}
	}
}
