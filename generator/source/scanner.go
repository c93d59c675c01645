package source

import (
	"bytes"
	"strconv"
	"strings"
)

// scanner walks a file once: it knows keys, brackets, strings and comments, and steps over everything else.
type scanner struct {
	data  []byte
	i     int
	line  int
	depth int            // of brackets: no stack is worth a file that nests without end
	lists map[string]int // how many tables a [[list]] has so far
	ix    Index
}

// place is where a key is written: its path, and its parts without indexes.
type place struct {
	path  string
	parts []string
}

func (s *scanner) file() {
	table := place{}
	for s.blank(); s.i < len(s.data); s.blank() {
		start := s.i
		if s.peek() == '[' {
			table = s.header()
		} else {
			s.keyValue(table)
		}
		s.i = max(lineEnd(s.data, s.i), start+1)
	}
}

// header reads [table] or [[table]] and returns where its keys belong.
func (s *scanner) header() place {
	line := s.line
	s.i++
	list := s.peek() == '['
	if list {
		s.i++
	}
	at := s.resolve(place{}, s.dotted(), line, list)
	s.ix.keys = append(s.ix.keys, at.parts)
	return at
}

// keyValue reads key = value in the table at.
func (s *scanner) keyValue(table place) {
	if s.depth == 0 {
		s.ix.last = s.line
	}
	at := s.resolve(table, s.dotted(), s.line, false)
	if s.peek() != '=' {
		return
	}
	s.ix.keys = append(s.ix.keys, at.parts)
	s.i++
	s.value(at)
}

// resolve follows the parts of a key from a table on: a [[list]] on the way means its last table, and a list header opens
// the next one.
func (s *scanner) resolve(from place, parts []string, line int, list bool) place {
	at := place{from.path, append(from.parts[:len(from.parts):len(from.parts)], parts...)}
	for n, part := range parts {
		at.path = below(at.path, part)
		last := n == len(parts)-1
		s.mark(at.path, line, !last)
		if last && list {
			s.lists[at.path]++
		}
		if count := s.lists[at.path]; count > 0 {
			at.path = item(at.path, count-1)
			s.mark(at.path, line, !last)
		}
	}
	return at
}

// mark keeps the first line of a path; a table that was only implied takes the line of its own header.
func (s *scanner) mark(path string, line int, implied bool) {
	_, known := s.ix.lines[path]
	switch {
	case !known:
		s.ix.lines[path] = line
		if implied {
			s.ix.implied[path] = true
		}
	case !implied && s.ix.implied[path]:
		s.ix.lines[path] = line
		delete(s.ix.implied, path)
	}
}

// dotted reads the parts of a key up to what follows it.
func (s *scanner) dotted() (parts []string) {
	for {
		s.spaces()
		parts = append(parts, s.part())
		s.spaces()
		if s.peek() != '.' {
			return parts
		}
		s.i++
	}
}

func (s *scanner) part() string {
	start := s.i
	if q := s.peek(); q == '"' || q == '\'' {
		s.i = stringEnd(s.data, start)
		text := strings.Trim(string(s.data[start:s.i]), "\n")
		if q == '"' {
			return unescaped(strings.TrimSuffix(text[1:], `"`))
		}
		return strings.TrimSuffix(text[1:], "'")
	}
	for s.i < len(s.data) && bare(s.data[s.i]) {
		s.i++
	}
	return string(s.data[start:s.i])
}

func (s *scanner) value(at place) {
	s.spaces()
	switch s.peek() {
	case '"', '\'':
		end := stringEnd(s.data, s.i)
		s.line += newlines(s.data[s.i:end])
		s.i = end
	case '[':
		s.within(']', func(n int) {
			inner := place{item(at.path, n), at.parts}
			s.mark(inner.path, s.line, false)
			s.value(inner)
		})
	case '{':
		s.within('}', func(int) { s.keyValue(at) })
	default:
		for s.i < len(s.data) && !bytes.ContainsRune([]byte(",]}#\n"), rune(s.data[s.i])) {
			s.i++
		}
	}
}

// within reads what stands between brackets, item by item, over as many lines as it takes.
func (s *scanner) within(closing byte, read func(n int)) {
	s.i++
	s.depth++
	defer func() { s.depth-- }()
	for n := 0; s.i < len(s.data); n++ {
		s.blank()
		for s.peek() == ',' {
			s.i++
			s.blank()
		}
		if s.peek() == closing {
			s.i++
			return
		}
		before := s.i
		if s.depth <= 2*maxNesting {
			read(n)
		}
		if s.i == before {
			s.i++ // not TOML: go on behind it
		}
	}
}

// blank steps over spaces, comments and line ends.
func (s *scanner) blank() {
	for s.i < len(s.data) {
		switch s.data[s.i] {
		case '\n':
			s.line++
			s.i++
		case ' ', '\t', '\r':
			s.i++
		case '#':
			s.i = lineEnd(s.data, s.i)
		default:
			return
		}
	}
}

func (s *scanner) spaces() {
	for c := s.peek(); c == ' ' || c == '\t' || c == '\r'; c = s.peek() {
		s.i++
	}
}

// peek returns the next byte, 0 at the end.
func (s *scanner) peek() byte {
	if s.i < len(s.data) {
		return s.data[s.i]
	}
	return 0
}

func bare(c byte) bool {
	return c == '_' || c == '-' || '0' <= c && c <= '9' || 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z'
}

// escapes of a basic string that stand for one character each.
var escapes = map[byte]string{'b': "\b", 't': "\t", 'n': "\n", 'f': "\f", 'r': "\r", 'e': "\x1b", '"': `"`, '\\': `\`}

// digitsOf the escapes that name a character by its number.
var digitsOf = map[byte]int{'x': 2, 'u': 4, 'U': 8}

// unescaped is the text of a quoted key.
func unescaped(text string) string {
	if !strings.Contains(text, `\`) {
		return text
	}
	var b strings.Builder
	for i := 0; i < len(text); i++ {
		if text[i] != '\\' || i+1 == len(text) {
			b.WriteByte(text[i])
			continue
		}
		i++
		if plain, ok := escapes[text[i]]; ok {
			b.WriteString(plain)
			continue
		}
		n := digitsOf[text[i]]
		if i+n >= len(text) {
			continue
		}
		code, _ := strconv.ParseUint(text[i+1:i+1+n], 16, 32)
		b.WriteRune(rune(code))
		i += n
	}
	return b.String()
}
