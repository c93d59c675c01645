// What loses text: a box that hides what is longer than itself. A table of the desk scrolls in its own box.
return all("body *").filter(e => shown(e) && !e.closest(ofClient ? "svg" : "svg, .scroll") && ["hidden", "clip"].includes(getComputedStyle(e).overflowX) &&
  (e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 1)).map(name)
