package generator_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/page"
	"paceleaf/programs"
	"paceleaf/templates"
)

// workedClinic is the worked case of two legs on one press: 60 kg × 8 and 90 kg × 8 to failure, then 3 × 10 with 2 in
// reserve, 2.5 percent a week for six weeks. Worked by hand from Epley's formula (second-hand in reprints); the moved load
// grows, so a carriage of 45 kg changes what is put on.
func workedClinic(carriage string) fstest.MapFS {
	return fstest.MapFS{
		"clinic.toml": {Data: []byte(`paceleaf = 1
name = "Worked case"
emergency = "999"
[[phone]]
who = "clinic"
number = "020 7946 0000"
hours = "always"
[[phone]]
who = "surgeon's ward"
number = "020 7946 0263"
hours = "day and night"
[[therapist]]
id = "imbali"
name = "Imbali R."
role = "physiotherapist"
[[place]]
id = "gym"
[[place.device]]
id = "press"
kind = "angled-leg-press"
plates_kg = [20, 10, 5, 2.5, 1.25]
` + carriage)},
		"clients/worked-1/client.toml": {Data: []byte(`program = "acl-reconstruction"
place = "gym"
training_days = ["mon", "thu"]
other_leg = "sound"
[[event]]
kind = "operation"
procedure = "acl-reconstruction"
date = 2026-01-05
side = "left"
graft = "patellar-tendon"
graft_from = "left"
[[stage]]
id = "rebuild"
from = 2026-03-02
by = "imbali"
[setup.leg-press-single]
device = "press"
`)},
		"clients/worked-1/tests/2026-04-06.toml": {Data: []byte(`pain_worst = 1
pain_next_morning = 0
effusion = "zero"
[[lift]]
exercise = "leg-press-single"
left = "60 kg x 8+0"
right = "90 kg x 8+0"
`)},
		"clients/worked-1/blocks/1.toml": {Data: []byte("starts = 2026-04-06\nweeks = 6\nby = \"imbali\"\n")},
	}
}

func TestWorkedCaseFromFilesToTheHandoutsWords(t *testing.T) {
	for _, row := range []struct {
		name, carriage string
		left, right    [6]string // what lies on each side, week by week
		leftPlates     string
		ratio          float64
	}{
		{"no carriage", "", [6]string{"26.25", "27.5", "27.5", "28.75", "28.75", "30"}, [6]string{"40", "41.25", "42.5", "43.75", "43.75", "45"},
			"Plates on each side: 20 kg + 5 kg + 1.25 kg (52.5 kg in all)", 66.6},
		{"a carriage of 45 kg", "carriage_kg = 45\n", [6]string{"25", "25", "26.25", "27.5", "28.75", "30"}, [6]string{"37.5", "40", "41.25", "42.5", "43.75", "46.25"},
			"Plates on each side: 20 kg + 5 kg (50 kg in all)", 77.7},
	} {
		t.Run(row.name, func(t *testing.T) {
			house, faults := generator.Open(generator.Files{Clinic: workedClinic(row.carriage), Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
			if house == nil {
				t.Fatal(faults)
			}
			done := house.Plan("worked-1")
			if done.Plan == nil {
				t.Fatal(done.Faults)
			}
			if got := done.Plan.Found.Measure("leg-press-single.lsi").Number; got != row.ratio {
				t.Errorf("ratio %g, want %g", got, row.ratio)
			}
			printer, err := page.NewPrinter(templates.FS)
			if err != nil {
				t.Fatal(err)
			}
			md, err := printer.Markdown(page.Handout(done.Plan, house.Words()))
			if err != nil {
				t.Fatal(err)
			}
			text := string(md)
			left, right := between(text, "#### LEFT leg (operated)", "#### RIGHT leg"), between(text, "#### RIGHT leg (other)", "#####")
			says(t, left, row.left)
			says(t, right, row.right)
			if !strings.Contains(left, row.leftPlates) {
				t.Errorf("the left box does not say %q:\n%s", row.leftPlates, left)
			}
		})
	}
}

// says asks for the dose of week 1 and the ceilings of the five weeks after it, alone or as a run of weeks.
func says(t *testing.T, box string, kg [6]string) {
	t.Helper()
	if want := fmt.Sprintf("3 × 10 · %s kg on each side", kg[0]); !strings.Contains(box, want) {
		t.Errorf("week 1 does not say %q in:\n%s", want, box)
	}
	for week := 2; week <= 6; week++ {
		found := false
		for _, line := range strings.Split(box, "\n") {
			var from, to int
			switch {
			case strings.Contains(line, fmt.Sprintf("**Week %d:**", week)):
				from, to = week, week
			default:
				if _, err := fmt.Sscanf(line[max(0, strings.Index(line, "**Weeks")):], "**Weeks %d to %d:**", &from, &to); err != nil {
					if _, err := fmt.Sscanf(line[max(0, strings.Index(line, "**Weeks")):], "**Weeks %d and %d:**", &from, &to); err != nil {
						continue
					}
				}
			}
			found = found || from <= week && week <= to && strings.Contains(line, fmt.Sprintf("up to 3 × 10 · %s kg on each side", kg[week-1]))
		}
		if !found {
			t.Errorf("week %d does not say up to %s kg on each side in:\n%s", week, kg[week-1], box)
		}
	}
}

func between(text, from, to string) string {
	i := strings.Index(text, from)
	if i < 0 {
		return ""
	}
	text = text[i+len(from):]
	if j := strings.Index(text, to); j >= 0 {
		text = text[:j]
	}
	return text
}
