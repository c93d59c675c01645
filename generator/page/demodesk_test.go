package page

import (
	"encoding/json"
	"io/fs"
	"os"
	"regexp"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/programs"
)

// demoPlans are the plans of the shipped invented clinic.
func demoPlans(t *testing.T) (plans []*plan.Plan) {
	t.Helper()
	folder := source.Over(os.DirFS("../../templates/demo/saltmarsh"))
	clinic, faults := client.ReadClinic(folder)
	if clinic == nil || len(faults.Wrong()) > 0 {
		t.Fatal("the demo's clinic cannot be read: ", faults)
	}
	sheets, _ := client.ReadSheets(folder)
	codes, _ := client.Codes(folder)
	library := program.Library{Folder: source.Over(fs.FS(programs.FS))}
	for _, code := range codes {
		c, faults := client.Read(folder, code, clinic, sheets)
		if len(faults.Wrong()) > 0 {
			t.Error(faults)
			continue
		}
		pr, faults := library.Program(c.Program)
		if pr == nil || len(faults.Wrong()) > 0 {
			t.Error(faults)
			continue
		}
		if p, mistakes := plan.Compute(clinic, pr, c); p != nil {
			plans = append(plans, p)
		} else {
			t.Error(mistakes)
		}
	}
	return plans
}

// TestDeskPagesOfTheDemo holds the desk's laws over real plans: no id means two numbers, every sum gives its result,
// every step stands on the page, every reference resolves, and HTML says what Markdown says.
func TestDeskPagesOfTheDemo(t *testing.T) {
	w, printer := deskWords(t), samplePrinter(t)
	var rows []OverviewRow
	plans := demoPlans(t)
	for _, p := range append(plans, deskPlan()) {
		t.Run(p.Client.Code, func(t *testing.T) {
			if shared := SharedIDs(p); len(shared) > 0 {
				t.Errorf("ids that mean several numbers: %v", shared)
			}
			v := Worksheet(p, w)
			text := said(v)
			for _, line := range strings.Split(text, "\n") {
				if strings.Contains(line, " = ") {
					if err := redo(line); err != nil {
						t.Error(err)
					}
				}
			}
			for _, root := range rootsOf(p) {
				basis.Walk(root, func(s *basis.Step) {
					if line := Sum(s); !strings.Contains(text, strings.ReplaceAll(line, "\u00a0", " ")) {
						t.Errorf("not on the page: %s", line)
					}
				})
			}
			if unknown := regexp.MustCompile(`‹[^›]*›`).FindAllString(text, -1); len(unknown) > 0 {
				t.Errorf("words that are not there: %v", unknown)
			}
			lawHolds(t, printer, v)
			resolves(t, PlanJSON(p))
			if dir := os.Getenv("PACELEAF_SHOW"); dir != "" {
				os.WriteFile(dir+"/"+strings.ReplaceAll(t.Name(), "/", "-")+".txt", []byte(text), 0o644)
				os.WriteFile(dir+"/"+strings.ReplaceAll(t.Name(), "/", "-")+".json", PlanJSON(p), 0o644)
				html, _ := printer.HTML(v)
				os.WriteFile(dir+"/"+strings.ReplaceAll(t.Name(), "/", "-")+".html", html, 0o644)
			}
		})
		rows = append(rows, OverviewOf(p))
	}
	lawHolds(t, printer, Overview(Roster{Clinic: deskPlan().Clinic, Today: civil("2026-05-10"), Rows: rows, Failed: []Failed{{Code: "gull-03", Mistakes: 1, First: "a.toml:1: |*x*"}}, Waiting: []string{"auk-01"}}, w))
}

func resolves(t *testing.T, data []byte) {
	t.Helper()
	var out struct {
		Findings []struct{ Basis string }
		Criteria []struct{ Basis string }
		Basis    map[string]struct{ From []string }
	}
	if err := json.Unmarshal(data, &out); err != nil {
		t.Fatal(err)
	}
	var wanted []string
	for _, f := range out.Findings {
		wanted = append(wanted, f.Basis)
	}
	for _, c := range out.Criteria {
		wanted = append(wanted, c.Basis)
	}
	for _, s := range out.Basis {
		wanted = append(wanted, s.From...)
	}
	for _, id := range wanted {
		if _, known := out.Basis[id]; id != "" && !known {
			t.Errorf("%q is named and not there", id)
		}
	}
}
