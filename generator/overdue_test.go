package generator_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// TestOverdueIsAskedWhileTheBlockRuns: a measurement that the stage wanted by now is asked about, but not before its day, and not for
// ever after a block that nobody went on from. heron-07 was last measured on 16 March, and the block runs to 3 May.
func TestOverdueIsAskedWhileTheBlockRuns(t *testing.T) {
	house, faults := generator.Open(generator.Files{Clinic: demoClinic(t, nil), Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	if house == nil {
		t.Fatal(faults)
	}
	for _, row := range []struct {
		today unit.Day
		asked bool
		why   string
	}{
		{unit.Day{Year: 2026, Month: 4, Date: 27}, false, "the day itself is not over"},
		{unit.Day{Year: 2026, Month: 4, Date: 28}, true, "a day late"},
		{unit.Day{Year: 2026, Month: 11, Date: 28}, false, "the block is long over"},
	} {
		said := fmt.Sprint(house.Check(row.today))
		if asked := strings.Contains(said, "clients/heron-07/client.toml") && strings.Contains(said, "a measurement was due on 2026-04-27"); asked != row.asked {
			t.Errorf("%s: asked %v, want %v (%s): %s", row.today, asked, row.asked, row.why, said)
		}
	}
}
