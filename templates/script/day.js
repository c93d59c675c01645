// The diary of one day: a tick and numbers a leg, how the session was, and how the knee was. A tick says that it was done and no
// more; numbers are only what the client has typed or taken over from the box. What is not answered is kept as nothing, never
// as 0.
let day = ""
const field = (label, of, what, input) => {
  input.value = of[what] ?? ""
  input.onchange = () => {
    if (!input.reportValidity()) return
    of[what] = input.type == "number" && input.value ? +input.value : input.value
    keep()
  }
  return make("label", { className: "field" }, label, input)
}
const number = (label, of, what, max, step = 1, min = 0) =>
  field(label, of, what, make("input", { type: "number", min, max, step, inputMode: "decimal" }))
const words = (label, of, what) => field(label, of, what, make("input", { maxLength: 300 }))
const choice = (label, of, what, options) =>
  field(label, of, what, make("select", {}, ...[["", says["not-said"]], ...options].map(([value, text]) => new Option(text, value))))
const points = [...Array(11).keys()].map(n => [n, n])
const tick = (label, entry, more) => {
  const box = make("input", { type: "checkbox", checked: !!entry.on })
  more.hidden = !entry.on
  box.onchange = () => {
    entry.on = box.checked
    more.hidden = !entry.on
    keep()
    days()
  }
  return make("label", { className: "to-tick" }, box, label)
}
// The numbers of a leg are those that its box asks for, under the keys of a log: a list set by set, else a number. Sets of one
// weight have one field for it; where they differ each has its own.
const weight = (leg, of, what, set = "") => number(says[(leg.twice ? "side-" : "load-") + leg.load] + set, of, what, 1300, "any")
const sets = (leg, entry, key, asked) => group(says[key + 1], "sets", ...asked.flatMap((_, i) => {
  const set = says[asked[1] === undefined && !i ? key + 1 : key].replace("%", i + 1)
  return [...entry.loads && key == "reps" ? [weight(leg, entry.loads, i, ", " + set)] : [], number(set, entry[key] ||= [], i, 28800)]
}))
const leg = (leg, entry) => {
  const more = group(leg.says, "numbers"), as = leg.asked?.find(a => a.week == week)?.as
  const take = of => {
    Object.assign(entry, structuredClone(of))
    keep()
    fill()
  }
  const fill = () => {
    const loads = entry.loads ||= as.loads && [], differ = leg.load && as.reps && !loads
    more.replaceChildren(
      button(says.same, () => take({ ...as, load: as.load, loads: as.loads })),
      ...differ ? [weight(leg, entry, "load")] : [],
      ...differ && as.reps[1] ? [button(says.differ, () => take({ loads: as.reps.map(() => entry.load), load: null }))] : [],
      ...Object.keys(as).filter(k => says[k]).map(k => as[k].map ? sets(leg, entry, k, as[k]) : number(says[k], entry, k, 1000)),
      ...as.reps ? [number(says.more, entry, "reserve", 20)] : [])
  }
  if (as) fill()
  return group(leg.says, "of-leg", tick(leg.says + ": " + says["leg-done"], entry, more), more)
}
const boxed = (title, ...inside) => make("fieldset", {}, text("legend", title), ...inside)
const leaving = (label, left) => {
  const why = words(says.why, left, "why")
  return [tick(label, left, why), why]
}
const moved = (move, noted) => {
  const left = (noted.left ||= {})[move.at] ||= {}, done = noted.done ||= {}
  return boxed(move.title, ...move.legs.map(l => leg(l, done[move.at + " " + l.side] ||= {})), ...leaving(says["left-out"], left))
}
const whole = noted => {
  const effort = noted.effort ||= {}
  return boxed(says.session, choice(says.rating, effort, "rating", points), number(says.minutes, effort, "minutes", 480, 1, 1),
    ...leaving(says["left-day"], noted.off ||= {}))
}
const knee = noted => {
  const felt = noted.knee ||= {}
  return boxed(says.knee, choice(says.pain, felt, "pain", points), choice(says.morning, felt, "pain_am", points),
    choice(says.kind, felt, "kind", ["ache", "sharp", "catching", "giving-way"].map(k => [k, says[k]])),
    choice(says.swelling, felt, "swelling", ["same", "more", "much more"].map(k => [k, says["swelling-" + k.slice(0, 4)]])))
}
// The days of the week that is shown. A day that has not come yet cannot be ticked.
const inWeek = () => data.days.filter(d => d.week == week)
const days = () => find(".day-rail")[0].replaceChildren(...inWeek().map(d =>
  button(d.says + (ticked(d.on) ? " " + says.ticked : ""), () => open(d), { disabled: d.on > today, ariaPressed: d.on == day })))
const open = of => {
  day = of?.on
  days()
  find(".day")[0].replaceChildren(...of ? [text("h3", of.says), ...of.do.map(i => moved(data.moves[i], noted(day))), whole(noted(day)), knee(noted(day))]
    : [text("p", says.later)])
}
const openFirst = () => {
  const past = inWeek().filter(d => d.on <= today)
  open(past.find(d => !ticked(d.on)) || past.at(-1))
}
