package generator_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	"paceleaf/programs"
)

// TestLawMoreRepetitionsKeepTheReserve: repetitions are raised only where the cut takes more than 5 % off a load, never below what the
// slot asks, and the reserve that was asked is still there at the cut load; no set is heavier than the load of its week.
func TestLawMoreRepetitionsKeepTheReserve(t *testing.T) {
	all, base, _ := population(t)
	raised := 0
	for n, p := range base {
		for _, r := range p.Prescriptions {
			for _, w := range r.Weeks {
				for _, s := range w.Each {
					if s.Plates.Or(0) > w.Plates.Or(0) {
						t.Errorf("%s week %d: a set of %v, the load is %v\n%s", r.Exercise.ID, w.Week, s.Plates.Or(0), w.Plates.Or(0), about(all[n]))
					}
				}
				if !w.Reps.OK() {
					continue
				}
				raised++
				if w.CutError.Or(0) <= 5 || *w.Dose.Reps <= w.AskedReps || w.Implied.Or(0) < unit.Count(*w.Dose.Reserve) || *w.Dose.Reps+*w.Dose.Reserve > 15 {
					t.Errorf("%s week %d: %d repetitions for %d, cut by %v %%, %v in reserve of %d\n%s", r.Exercise.ID, w.Week, *w.Dose.Reps, w.AskedReps, w.CutError.Or(0), w.Implied.Or(0), *w.Dose.Reserve, about(all[n]))
				}
			}
		}
	}
	if raised < 10 {
		t.Errorf("only %d weeks have more repetitions: is the law still looking?", raised)
	}
}

// loadingTown is a clinic whose one client is loaded in every way there is: an own phase of a slot each.
func loadingTown(t testing.TB) *plan.Plan {
	t.Helper()
	_, clinic := demoFolk(t)
	clinic += `
[[place]]
id = "lab"
device = [
  { id = "press", kind = "angled-leg-press", carriage_kg = 45, angle_deg = 45, plates_kg = [20, 10, 5, 2.5, 1.25] },
  { id = "curl", kind = "leg-curl-stack", lightest_kg = 5, step_kg = 5, cam_cm = 25, pad_cm = 40 },
  { id = "ext", kind = "knee-extension-stack", lightest_lb = 10, step_lb = 10, add_on_lb = 2.5 },
  { id = "bells", kind = "dumbbell", lightest_kg = 1, step_kg = 1 },
  { id = "blue", kind = "band", rest_cm = 60, point = [ { length_cm = 120, force_n = 20.46 }, { length_cm = 180, force_n = 29.8 } ] },
  { id = "cuff", kind = "cuff" }, { id = "stim", kind = "stimulator" }, { id = "mat", kind = "mat" }, { id = "weights", kind = "ankle-weight", lightest_kg = 0.5, step_kg = 0.5 },
]
`
	phase := "title = \"All\"\naim = \"Try.\"\n"
	session := ""
	for i, slot := range []string{
		"choose = [\"leg-press-single\"]\nmethod = \"daily-adjusted\"",
		"choose = [\"leg-curl-machine\"]\nmethod = \"cuffed\"\ncuffed = { load_percent = 30, pressure_percent = 80 }",
		"choose = [\"knee-extension-machine\"]\nmethod = \"rising\"\nreserve = 2\nweekly_percent = 2.5",
		"choose = [\"split-squat-weights\"]\nsets = 3\nreps = 10\nreserve = 2\nweekly_percent = 2.5",
		"choose = [\"leg-curl-band\"]\nsets = 3\nreps = 10\nreserve = 2",
		"choose = [\"quad-set-stimulated\"]\nmethod = \"stimulated\"\nstimulated = { contractions = 12, on_s = 10, off_s = 50 }",
		"choose = [\"prone-curl\"]\nsets = 3\nreps = 10\nreserve = 2",
		"choose = [\"leg-curl-machine\"]\nsets = 3\nreps = 10\nreserve = 2",
	} {
		phase += fmt.Sprintf("[[slot]]\nid = \"s%d\"\n%s\n", i, slot)
		session += fmt.Sprintf("\"s%d\", ", i)
	}
	data, err := programs.FS.ReadFile("acl-reconstruction.toml")
	if err != nil {
		t.Fatal(err)
	}
	one := folk{
		"client.toml": "program = \"acl-reconstruction\"\nplace = \"lab\"\ntraining_days = [\"mon\"]\nother_leg = \"sound\"\nsex = \"female\"\n[[event]]\nkind = \"operation\"\nprocedure = \"acl-reconstruction\"\ndate = 2025-06-02\nside = \"left\"\ngraft = \"patellar-tendon\"\ngraft_from = \"left\"\n" +
			"[setup.leg-press-single]\ndevice = \"press\"\n[setup.leg-curl-machine]\ndevice = \"curl\"\n[setup.knee-extension-machine]\ndevice = \"ext\"\n[setup.split-squat-weights]\ndevice = \"bells\"\n[setup.leg-curl-band]\ndevice = \"blue\"\n" +
			"[setup.prone-curl]\ndevice = \"weights\"\nleft.arm_cm = 36\nright.arm_cm = 36\nshank_cm = 40\n",
		"blocks/1.toml": "starts = 2026-04-06\nweeks = 3\nby = \"imbali\"\n[cuffed]\nby = \"imbali\"\n",
		"tests/2026-04-06.toml": "mass_kg = 66\npain_worst = 1\npain_next_morning = 0\npain_kind = \"ache\"\neffusion = \"zero\"\nleft.lacks_extension_deg = 0\nleft.flexion_deg = 140\nright.lacks_extension_deg = 0\nright.flexion_deg = 140\nleft.occlusion_mmhg = 183\nright.occlusion_mmhg = 177\n" +
			lifted("leg-press-single", "60 kg x 7+1", "92.5 kg x 8+0") + lifted("leg-curl-machine", "30 kg x 8+0", "45 kg x 6+2") + lifted("knee-extension-machine", "70 lb x 7+0", "90 lb x 9+0") +
			lifted("split-squat-weights", "14 kg x 12+1", "15 kg x 12+2") + lifted("prone-curl", "5 kg x 12+0", "6 kg x 12+0") +
			"[[lift]]\nexercise = \"leg-curl-band\"\nrange_deg = [0, 120]\nleft.stretched_cm = 150\nleft.reps = 11\nleft.reserve = 0\nright.stretched_cm = 160\nright.reps = 12\nright.reserve = 0\n",
	}
	house := open(t, town(clinic, []folk{one}, map[string]string{"programs/acl-reconstruction.toml": strings.Replace(string(data), "counts_from", "one_rm = \"wathen\"\ncounts_from", 1), "programs/phases/settle.toml": phase + "[[session]]\nid = \"a\"\nslots = [" + session + "]\n"}))
	done := house.Plan(codeOf(0))
	if done.Plan == nil {
		t.Fatal(done.Faults)
	}
	return done.Plan
}

