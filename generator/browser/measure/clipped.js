// What loses text: a box that hides what is longer than itself, or text that lies over other text.
return all("body *").filter(e => shown(e) && !e.closest("svg, .scroll") && ["hidden", "clip"].includes(getComputedStyle(e).overflowX) &&
  (e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 1)).map(name)
