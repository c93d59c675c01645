// A picture moves once its reader presses a button, through the moments that it holds (data-moves, data-by), and stands still
// when the button is pressed again or after five rounds. Who asked for less motion gets no button.
{
const calm = matchMedia("(prefers-reduced-motion: reduce)")

// placed writes an outline anew, each piece where its move takes it. Of an arc the first five numbers are no place.
const placed = (d, by, moves) => {
  let piece = 0, m
  return d.replace(/([A-Z])([^A-Z]*)/g, (same, command, rest) => {
    if (command == "M") m = moves[parseInt(by[piece++], 36) - 10]
    if (!m) return same
    const [x, y, turn, size, cx, cy] = m, r = turn * Math.PI / 180, sin = size * Math.sin(r), cos = size * Math.cos(r)
    const n = (rest.match(/-?[\d.]+/g) || []).map(Number)
    let i = 0
    if (command == "A") n[2] += turn, i = 5
    for (; i < n.length; i += 2) {
      const a = n[i] - cx, b = n[i + 1] - cy
      n[i] = x + a * cos - b * sin
      n[i + 1] = y + a * sin + b * cos
    }
    return command + n.map(v => +v.toFixed(2)).join(" ")
  })
}

// shower gives what draws a picture at a share of its way there and back, or of its round.
const shower = svg => {
  const moves = svg.dataset.moves.split(";").map(m => m.split(",").map(s => s.split(" ").map(Number)))
  const last = moves[0].length - 1, round = "round" in svg.dataset
  const parts = [...svg.querySelectorAll("[data-by]")].map(e => {
    const get = a => e.getAttribute(a)
    return [e, get("d") || "M" + get("cx") + " " + get("cy")]
  })
  return share => {
    const at = round ? share * (last + 1) : (1 - Math.cos(share * 2 * Math.PI)) / 2 * last, k = Math.floor(at), t = at - k
    const now = moves.map(m => {
      const [x, y, a = 0, s = 1] = m[k], [x2, y2, a2 = 0, s2 = 1] = m[(k + 1) % (last + 1)], by = a2 - a
      return [x + (x2 - x) * t, y + (y2 - y) * t, a + (by - 360 * Math.round(by / 360)) * t, s + (s2 - s) * t, ...m[0]]
    })
    for (const [e, d] of parts) {
      const to = placed(d, e.dataset.by, now)
      if (e.r) to.slice(1).split(" ").map((v, i) => e.setAttribute(i ? "cy" : "cx", v))
      else e.setAttribute("d", to)
    }
  }
}

for (const svg of calm.matches ? [] : document.querySelectorAll("[data-play] svg[data-moves]")) {
  const says = svg.closest("[data-play]").dataset, button = document.createElement("button"), show = shower(svg)
  let since = 0
  const set = on => {
    if (since && !on) show(0)
    since = on
    svg.classList.toggle("moving", !!on)
    button.textContent = on ? says.stop : says.play
    if (on) requestAnimationFrame(step)
  }
  const step = now => {
    if (!since) return
    const gone = Math.max(0, now - since) / 4000
    if (gone > 5 || calm.matches) return set(0)
    show(gone % 1)
    requestAnimationFrame(step)
  }
  button.type = "button"
  button.className = "play"
  button.onclick = () => set(since ? 0 : performance.now())
  set(0)
  svg.after(button)
}
}
