package site

import (
	"encoding/base64"
	"strings"
)

// A note is what the caller wants to remember of a group beside its files, such
// as its row in an overview. It stands in the manifest behind the key.

// noteMark divides a key from its note; no key holds it.
const noteMark = "."

// LongestKey is how long a key with its note may be; chosen: a row of an
// overview takes a few hundred.
const LongestKey = 8192

// Noted is a key with a note behind it, as Put takes it.
func Noted(key string, note []byte) string {
	return key + noteMark + base64.RawURLEncoding.EncodeToString(note)
}

// Note gives back the note of a group; nil where it has none.
func (s *Site) Note(name string) []byte {
	s.mu.Lock()
	defer s.mu.Unlock()
	g := s.groups[name]
	if g == nil {
		return nil
	}
	_, text, _ := strings.Cut(g.key, noteMark)
	note, err := base64.RawURLEncoding.DecodeString(text)
	if err != nil {
		return nil
	}
	return note
}

// Has reports whether pages of a group are there, from this run or an earlier one.
func (s *Site) Has(name string) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	g := s.groups[name]
	return g != nil && len(g.files) > 0
}

// Plus adds up what two Puts did.
func (w Written) Plus(o Written) Written {
	return Written{w.New + o.New, w.Changed + o.Changed, w.Same + o.Same, w.Removed + o.Removed}
}
