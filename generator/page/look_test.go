package page

import (
	"os"
	"path/filepath"
	"testing"
)

// TestLook writes the sample pages into the folder LOOK, to be looked at. It does nothing without it.
func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK=folder writes the samples")
	}
	p, w := samplePrinter(t), sampleWords(t)
	for name, plan := range samples() {
		v := Handout(plan, w)
		html, err := p.HTML(v)
		if err != nil {
			t.Fatal(err)
		}
		md, err := p.Markdown(v)
		if err != nil {
			t.Fatal(err)
		}
		for ending, body := range map[string][]byte{".html": html, ".md": md, ".json": v.JSON()} {
			if err := os.WriteFile(filepath.Join(dir, name+ending), body, 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
}
