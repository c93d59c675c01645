package program

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"reflect"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// Translation is one file of programs/words/LANGUAGE/: the texts of the file of the same name in another language. A text is found
// by its English, so that one which has been changed asks for its translation anew.
type Translation struct {
	Texts []TextPair `key:"text,required" doc:"a text and its words"`
}

// TextPair is a text and what it is in the language.
type TextPair struct {
	At      basis.Origin
	English string `key:"en,required" doc:"the text, word for word as it stands in the file" show:"Rebuild strength"`
	Say     string `key:"say,required" doc:"what it is in the language" show:"Kraft aufbauen"`
}

// translate says the texts of all files of the program in the language of the library.
func (r *reader) translate() {
	if r.Language != "" {
		r.p.eachFile(r.inWords)
	}
}

// eachFile visits every file of the program that holds texts, with what was read from it.
func (p *Program) eachFile(visit func(file string, holders ...any)) {
	all, own := p.Activities, p.ownActivities()
	p.Activities = all[:own]
	visit("programs/"+p.ID+".toml", &p.File)
	p.Activities = all
	for _, ph := range p.Phases {
		visit(ph.At.File, ph)
	}
	for _, id := range slices.Sorted(maps.Keys(p.Exercises)) {
		visit(p.Exercises[id].At.File, p.Exercises[id])
	}
	limits := map[string][]any{}
	for i := range p.Limits {
		limits[p.Limits[i].At.File] = append(limits[p.Limits[i].At.File], &p.Limits[i])
	}
	for i := own; i < len(all); i++ {
		limits[all[i].At.File] = append(limits[all[i].At.File], &all[i])
	}
	for _, file := range slices.Sorted(maps.Keys(limits)) {
		visit(file, limits[file]...)
	}
	for _, n := range p.Notes {
		visit(n.At.File, n)
	}
	visit("programs/errors.toml", &p.Errors)
	visit("programs/sources.toml", &p.Sources)
}

// ownActivities is how many of the activities stand in the program's own file: they come first, then those of limit files.
func (p *Program) ownActivities() int {
	for i, a := range p.Activities {
		if a.At.File != p.At.File {
			return i
		}
	}
	return len(p.Activities)
}

// inWords says the texts of one file, and names those that have no words and those that no text needs.
func (r *reader) inWords(file string, holders ...any) {
	name := r.wordsOf(file)
	at := "programs/" + name
	own := r.translation(name)
	needed, lacking := map[string]bool{}, []string(nil)
	say := func(text string) string {
		needed[text] = true
		if said, known := own[text]; known {
			return said.Say
		}
		if !slices.Contains(lacking, text) {
			lacking = append(lacking, text)
		}
		return text
	}
	for _, h := range holders {
		eachText(reflect.ValueOf(h), say)
	}
	slices.Sort(lacking)
	for _, text := range lacking {
		r.faults.Add(source.Fault{File: at, What: fmt.Sprintf("the text %q of %s has no words in %s", text, file, r.Language), Instead: "add it as [[text]] with en and say"})
	}
	for _, text := range slices.Sorted(maps.Keys(own)) {
		if !needed[text] {
			r.faults.Add(source.Fault{File: at, Key: own[text].At.Key, What: fmt.Sprintf("%s has no text %q", file, text), Instead: "see whether it has been changed: translate the new one and take this out"})
		}
	}
}

// translation reads a file of the language: of every layer, the clinic's words over the shipped ones.
func (r *reader) translation(name string) map[string]TextPair {
	texts := map[string]TextPair{}
	if _, _, err := r.Folder.Read(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		r.faults.Add(source.Unreadable("programs/"+name, err))
		return texts
	}
	r.p.Files = append(r.p.Files, name)
	for _, data := range slices.Backward(r.Folder.Layers(name)) {
		var layer Translation
		r.faults = append(r.faults, source.TOML("programs/"+name, data, &layer)...)
		for _, pair := range layer.Texts {
			texts[pair.English] = pair
		}
	}
	return texts
}

// translateCatalog says the texts of a library in its language. An exercise or a note that has no file of words at all is left out,
// and asked about: a clinic translates what it uses.
func (r *reader) translateCatalog(notes *[]*Note) {
	if r.Language == "" {
		return
	}
	var left []string
	worded := func(file string) bool {
		has := r.Folder.Exists(r.wordsOf(file))
		if !has {
			left = append(left, strings.TrimSuffix(strings.TrimPrefix(file, "programs/"), ".toml"))
		}
		return has
	}
	for _, id := range slices.Sorted(maps.Keys(r.p.Exercises)) {
		if ex := r.p.Exercises[id]; worded(ex.At.File) {
			r.inWords(ex.At.File, ex)
		} else {
			delete(r.p.Exercises, id)
		}
	}
	*notes = slices.DeleteFunc(*notes, func(n *Note) bool { return !worded(n.At.File) })
	for _, n := range *notes {
		r.inWords(n.At.File, n)
	}
	r.inWords("programs/sources.toml", &r.p.Sources)
	if len(left) > 0 {
		r.faults.Add(source.Fault{File: "programs/words/" + r.Language, What: fmt.Sprintf("the library leaves out what has no words in %s: %s", r.Language, strings.Join(left, ", ")),
			Instead: "add their files here", Ask: true})
	}
}

// wordsOf is the file with the words of a file.
func (r *reader) wordsOf(file string) string {
	return "words/" + r.Language + "/" + strings.TrimPrefix(file, "programs/")
}
