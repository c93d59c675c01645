// Text that is smaller than a page promises on paper, outside pictures: the promise stands in the page's own class.
const least = document.body.matches(".large-print") ? 16 : document.body.matches(".handout, .hold") ? 12 : 9
const points = e => parseFloat(getComputedStyle(e).fontSize) * 0.75
return all("body *").filter(e => ownText(e) && shown(e) && !e.closest("svg") && points(e) < least - 0.01).map(e => name(e) + " has " + points(e).toFixed(1) + " pt")
