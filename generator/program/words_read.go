package program

import (
	"errors"
	"fmt"
	"io/fs"
	"regexp"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Headings of the Markdown file beside an exercise, each at most once.
const (
	headSetup   = "Set up"
	headSteps   = "Steps"
	headCues    = "Cues"
	headFaults  = "Watch for"
	headNormal  = "What is normal"
	headEaseOff = "Ease off if"
	headStop    = "Stop if"
)

// words reads the Markdown file beside an exercise. A clinic's own exercise may lack it: then a question is asked.
func (r *reader) words(ex *Exercise) {
	name := "exercises/" + ex.ID + ".md"
	at := basis.Origin{File: "programs/" + name}
	data, _, err := r.Folder.Read(name)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		r.faults.Add(source.Unreadable(at.File, err))
		return
	}
	if err != nil {
		r.faults.Add(source.Fault{File: at.File, What: "the exercise has no words: its page will show only the describe line",
			Instead: "add this file with ## " + headSteps + " and a numbered list", Ask: true})
		return
	}
	r.p.Files = append(r.p.Files, name)
	sections, faults := source.Sections(at.File, data)
	r.faults = append(r.faults, faults...)
	r.gaps(at.File, data)
	ex.Words.At = at
	seen := map[string]bool{}
	for _, s := range sections {
		if seen[s.Title] {
			r.faults.Add(source.Fault{File: at.File, Line: s.Line, What: fmt.Sprintf("the heading %q stands twice", s.Title), Instead: "join the two"})
		}
		seen[s.Title] = true
		if !ex.Words.take(s) {
			r.faults.Add(source.Fault{File: at.File, Line: s.Line, What: fmt.Sprintf("heading %q is not known", s.Title),
				Instead: "write one of " + strings.Join([]string{headSetup, headSteps, headCues, headFaults, headNormal, headEaseOff, headStop}, ", ")})
		}
	}
}

var gap = regexp.MustCompile(`^\s*(?:[-*]|\d+\.)?\s*\?\s*$`)

// gaps tells of lines of a Markdown file that start has begun and nobody has filled in.
func (r *reader) gaps(file string, data []byte) {
	for i, line := range strings.Split(string(data), "\n") {
		if gap.MatchString(line) {
			r.faults.Add(source.Fault{File: file, Line: i + 1, What: `the text is still "?"`, Instead: "put your own in its place, or take the heading out"})
		}
	}
}

// take puts a section where it belongs and reports whether its heading is known.
func (w *Words) take(s source.Section) bool {
	switch s.Title {
	case headSetup:
		w.Setup = strings.TrimSpace(s.Body)
	case headSteps:
		w.Steps = source.Items(s.Body)
	case headCues:
		for _, item := range source.Items(s.Body) {
			w.Cues = append(w.Cues, cue(item))
		}
	case headFaults:
		w.Faults = source.Items(s.Body)
	case headNormal:
		w.Normal = strings.TrimSpace(s.Body)
	case headEaseOff:
		w.EaseOff = strings.TrimSpace(s.Body)
	case headStop:
		w.Stop = strings.TrimSpace(s.Body)
	default:
		return s.Title == "" && strings.TrimSpace(s.Body) == ""
	}
	return true
}

var reaches = regexp.MustCompile(`\s*\(to (-?\d+)°\)\s*$`)

// cue splits off the angle that a cue asks to reach.
func cue(item string) Cue {
	m := reaches.FindStringSubmatchIndex(item)
	if m == nil {
		return Cue{Text: item}
	}
	deg, _ := strconv.Atoi(item[m[2]:m[3]])
	angle := unit.Degrees(deg)
	return Cue{Text: item[:m[0]], ReachesDeg: &angle}
}
