package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator"
	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// given finds the prescription of an exercise and leg.
func given(t testing.TB, p *plan.Plan, exercise string, side unit.Side) plan.Prescription {
	t.Helper()
	for _, r := range p.Prescriptions {
		if r.Exercise.ID == exercise && r.Side == side {
			return r
		}
	}
	t.Fatalf("%s, %s: %s", exercise, side, because(p, exercise, 1))
	return plan.Prescription{}
}

// device swaps a device of the test clinic's gym for another writing of it.
func (w who) device(old, now string) who {
	if !strings.Contains(clinicText, old) {
		panic("no such device: " + old)
	}
	w.files["clinic.toml"] = strings.Replace(clinicText, old, now, 1)
	return w
}

// banded is a leg curl with a band of 60 cm that gives 20.46 N at 120 cm (100 %) and 29.80 N at 180 cm (200 %). Loading plan 5.4.
func banded(left string) who {
	w := pressed("leg-curl-band", "", "", "[setup.leg-curl-band]\ndevice = \"blue\"\n")
	w.weeks = 1
	w = w.device("id = \"mat\"\nkind = \"mat\"", "id = \"mat\"\nkind = \"mat\"\n[[place.device]]\nid = \"blue\"\nkind = \"band\"\nrest_cm = 60\n"+
		"[[place.device.point]]\nlength_cm = 120\nforce_n = 20.46\n[[place.device.point]]\nlength_cm = 180\nforce_n = 29.80\n[[place.device]]\nid = \"post\"\nkind = \"post\"")
	w.tests["2026-04-06"] = straightKnees + "[[lift]]\nexercise = \"leg-curl-band\"\nrange_deg = [0, 90]\n" + left
	return w
}

// A band is stretched to a length: of the tested set's force, on the line of the band's own two points.
func TestBandIsStretched(t *testing.T) {
	// 12 to failure at 150 cm (150 %): 25.13 N; 10 with 2 in reserve is 12 to failure: the same force, 150 cm
	p := banded("left.stretched_cm = 150\nleft.reps = 12\nleft.reserve = 0\n").plan(t)
	r := given(t, p, "leg-curl-band", unit.Left)
	if got := float64(r.Weeks[0].Stretch.Or(0)); !near(got, 1.50) {
		t.Errorf("%v m, want 1.50", got)
	}
	if got := float64(r.Weeks[0].Moved.Or(0)) * unit.NewtonsPerKgf; !near(got, 25.13) {
		t.Errorf("%v N, want 25.13", got)
	}
	// 8 to failure there: 71.43 % of 1.2667 × 25.13 is 22.74 N, a stretch of 124.4 %: 134.6 cm, cut to 134
	p = banded("left.stretched_cm = 150\nleft.reps = 8\nleft.reserve = 0\n").plan(t)
	if got := float64(given(t, p, "leg-curl-band", unit.Left).Weeks[0].Stretch.Or(0)); !near(got, 1.34) {
		t.Errorf("%v m, want 1.34", got)
	}
	if shared := page.SharedIDs(p); len(shared) > 0 {
		t.Errorf("ids that mean two numbers: %v", shared)
	}
	// the right leg was not tested: it has no length; nor has anyone with a band that the line does not reach
	if d := dose(p, "leg-curl-band", unit.Right, 1); d == nil || d.Stretch.OK() || d.FindYourWeight {
		t.Errorf("the other leg: %+v", d)
	}
	d := dose(banded("left.stretched_cm = 120\nleft.reps = 5\nleft.reserve = 0\n").plan(t), "leg-curl-band", unit.Left, 1)
	if d == nil || d.Stretch.OK() || !strings.Contains(d.Why.String(), "outside the two measured points") {
		t.Errorf("below the first point: %+v", d)
	}
}

