// What is wider than the screen: a reader would have to scroll in two directions (WCAG 1.4.10). A table may scroll in a box
// of its own, for it has two dimensions, but not on a client's page; a link that skips the bar lies aside until the keyboard comes to it.
const wide = document.documentElement.clientWidth
const faults = all("body *").filter(e => shown(e) && !e.closest("svg *, .skip") && (ofClient || !e.closest(".scroll *")) && (e.getBoundingClientRect().right > wide + 1 || e.getBoundingClientRect().left < -1)).map(name)
if (ofClient) faults.push(...all(".scroll").filter(e => shown(e) && e.scrollWidth > e.clientWidth + 1).map(e => "scrolls, " + e.scrollWidth + " px in " + e.clientWidth + ": " + name(e)))
return document.scrollingElement.scrollWidth > wide ? ["the page is " + document.scrollingElement.scrollWidth + " px wide on " + wide, ...faults] : faults
