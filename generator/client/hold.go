package client

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Hold is a pause that the therapist has called between visits: a file of holds/, named by its first day, added once.
// It stands until the knee has been looked at again.
type Hold struct {
	From   unit.Day // the file's name
	At     basis.Origin
	By     string `key:"by,required" doc:"id of the therapist who calls the pause" show:"imbali"`
	Reason string `key:"reason,required" doc:"pain, swelling or surgeon; more words after a colon" example:"swelling: after football"`
}

// holdReasons are the words that a hold's reason begins with.
var holdReasons = []string{"pain", "swelling", "surgeon"}

// hold reads one file of holds/.
func (r *reader) hold(name, full string) {
	stem, isTOML := strings.CutSuffix(name, ".toml")
	from, err := unit.ParseDay(stem)
	if !isTOML || err != nil {
		r.wrong(basis.Origin{File: full}, "this name is no hold", "name the file by its first day, as in holds/2026-04-15.toml; or write: paceleaf hold "+r.c.Code)
		return
	}
	h := Hold{From: from}
	fill(r, "holds/"+name, &h)
	r.c.Holds = append(r.c.Holds, h)
}

// holds judges what the reader alone cannot.
func (r *reader) holds() {
	for _, h := range r.c.Holds {
		r.therapist(h.By, h.At.At("by"))
		if why := HoldReason(h.Reason); why != nil && h.Reason != "" {
			what, instead, _ := strings.Cut(why.Error(), "; ")
			r.wrong(h.At.At("reason"), what, instead)
		}
	}
}

// HoldReason says what is wrong with a hold's reason; nil where it begins with a known word.
func HoldReason(reason string) error {
	word, _, _ := strings.Cut(reason, ":")
	if slices.Contains(holdReasons, strings.TrimSpace(word)) {
		return nil
	}
	return fmt.Errorf("reason %q does not begin with a known word; begin with one of %s; more words after a colon", reason, strings.Join(holdReasons, ", "))
}

// Held is the newest hold of a block: called before its end. Whether it still stands is for plan to say.
func (c *Client) Held(b *Block) *Hold {
	for i := len(c.Holds) - 1; i >= 0; i-- {
		h := &c.Holds[i]
		if !h.From.Before(b.Starts.AddWeeks(b.Weeks)) {
			continue
		}
		return h
	}
	return nil
}

// LookedAfter reports whether the knee has been looked at since a hold began.
func (c *Client) LookedAfter(h *Hold) bool {
	return slices.ContainsFunc(c.Tests, func(d TestDay) bool { return d.On.After(h.From) && d.looked() })
}

// looked reports whether swelling or pain were looked at on the day.
func (d *TestDay) looked() bool { return d.Effusion != "" || d.PainWorst.OK() || d.PainKind != "" }
