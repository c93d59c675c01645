package figure

import "strings"

// Style is the style sheet of all figures; a page holds it once. It reads no colour of the page but the custom properties
// --fig-NAME, which it does not set: they win over the palettes.
func Style() string { return ownStyle() + chartRules }

// ownStyle is what a picture of a body needs, without the charts.
func ownStyle() string {
	var b strings.Builder
	b.WriteString(".fig{" + properties(Light) + "display:block;width:100%;height:auto;direction:ltr}") // a picture never flips with the text around it
	b.WriteString("@media(prefers-color-scheme:dark){.fig{" + properties(Dark) + "}}")
	b.WriteString("@media print{.fig{" + properties(Print) + "}}")
	b.WriteString("@media(forced-colors:active){.fig{" + forced + "}}")
	b.WriteString(rules)
	return b.String()
}

func properties(p Palette) string {
	var b strings.Builder
	for _, n := range p.named() {
		b.WriteString("--" + n[0] + ":var(--fig-" + n[0] + "," + n[1] + ");")
	}
	return b.String()
}

// forced are the reader's own colours: outlines carry the shapes, and only the working leg is filled.
const forced = "forced-color-adjust:none;--body:Canvas;--far:Canvas;--work:CanvasText;--twin:GrayText;--ghost:Canvas;" +
	"--outline:CanvasText;--kit:CanvasText;--pad:Canvas;--move:LinkText;--text:CanvasText;--elastic:LinkText;" +
	"--range:CanvasText;--veil:.3;--edge:CanvasText;--bg:Canvas;--limb:CanvasText;"

const rules = `
.fig path,.fig circle{stroke-linecap:round;stroke-linejoin:round}
.f-body,.f-work,.f-twin{stroke:var(--limb,var(--bg));stroke-width:1.5;paint-order:stroke}
.f-body{fill:var(--body)}.f-work{fill:var(--work)}.f-twin{fill:var(--twin)}
.f-far,.f-ghost{stroke:var(--outline);stroke-width:1.3;paint-order:stroke}
.f-far{fill:var(--far)}.f-ghost{fill:var(--ghost);stroke-width:1}
.f-joint,.f-beside{fill:var(--bg)}.f-was{fill:var(--outline);r:.6px}
.f-range{fill:var(--range);fill-opacity:var(--veil,1)}.f-edge{fill:none;stroke:var(--edge);stroke-width:1.2}
.f-stop{stroke:var(--text);stroke-width:1.2;fill:none}
.f-out{fill:none;stroke:var(--edge);stroke-width:.9;stroke-dasharray:1.7 2}
.f-deg{fill:var(--text);font:600 7px system-ui,sans-serif;text-anchor:middle;paint-order:stroke;stroke:var(--bg);stroke-width:1.6}
.f-case{fill:none;stroke:var(--bg);stroke-width:3.6}.f-move{fill:none;stroke:var(--move);stroke-width:1.8}
.moving .f-range,.moving .f-edge,.moving .f-stop,.moving .f-out,.moving .f-deg,.moving .f-ghost,.moving .f-was{visibility:hidden}
.f-floor{fill:none;stroke:var(--kit);stroke-width:1.1;stroke-linecap:round}
.f-kit,.f-rod{fill:none;stroke:var(--kit);stroke-width:1.7}.f-thin{fill:none;stroke:var(--kit);stroke-width:.7}
.f-pad,.f-plate{fill:var(--pad);stroke:var(--kit);stroke-width:.9}.f-plate{fill-opacity:.86}
.f-metal{fill:var(--kit)}.f-weight{fill:var(--text);stroke:var(--bg);stroke-width:.8;paint-order:stroke}
.f-band{fill:none;stroke:var(--elastic);stroke-width:1.7}
.f-stripe{fill:var(--move)}.f-lens{fill:var(--bg);stroke:var(--kit);stroke-width:.8}
.f-cap{fill:var(--bg);stroke:var(--text);stroke-width:.8}
`
