// What the measurements share. Each returns lines, one a fault; none is good.
const shown = e => e.checkVisibility({visibilityProperty: true})
const name = e => e.tagName.toLowerCase() + (e.id ? "#" + e.id : "") + (e.className.baseVal ?? e.className ? "." + String(e.className.baseVal ?? e.className).trim().replace(/\s+/g, ".") : "") +
  " “" + e.textContent.trim().slice(0, 40) + "”"
const all = (selector, within = document) => [...within.querySelectorAll(selector)]
// A page that a client holds: nothing on it is excused for being a table or a link within a sentence.
const ofClient = document.body.matches(".handout, .hold")
const ownText = e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())
