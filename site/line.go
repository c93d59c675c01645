package site

import (
	"bufio"
	"errors"
	"io"
	"strconv"
	"strings"
)

// The manifest and the stamps are JSON of one fixed layout: a head, one line a
// row, and "]}". Only that layout is read.

var errLayout = errors.New("not the layout that paceleaf writes")

type lines struct {
	r   *bufio.Reader
	buf []byte
	err error
}

func newLines(r io.Reader) *lines { return &lines{r: bufio.NewReaderSize(r, 1<<16)} }

// next gives the next line without its end.
func (ls *lines) next() *line {
	ls.buf = ls.buf[:0]
	for {
		part, err := ls.r.ReadSlice('\n')
		ls.buf = append(ls.buf, part...)
		if err == nil {
			return &line{rest: string(ls.buf[:len(ls.buf)-1])}
		}
		if err != bufio.ErrBufferFull {
			ls.err = err
			if err == io.EOF {
				ls.err = errLayout
			}
			return &line{bad: true}
		}
	}
}

// rows gives each row to parse, and checks that all is there to the last byte:
// a file cut short is damaged.
func (ls *lines) rows(head *line, parse func(*line) error) error {
	if head.bad {
		return errLayout
	}
	for more := true; more; {
		l := ls.next()
		if l.rest == "]}" {
			break // a list without rows
		}
		if more = strings.HasSuffix(l.rest, ","); more {
			l.rest = l.rest[:len(l.rest)-1]
		}
		if err := parse(l); err != nil {
			return err
		}
		if l.end(); l.bad {
			return errLayout
		}
		if !more {
			if last := ls.next(); last.rest != "]}" {
				return errLayout
			}
		}
	}
	if _, err := ls.r.ReadByte(); err != io.EOF {
		return errLayout
	}
	return nil
}

// line is read from the left. After the first thing amiss it is bad, and all
// further reading gives nothing.
type line struct {
	rest   string
	inList bool
	bad    bool
}

// has takes a text if it comes next.
func (l *line) has(text string) bool {
	rest, found := strings.CutPrefix(l.rest, text)
	l.rest = rest
	return found
}

func (l *line) take(text string) { l.bad = !l.has(text) || l.bad }

// until takes everything up to a text, and the text.
func (l *line) until(text string) string {
	word, rest, found := strings.Cut(l.rest, text)
	if !found || l.bad {
		l.bad = true
		return ""
	}
	l.rest = rest
	return strings.Clone(word) // or it would keep the whole line in memory
}

func (l *line) number(until string) int64 {
	word, rest, found := strings.Cut(l.rest, until)
	n, err := strconv.ParseInt(word, 10, 64)
	if !found || err != nil {
		l.bad = true
		return 0
	}
	l.rest = rest
	return n
}

// list reports whether another element of a list comes, and takes the comma
// before it or the bracket after the last. The opening bracket was taken.
func (l *line) list() bool {
	if l.bad || l.has("]") {
		l.inList = false
		return false
	}
	if l.inList {
		l.take(",")
	}
	l.inList = !l.bad
	return l.inList
}

func (l *line) end() { l.bad = l.bad || l.rest != "" }
