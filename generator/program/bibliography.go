package program

import "paceleaf/generator/basis"

// Source is one entry of the bibliography, programs/sources.toml: [kngf-2014] and so on.
type Source struct {
	At    basis.Origin
	Title string `key:"title,required"`
	By    string `key:"by" doc:"authors or body"`
	Year  int    `key:"year" range:"1900 2100"`
	In    string `key:"in" doc:"journal, volume, pages"`
	DOI   string `key:"doi"`
	Read  string `key:"read" doc:"what of it was read: source, second-hand, from memory"`
	About string `key:"about" doc:"population, caution"`
}

// Bibliography is the whole of programs/sources.toml, by key.
type Bibliography map[string]Source
