// The diary of one day: a tick and numbers a leg, and how the knee was. A tick says that it was done and no more; numbers are
// only what the client has typed or taken over from the box. What is not answered is kept as nothing, never as 0.
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
const number = (label, of, what, max, step = 1) => field(label, of, what, make("input", { type: "number", min: 0, max, step, inputMode: "decimal" }))
const words = (label, of, what) => field(label, of, what, make("input", { maxLength: 300 }))
const choice = (label, of, what, options) =>
  field(label, of, what, make("select", {}, ...[["", says["not-said"]], ...options].map(([value, text]) => new Option(text, value))))
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
const leg = (leg, entry) => {
  const more = group(leg.says, "numbers"), asked = leg.asked?.find(a => a.week == week)
  entry.reps ||= []
  const fill = () => more.replaceChildren(
    button(says.same, () => {
      Object.assign(entry, { load: asked.load, reps: Array(asked.sets).fill(asked.reps) })
      keep()
      fill()
    }),
    ...leg.load ? [number(says[(leg.twice ? "side-" : "load-") + leg.load], entry, "load", 1300, "any")] : [],
    group(says.times, "sets", ...[...Array(asked.sets).keys()].map(i => number(says.set + " " + (i + 1), entry.reps, i, 100))),
    number(says.more, entry, "reserve", 20))
  if (asked) fill()
  return group(leg.says, "of-leg", tick(leg.says + ": " + says["leg-done"], entry, more), more)
}
const boxed = (title, ...inside) => make("fieldset", {}, text("legend", title), ...inside)
const moved = (move, noted) => {
  const left = (noted.left ||= {})[move.at] ||= {}, done = noted.done ||= {}, why = words(says.why, left, "why")
  return boxed(move.title, ...move.legs.map(l => leg(l, done[move.at + " " + l.side] ||= {})), tick(says["left-out"], left, why), why)
}
const knee = noted => {
  const felt = noted.knee ||= {}, points = [...Array(11).keys()].map(n => [n, n])
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
  find(".day")[0].replaceChildren(...of ? [text("h3", of.says), ...of.do.map(i => moved(data.moves[i], noted(day))), knee(noted(day))]
    : [text("p", says.later)])
}
const openFirst = () => {
  const past = inWeek().filter(d => d.on <= today)
  open(past.find(d => !ticked(d.on)) || past.at(-1))
}
