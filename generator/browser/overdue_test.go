package browser_test

import (
	"strings"
	"testing"
)

// TestOverdue holds that a page says when its days are over, by its own clock, and not before.
func TestOverdue(t *testing.T) {
	for day, says := range map[string]bool{"2026-05-03": false, "2026-05-04": true} {
		p := open(t, handoutOf(t, "tern-04"), look{before: clock(day)})
		if got := eval[bool](p, `!!document.querySelector("main > .overdue")?.textContent.replace(/\s/g, " ").includes("ended on Sun 3 May 2026")`); got != says {
			t.Errorf("%s: the page says that it is over: %v, want %v", day, got, says)
		}
	}
}

// TestWithoutScript holds that a page without script shows all that stands in it: every week, every box, the grid for paper.
func TestWithoutScript(t *testing.T) {
	visit(t, pages(t), look{noScript: true}, func(p tab, f file) {
		p.none("hidden", "without script this cannot be read")
		if n := eval[int](p, `document.querySelectorAll("button, input").length`); n != 0 && !strings.HasPrefix(f.kind, "library") {
			p.Errorf("%d controls do nothing without script", n)
		}
	})
}
