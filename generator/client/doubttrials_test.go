package client_test

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// Trials and pairs of legs that are possible but rarely true are asked about, and nothing else is.
func TestTrialsAreAsked(t *testing.T) {
	hop := func(left, right string) string {
		return "[[hop]]\ntest = \"single\"\nleft.distance_cm = [" + left + "]\nright.distance_cm = [" + right + "]\n"
	}
	timed := func(left, right string) string {
		return "[[hop]]\ntest = \"timed-6m\"\nleft.time_s = [" + left + "]\nright.time_s = [" + right + "]\n"
	}
	for _, row := range []struct {
		name       string
		then, now  string
		want, says string
	}{
		{"two trials", "", hop("118, 121", "150, 152"), "", "two are enough"},
		{"one trial", "", hop("118", "150, 152"), "the left leg has one trial only", "the spread cannot be told"},
		{"one trial of each", "", hop("118", "150"), "each leg has one trial only", "asked once a test"},
		{"three alike", "", hop("118, 121", "150, 150, 150"), "the 3 trials of the right leg are alike to the last digit", "typed once and copied"},
		{"two alike", "", hop("118, 118", "150, 152"), "", "a tape in centimetres gives that"},
		{"above 150", "", hop("180, 182", "100, 101"), "the operated leg has 180 % of the other", "unit or side"},
		{"far below is common", "", hop("80, 82", "150, 151"), "", "54 % after an operation is no slip"},
		{"below 10", "", hop("11, 12", "150, 151"), "the operated leg has 7 % of the other", "decimetres"},
		{"quicker is more", "", timed("2.0, 2.1", "3.9, 4.0"), "the operated leg has 195 % of the other", "of a time less is better"},
		{"swapped", hop("100, 102", "150, 151"), hop("149, 150", "103, 104"), "each leg is like the other leg of the test before", "left and right"},
		{"both grown", hop("100, 102", "150, 151"), hop("140, 142", "150, 151"), "", "one leg grew, the other is like itself"},
	} {
		t.Run(row.name, func(t *testing.T) {
			files := map[string]string{"tests/2026-05-04.toml": row.now, "blocks/1.toml": "starts = 2026-05-04\nweeks = 4\nby = \"imbali\"\n"}
			if row.then != "" {
				files["tests/2026-03-02.toml"] = row.then
			}
			c, faults := read(t, operation("2026-01-05", "left", gave), files)
			said := append(faults, c.Suspicious(unit.Left)...).Error()
			if row.want == "" && said != "" || !strings.Contains(said, row.want) {
				t.Errorf("said %q, want %q (%s)", said, row.want, row.says)
			}
		})
	}
}
