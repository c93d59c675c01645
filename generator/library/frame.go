package library

import "paceleaf/generator/page"

// made is a page with its frame. root leads from it to the library's folder.
func (r *reader) made(path, root, kind, title string, parts ...page.Part) Page {
	w := r.w
	bar := []page.Span{
		{Text: w.Say("library.bar-exercises"), Href: root + "index.html"},
		{Text: w.Say("library.bar-programs"), Href: root + "index.html#programs"},
		{Text: w.Say("library.bar-notes"), Href: root + "index.html#notes"}}
	if len(r.Glossary) > 0 {
		bar = append(bar, page.Span{Text: w.Say("library.bar-words"), Href: root + glossaryPath})
	}
	bar = append(bar, page.Span{Text: w.Say("library.bar-sources"), Href: root + "sources.html"})
	return Page{Path: path,
		View: page.View{Format: 1, Kind: kind, Lang: w.Lang, Dir: w.Dir, Title: w.Say("library.window", "title", title, "clinic", r.Clinic),
			Running: w.Say("library.running", "clinic", r.Clinic), Parts: filled(parts...)},
		Frame: page.Frame{Root: root, Skip: w.Say("library.skip"), Bar: bar}}
}

// confirm says who has to look at what the page says: whatever was not read in a source.
func (r *reader) confirm(standing string) page.Node {
	key := "library.confirm-" + dashed(standing)
	if !r.w.Has(key) {
		return page.Node{}
	}
	return text("confirm", r.w.Say(key))
}
