// Controls under 44 × 44 CSS pixels (WCAG 2.5.5). A box to tick counts with the words that tick it; a link inside a sentence is
// as high as its line, and so is one in a cell of a table (axe-core holds both to the 24 pixels of WCAG 2.5.8), but not on a
// client's page.
const size = e => { const r = (e.closest("label") ?? e).getBoundingClientRect(); return [Math.round(r.width), Math.round(r.height)] }
return all("button, input, select, textarea, summary, a").filter(e => shown(e) && !e.disabled)
  .filter(e => !e.closest(".skip") && !(!ofClient && e.tagName === "A" && !e.href.startsWith("tel:") && (e.closest("td, th") || e.parentElement.textContent.trim() !== e.textContent.trim())))
  .filter(e => size(e).some(px => px < 44)).map(e => name(e) + " is " + size(e).join(" × "))
