package browser_test

import (
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// A person's finger on the pictures: press presses every button of a moving picture; bends measures the knee of each picture by
// the dots that are drawn, and gives what it says and shows.
const pictures = `
const press = () => document.querySelectorAll("button.play").forEach(b => b.click())
const still = () => [...document.querySelectorAll("[data-by]")].map(e => (e.getAttribute("d") ?? e.getAttribute("cx") + " " + e.getAttribute("cy")).match(/-?[\d.]+/g).map(n => (+n).toFixed(1)).join(" ")).join("|")
const bends = () => [...document.querySelectorAll("svg[data-moves]")].map(s => {
	const [h, k, a] = [...s.querySelectorAll(".f-joint")].map(c => [c.cx.baseVal.value, c.cy.baseVal.value])
	if (!a) return null
	const u = [h[0] - k[0], h[1] - k[1]], v = [a[0] - k[0], a[1] - k[1]]
	const bend = 180 - Math.acos((u[0] * v[0] + u[1] * v[1]) / Math.hypot(...u) / Math.hypot(...v)) * 180 / Math.PI
	return { id: s.id, bend, range: [...s.querySelectorAll(".f-deg")].map(t => parseFloat(t.textContent.replace("−", "-"))) }
}).filter(Boolean)
// lengths are those of the outlines as the browser draws them: what it cannot read it draws short.
const lengths = () => [...document.querySelectorAll("path[data-by]")].map(e => e.getTotalLength())
const wait = ms => new Promise(done => setTimeout(done, ms))
`

// On the press of a button a picture moves with all its outlines whole, shows no bend beyond its own digits on the way, and stands still again as it did.
func TestPicturesMove(t *testing.T) {
	p := open(t, handoutOf(t, "tern-04"), look{})
	type answer struct {
		Pictures, Buttons, Measured, Looks int
		Moved, Same                        bool
		Beyond                             []string
		Broken                             []float64
	}
	got := eval[answer](p, `(async () => {`+pictures+`
		const before = still(), first = JSON.stringify(bends()), whole = lengths(), broken = []
		press()
		let moved = false, looks = 0
		const beyond = []
		for (let i = 0; i < 12; i++) {
			await wait(120)
			looks++
			moved ||= JSON.stringify(bends()) != first
			lengths().forEach((l, i) => { if (Math.abs(l / whole[i] - 1) > 0.3) broken.push(l / whole[i]) })
			for (const b of bends()) if (b.range.length == 2 && (b.bend < Math.min(...b.range) - 1.5 || b.bend > Math.max(...b.range) + 1.5)) beyond.push(b.id + " " + b.bend)
		}
		press()
		await wait(100)
		return { Pictures: document.querySelectorAll("svg[data-moves]").length, Buttons: document.querySelectorAll("button.play").length,
			Measured: bends().filter(b => b.range.length == 2).length, Looks: looks, Moved: moved, Same: still() == before, Beyond: beyond, Broken: broken }
	})()`)
	if got.Pictures == 0 || got.Buttons != got.Pictures || got.Measured == 0 || !got.Moved || !got.Same || len(got.Beyond)+len(got.Broken) > 0 {
		t.Errorf("%+v", got)
	}
}

// Who asked for less motion gets no button, and nothing moves.
func TestLessMotion(t *testing.T) {
	p := open(t, "about:blank", look{})
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: "reduce"}}})
	p.do(chromedp.Navigate(handoutOf(t, "tern-04")))
	if n := eval[int](p, `document.querySelectorAll("svg[data-moves]").length`); n == 0 {
		t.Fatal("the page has no picture that could move")
	}
	if n := eval[int](p, `document.querySelectorAll("button.play").length`); n > 0 {
		t.Errorf("%d buttons for a reader who asked for less motion", n)
	}
}
