// Text of the page that a reader cannot come to: neither shown nor in a fold that opens. What finds an exercise in the library
// is no text of a page; all that it could find stands below it.
return all("main *, header *, footer *").filter(e => ownText(e) && !shown(e) && !e.closest("svg, details, script, .finder")).map(name)
