// What the keyboard must come to, in the order of the page.
return all("a[href], button, input, select, textarea, summary, [tabindex]").filter(e => shown(e) && !e.disabled && e.tabIndex === 0).map(name)
