// What is wider than the screen: a reader would have to scroll in two directions (WCAG 1.4.10). A table may scroll in a box
// of its own, for it has two dimensions; a link that skips the bar lies aside until the keyboard comes to it.
const wide = document.documentElement.clientWidth
const faults = all("body *").filter(e => shown(e) && !e.closest("svg *, .scroll *, .skip") && (e.getBoundingClientRect().right > wide + 1 || e.getBoundingClientRect().left < -1)).map(name)
return document.scrollingElement.scrollWidth > wide ? ["the page is " + document.scrollingElement.scrollWidth + " px wide on " + wide, ...faults] : faults
