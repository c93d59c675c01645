package program_test

import (
	"fmt"
	"strings"
	"testing"
)

// TestActivitiesAreShared: a file of limits brings activities to every program that names it, after the program's own; one that
// stands in both is told, and so is a file that brings nothing. Each is told at its own file.
func TestActivitiesAreShared(t *testing.T) {
	const running = "[[activity]]\nid = \"running\"\nneeds = [ { earliest_week = 12, standing = \"tool default\" } ]\n"
	program := func(more string) string {
		return "title = \"Own\"\ncounts_from = \"start\"\nphases = [\"one\"]\nlimits = [\"shared\"]\n" + more
	}
	hop := strings.Replace(running, "running", "hopping", 1)
	p, faults := made(t, map[string]string{"own.toml": program(hop), "limits/shared.toml": running})
	if len(faults.Wrong()) > 0 || len(p.Activities) != 2 || p.Activities[0].ID != "hopping" || p.Activities[1].Title != "Running" {
		t.Fatalf("%+v, %v", p.Activities, faults)
	}
	if texts := p.Texts(); len(texts["programs/own.toml"]) != 2 || fmt.Sprint(texts["programs/limits/shared.toml"]) != "[Running]" {
		t.Errorf("the texts of a shared activity stand in the wrong file: %v", texts)
	}
	for _, row := range []struct{ own, shared, want, why string }{
		{running, running, `limits/shared.toml: activity "running" stands twice`, "in the program and in the shared file"},
		{"", "", "limits/shared.toml: the file has no [[limit]] and no [[activity]]", "it brings nothing"},
		{"", strings.Replace(running, "earliest_week = 12", "measure = \"pian\", at_most = 2", 1), `limits/shared.toml: measure "pian" is not known`, "judged where it stands"},
	} {
		_, faults := made(t, map[string]string{"own.toml": program(row.own), "limits/shared.toml": row.shared})
		said := ""
		for _, f := range faults.Wrong() {
			said += strings.TrimPrefix(f.File, "programs/") + ": " + f.What + "\n"
		}
		if !strings.Contains(said, row.want) {
			t.Errorf("%s: %q, want %q", row.why, said, row.want)
		}
	}
}