// Slips in a measured band are told at once.
func TestBandSlips(t *testing.T) {
	for _, row := range []struct{ old, now, want string }{
		{"rest_cm = 60\n", "", "no length at rest"},
		{"force_n = 29.80", "force_n = 19.80", "do not rise"},
		{"kind = \"band\"", "kind = \"strap\"", "is no band"},
	} {
		w := banded("left.stretched_cm = 150\nleft.reps = 8\nleft.reserve = 0\n")
		w.files["clinic.toml"] = strings.Replace(w.files["clinic.toml"], row.old, row.now, 1)
		if said := openFaults(t, w); !strings.Contains(said, row.want) {
			t.Errorf("%s: %q", row.want, said)
		}
	}
	w := banded("left.stretched_cm = 150\nleft.plates_kg = 5\nleft.reps = 8\nleft.reserve = 0\n")
	if said := openFaults(t, w); !strings.Contains(said, "a weight and the length of a band") {
		t.Errorf("both: %q", said)
	}
}

// The worksheet's forces and torques. Loading plan 5.2: 105 kg moved at 45° are 728.1 N; 30 kg on a wheel of 25 cm at a pad of 40 cm
// are 18.75 kgf and 73.5 N·m; 5 kg at 40 cm and 30° are 16.99 N·m.
func TestMechanicsForTheWorksheet(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 12+0", "90 kg x 8+0", "")
	w.place, w.more = "heavy", "[setup.leg-press-single]\ndevice = \"big-press\"\n"
	w = w.device("carriage_kg = 45", "carriage_kg = 45\nangle_deg = 45")
	r := given(t, w.plan(t), "leg-press-single", unit.Left)
	if got := float64(r.Mechanics.AlongSlope.Or(0)); r.Weeks[0].Moved.Or(0) != 105 || got < 728.0 || got > 728.2 {
		t.Errorf("%v kg moved, %v N along the slope, want 105 and 728.1", r.Weeks[0].Moved.Or(0), got)
	}
	w = pressed("leg-curl-machine", "30 kg x 12+0", "60 kg x 8+0", "")
	w = w.device("id = \"curl\"\nkind = \"leg-curl-stack\"", "id = \"curl\"\nkind = \"leg-curl-stack\"\ncam_cm = 25\npad_cm = 40")
	r = given(t, w.plan(t), "leg-curl-machine", unit.Left)
	if pad, torque := float64(r.Mechanics.AtPad.Or(0)), float64(r.Mechanics.Torque.Or(0)); !near(pad/unit.NewtonsPerKgf, 18.75) || torque < 73.5 || torque > 73.6 {
		t.Errorf("%v N at the pad, %v N·m, want 18.75 kgf and 73.5", pad, torque)
	}
	w = pressed("prone-curl", "", "", "[setup.prone-curl]\ndevice = \"cuffs\"\nleft.arm_cm = 40\nright.arm_cm = 40\n"+limit("active-bend", "range_deg = [30, 110]", "2026-03-02", "", "surgeon", "Dr Auk", "2026-03-02"))
	w.weeks = 1
	w = w.device("id = \"mat\"\nkind = \"mat\"", "id = \"mat\"\nkind = \"mat\"\n[[place.device]]\nid = \"cuffs\"\nkind = \"ankle-weight\"\nlightest_kg = 0.5\nstep_kg = 0.5")
	w.tests["2026-04-06"] = straightKnees + lift("prone-curl", "range_deg = [30, 110]", "5 kg x 12+0", "5 kg x 12+0")
	r = given(t, w.plan(t), "prone-curl", unit.Left)
	if got := float64(r.Mechanics.Torque.Or(0)); !near(got, 16.99) {
		t.Errorf("%v kg: %v N·m, want 16.99: %+v", r.Weeks[0].Plates.Or(0), got, r.Weeks[0])
	}
}

