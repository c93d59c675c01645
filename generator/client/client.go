// Package client is what a therapist typed or a client logged: the person, events, stages, tests, blocks.
//
// It reads them and judges them alone, against the clinic but not against a program. It computes nothing.
package client

import (
	"paceleaf/generator/unit"
)

// Client is one folder of clients/, read whole.
type Client struct {
	Code string // the folder's name
	Person
	Tests  []TestDay // by day
	Blocks []Block   // by number
	Holds  []Hold    // by day
	Logs   []Log     // by the day they were written
	Note   string    // note.md: the therapist's words to the client, Markdown
	Files  []string  // every file that it was read from, sorted
}

// Block returns the newest block; nil where there is none.
func (c *Client) Block() *Block {
	if len(c.Blocks) == 0 {
		return nil
	}
	return &c.Blocks[len(c.Blocks)-1]
}

// Event returns the event that a program's weeks count from: the newest of that procedure or kind on or before the day,
// else the first one after it; nil where there is none.
func (c *Client) Event(countsFrom string, on unit.Day) *Event {
	var found *Event
	for i := range c.Events {
		e := &c.Events[i]
		if e.Procedure != countsFrom && string(e.Kind) != countsFrom {
			continue
		}
		switch {
		case found == nil:
			found = e
		case !e.Date.After(on) && (found.Date.After(on) || e.Date.After(found.Date)):
			found = e
		case found.Date.After(on) && e.Date.Before(found.Date):
			found = e
		}
	}
	return found
}

// SoundOther reports whether the other leg is a sound reference.
func (c *Client) SoundOther() bool { return c.OtherLeg == unit.Sound }
