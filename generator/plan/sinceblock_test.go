package plan_test

import (
	"fmt"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// lookAndLift is a test day of a calm knee with a lift of each leg on the press.
func lookAndLift(left, right string) string {
	return fmt.Sprintf("mass_kg = 70\npain_worst = 0\npain_next_morning = 0\neffusion = \"zero\"\nleft.lacks_extension_deg = 0\nleft.flexion_deg = 130\nright.flexion_deg = 140\n"+
		"[[lift]]\nexercise = \"leg-press-single\"\nplace = \"gym\"\ndevice = \"press\"\nrange_deg = [0, 90]\nleft = %q\nright = %q\n", left, right)
}

// twoBlocks is a client with two blocks of one stage and a lift on the first day of each.
func twoBlocks(second string) who {
	return who{stages: "settle 2026-01-05, rebuild 2026-02-16", starts: "2026-03-02",
		tests: map[string]string{"2026-03-02": lookAndLift("60 kg x 8+3", "80 kg x 8+3"), "2026-03-30": lookAndLift(second, "80 kg x 8+3")},
		files: map[string]string{"clients/tern-04/blocks/2.toml": "starts = 2026-03-30\nweeks = 4\nby = \"imbali\"\n"}}
}

func sinceOf(p *plan.Plan, exercise string, side unit.Side) *plan.DoseChange {
	if p.Since == nil {
		return nil
	}
	for i := range p.Since.Changes {
		if c := &p.Since.Changes[i]; c.Exercise.ID == exercise && c.Side == side {
			return c
		}
	}
	return nil
}

// A better lift is a change of that leg alone, with both maxima beside it; the other leg, tested as before, is no change.
func TestSinceTheBlockBefore(t *testing.T) {
	p := twoBlocks("75 kg x 8+3").plan(t)
	if p.Since == nil || p.Since.Block.Number != 1 || p.Since.Stage != nil {
		t.Fatalf("the block before is %+v", p.Since)
	}
	c := sinceOf(p, "leg-press-single", unit.Left)
	if c == nil || c.Before == nil || c.Now == nil {
		t.Fatalf("the better leg has no change: %+v", p.Since.Changes)
	}
	before, now := float64(c.Before.OneRM.Or(0)), float64(c.Now.OneRM.Or(0))
	if ratio := now / before; ratio < 1.249 || ratio > 1.251 { // 75 kg against 60 kg, the same repetitions
		t.Errorf("the maximum went from %v to %v", before, now)
	}
	if c.Now.Weeks[0].Plates.Or(0) <= c.Before.Weeks[0].Plates.Or(0) {
		t.Errorf("the load went from %v to %v", c.Before.Weeks[0].Plates.Or(0), c.Now.Weeks[0].Plates.Or(0))
	}
	if c := sinceOf(p, "leg-press-single", unit.Right); c != nil && c.Before.Weeks[0].Plates.Or(0) == c.Now.Weeks[0].Plates.Or(0) {
		t.Errorf("the other leg asks for the same load, and its change is %+v", *c)
	}
}

// What came to light after the first day of the block before is not held against it, and a first block has nothing before it.
func TestSinceIsAsIssued(t *testing.T) {
	one, two := twoBlocks("60 kg x 8+3"), twoBlocks("75 kg x 8+3")
	a, b := sinceOf(one.plan(t), "leg-press-single", unit.Left), sinceOf(two.plan(t), "leg-press-single", unit.Left)
	if b == nil {
		t.Fatal("no change")
	}
	if a != nil && a.Before.Weeks[0].Plates.Or(0) != b.Before.Weeks[0].Plates.Or(0) {
		t.Errorf("a later lift changed the block before: %v and %v", a.Before.Weeks[0].Plates.Or(0), b.Before.Weeks[0].Plates.Or(0))
	}
	first := twoBlocks("75 kg x 8+3")
	first.files = nil
	first.starts = "2026-03-30"
	if p := first.plan(t); p.Since != nil {
		t.Errorf("a first block has one before it: %+v", p.Since)
	}
}
