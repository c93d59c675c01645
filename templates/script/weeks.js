// The rail of weeks: one week at a time, in the list of weeks, in the boxes and in the diary. Without it all weeks stand in order.
let week = 1
const changed = []
const show = chosen => {
  week = chosen
  find(".rail button").forEach(b => b.ariaPressed = b.value == week)
  find("#weeks > .week").forEach(e => e.classList.toggle("away", e.id != "week-" + week))
  data.moves.forEach(m => find("#" + m.at + " .leg").forEach((box, i) =>
    find(".later > li", box).forEach((line, j) => line.classList.toggle("this-week", m.legs[i].later[j].includes(week)))))
  changed.forEach(act => act())
}
// The page opens on the week after the last ticked one. A week is ticked once its last training day is; until then it is the
// week that one is in, for a session that was missed is not made up.
const opens = () => {
  const last = data.days.findLast(d => ticked(d.on))
  return last ? Math.min(last.week + (last == data.days.findLast(d => d.week == last.week)), data.weeks.length) : 1
}
const rail = () => group(says.weeks, "rail", ...data.weeks.map((text, i) => button(text, () => show(i + 1), { value: i + 1 })))
const weeks = () => ["#weeks > .week", "#exercises > .exercise"].forEach(s => find(s)[0]?.before(rail()))
