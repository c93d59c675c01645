// Where the keyboard is, and whether one sees it.
const at = document.activeElement, css = getComputedStyle(at)
return [name(at), parseFloat(css.outlineWidth) >= 2 && css.outlineStyle !== "none" ? "seen" : "not seen"]
