// Text under 7 : 1 against what is behind it (WCAG 1.4.6), outside pictures.
const rgb = c => c.match(/[\d.]+/g).map(Number)
const light = ([r, g, b]) => [r, g, b].map(c => (c /= 255) <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4).reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0)
const behind = e => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor); if (c[3] !== 0) return c } return [255, 255, 255] }
const ratio = e => { const [a, b] = [light(rgb(getComputedStyle(e).color)), light(behind(e))]; return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05) }
return all("body *").filter(e => ownText(e) && shown(e) && !e.closest("svg") && ratio(e) < 7).map(e => name(e) + " has " + ratio(e).toFixed(2))
