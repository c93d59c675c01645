package figure

import (
	"fmt"
	"html"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// TestLook writes contact sheets for a person to look at, where LOOK names a folder; of some exercises alone, where ONLY
// names them.
func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK names no folder")
	}
	all := exercises(t)
	if only := strings.Fields(os.Getenv("ONLY")); len(only) > 0 {
		all = slices.DeleteFunc(all, func(e exercise) bool { return !slices.Contains(only, e.id) })
	}
	for _, side := range []unit.Side{unit.Right, unit.Left} {
		cards := strings.Builder{}
		for _, e := range all {
			card(t, &cards, e, side, e.Range)
		}
		sheet(t, dir, string(side), cards.String())
	}
	narrow := strings.Builder{}
	for _, e := range all {
		for i, r := range limits(e.Range) {
			if i > 0 && !e.Figure.Hidden {
				card(t, &narrow, e, unit.Left, &r)
			}
		}
	}
	sheet(t, dir, "limits", narrow.String())
}

func card(t *testing.T, b *strings.Builder, e exercise, side unit.Side, r *unit.Reach) {
	t.Helper()
	id := fmt.Sprintf("f-%s-%s", e.id, side)
	if r != nil {
		id += fmt.Sprintf("-%g-%g", r.Straightest, r.MostBent)
	}
	svg, err := Draw(e.Figure, Options{ID: id, Title: e.Title, Describe: e.Describe, Side: side, Range: r})
	if err != nil {
		t.Errorf("%s: %v", e.id, err)
		return
	}
	fmt.Fprintf(b, "<figure>%s<figcaption>%s</figcaption></figure>", svg, html.EscapeString(e.id))
}

func sheet(t *testing.T, dir, name, cards string) {
	page := `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Figures</title><style>` +
		`:root{color-scheme:light dark}body{margin:0;padding:6px;font:13px system-ui;background:#f7f4ec;color:#1c2624}` +
		`main{display:grid;grid-template-columns:repeat(auto-fill,284px);gap:6px;justify-content:center}` +
		`figure{margin:0;background:#fffdf8;display:flex;flex-direction:column;justify-content:flex-end}figcaption{padding:2px 6px}` +
		`@media(prefers-color-scheme:dark){body{background:#141917;color:#eceae2}figure{background:#1b211f}}` + Style() + `</style><main>` + cards + `</main></html>`
	if err := os.WriteFile(filepath.Join(dir, name+".html"), []byte(page), 0o644); err != nil {
		t.Fatal(err)
	}
}

// TestLookMotion writes a page of all pictures that move, with the script that moves them, where LOOK names a folder.
func TestLookMotion(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK names no folder")
	}
	script, err := os.ReadFile("../../templates/script/motion.js")
	if err != nil {
		t.Fatal(err)
	}
	cards := strings.Builder{}
	for _, e := range exercises(t) {
		if !Moves(e.Figure) {
			continue
		}
		svg, err := Draw(e.Figure, Options{ID: "f-" + e.id, Title: e.Title, Describe: e.Describe, Side: unit.Left, Range: e.Range, Moves: true})
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&cards, `<figure data-play="Show the movement" data-stop="Stop">%s<figcaption>%s</figcaption></figure>`, svg, html.EscapeString(e.id))
	}
	sheet(t, dir, "motion", cards.String()+"</main><script>"+string(script)+"</script><main>")
}
