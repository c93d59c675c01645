package page

import (
	"strings"
	"testing"
)

// TestIsolated: on a page from right to left what must keep its own order stands in an isolate, and nothing else does.
func TestIsolated(t *testing.T) {
	for _, row := range []struct{ text, want, why string }{
		{"שלום 3 × 10 שלום", "שלום <3 × 10> שלום", "it would read 10 × 3"},
		{"−5°", "<−5°>", "the sign would stand behind"},
		{"0–70°", "<0–70°>", "a range would read from its end"},
		{"+44 1632 960 101", "<+44 1632 960 101>", "groups of a number would change places"},
		{"3\u00a0×\u00a010 · 20\u00a0kg", "<3\u00a0×\u00a010> · <20\u00a0kg>", "parts of a line keep the order of the page"},
		{"tern-04", "<tern-04>", "an id with digits"},
		{"שלום, Saltmarsh", "שלום, Saltmarsh", "Latin letters keep their order by themselves"},
		{"331 N × 0.31 m = 102.61 N·m", "<331 N × 0.31 m = 102.61 N·m>", "a sum"},
		{"שלום", "שלום", "nothing to keep"},
	} {
		if got := strings.NewReplacer(isolate, "<", endIsolate, ">").Replace(isolated(row.text)); got != row.want {
			t.Errorf("%q: %q, want %q (%s)", row.text, got, row.want, row.why)
		}
	}
}

// TestOnlyPagesFromTheRightAreIsolated: any other page has no letter more than before.
func TestOnlyPagesFromTheRightAreIsolated(t *testing.T) {
	view := func(dir string) View {
		return View{Dir: dir, Title: "3 × 10", Parts: []Part{{Title: "−5°", Nodes: []Node{paragraph("", "0–70°"), bullets("", "3 × 10"), factual("", fact("1", "2"))}}}}
	}
	for dir, want := range map[string]bool{"ltr": false, "rtl": true, "": false} {
		if got := strings.Contains(string(tidy(view(dir)).JSON()), isolate); got != want {
			t.Errorf("%q: isolates %v, want %v", dir, got, want)
		}
	}
}
