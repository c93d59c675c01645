package generator

import (
	"fmt"
	"io/fs"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Started is a file to add to a clinic's folder.
type Started struct {
	Name string
	Data []byte
}

// StartClinic is a clinic.toml to fill in.
func StartClinic(templates fs.FS) (Started, error) {
	return scaffold(templates, "clinic.toml", "clinic.toml", nil)
}

// StartBlock is the next block of a client: it begins where the last one ends, unless a day is given.
func (h *House) StartBlock(c *client.Client, on unit.Day) (Started, error) {
	number, starts, weeks, by := 1, on, 4, ""
	if b := c.Block(); b != nil {
		number, weeks, by = b.Number+1, b.Weeks, b.By
		free := b.Starts.AddWeeks(b.Weeks)
		if starts.IsZero() {
			starts = free
		}
		if starts.Before(free) {
			return Started{}, h.overlaps(c, b, starts, free)
		}
	}
	if starts.IsZero() {
		return Started{}, fmt.Errorf("this is the first block of %s: say on which day it begins, as in --on 2026-04-06", c.Code)
	}
	return scaffold(h.Templates, "block.toml", fmt.Sprintf("clients/%s/blocks/%d.toml", c.Code, number), map[string]string{
		"code": c.Code, "number": fmt.Sprint(number), "starts": starts.String(), "weeks": fmt.Sprint(weeks),
		"visit": starts.AddWeeks(weeks).String(), "therapist": h.therapist(by),
	})
}

// overlaps refuses a block that would begin while the last one runs: where that stands, and the next free day.
func (h *House) overlaps(c *client.Client, last *client.Block, starts, free unit.Day) error {
	at := last.At.At("starts")
	return fmt.Errorf("%s:%d: block %d runs to %s, so no block can begin on %s; begin on %s or later, or shorten block %d: paceleaf start block %s --on %s",
		at.File, h.Line(at), last.Number, free.AddDays(-1), starts, free, last.Number, c.Code, free)
}

// therapist is the given one, else the first of the clinic.
func (h *House) therapist(by string) string {
	if by == "" && len(h.Clinic.Therapists) > 0 {
		return h.Clinic.Therapists[0].ID
	}
	return by
}

func first(list []string) string {
	if len(list) == 0 {
		return "?"
	}
	return list[0]
}

// StartTest is a test day of a client: the tests that are due, with last time's values behind a #, and a note on those
// that limits do not allow yet.
func (h *House) StartTest(done Planned, on unit.Day) (Started, error) {
	c := done.Client
	s, err := scaffold(h.Templates, "test.toml", fmt.Sprintf("clients/%s/tests/%s.toml", c.Code, on), map[string]string{
		"code": c.Code, "on": on.String(), "therapist": h.therapist(lastBy(c)),
	})
	if err != nil {
		return s, err
	}
	s.Data = append(s.Data, dueLines(h.due(done, on), c)...)
	return s, nil
}

func lastBy(c *client.Client) string {
	if len(c.Tests) == 0 {
		return ""
	}
	return c.Tests[len(c.Tests)-1].By
}

// due gathers the tests of a day: what the program's criteria measure, what was tested before, what loads are asked for.
func (h *House) due(done Planned, on unit.Day) plan.Due {
	r := h.program(done.Client.Program)
	if r.program == nil {
		return plan.Due{}
	}
	return plan.DueTests(h.Clinic, r.program, done.Client, on)
}

// dueLines writes the tests due as lines to uncomment.
func dueLines(due plan.Due, c *client.Client) []byte {
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	value := func(v plan.DueValue) {
		switch {
		case v.Last != "":
			line("%-32s # last: %s", "#"+v.Key+" =", v.Last)
		case v.Like != "":
			line("%-32s # as in: %s", "#"+v.Key+" =", v.Like)
		default:
			line("#%s =", v.Key)
		}
	}
	for _, v := range due.Day {
		value(v)
	}
	closed := func(t plan.DueTest) {
		line("")
		if t.Closed != "" {
			line("# Not yet for the operated leg: %s", t.Closed)
		}
	}
	for _, t := range due.Standing {
		closed(t)
		line("# %s%s", t.ID, lastOn(t.LastOn))
		for _, v := range t.Values {
			v.Key = strings.ReplaceAll(t.ID, "-", "_") + "." + v.Key
			value(v)
		}
	}
	for _, list := range []struct {
		name, key string
		tests     []plan.DueTest
	}{{"strength", "test", due.Strength}, {"lift", "exercise", due.Lifts}, {"hop", "test", due.Hops}, {"questionnaire", "id", due.Questionnaires}} {
		for _, t := range list.tests {
			closed(t)
			line("#[[%s]]%s", list.name, lastOn(t.LastOn))
			line("#%s = %q", list.key, t.ID)
			if t.Values[0].Key == "both" {
				line("# Its load waits for a lift of each leg alone on the same machine: the weaker leg caps it.")
			}
			if list.name == "strength" && !c.Setups[t.ID].Angle.OK() {
				line("%-32s # bend of the knee; or once in [setup.%s] of client.toml", "#angle_deg =", t.ID)
			}
			for _, v := range t.Values {
				value(v)
			}
		}
	}
	return []byte(b.String())
}

func lastOn(d unit.Day) string {
	if d.IsZero() {
		return "  # never tested"
	}
	return "  # last tested " + d.String()
}

// scaffold fills {names} into a file that start begins with.
func scaffold(templates fs.FS, from, to string, fill map[string]string) (Started, error) {
	data, err := fs.ReadFile(templates, "start/"+from)
	if err != nil {
		return Started{}, err
	}
	var pairs []string
	for name, value := range fill {
		pairs = append(pairs, "{"+name+"}", value)
	}
	return Started{Name: to, Data: []byte(strings.NewReplacer(pairs...).Replace(string(data)))}, nil
}

// Code says whether a text may be a client's code.
func Code(text string) error {
	if client.IsCode(text) {
		return nil
	}
	return fmt.Errorf("%q is no code of a client; write small letters, digits and hyphens, as in tern-04; no names", text)
}
