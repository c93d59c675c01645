package figure

import "strings"

// Moving pictures are the same frames, one after the other: every part of the body that changes carries its later shapes,
// and a browser goes through them once a script of the page, on the press of a button, calls beginElement on each animate
// element of the picture (a button of the page cannot start them without one: tried in Chromium). The page shows no such
// button where there is no script or where its reader asked for less motion. Nothing moves by itself.

// Moves reports whether there are frames between the first and the last: a hold has none, and a flight's are not drawn.
func Moves(p Pose) bool { return p.Drawn() && p.Motion != Hold && p.Motion != Flight }

// later are the same shapes at the moments of the movement: back to its start, and there again.
func (m movement) later(first, last frame, o Options) (all [][]shape) {
	for i := range 2 * beats {
		t := 1 - float64(i+1)/beats
		if t < 0 {
			t = -t
		}
		all = append(all, m.draw(first, last, mixed(first, last, t, m.axle), o).shapes)
	}
	return all
}

// beats is how many frames a movement is cut into, for its way there; the way back shows the same ones.
const beats = 8

// seconds that one way there and back takes; chosen, slow enough to follow.
const seconds = "4s"

// turns is what is written inside an element that moves.
func (s shape) turns(later []shape) string {
	if len(later) == 0 || s.class == "f-move" || s.class == "f-case" {
		return ""
	}
	all := append([]shape{s}, later...)
	if s.r > 0 {
		return animated(all, "cx", func(s shape) string { return hundredth(s.at.X) }) +
			animated(all, "cy", func(s shape) string { return hundredth(s.at.Y) })
	}
	return animated(all, "d", func(s shape) string { return string(s.path) })
}

func animated(all []shape, attribute string, of func(shape) string) string {
	values := make([]string, len(all))
	still := true
	for i, s := range all {
		values[i] = of(s)
		still = still && values[i] == values[0]
	}
	if still {
		return ""
	}
	return `<animate attributeName="` + attribute + `" begin="indefinite" dur="` + seconds + `" values="` + strings.Join(values, ";") + `"/>`
}