// A first weight from an isometric test stands on the worksheet only. Loading plan 5.1: 450 N is 36.64 kg by Kanada, 60 % of it 22.0;
// limits of Lesnak: 16.5 to 52.2.
func TestIsometricStart(t *testing.T) {
	w := pressed("knee-extension-machine", "", "", "")
	w.tests["2026-04-06"] = straightKnees + pull("knee-extension", "[450]", "[500]")
	p := w.plan(t)
	r := given(t, p, "knee-extension-machine", unit.Left)
	s := r.FromIsometric
	if !r.Weeks[0].FindYourWeight || r.Weeks[0].Plates.OK() {
		t.Fatalf("a load without a lift: %+v", r.Weeks[0])
	}
	if s == nil || !near(float64(s.Max.Or(0)), 36.64) || float64(s.Start.Or(0)) < 21.95 || float64(s.Start.Or(0)) > 22.0 || !near(float64(s.Low.Or(0)), 16.54) || !near(float64(s.High.Or(0)), 52.24) {
		t.Errorf("%+v", s)
	}
	if shared := page.SharedIDs(p); len(shared) > 0 {
		t.Errorf("ids that mean two numbers: %v", shared)
	}
	if r := given(t, pressed("knee-extension-machine", "40 kg x 8+0", "40 kg x 8+0", "").plan(t), "knee-extension-machine", unit.Left); r.FromIsometric != nil {
		t.Error("a lift needs no other start")
	}
	w.more = strings.Replace(setups, "angle_deg = 90", "angle_deg = 60\ntared = true", 1)
	if r := given(t, w.plan(t), "knee-extension-machine", unit.Left); r.FromIsometric != nil {
		t.Error("tested at 60°: another test")
	}
}

// A hold has a target where the gauge is at hand: 70 % of 450 N is 315 N (loading plan 5.1); of 45 kgf 31.5 kgf, in kgf.
func TestHoldTarget(t *testing.T) {
	held := func(test, gauge string) *plan.WeekDose {
		w := pressed("knee-extension-isometric-90", "", "", "")
		w.weeks, w.files = 1, slotOf(`"knee-extension-isometric-90"`, "sets = 5\nhold_s = 45\nhold_target_percent = 70")
		w = w.device("id = \"belt\"\n", "id = \"belt\"\n"+gauge)
		w.tests["2026-04-06"] = straightKnees + test
		return dose(w.plan(t), "knee-extension-isometric-90", unit.Left, 1)
	}
	newtons := pull("knee-extension", "[450]", "[500]")
	if d := held(newtons, "place = \"gym\"\n"); d == nil || d.HoldAt.Or(0) != 315 || d.HoldIn != "N" {
		t.Errorf("%+v", d)
	}
	if d := held(strings.ReplaceAll(strings.NewReplacer("450", "45", "500", "50").Replace(newtons), "peak_n", "peak_kgf"), "place = \"gym\"\n"); d == nil || !near(float64(d.HoldAt.Or(0))/unit.NewtonsPerKgf, 31.5) || d.HoldIn != "kgf" {
		t.Errorf("%+v", d)
	}
	for _, gauge := range []string{"", "place = \"hotel\"\n"} {
		if d := held(newtons, gauge); d == nil || d.HoldAt.OK() {
			t.Errorf("no gauge at hand, and a target: %+v", d)
		}
	}
	if d := held("", "place = \"gym\"\n"); d == nil || d.HoldAt.OK() {
		t.Errorf("never tested, and a target: %+v", d)
	}
}

// Stimulated: 12 contractions of 10 s with 50 s off take 12 minutes (loading plan 4.7).
func TestMethodStimulated(t *testing.T) {
	w := pressed("quad-set-stimulated", "", "", "")
	w.weeks, w.files = 1, slotOf(`"quad-set-stimulated"`, "method = \"stimulated\"\nstimulated = { contractions = 12, on_s = 10, off_s = 50 }")
	w = w.device("id = \"mat\"\nkind = \"mat\"", "id = \"mat\"\nkind = \"mat\"\n[[place.device]]\nid = \"stim\"\nkind = \"stimulator\"")
	w.tests["2026-04-06"] = straightKnees
	d := dose(w.plan(t), "quad-set-stimulated", unit.Left, 1)
	if d == nil || d.Time.Or(0) != 720 || *d.Dose.Reps != 12 || *d.Dose.HoldFor != 10 || *d.Dose.Rest != 50 {
		t.Errorf("%+v", d)
	}
}

// openFaults are all mistakes of a clinic and its client.
func openFaults(t testing.TB, w who) string {
	t.Helper()
	house, faults := generator.Open(generator.Files{Clinic: w.clinic(), Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	if house != nil {
		faults = house.Plan("tern-04").Faults
	}
	return faults.Error()
}
