// The log as a file: in the shape that Paceleaf reads, handed to whatever the device shares files with, else saved.
const tell = text => find(".told")[0].textContent = text
const given = v => v != null && v !== ""
const written = (leg, entry) => {
  const said = {}, reps = entry.reps.filter(given)
  if (given(entry.load)) said[leg.load] = Math.round(entry.load * (leg.twice ? 200 : 100)) / 100
  if (reps.length) said.reps = reps
  if (given(entry.reserve)) said.reserve = entry.reserve
  return said
}
// The lines of a log; null where a load stands without its times.
const log = () => {
  const to = { log: 1, client: data.client, block: data.block, digest: data.digest, done: [], knee: [], not_done: [] }
  for (const { on } of data.days.filter(d => kept[d.on])) {
    const { done, left, knee } = kept[on], felt = Object.entries(knee || {}).filter(([, v]) => given(v))
    for (const { at, legs, do: id } of data.moves) {
      const line = { on, do: id }, out = left?.[at]
      for (const leg of legs) {
        const entry = done?.[at + " " + leg.side]
        if (!entry?.on) continue
        line[leg.side] = written(leg, entry)
        if (leg.load in line[leg.side] && !line[leg.side].reps) return null
      }
      if (line.left || line.right || line.both) to.done.push(line)
      if (out?.on) to.not_done.push({ on, do: id, why: out.why || says["no-reason"] })
    }
    if (felt.length) to.knee.push({ on, ...Object.fromEntries(felt.map(([k, v]) => [k, isNaN(v) ? v : +v])) })
  }
  if (kept.also) to.also = kept.also
  return to
}
const send = async () => {
  const to = log()
  if (!to) return tell(says["no-times"])
  if (!to.done[0] && !to.knee[0] && !to.not_done[0] && !to.also) return tell(says.nothing)
  const file = new File([JSON.stringify(to, null, 1) + "\n"], today + ".json", { type: "application/json" })
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file] })
      return tell(says.shared)
    } catch (e) { if (e.name == "AbortError") return }
  }
  make("a", { href: URL.createObjectURL(file), download: file.name }).click()
  tell(says.sent.replace("%", file.name))
}
