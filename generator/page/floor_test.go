package page

import (
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// floorPlan is the sample with a place, a phase that puts its slot into the day's session, and days in its weeks.
func floorPlan() *plan.Plan {
	p := deskPlan()
	gym := client.Place{ID: "gym", Name: "the gym", Devices: []client.Device{{ID: "press", Kind: "angled-leg-press", Name: "black press"}, {ID: "stack", Kind: "knee-extension-stack", Name: "grey stack"}}}
	p.Clinic.Places = []client.Place{gym}
	for i := range 4 {
		p.Weeks = append(p.Weeks, plan.Week{Number: i + 1, Starts: testDay.AddWeeks(i), Ends: testDay.AddWeeks(i + 1).AddDays(-1), Place: &p.Clinic.Places[0]})
	}
	for i := range p.Prescriptions {
		p.Prescriptions[i].Sessions = []string{"a"}
	}
	p.Prescriptions[0].Device = &p.Clinic.Places[0].Devices[0]
	p.Stage.Set.Sessions = []program.Session{{ID: "a", Slots: []string{"quadriceps"}}}
	p.Program.Exercises["knee-extension-machine"] = &program.Exercise{ID: "knee-extension-machine", Title: "Seated knee extension", Needs: []unit.DeviceKind{"knee-extension-stack"}}
	p.Sessions = append(p.Sessions, plan.SessionDay{Day: testDay.AddWeeks(1), Week: 2, Session: "a"})
	return p
}

func TestFloor(t *testing.T) {
	w := deskWords(t)
	paused := floorPlan()
	paused.Client.Code, paused.Symptoms.Action, paused.Symptoms.Because = "heron-07", plan.Pause, "effusion 2+"
	paused.Prescriptions = nil
	for i := range paused.Dropped {
		paused.Dropped[i].Paused = true
	}
	for _, row := range []struct {
		on       unit.Day
		says     []string
		silentOn []string
	}{
		{testDay, []string{"tern-04 (week 1), heron-07 (week 1)", "heron-07: effusion 2+", "black press", "PAUSED TODAY", "grey stack", "find the weight, with you"}, []string{"up to"}},
		{testDay.AddWeeks(1), []string{"tern-04 (week 2)", "up to"}, nil},
		{testDay.AddDays(1), []string{"Here today: nobody", "No session today: tern-04, heron-07"}, []string{"black press", "PAUSED TODAY"}},
	} {
		var clients []FloorClient
		for _, p := range []*plan.Plan{floorPlan(), paused} {
			if c, ok := FloorOf(p, row.on, w); ok {
				clients = append(clients, c)
			}
		}
		v := Floor(floorPlan().Clinic, row.on, "", clients, w)
		text := strings.NewReplacer("\n", " ", " | ", " ").Replace(said(v))
		for _, want := range row.says {
			if !strings.Contains(text, want) {
				t.Errorf("%s: %q is not on the sheet:\n%s", row.on, want, text)
			}
		}
		_, stations, _ := strings.Cut(text, "shred it.")
		for _, not := range row.silentOn {
			if strings.Contains(stations, not) {
				t.Errorf("%s: %q is on the sheet", row.on, not)
			}
		}
		lawHolds(t, samplePrinter(t), v)
	}
	if _, ok := FloorOf(floorPlan(), testDay.AddWeeks(4), w); ok {
		t.Error("a block that is over is on no sheet")
	}
	if v := Floor(floorPlan().Clinic, testDay, "elsewhere", nil, w); len(v.Parts) != 1 {
		t.Error("another place has no stations of this one")
	}
}
