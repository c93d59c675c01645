// What runs, in order. A job that fails leaves the page as it was without it.
const diary = () => {
  if (!store) return
  let sure
  const forgetting = button(says.forget, () => {
    sure = !sure
    forgetting.textContent = sure ? says["forget-sure"] : says.forget
    if (sure) return
    forget()
    show(1)
    tell(says.forgotten)
  })
  const place = make("div"), also = () => place.replaceChildren(words(says.also, kept, "also"))
  const undo = () => {
    if (!past[0]) return tell(says["no-undo"])
    kept = JSON.parse(past.pop())
    save()
    open(data.days.find(d => d.on == day))
    also()
    tell(says.undone)
  }
  find("#tick > .lead")[0].after(make("div", { className: "kept" }, text("p", says.lead, { className: "note" }), ...data.weeks[1] ? [rail()] : [],
    group(says.days, "day-rail"), make("div", { className: "day" }), place,
    make("p", { className: "acts" }, button(says.send, send, { className: "send" }), button(says.undo, undo), forgetting), make("p", { className: "told", role: "status" })))
  document.documentElement.classList.add("keeps")
  changed.push(openFirst, also)
}
for (const job of [overdue, data.weeks[1] && weeks, diary, () => show(opens())]) {
  try { job && job() } catch (e) { console.error(e) }
}
