package generator

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"
)

// A mutant is one line of the code made wrong. The tests of the rooms that reckon must turn red for each.
type mutant struct {
	name     string
	file     string // below generator/
	from, to string // from stands exactly once in the file
}

// mutants are slips that a tired programmer makes in this trade: an edge taken in or left out, legs swapped, a week too
// early, a missing value taken for one, the looser of two, cut to the nearest.
var mutants = []mutant{
	{"a day is before itself", "unit/day.go", "d.Compare(e) < 0", "d.Compare(e) <= 0"},
	{"a week too late", "unit/day.go", "floorDiv(d.Sub(e), 7) }", "floorDiv(d.Sub(e), 7) + 1 }"},
	{"months are not clamped", "unit/day.go", "min(d.Date, last)}", "min(d.Date, last+3)}"},
	{"cut to the nearest", "unit/cut.go", "math.Floor(", "math.Round("},
	{"legs swapped", "formula/symmetry.go", "return share(involved, other), nil", "return share(other, involved), nil"},
	{"worst trial", "formula/best.go", "max(best, x)", "min(best, x)"},
	{"estimate too high", "formula/onerm.go", "float64(n)/30)), nil", "float64(n)/29)), nil"},
	{"fifteen refused", "formula/onerm.go", "n > OneRMRefusedAbove", "n >= OneRMRefusedAbove"},
	{"gravity taken off", "formula/extensioncorrected.go", "return T + G", "return T - G"},
	{"carriage forgotten", "formula/movedload.go", "return plates + carriage", "return plates"},
	{"reserve not counted", "formula/tofailure.go", "return r + q, nil", "return r, nil"},
	{"a day more grows", "formula/ceiling.go", "float64(k)", "float64(k+1)"},
	{"doubt about the reference turned", "finding/strength.go", "ok && v > TooStrong", "ok && v < TooStrong"},
	{"any spread believed", "finding/strength.go", "ok && spread > spreadLimit", "ok && spread > 10*spreadLimit"},
	{"tared for untared", "finding/strength.go", "if !p.have.Untared()", "if p.have.Untared()"},
	{"a bent knee's sweep believed", "finding/effusion.go", "lacks > sweepNeeds", "lacks > 9*sweepNeeds"},
	{"many repetitions not doubted", "finding/lift.go", "ok && n > formula.OneRMDoubtedAbove", "ok && n > 100*formula.OneRMDoubtedAbove"},
	{"missing is met", "plan/criteria.go", "c.State, c.Reason = NotTested, m.Reason", "c.State, c.Reason = Met, m.Reason"},
	{"old by one week more", "plan/criteria.go", "m.On.AddWeeks(j.within(c.Rule)).Before", "m.On.AddWeeks(j.within(c.Rule) + 1).Before"},
	{"doubtful opens", "plan/criteria.go", "case len(m.Doubts) > 0:", "case len(m.Doubts) > 9:"},
	{"at least is above", "plan/criteria.go", "return found >= wanted", "return found > wanted"},
	{"at most is below", "plan/criteria.go", "return found <= wanted", "return found < wanted"},
	{"the higher ratio governs", "plan/criteria.go", "m.Number = min(m.Number, preop.Number)", "m.Number = max(m.Number, preop.Number)"},
	{"lift day is still limited", "plan/limits.go", "d.Before(w.Lifts)", "!d.After(w.Lifts)"},
	{"the earlier word stands", "plan/limits.go", "o.Said.After(w.Said)", "o.Said.Before(w.Said)"},
	{"shipped beside the surgeon's", "plan/limits.go", "return !w.early }) {", "return w.early }) {"},
	{"the looser grade", "plan/allowance.go", "b.Grade.Rank() < a.Grade.Rank()", "b.Grade.Rank() > a.Grade.Rank()"},
	{"the larger part of weight", "plan/allowance.go", "b != nil && *b < *a", "b != nil && *b > *a"},
	{"three times the weaker leg", "plan/load.go", "unit.Kilograms(2*float64(w))", "unit.Kilograms(3*float64(w))"},
	{"no step back", "plan/wayback.go", "const stepBackTo = 0.9", "const stepBackTo = 1.0"},
	{"deeper than tested", "plan/load.go", "work.MostBent > tested.MostBent", "work.MostBent > tested.MostBent+30"},
	{"hold ignored", "plan/hold.go", "h := c.Held(b); h != nil", "h := c.Held(b); false && h != nil"},
	{"2+ goes on", "plan/symptoms.go", "case c.held == 0 && grade >= two:", "case c.held == 0 && grade > two:"},
	{"pain 5 steps back", "plan/symptoms.go", "asked && worst > painStepUp", "asked && worst >= painStepUp"},
	{"unknown morning goes on", "plan/symptoms.go", "add(Pause, \"pain-morning-unknown\"", "add(Stay, \"pain-morning-unknown\""},
	{"an old log loads", "plan/logged.go", "const loggedDays = 14", "const loggedDays = 140"},
	{"missing is zero", "basis/basis.go", "return n.step != nil && !n.step.Refuse", "return n.step != nil"},
	{"a set cut short is done as asked", "plan/asdone.go", "r.Or(0) >= unit.Count(*w.Dose.Reps)", "r.Or(0)+2 >= unit.Count(*w.Dose.Reps)"},
	{"a sore day is done as asked", "plan/asdone.go", "why != \"\" || !l.counts(t)", "why == \"never\" || !l.counts(t)"},
	{"load before repetitions", "plan/repsfirst.go", "r.Or(0) < unit.Count(*w.Dose.RepsTo)", "r.Or(0)+1 < unit.Count(*w.Dose.RepsTo)"},
	{"a step that nothing predicts", "plan/repsfirst.go", "needed > min(", "needed > 30+min("},
	{"what was moved held against nothing", "plan/liftdevice.go", "known && load > heaviest+crumb", "known && load > 2*heaviest"},
	{"this morning's lift unheard", "plan/daily.go", "!l.lift.On.Before(last.Done.On)", "l.lift.On.Before(last.Done.On.AddDays(-999))"},
	{"much more swelling is said and not heard", "plan/report.go", "g.Action, g.Code, g.Level = Pause,", "g.Action, g.Code, g.Level = NoAction,"},
	{"asked to bend beyond the knee", "plan/measured.go", "r.MostBent = e.bend\n", "r.MostBent = e.bend + 40\n"},
}

