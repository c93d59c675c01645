package main

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"
)

// fewestBroken is how many broken folders have their whole message pinned; more is better.
const fewestBroken = 60

// namedBroken are the mistakes that a knee's whole course invites, each with the script that pins it.
var namedBroken = map[string]string{
	"instructions_contradict":     "two instructions without a common range",
	"schedule_gap":                "days of a schedule that no row covers",
	"other_leg_donor_unset":       "the other leg gave the graft and is called sound",
	"stages_before_the_operation": "an operation after its own follow-up",
	"stage_ahead":                 "a stage ahead of what is earned",
	"blocks_overlap":              "two blocks on one day",
	"block_before_event":          "a block before the operation",
	"place_without_device":        "a set-up on a machine that is not there",
	"place_bare":                  "a place without equipment",
}

// TestBrokenFolders: scripts that break a folder and hold the answer word by word are many, and those of the list are among them.
func TestBrokenFolders(t *testing.T) {
	names, _ := filepath.Glob("../../testdata/scripts/*.txtar")
	refused, whole := regexp.MustCompile(`(?m)^(exits 1|! exec) paceleaf`), regexp.MustCompile(`(?m)^cmp (stderr|stdout) `)
	pinned, broken := map[string]bool{}, 0
	for _, name := range names {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		id := filepath.Base(name[:len(name)-len(".txtar")])
		pinned[id] = whole.Match(text)
		if pinned[id] && refused.Match(text) {
			broken++
		}
	}
	t.Logf("%d broken folders with their whole message", broken)
	if broken < fewestBroken {
		t.Errorf("%d broken folders have their whole message pinned; want at least %d", broken, fewestBroken)
	}
	for id, why := range namedBroken {
		if !pinned[id] {
			t.Errorf("no script %s pins the whole message of: %s", id, why)
		}
	}
}
