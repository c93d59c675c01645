package page

import (
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
)

func TestOverviewOf(t *testing.T) {
	row := OverviewOf(deskPlan())
	if row.Code != "tern-04" || row.Ends != civil("2026-05-03") || row.Action != plan.Stay || strings.Join(row.Missing, " ") != "run.flexion.percent-of-other" ||
		strings.Join(row.Stale, " ") != "flexion.percent-of-other" || row.Flags != 1 {
		t.Errorf("the row of the sample is %+v", row)
	}
}

func TestOverview(t *testing.T) {
	stay := OverviewOf(deskPlan())
	rows := []OverviewRow{stay, {Code: "auk-01"}, {Code: "wren-02", Action: plan.Contact, Because: "2+ at the session after"}, {Code: "knot-09", Action: plan.Pause}}
	failed := []Failed{{Code: "gull-03", Mistakes: 2, First: "clients/gull-03/client.toml:4: no side", Kept: true}, {Code: "eider-11", Mistakes: 1}}
	v := Overview(&client.Clinic{Name: "Saltmarsh Knee Clinic"}, rows, failed, deskWords(t))
	text := said(v)
	last := -1
	for _, row := range []struct{ want, why string }{
		{"eider-11 | 1 | – | there are none", "mistakes first, by code"},
		{"gull-03 | 2 | clients/gull-03/client.toml:4: no side | left as they were", "the earlier page is kept"},
		{"wren-02 | CONTACT", "contact first, in words"},
		{"knot-09 | PAUSE", "then pause"},
		{"auk-01 | no change", "then by code"},
		{"tern-04 | stay", "staying is no alarm"},
		{"Sun 3 May 2026 | run.flexion.percent-of-other | flexion.percent-of-other | 1 flag", "block's end, missing, stale, flags"},
	} {
		at := strings.Index(text, row.want)
		if at < last || at < 0 {
			t.Errorf("%q stands at %d after %d: %s", row.want, at, last, row.why)
		}
		last = at
	}
	if strings.Contains(text, "‹") {
		t.Error("words that are not there")
	}
	if t.Failed() {
		t.Log(text)
	}
}
