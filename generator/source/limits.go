package source

// Bounds on what is read, all chosen: far above anything that a clinic writes, far below what would slow a build.
const (
	maxBytes   = 1 << 20 // of one file, before it is decoded
	maxNesting = 20      // tables and lists inside one another
	maxValues  = 20_000  // keys and list items of one file
	maxFaults  = 200     // reported of one file; the rest is counted
	maxRunes   = 4000    // of one text
	maxEntries = 20_000  // of one folder
)

// Bounds on what stands in a message, chosen so that a message stays one line on a screen.
const (
	maxShown   = 40 // runes of a wrong value
	maxOffered = 8  // possible keys
)