// Each mutant still finds its line: a table that has lost touch with the code would kill nothing.
func TestMutantsApply(t *testing.T) {
	if len(mutants) < 25 {
		t.Errorf("%d mutants; 25 are asked for", len(mutants))
	}
	for _, m := range mutants {
		if _, err := m.apply(); err != "" {
			t.Errorf("%s: %s", m.name, err)
		}
	}
}

func (m mutant) apply() (mutated []byte, wrong string) {
	data, err := os.ReadFile(filepath.FromSlash(m.file))
	if err != nil {
		return nil, err.Error()
	}
	if n := bytes.Count(data, []byte(m.from)); n != 1 {
		return nil, m.file + ": " + m.from + " does not stand there exactly once"
	}
	return bytes.Replace(data, []byte(m.from), []byte(m.to), 1), ""
}

// TestMutantsAreKilled takes minutes and runs with PACELEAF_MUTANTS=1 alone. The mutated file is laid over the real one by
// the go command; nothing in the tree is touched.
func TestMutantsAreKilled(t *testing.T) {
	if os.Getenv("PACELEAF_MUTANTS") == "" {
		t.Skip("set PACELEAF_MUTANTS=1; takes some minutes")
	}
	if out, err := rooms(t, "{}", "unit"); err != nil {
		t.Fatalf("the tests are red before any mutant:\n%s", out)
	}
	killed := 0
	for _, m := range mutants {
		t.Run(m.name, func(t *testing.T) {
			mutated, wrong := m.apply()
			if wrong != "" {
				t.Fatal(wrong)
			}
			dir := t.TempDir()
			file := filepath.Join(dir, "mutant.go")
			if err := os.WriteFile(file, mutated, 0o600); err != nil {
				t.Fatal(err)
			}
			real, err := filepath.Abs(filepath.FromSlash(m.file))
			if err != nil {
				t.Fatal(err)
			}
			overlay, err := json.Marshal(map[string]map[string]string{"Replace": {real: file}})
			if err != nil {
				t.Fatal(err)
			}
			room, _, _ := strings.Cut(m.file, "/")
			out, err := rooms(t, string(overlay), room)
			switch {
			case err == nil:
				t.Errorf("survived: %s → %s in %s", m.from, m.to, m.file)
			case bytes.Contains(out, []byte("[build failed]")):
				t.Errorf("does not compile:\n%s", out)
			default:
				killed++
				t.Logf("killed by %s", firstFailure(out))
			}
		})
	}
	t.Logf("%d of %d killed", killed, len(mutants))
}

// rooms runs the tests of the rooms that reckon, with an overlay of the go command: first those of one room, then the others, until
// one is red.
func rooms(t *testing.T, overlay, first string) (out []byte, err error) {
	file := filepath.Join(t.TempDir(), "overlay.json")
	if err := os.WriteFile(file, []byte(overlay), 0o600); err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithTimeout(context.Background(), 10*time.Minute)
	defer cancel()
	test := func(rooms ...string) {
		args := append([]string{"test", "-failfast", "-vet=off", "-overlay", file}, rooms...)
		out, err = exec.CommandContext(ctx, "go", args...).CombinedOutput()
	}
	rest := []string{"./unit", "./formula", "./finding", "./plan"}
	if test("./" + first); err == nil {
		test(slices.DeleteFunc(rest, func(room string) bool { return room == "./"+first })...)
	}
	return out, err
}

func firstFailure(out []byte) string {
	for line := range strings.Lines(string(out)) {
		if _, name, ok := strings.Cut(line, "--- FAIL: "); ok {
			return strings.TrimSpace(name)
		}
	}
	return "nothing that named itself"
}
