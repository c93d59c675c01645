// Package page turns a plan into what a person reads: first a View, pure data in reading order, then its HTML, its
// Markdown and its JSON. It computes nothing of the trade: every number that it prints stands in the plan.
package page

// View is a page as its reader reads it: parts in order, sentences and lines, no bare number. HTML and Markdown print
// the same View; a sign-off is over its canonical JSON, so that a change of style un-signs nothing.
type View struct {
	Format  int    `json:"format"` // 1
	Kind    string `json:"kind"`   // handout, hold, worksheet, letter, retest, overview, floor
	Lang    string `json:"lang"`
	Dir     string `json:"dir"`               // ltr, rtl
	Title   string `json:"title"`             // of the window; DRAFT stands in it until it is signed
	Draft   string `json:"draft,omitempty"`   // the word and sentence of the draft; empty once signed
	Code    string `json:"code,omitempty"`    // of the client
	Running string `json:"running,omitempty"` // the line that every printed page carries: code, side, issue date
	Print   string `json:"print,omitempty"`   // large, or nothing
	Parts   []Part `json:"parts"`
	Diary   *Diary `json:"diary,omitempty"` // of a handout: what its script works with
}

// Part is a section of a page with its own heading.
type Part struct {
	ID    string `json:"id"`    // head, brief, stop, not-yet, week, exercises, knee, dates, progress, tick, small-print, …
	Title string `json:"title"` // heading of level 2; the head's is the heading of level 1
	Nodes []Node `json:"nodes"`
}

// Node is one thing in a part. Kind says which fields count.
type Node struct {
	Kind    string   `json:"kind"`            // text, list, facts, table, group, fold, figure, grid, cards, thumb
	Class   string   `json:"class,omitempty"` // what it is for the reader: lead, note, stop-emergency, leg-operated, exercise, dose …
	ID      string   `json:"id,omitempty"`    // anchor
	Title   string   `json:"title,omitempty"` // of group (heading), fold (its closed line), table (caption), figure (which leg, which weeks)
	Level   int      `json:"level,omitempty"` // of a group's heading: 3 or 4
	Spans   []Span   `json:"spans,omitempty"` // of text
	Ordered bool     `json:"ordered,omitempty"`
	Items   [][]Span `json:"items,omitempty"` // of list
	Facts   []Fact   `json:"facts,omitempty"`
	Head    []string `json:"head,omitempty"` // of table and grid
	Rows    [][]Cell `json:"rows,omitempty"`
	Nodes   []Node   `json:"nodes,omitempty"` // of group and fold
	Says    string   `json:"says,omitempty"`  // of figure: what it shows, in words
	Drawing *Drawing `json:"drawing,omitempty"`
	Chart   *Chart   `json:"chart,omitempty"` // of figure: what is drawn from numbers
	File    string   `json:"file,omitempty"`  // of thumb: the picture's own file in the library
}

// Span is a run of text.
type Span struct {
	Text   string `json:"text"`
	Strong bool   `json:"strong,omitempty"`
	Em     bool   `json:"em,omitempty"`
	Href   string `json:"href,omitempty"` // https:, tel:, # or a page of this site
}

// Fact is a label with its value.
type Fact struct {
	Label string `json:"label"`
	Value []Span `json:"value"`
}

// Cell is a field of a table.
type Cell struct {
	Spans []Span `json:"spans"`
	Head  bool   `json:"head,omitempty"` // heads its row
	Class string `json:"class,omitempty"`
}
