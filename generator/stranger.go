package generator

import (
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/source"
	"paceleaf/generator/words"
)

// A clinic's own files are laid over the shipped ones by name. A name that nothing reads would leave the shipped file in
// force, in silence: hence it is a mistake.

// strangersBelow are the names in programs/ and templates/ that nothing reads.
func (h *House) strangersBelow() (faults source.Faults) {
	look := func(dir, instead string, known func(name string, isDir bool) bool) {
		for _, e := range h.folder.List(dir) {
			if !known(e.Name, e.Dir) && !passedOver(e.Name) {
				faults.Add(source.Fault{File: dir + "/" + e.Name, What: "a file or folder of this name is not known here", Instead: instead})
			}
		}
	}
	shipped := func(dir string) func(string, bool) bool {
		return func(name string, _ bool) bool {
			_, err := fs.Stat(h.Templates, path.Join(dir, name))
			return err == nil
		}
	}
	ending := func(endings ...string) func(string, bool) bool {
		return func(name string, isDir bool) bool {
			for _, e := range endings {
				if !isDir && strings.HasSuffix(name, e) {
					return true
				}
			}
			return false
		}
	}
	look("programs", "programs/ holds programs (as in acl-reconstruction.toml), phases/, limits/, exercises/, notes/, words/ and sources.toml",
		func(name string, isDir bool) bool {
			return isDir && slices.Contains([]string{"phases", "limits", "exercises", "notes", "words"}, name) || ending(".toml")(name, isDir)
		})
	look("programs/phases", "this folder holds phases, as in rebuild.toml", ending(".toml"))
	look("programs/limits", "this folder holds limits, as in acl-graft.toml", ending(".toml"))
	look("programs/exercises", "this folder holds exercises and their words, as in squat.toml and squat.md", ending(".toml", ".md"))
	look("programs/notes", "this folder holds notes of reasons and their texts, as in thigh-alone.toml and thigh-alone.md", ending(".toml", ".md"))
	h.strangersInWords(look)
	look("templates", "templates/ holds page.html.tmpl, page.md.tmpl, parts/, style/, script/, words/ and the logo that clinic.toml names",
		func(name string, isDir bool) bool { return name == h.Clinic.Logo || shipped(".")(name, isDir) })
	look("templates/script", "this folder holds scripts that stand in for shipped ones, as in weeks.js", shipped("script"))
	look("templates/parts", "this folder holds parts of a page, as in part.html.tmpl and part.md.tmpl", ending(".html.tmpl", ".md.tmpl"))
	look("templates/style", "this folder holds style sheets, as in 2-page.css", ending(".css"))
	for _, lang := range h.folder.List("templates/words") {
		look("templates/words/"+lang.Name, "this folder holds client.toml, desk.toml, reasons.toml and what else ships in words/"+words.Shipped, shipped("words/"+words.Shipped))
	}
	return faults
}

// strangersInWords are the names in programs/words/ that nothing reads: it holds the folders of programs/ again, for each language.
func (h *House) strangersInWords(look func(dir, instead string, known func(name string, isDir bool) bool)) {
	folders := []string{"phases", "limits", "exercises", "notes"}
	isTOML := func(name string, isDir bool) bool { return !isDir && strings.HasSuffix(name, ".toml") }
	for _, lang := range h.folder.List("programs/words") {
		dir := "programs/words/" + lang.Name
		look(dir, "this folder holds the texts of programs/ in a language, under the same names: exercises/squat.toml",
			func(name string, isDir bool) bool {
				return isDir && slices.Contains(folders, name) || isTOML(name, isDir)
			})
		for _, below := range folders {
			look(dir+"/"+below, "this folder holds texts in a language, as in squat.toml", isTOML)
		}
	}
}

// inTemplate finds file, line and reason in what the template module says.
var inTemplate = regexp.MustCompile(`^template: ([^:]+):(\d+)(?::\d+)?: (.*)$`)

// ownTemplates reads the clinic's own templates, colours and logo, so that check tells their mistakes too.
func (h *House) ownTemplates() (faults source.Faults) {
	printer, err := h.Printer()
	if err == nil {
		return h.judgeLook(printer)
	}
	if m := inTemplate.FindStringSubmatch(err.Error()); m != nil {
		line, _ := strconv.Atoi(m[2])
		faults.Add(source.Fault{File: "templates/" + m[1], Line: line, What: m[3], Instead: "compare it with the shipped template"})
		return faults
	}
	place, what, _ := strings.Cut(err.Error(), ": ")
	what, instead, _ := strings.Cut(what, "; ")
	faults.Add(source.Fault{File: place, What: what, Instead: instead})
	return faults
}
