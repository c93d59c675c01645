package generator_test

import (
	"fmt"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// unlabelled lists what a program says without a standing; where one claims to have been read, its source must say so.
func unlabelled(p *program.Program) (wrong []string) {
	rules := map[string]int{}
	hold := func(at basis.Origin, key string, s unit.Standing) {
		rules[string(s)]++
		where := fmt.Sprintf("%s, %s", at.File, at.Key)
		switch read := p.Sources[key].Read; {
		case s == "":
			wrong = append(wrong, where+": no standing")
		case s == unit.Published && read != "source":
			wrong = append(wrong, fmt.Sprintf("%s: published, but of %q was read: %q", where, key, read))
		case s == unit.SecondHand && read == "from memory":
			wrong = append(wrong, fmt.Sprintf("%s: second-hand, but %q is from memory", where, key))
		}
	}
	var criteria func(list []program.Criterion)
	criteria = func(list []program.Criterion) {
		for _, c := range list {
			if nested := append(append([]program.Criterion{}, c.Any...), c.All...); len(nested) > 0 {
				criteria(nested)
				continue
			}
			hold(c.At, c.Source, c.Standing)
		}
	}
	for _, a := range p.Activities {
		criteria(a.Needs)
	}
	for _, g := range p.Goals {
		hold(g.At, g.Source, g.Standing)
	}
	if p.End != nil {
		criteria(p.End.Needs)
	}
	for _, s := range p.Stops {
		hold(s.At, s.Source, s.Standing)
	}
	for _, ph := range p.Phases {
		criteria(ph.Enter)
		for _, s := range ph.Slots {
			hold(s.At, s.Source, s.Standing)
		}
		for _, d := range ph.Deloads {
			hold(d.At, d.Source, d.Standing)
		}
	}
	for _, l := range p.Limits {
		for _, s := range l.Steps {
			standing := s.Standing
			if standing == "" {
				standing = l.Standing
			}
			hold(s.At, l.Source, standing)
			if own := standing == unit.ToolDefault || standing == unit.CommonPractice; own && s.Note == "" && l.Note == "" {
				wrong = append(wrong, s.At.File+", "+s.At.Key+": our own row without a note")
			}
		}
		if *l.Steps[0].Week != 0 {
			wrong = append(wrong, l.At.File+", "+l.At.Key+": the schedule does not begin in week 0")
		}
	}
	for _, e := range p.Exercises {
		hold(e.At, e.Source, e.Standing)
	}
	return wrong
}

// TestNoRuleWithoutSourceOrLabel: every mark, dose, row and exercise of every program says how far it may be trusted, and
// claims no more than was read of its source.
func TestNoRuleWithoutSourceOrLabel(t *testing.T) {
	for _, id := range shippedPrograms(t) {
		p := shippedProgram(t, id)
		for _, w := range unlabelled(p) {
			t.Errorf("%s: %s", id, w)
		}
		for _, key := range p.File.Sources {
			if _, there := p.Sources[key]; !there {
				t.Errorf("%s: %s is in no bibliography", id, key)
			}
		}
	}
	p := shippedProgram(t, "kneecap-pain")
	spoilt := *p
	spoilt.Phases = []*program.Phase{{Slots: []program.Slot{{}, {Source: "thomee-1997", Standing: unit.Published}, {Source: "kongsgaard-2009", Standing: unit.Published}, {Source: "thomee-1997", Standing: unit.SecondHand}}}}
	if found := unlabelled(&spoilt); len(found) != 4 {
		t.Errorf("of four bad slots the test finds %v", found)
	}
}
