package generator_test

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/programs"
)

// Every program that ships is walked from its first stage to its last by a made-up client: each stage can be earned, each of its
// slots can be filled, and each page reads easily. What a program says has a source or a label.

// shippedPrograms are the ids of the programs that ship.
func shippedPrograms(t testing.TB) (ids []string) {
	t.Helper()
	names, err := fs.Glob(programs.FS, "*.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		if name != "sources.toml" && name != "errors.toml" {
			ids = append(ids, strings.TrimSuffix(name, ".toml"))
		}
	}
	return ids
}

func shippedProgram(t testing.TB, id string) *program.Program {
	t.Helper()
	p, faults := program.Library{Folder: source.Over(programs.FS)}.Program(id)
	for _, f := range faults.Wrong() {
		t.Errorf("%s: %v", id, f)
	}
	return p
}

// TestEveryProgramIsWalked: from the first stage to the last every stage is earned by whoever has what it asks, every session
// of it has something to do, and every slot can be filled: where there is every device, and at home with a band, a mat and a strap.
func TestEveryProgramIsWalked(t *testing.T) {
	ids := shippedPrograms(t)
	if len(ids) < 8 {
		t.Errorf("%d programs ship, at least 8 are promised", len(ids))
	}
	for _, id := range ids {
		p := shippedProgram(t, id)
		for i, ph := range p.Phases {
			w := at(p, i)
			house, made := w.plan(t)
			if len(page.Worksheet(made, house.Words()).Parts) == 0 {
				t.Errorf("%s, %s: the worksheet is empty", id, ph.ID)
			}
			if made.Stage.Set != nil && made.Stage.Set.ID != ph.ID {
				t.Errorf("%s: the stage is %s, not %s", id, made.Stage.Set.ID, ph.ID)
			}
			if made.Stage.Ahead {
				t.Errorf("%s: %s is not earned by a knee that has everything: %v", id, ph.ID, short(made.Stage.Short))
			}
			for _, home := range []bool{false, true} {
				w.home = home
				_, there := w.plan(t)
				for _, d := range there.Dropped {
					if d.Empty && d.Side != unit.Right {
						t.Errorf("%s, %s, home %t: slot %s is left empty: %s, %s", id, ph.ID, home, d.Slot, d.Exercise, d.Because)
					}
				}
				for _, twice := range doneTwice(there) {
					t.Errorf("%s, %s, home %t: %s stands twice in one session", id, ph.ID, home, twice)
				}
			}
			for _, s := range ph.Sessions {
				if !slices.ContainsFunc(made.Prescriptions, func(r plan.Prescription) bool { return slices.Contains(r.Sessions, s.ID) }) {
					t.Errorf("%s, %s: session %s has nothing to do", id, ph.ID, s.ID)
				}
			}
		}
	}
	for _, id := range ids {
		if p := shippedProgram(t, id); p.End != nil {
			w := at(p, len(p.Phases)-1)
			w.starts = laterOf(w.starts, floorOf(p.End.Needs))
			if _, made := w.plan(t); made.End == nil || len(short(made.End.Criteria)) > 0 {
				t.Errorf("%s: a knee that has everything does not come to its end: %v", id, made.End)
			}
		}
	}
	t.Logf("%d programs: %s", len(ids), strings.Join(ids, ", "))
}

// doneTwice are the exercises that two slots of one session both chose for a leg.
func doneTwice(p *plan.Plan) (ids []string) {
	for i, r := range p.Prescriptions {
		for _, o := range p.Prescriptions[:i] {
			if o.Exercise == r.Exercise && o.Side == r.Side && o.Slot != r.Slot && slices.ContainsFunc(o.Sessions, func(s string) bool { return slices.Contains(r.Sessions, s) }) {
				ids = append(ids, r.Exercise.ID)
			}
		}
	}
	return ids
}

func short(list []plan.Criterion) (ids []string) {
	for _, c := range list {
		if !c.Passed() {
			ids = append(ids, fmt.Sprintf("%s %s %s", c.ID, c.State, c.Reason))
		}
	}
	return ids
}
