package figure

import (
	"strings"
	"testing"

	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Every pose of the library is one that a body can take.
func TestLibraryPosesAreSound(t *testing.T) {
	for _, e := range exercises(t) {
		for _, f := range Judge(e.Figure, e.Range) {
			t.Errorf("%s: figure.%s: %s; %s", e.id, f.Key, f.What, f.Instead)
		}
	}
}

const sound = `[figure]
range_frame = "shank"
[figure.start]
trunk = 2
anchor = { point = "foot", at = [0, 0] }
near = { knee = 0, ankle = 0, flat = true }
far = { hip = 115, knee = 60, ankle = 0 }
arm = { shoulder = 10, elbow = 10 }
[figure.end]
trunk = 34
near = { knee = 90, ankle = 25, flat = true }
`

// Each kind of mistake is found, and only that one.
func TestJudgeFinds(t *testing.T) {
	for _, c := range []struct{ name, old, new, key, says string }{
		{"nothing", "", "", "", ""},
		{"a knee that no one has", "hip = 115, knee = 60", "hip = 115, knee = 150", "start.far", "knee at 150°"},
		{"a hip that no one has", "hip = 115", "hip = -40", "start.far", "hip at -40°"},
		{"an ankle under load that no one has", "ankle = 25", "ankle = 44", "end.near", "ankle at 44°"},
		{"a foot out of reach", "far = { hip = 115, knee = 60, ankle = 0 }", "far = { ball_at = [80, 0] }", "start.far", "out of reach"},
		{"a hand out of reach", "arm = { shoulder = 10, elbow = 10 }", "arm = { hand_at = [90, 40] }", "start.arm", "out of reach"},
		{"a body in the floor", "at = [0, 0]", "at = [0, -6]", "start", "below the floor"},
		{"a foot in a box", `range_frame = "shank"`, "range_frame = \"shank\"\nkit = [{ kind = \"box\", at = [-10, 6], width = 30 }]", "start", "in the box"},
		{"a push that nothing takes", `range_frame = "shank"`, "range_frame = \"shank\"\npush = [0, 12]", "push", "nothing is pushed"},
		{"a side view from above", `range_frame = "shank"`, "range_frame = \"shank\"\nfrom_above = 0.5", "from_above", "from the side"},
		{"a toe of the other leg in the floor", "far = { hip = 115, knee = 60, ankle = 0 }", "far = { hip = 0, knee = 24, ankle = -20 }", "start", "the far toe is"},
		{"an empty plan", `[figure.start]`, "[figure.floor_plan]\n[figure.start]", "floor_plan", "is empty"},
		{"no anchor", `anchor = { point = "foot", at = [0, 0] }`, "", "start.anchor", "rests on nothing"},
		{"no other leg", "far = { hip = 115, knee = 60, ankle = 0 }", "", "start.far", "missing"},
		{"two ways at once", "ankle = 0, flat = true", "ankle = 0, flat = true, ball_on = 0", "start.near", "two ways"},
		{"a knee that would be found", "far = { hip = 115, knee = 60, ankle = 0 }", "far = { ball_at = [10, 0], knee = 4 }", "start.far", "would be found"},
		{"two ways to be", "knee = 90, ankle = 25, flat = true", "hip = 90, knee = 90, ankle = 25", "end.near", "in the start by flat"},
		{"a place of one number", "at = [0, 0]", "at = [0]", "start.anchor.at", "two numbers"},
		{"a movement without an end", sound[strings.Index(sound, "[figure.end]"):], "", "end", "has no end"},
		{"a range that is not reached", "knee = 90", "knee = 80", "end", "range_deg from 0 to 90"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var file struct {
				Figure Pose `key:"figure"`
			}
			text := strings.Replace(sound, c.old, c.new, 1)
			if f := source.TOML("pose.toml", []byte(text), &file); len(f) > 0 {
				t.Fatal(f)
			}
			faults := Judge(file.Figure, &unit.Reach{Straightest: 0, MostBent: 90})
			if c.says == "" {
				if len(faults) > 0 {
					t.Errorf("a sound pose has faults: %v", faults)
				}
				return
			}
			for _, f := range faults {
				if f.Key == c.key && strings.Contains(f.What, c.says) && f.Instead != "" {
					return
				}
			}
			t.Errorf("found %v, want a fault of %s that says %q", faults, c.key, c.says)
		})
	}
}