func lifted(exercise, left, right string) string {
	return fmt.Sprintf("[[lift]]\nexercise = %q\nrange_deg = [0, 120]\nleft = %q\nright = %q\n", exercise, left, right)
}

// TestLawEveryWayOfLoadingCanBeRedone: with a pocket calculator, from what the terminal and the worksheet print; and each number has
// an id of its own.
func TestLawEveryWayOfLoadingCanBeRedone(t *testing.T) {
	p := loadingTown(t)
	if shared := page.SharedIDs(p); len(shared) > 0 {
		t.Errorf("ids that mean two numbers: %v", shared)
	}
	ids, _ := page.WhyText(p, "", nil)
	seen := map[string]int{}
	for _, line := range strings.Split(ids, "\n") {
		id, _, _ := strings.Cut(line, " ")
		if !strings.Contains(id, ".") || strings.HasSuffix(id, ":") {
			continue
		}
		chain, ok := page.WhyText(p, id, nil)
		if !ok {
			continue
		}
		for _, step := range strings.Split(chain, "\n") {
			done, err := redo(step)
			if err != nil {
				t.Errorf("%v\n%s", err, step)
			}
			if done {
				_, quantity, _ := strings.Cut(id, ".w1.")
				seen[quantity]++
			}
		}
	}
	for _, quantity := range []string{"load", "set-1-share", "set-4-after-0-cut", "cuff-pressure", "cuff-time", "cuff-load", "stimulation-time", "length", "added", "moved", "repetitions", "cut-error",
		"tonnage", "step-share", "along-slope", "at-pad", "torque", "own-leg"} {
		if seen[quantity] == 0 {
			t.Errorf("no %s among the sums: %v", quantity, quantitiesOf(seen))
		}
	}
}

func quantitiesOf(seen map[string]int) (all []string) {
	for q := range seen {
		all = append(all, q)
	}
	return all
}
