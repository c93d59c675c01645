package page

import (
	"bytes"
	"encoding/json"
	"math"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

func TestPlanJSON(t *testing.T) {
	p := deskPlan()
	data := PlanJSON(p)
	if !bytes.Equal(data, PlanJSON(deskPlan())) {
		t.Error("the same plan gives other bytes")
	}
	var out map[string]any
	if err := json.Unmarshal(data, &out); err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct{ path, want, why string }{
		{"format", "1", "the number of the format"},
		{"client", `"tern-04"`, ""},
		{"as_of", `"2026-04-06"`, "a day is ISO"},
		{"block", `{"number":3,"starts":"2026-04-06","weeks":4}`, ""},
		{"stage.next", `{"id":"run","missing":["run.flexion.percent-of-other"]}`, "what the next stage still asks"},
		{"findings.0.value", "80.7", "cut to a tenth, no float dust"},
		{"findings.0.on", `"2026-04-06"`, ""},
		{"findings.1.value", "absent", "not tested is not 0"},
		{"findings.1.reason", `"not tested before the operation"`, ""},
		{"findings.2.text", `"trace"`, "a grade is a word"},
		{"criteria.1.found", "absent", "missing is absent"},
		{"criteria.1.near", "null", "an error that is not known"},
		{"criteria.1.state", `"out of date"`, ""},
		{"criteria.2.wanted", `"trace"`, ""},
		{"criteria.3.near", "true", ""},
		{"criteria.4.any.0.id", `"running.hop-single.lsi"`, "the choices stay inside"},
		{"criteria.4.wanted", "absent", ""},
		{"criteria.5.wanted", "0", "a mark of 0 is a mark"},
		{"prescriptions.0.weeks.0.plates_kg", "50", ""},
		{"prescriptions.0.weeks.0.moved_kg", "95", ""},
		{"prescriptions.0.weeks.0.per_side_kg", "[20,2.5]", ""},
		{"prescriptions.0.weeks.0.range_deg", "[0,70]", "0 is straight, and stays"},
		{"prescriptions.0.weeks.0.share_percent", "71.428571", "six decimals"},
		{"prescriptions.0.weeks.0.basis", `"leg-press-single.left.w1.load"`, ""},
		{"prescriptions.0.weeks.1.due", "false", "a ceiling"},
		{"prescriptions.1.weeks.0.find_your_weight", "true", ""},
		{"prescriptions.1.weeks.0.plates_kg", "absent", "no load is not 0"},
		{"prescriptions.1.weeks.0.hold_s", "5", ""},
		{"limits.0.lifts", `"2026-04-20"`, ""},
		{"limits.1.lifts", "absent", "until further notice"},
		{"limits.2.allowed", "false", ""},
		{"activities.0.missing", `["running.any-4"]`, ""},
		{"symptoms.action", `"stay"`, ""},
		{"basis.leg-press-single~left~w1~load.before", "50", "of a cut"},
		{"basis.knee-extension~lsi.from", `["knee-extension.symmetry","knee-extension.lsi/2"]`, "inputs by id"},
		{"basis.knee-extension~preop-ratio.refused", "true", ""},
		{"basis.knee-extension~preop-ratio.value", "absent", ""},
		{"basis." + strings.ReplaceAll(testFile, ".", "~") + "#strength[0]~left~peak_n[1].typed", `"331 N"`, "a typed value is named by its place"},
		{"signed", "null", ""},
	} {
		if got := dig(out, row.path); got != row.want {
			t.Errorf("%s is %s, not %s; %s", row.path, got, row.want, row.why)
		}
	}
}

// dig follows a path through JSON; ~ stands for a dot in a key.
func dig(v any, path string) string {
	for _, key := range strings.Split(path, ".") {
		switch at := v.(type) {
		case map[string]any:
			next, ok := at[strings.ReplaceAll(key, "~", ".")]
			if !ok {
				return "absent"
			}
			v = next
		case []any:
			v = at[int(key[0]-'0')]
		}
	}
	text, _ := json.Marshal(v)
	return string(text)
}

func TestEveryReferenceOfTheJSONResolves(t *testing.T) {
	var out planJSON
	data := PlanJSON(deskPlan())
	if err := json.Unmarshal(data, &out); err != nil {
		t.Fatal(err)
	}
	wanted := []string{}
	for _, f := range out.Findings {
		wanted = append(wanted, f.Basis)
	}
	for _, pr := range out.Prescriptions {
		for _, w := range pr.Weeks {
			wanted = append(wanted, w.Basis)
		}
	}
	for _, s := range out.Basis {
		wanted = append(wanted, s.From...)
	}
	for _, id := range wanted {
		if _, known := out.Basis[id]; id != "" && !known {
			t.Errorf("%q is named and not there", id)
		}
	}
	if strings.Contains(string(data), `\u003`) {
		t.Error("< or > is written as an escape")
	}
}

func TestSharedIDs(t *testing.T) {
	p := deskPlan()
	if shared := SharedIDs(p); len(shared) > 0 {
		t.Errorf("the sample shares %v", shared)
	}
	p.Prescriptions[0].Weeks[1].Plates = basis.Given(p.Prescriptions[0].Weeks[0].Plates.ID(), basis.Rule{Name: "another"}, unit.Kilograms(1), "")
	if shared := SharedIDs(p); !slices.Equal(shared, []string{"leg-press-single.left.w1.load"}) {
		t.Errorf("two loads of one id are reported as %v", shared)
	}
	if text := string(PlanJSON(p)); !strings.Contains(text, `"leg-press-single.left.w1.load/2"`) {
		t.Error("the second of them is lost")
	}
}

func TestJSONNumber(t *testing.T) {
	for v, want := range map[float64]string{50: "50", 2.5: "2.5", 1.0 / 3: "0.333333", -1e-9: "0", 80.7: "80.7", math.Inf(1): "null", 1e7: "10000000"} {
		if got, _ := jsonNumber(v).MarshalJSON(); string(got) != want {
			t.Errorf("%v is written %s, not %s", v, got, want)
		}
	}
}

func TestWhy(t *testing.T) {
	p := deskPlan()
	lines := func(basis.Origin) int { return 7 }
	all, ok := WhyText(p, "", lines)
	if !ok || !strings.Contains(all, "\nknee-extension.lsi ") || !strings.Contains(all, "  80.7 %\n") || !strings.Contains(all, "— not tested before the operation\n") {
		t.Errorf("the list of ids:\n%s", all)
	}
	chain, ok := WhyText(p, "leg-press-single.left.w1.load", lines)
	if !ok || !strings.HasPrefix(chain, "leg-press-single.left.w1.load = down(") || !strings.Contains(chain, "60 kg — clients/tern-04/tests/2026-04-06.toml:7, lift[0].left\n") {
		t.Errorf("the chain of a load:\n%s", chain)
	}
	near, ok := WhyText(p, "leg-press-single.left.w1.laod", lines)
	if ok || !strings.HasPrefix(near, "leg-press-single.left.w1.load\n") {
		t.Errorf("a slip of the hand finds\n%s", near)
	}
	part, ok := WhyText(p, "lsi", lines)
	if ok || !strings.HasPrefix(part, "knee-extension.lsi\n") {
		t.Errorf("a part of an id finds\n%s", part)
	}
	data, ok := WhyJSON(p, "knee-extension.left.torque", lines)
	var one struct{ Basis map[string]stepJSON }
	if err := json.Unmarshal(data, &one); err != nil || !ok || len(one.Basis) != 5 {
		t.Errorf("torque has %d steps: itself, force, two trials, arm (%v)\n%s", len(one.Basis), err, data)
	}
	if data, ok := WhyJSON(p, "nothing", lines); ok || !strings.Contains(string(data), `"nearest": [`) {
		t.Errorf("an id that is not there: %s", data)
	}
	if data, ok := WhyJSON(p, "", lines); !ok || !bytes.Equal(data, PlanJSON(p)) {
		t.Error("why without an id is the plan")
	}
}

func TestEmptyPlanHasNoNumbers(t *testing.T) {
	p := deskPlan()
	empty := &plan.Plan{Clinic: p.Clinic, Program: p.Program, Client: p.Client, Block: p.Block, AsOf: p.AsOf}
	data := string(PlanJSON(empty))
	for _, want := range []string{`"findings": []`, `"prescriptions": []`, `"next": null`, `"action": "none"`, `"basis": {}`} {
		if !strings.Contains(data, want) {
			t.Errorf("a plan of nothing lacks %s:\n%s", want, data)
		}
	}
}
