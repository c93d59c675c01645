package client

import (
	"cmp"
	"fmt"
	"path"
	"regexp"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// When a log was written. A client sends it from a phone: what shares and carries it may give it any name.

// logName is what a log may be called: a phone that shares it as text, and a messenger that renames it, change no word of it.
var logName = regexp.MustCompile(`(?i)\.(json|txt)$`)

// stampForm is how a log tells when it was written.
var stampForm = regexp.MustCompile(`^(\d{4}-\d\d-\d\d) ([01]\d|2[0-3]):[0-5]\d$`)

// dated gives a log the day on which it was written: what it tells itself, else its name.
func (r *reader) dated(l *Log, name, full string) bool {
	named, byName := unit.ParseDay(strings.TrimSuffix(name, path.Ext(name)))
	if l.Stamp == "" {
		if byName != nil && !r.spoilt(basis.Origin{File: full, Key: "written"}) {
			r.wrong(basis.Origin{File: full}, "this log does not say when it was written, and its name is no day", "name the file by the day on which it was written, as in logs/2026-04-27.json")
		}
		l.Written = named
		return byName == nil
	}
	told := stampForm.FindStringSubmatch(l.Stamp)
	if told == nil {
		told = []string{"", ""}
	}
	written, err := unit.ParseDay(told[1])
	if err != nil {
		r.wrong(l.At.At("written"), fmt.Sprintf("written %q is no day and time", l.Stamp), `write year-month-day and the time, as in "2026-04-27 18:03"`)
		return false
	}
	if byName == nil && named != written {
		r.ask(l.At.At("written"), fmt.Sprintf("this log says that it was written on %s, and its name says %s", written, named), "see which is right and mend the other; until then what it says itself is believed")
	}
	l.Written = written
	return true
}

// inTurn puts the logs into the order in which they were written: names that messengers gave have none.
func (r *reader) inTurn() {
	slices.SortStableFunc(r.c.Logs, func(a, b Log) int {
		return cmp.Or(a.Written.Compare(b.Written), strings.Compare(a.Stamp, b.Stamp))
	})
}
