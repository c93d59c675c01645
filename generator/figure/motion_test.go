package figure

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

var (
	animation = regexp.MustCompile(`<path class="(f-[a-z]+)" d="([^"]*)"><animate attributeName="d" begin="indefinite" dur="4s" values="([^"]*)"/>`)
	figures   = regexp.MustCompile(`[-0-9. ]+`)
)

// A browser can go from shape to shape only where all have the same commands; and a picture begins as it stands still.
func TestMotionKeepsItsShape(t *testing.T) {
	moving := 0
	for _, e := range exercises(t) {
		svg, err := Draw(e.Figure, Options{ID: "f1", Title: "t", Describe: "d", Side: unit.Left, Range: e.Range, Moves: true})
		if err != nil {
			t.Fatal(err)
		}
		parsed(t, svg)
		found := animation.FindAllStringSubmatch(string(svg), -1)
		if Moves(e.Figure) != (len(found) > 0) {
			t.Errorf("%s: %d parts move, Moves says %v", e.id, len(found), Moves(e.Figure))
		}
		for _, f := range found {
			frames := strings.Split(f[3], ";")
			if frames[0] != f[2] || frames[len(frames)-1] != f[2] || len(frames) != 2*beats+1 {
				t.Errorf("%s, %s: the movement does not begin and end as the picture stands still", e.id, f[1])
			}
			for _, d := range frames {
				if figures.ReplaceAllString(d, " ") != figures.ReplaceAllString(f[2], " ") {
					t.Errorf("%s, %s: other commands in a later frame", e.id, f[1])
					break
				}
			}
		}
		if len(svg) > 96<<10 {
			t.Errorf("%s: %d bytes with its movement", e.id, len(svg))
		}
		moving += len(found)
	}
	t.Logf("%d moving parts", moving)
}

// TestLookMotion writes one page as it is a second after its button was pressed, where LOOK names a folder.
func TestLookMotion(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK names no folder")
	}
	e := byID(t, "squat")
	svg, err := Draw(e.Figure, Options{ID: "f1", Title: "t", Describe: "d", Side: unit.Left, Range: e.Range, Moves: true})
	if err != nil {
		t.Fatal(err)
	}
	page := `<!doctype html><meta charset="utf-8"><style>` + Style() + `svg{max-width:284px}</style>` + string(svg) +
		`<button id="f1-play">Show the movement</button><script>const s=document.getElementById("f1");s.pauseAnimations();s.querySelectorAll("animate").forEach(a=>a.beginElement());s.setCurrentTime(s.getCurrentTime()+1)</script>`
	if err := os.WriteFile(filepath.Join(dir, "motion.html"), []byte(page), 0o644); err != nil {
		t.Fatal(err)
	}
}
