// What the page says to its script, and how the script makes things. Nothing here is sent anywhere.
const data = JSON.parse(document.getElementById("data").textContent), says = data.words
const find = (selector, within = document) => [...within.querySelectorAll(selector)]
const make = (tag, set, ...inside) => {
  const made = Object.assign(document.createElement(tag), set)
  made.append(...inside)
  return made
}
const group = (label, className, ...inside) => make("div", { className, role: "group", ariaLabel: label }, ...inside)
const text = (tag, textContent, set) => make(tag, { textContent, ...set })
const button = (says, onclick, set) => text("button", says, { type: "button", onclick, ...set })
// Now and today by the page's own clock, as a log writes them.
const clock = () => {
  const now = new Date()
  return new Date(now - now.getTimezoneOffset() * 60000).toISOString().slice(0, 16).replace("T", " ")
}
const dayOf = at => at.slice(0, 10), today = dayOf(clock())
