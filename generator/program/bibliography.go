package program

import "paceleaf/generator/basis"

// Source is one entry of the bibliography, programs/sources.toml: [kngf-2014] and so on.
type Source struct {
	At    basis.Origin
	Title string `key:"title,required" doc:"title of the work" show:"Resistance training after knee operations"`
	By    string `key:"by" doc:"authors or body" show:"Auk, Dunlin"`
	Year  int    `key:"year" doc:"year of publication" range:"1900 2100" show:"2014"`
	In    string `key:"in" doc:"journal, volume, pages" show:"Journal of Knees 3:14"`
	DOI   string `key:"doi" doc:"its DOI, where it was seen with the source" show:"10.1000/182"`
	Read  string `key:"read" doc:"what of it was read: source, second-hand, from memory" show:"source"`
	About string `key:"about" doc:"population, caution" show:"42 people after reconstruction; only the abstract was read" said:"desk"`
}

// Bibliography is the whole of programs/sources.toml, by key.
type Bibliography map[string]Source
