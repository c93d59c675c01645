package client

import (
	"fmt"
	"math"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// log reads one file of logs/.
func (r *reader) log(name, full string) {
	if !logName.MatchString(name) {
		r.wrong(basis.Origin{File: full}, "this name is no log", "let it end in .json, as in logs/2026-04-27.json")
		return
	}
	data, _ := r.read("logs/" + name)
	if data == nil {
		return // read has said so
	}
	var l Log
	faults := source.JSONTable(full, data, &l)
	if l.Format > LogFormat {
		at := l.At.At("log")
		r.wrong(basis.Origin{File: full, Key: at.Key}, fmt.Sprintf("this log is of format %d; this version reads format %d", l.Format, LogFormat), "use a newer Paceleaf")
		return
	}
	r.faults = append(r.faults, faults...)
	if !r.dated(&l, name, full) {
		return
	}
	l.inUnits()
	r.c.Logs = append(r.c.Logs, l)
}

// inUnits makes kilograms of what was typed, and seconds of minutes.
func (l *Log) inUnits() {
	for i := range l.Done {
		for _, s := range l.Done[i].Sides() {
			switch kg, lb := s.InKg.Step(), s.InLb.Step(); {
			case kg != nil:
				s.Sets.Load = basis.Typed(unit.Kilograms(kg.Value), kg.Typed+" kg", kg.At)
			case lb != nil:
				s.Sets.Load = basis.Typed(unit.Kilograms(lb.Value*unit.KilogramsPerPound), lb.Typed+" lb", lb.At)
			}
		}
	}
	for i := range l.Efforts {
		if m := l.Efforts[i].Minutes.Step(); m != nil {
			l.Efforts[i].Length = basis.Typed(unit.Seconds(60*m.Value), m.Typed+" min", m.At)
		}
	}
}

// logs judges what the reader alone cannot.
func (r *reader) logs() {
	r.inTurn()
	for i := range r.c.Logs {
		l := &r.c.Logs[i]
		if l.Client != "" && l.Client != r.c.Code {
			r.wrong(l.At.At("client"), fmt.Sprintf("this log is of %s, and it stands in the folder of %s", l.Client, r.c.Code), "move it to clients/"+l.Client+"/logs, or away")
			continue
		}
		block := r.c.BlockOf(l.Block)
		if block == nil && l.Block > 0 {
			r.wrong(l.At.At("block"), fmt.Sprintf("%s has no block %d", r.c.Code, l.Block), "write the number of a file in blocks/")
		}
		for j := range l.Done {
			r.done(&l.Done[j])
		}
		r.logDays(l, block)
		r.efforts(l)
	}
	r.toldTwice()
}

// BlockOf returns the block of that number; nil where there is none.
func (c *Client) BlockOf(number int) *Block {
	for i := range c.Blocks {
		if c.Blocks[i].Number == number {
			return &c.Blocks[i]
		}
	}
	return nil
}

// logDays holds the days of a log against the events, its block and its own day.
func (r *reader) logDays(l *Log, block *Block) {
	mend := "mend the day, or name the file by the day on which it was written"
	if l.Stamp != "" {
		mend = `mend the day, or the day that "written" gives` // the file's name counts for nothing then
	}
	see := func(on unit.Day, at basis.Origin) {
		at = at.At("on")
		switch {
		case on.IsZero():
		case on.After(l.Written):
			r.wrong(at, fmt.Sprintf("%s lies after the day of the log, %s", on, l.Written), mend)
		case r.beforeEvents(on):
			r.wrong(at, fmt.Sprintf("%s lies before the first event", on), "mend the day")
		case block != nil && on.Before(block.Starts):
			r.wrong(at, fmt.Sprintf("%s lies before block %d begins, %s", on, block.Number, block.Starts), "mend the day, or the number of the block")
		case block != nil && block.Weeks > 0 && !on.Before(block.Starts.AddWeeks(block.Weeks)):
			r.ask(at, fmt.Sprintf("%s lies after block %d ended", on, block.Number), "see whether the day and the number of the block are right")
		}
	}
	for i := range l.Done {
		see(l.Done[i].On, l.Done[i].At)
	}
	for i := range l.Knee {
		see(l.Knee[i].On, l.Knee[i].At)
		if k := &l.Knee[i]; !k.Pain.OK() && !k.Morning.OK() && k.Kind == "" && k.Swelling == "" && !r.spoilt(k.At) {
			r.wrong(k.At, "a report that says nothing of the knee", `write pain, pain_am, kind or swelling, or take it out`)
		}
	}
	for i := range l.NotDone {
		see(l.NotDone[i].On, l.NotDone[i].At)
	}
	for i := range l.Efforts {
		see(l.Efforts[i].On, l.Efforts[i].At)
	}
}

func (r *reader) beforeEvents(on unit.Day) bool {
	return len(r.c.Events) > 0 && !slices.ContainsFunc(r.c.Events, func(e Event) bool { return !e.Date.After(on) })
}

// done judges one line of done by itself and against the clinic.
func (r *reader) done(d *Done) {
	if r.spoilt(d.At) {
		return
	}
	if len(d.Sides()) == 0 {
		r.wrong(d.At, d.Do+" does not say which leg did it", `write "left", "right" or "both": { … }`)
	}
	if d.Both != nil && (d.Left != nil || d.Right != nil) {
		r.wrong(d.Both.At, d.Do+" was done with each leg and with both", "write a line for each")
	}
	r.place(d.Place, d.At.At("place"))
	if d.Place != "" {
		r.device(d.Device, d.Place, d.At.At("device"))
	}
	for _, s := range d.Sides() {
		r.wholeSets(s)
		if s.InKg.OK() && s.InLb.OK() {
			r.wrong(s.Sets.At, "kg and lb together", "keep the one that the device is marked in")
		}
		if s.Sets.Load.OK() && len(s.Reps) == 0 {
			r.wrong(s.Sets.At, "a load without repetitions", `write "reps": [ … ], set by set`)
		}
	}
}

// wholeSets holds that what is counted is counted whole.
func (r *reader) wholeSets(s DoneSet) {
	for i, n := range s.Reps {
		if v := float64(n.Or(0)); v != math.Trunc(v) {
			r.wrong(n.Step().At, fmt.Sprintf("set %d has %g repetitions", i+1, v), "write whole repetitions")
		}
	}
	for _, n := range []basis.Num[unit.Count]{s.Contacts, s.Rounds, s.Times} {
		if v := float64(n.Or(0)); v != math.Trunc(v) {
			r.wrong(n.Step().At, fmt.Sprintf("%g is no whole number", v), "write how many it was")
		}
	}
}

// efforts holds that a day's session is rated once.
func (r *reader) efforts(l *Log) {
	seen := map[unit.Day]bool{}
	for _, e := range l.Efforts {
		if !e.On.IsZero() && seen[e.On] {
			r.wrong(e.At.At("on"), fmt.Sprintf("the session of %s is rated twice", e.On), "keep one: a day has one session")
		}
		seen[e.On] = true
	}
}

// toldTwice asks where two logs tell one thing differently; the later log is believed.
func (r *reader) toldTwice() {
	last := map[told]string{}
	from := map[told]*Log{}
	for i := range r.c.Logs {
		l := &r.c.Logs[i]
		says, at := map[told]string{}, map[told]basis.Origin{}
		for j := range l.Done {
			for _, s := range l.Done[j].Sides() {
				t := told{s.Done.On, s.Do, s.Side}
				says[t] += s.Sets.said() + s.Done.Place + s.Done.Device
				at[t] = s.Done.At
			}
		}
		for t, now := range says {
			if before, known := last[t]; known && before != now {
				r.ask(at[t], fmt.Sprintf("%s of %s, %s, is told otherwise in %s", t.do, t.on, t.side, from[t].At.File), "see which is right and take out the other; until then this, the later one, is believed")
			}
			last[t], from[t] = now, l
		}
	}
}

// said is what a set says, for comparing.
func (s *Sets) said() string {
	text := fmt.Sprint(s.Load.Or(-1), s.Reserve.Or(-1))
	for _, n := range s.Reps {
		text += fmt.Sprint(" ", n.Or(-1))
	}
	for _, n := range s.Time {
		text += fmt.Sprint(" ", n.Or(-1), " s")
	}
	return text + fmt.Sprint(s.Contacts.Or(-1), s.Rounds.Or(-1), s.Times.Or(-1), ";")
}
