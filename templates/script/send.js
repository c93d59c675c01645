// The log as a file: in the shape that Paceleaf reads, handed to whatever the device shares files with, else saved.
const tell = text => find(".told")[0].textContent = text
const given = v => v != null && v !== ""
// The lines that a leg makes: sets of one load are one line. All else stands in the first under its own key.
const written = (leg, { on, load, loads, reps = [], reserve, ...counts }) => {
  const lines = [], kg = i => {
    const v = loads ? loads[i] : load
    return given(v) ? Math.round(v * (leg.twice ? 200 : 100)) / 100 : undefined
  }
  reps.forEach((n, i) => {
    if (!given(n)) return
    if (!lines[0] || lines.at(-1)[leg.load] !== kg(i)) lines.push({ [leg.load]: kg(i), reps: [] })
    lines.at(-1).reps.push(n)
  })
  if (!lines[0] && (loads || [load]).some(given)) throw says["no-times"]
  if (!lines[0]) lines.push({})
  if (given(reserve)) lines.forEach(line => line.reserve = reserve)
  Object.entries(counts).forEach(([k, v]) => {
    if (v?.filter) v = v.filter(given)
    if (given(v) && v.length !== 0) lines[0][k] = v
  })
  return lines
}
// The answers of a box, and how many of them there are.
const answers = of => {
  const list = Object.entries(of || {}).filter(([, v]) => given(v)).map(([k, v]) => [k, isNaN(v) ? v : +v])
  return [Object.fromEntries(list), list.length]
}
const ofDay = (to, { on, do: moves }) => {
  const { done, left, knee, effort, off } = kept[on], [felt, told] = answers(knee), [hard, both] = answers(effort)
  const leave = (out, line) => out?.on && to.not_done.push({ on, ...line, why: out.why || says["no-reason"] })
  for (const { at, legs, do: id } of moves.map(i => data.moves[i])) {
    const lines = []
    for (const leg of legs) {
      const entry = done?.[at + " " + leg.side]
      if (entry?.on) written(leg, entry).forEach((said, i) => (lines[i] ||= { on, do: id })[leg.side] = said)
    }
    to.done.push(...lines)
    leave(left?.[at], { do: id })
  }
  leave(off)
  if (told) to.knee.push({ on, ...felt })
  if (both == 1) throw says["no-both"]
  if (both) to.effort.push({ on, ...hard })
}
// What is missing is said, and its day opened: nothing is sent that nobody said, and nothing is left out in silence.
const log = () => {
  const to = { log: 1, client: data.client, block: data.block, written: clock(), digest: data.digest, done: [], knee: [], not_done: [], effort: [] }
  for (const of of data.days.filter(d => kept[d.on])) {
    try { ofDay(to, of) } catch (what) {
      show(of.week)
      open(of)
      return tell(of.says + ": " + what)
    }
  }
  if (kept.also) to.also = kept.also
  return to
}
const send = async () => {
  const to = log()
  if (!to.log) return
  if (!to.done[0] && !to.knee[0] && !to.not_done[0] && !to.effort[0] && !to.also) return tell(says.nothing)
  // Many phones share no JSON, and all share text.
  const file = (end, type) => new File([JSON.stringify(to, null, 1) + "\n"], dayOf(to.written) + end, { type })
  const files = [file(".txt", "text/plain")], saved = file(".json", "application/json")
  if (navigator.canShare?.({ files })) {
    try {
      await navigator.share({ files })
      return tell(says.shared)
    } catch (e) { if (e.name == "AbortError") return }
  }
  make("a", { href: URL.createObjectURL(saved), download: saved.name }).click()
  tell(says.sent.replace("%", saved.name))
}
