package source

import (
	"fmt"
	"regexp"
	"strings"
)

// Section is a part of a Markdown file under a heading of the second level, with its lines as they are written.
type Section struct {
	Title string // empty for what stands before the first heading
	Line  int
	Body  string
}

var (
	heading  = regexp.MustCompile(`^ {0,3}(#{1,6})(?:[ \t]+(.*?))?(?:[ \t]+#+)?[ \t]*$`)
	tightOne = regexp.MustCompile(`^##?[^#\s]`)
	fence    = regexp.MustCompile("^ {0,3}(`{3,}|~{3,})(.*)$")
)

// Sections splits a Markdown file at its headings of the second level. What stands between them is not read.
func Sections(file string, data []byte) ([]Section, Faults) {
	if f, bad := notText(file, data); bad {
		return nil, Faults{f}
	}
	s := splitter{file: file}
	text := strings.ReplaceAll(strings.TrimPrefix(string(data), "\ufeff"), "\r\n", "\n")
	for i, line := range strings.Split(text, "\n") {
		s.take(i+1, line)
	}
	if s.fence != "" {
		s.wrong(s.fenceLine, "a code fence that is not closed", "write "+s.fence+" on a line of its own after the code")
	}
	s.close()
	s.faults.Sort()
	return s.sections, s.faults
}

type splitter struct {
	file      string
	sections  []Section
	faults    Faults
	open      Section
	lines     []string
	fence     string // the fence that is open
	fenceLine int
}

func (s *splitter) wrong(line int, what, instead string) {
	s.faults.Add(Fault{File: s.file, Line: line, What: what, Instead: instead})
}

func (s *splitter) take(n int, line string) {
	if r, bad := unprintable(line); bad {
		s.wrong(n, fmt.Sprintf("the control character %U", r), "take it out")
	}
	if s.inCode(n, line) || !s.heading(n, line) {
		s.lines = append(s.lines, line)
		if s.open.Line == 0 && strings.TrimSpace(line) != "" {
			s.open.Line = n
		}
	}
}

// inCode reports whether the line belongs to fenced code, where # is no heading.
func (s *splitter) inCode(n int, line string) bool {
	m := fence.FindStringSubmatch(line)
	switch {
	case s.fence == "" && m == nil:
		return false
	case s.fence == "":
		s.fence, s.fenceLine = m[1], n
	case m != nil && strings.HasPrefix(m[1], s.fence) && strings.TrimSpace(m[2]) == "":
		s.fence = ""
	}
	return true
}

// heading starts a section and reports whether it did.
func (s *splitter) heading(n int, line string) bool {
	if tightOne.MatchString(line) {
		s.wrong(n, fmt.Sprintf("%q is no heading", clipped(line)), fmt.Sprintf("write ## %s", clipped(strings.TrimLeft(line, "#"))))
		return false
	}
	m := heading.FindStringSubmatch(line)
	if m == nil || len(m[1]) > 2 {
		return false
	}
	title := strings.TrimSpace(m[2])
	switch {
	case title == "":
		s.wrong(n, "a heading without words", "write ## and a title")
	case len(m[1]) == 1:
		s.wrong(n, fmt.Sprintf("%q is a heading of the first level", clipped(title)), fmt.Sprintf("write ## %s", clipped(title)))
	}
	s.close()
	s.open = Section{Title: title, Line: n}
	return true
}

// close keeps the open section; the part before the first heading only where it says something.
func (s *splitter) close() {
	s.open.Body = strings.Trim(strings.Join(s.lines, "\n"), "\n")
	if s.open.Title != "" || strings.TrimSpace(s.open.Body) != "" {
		s.sections = append(s.sections, s.open)
	}
	s.open, s.lines = Section{}, nil
}

var listItem = regexp.MustCompile(`^\s*(?:[-*+]|[0-9]{1,9}[.)])\s+(.*)$`)

// Items returns the items of the lists in a body, each as one line; a blank line ends an item. Text that is no item is left out.
func Items(body string) (items []string) {
	open := false
	for _, line := range strings.Split(body, "\n") {
		text := strings.TrimSpace(line)
		m := listItem.FindStringSubmatch(line)
		switch {
		case m != nil:
			items = append(items, strings.TrimSpace(m[1]))
			open = true
		case text == "":
			open = false
		case open:
			last := &items[len(items)-1]
			*last = strings.TrimSpace(*last + " " + text)
		}
	}
	return items
}
