package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Log is what the client did and felt, as the handout exported it: a file of logs/, JSON, named by the day on which it was
// written or, where a messenger renamed it on its way, telling that day itself. What it says may hold back or pause; it opens
// nothing. Who writes such a file writes it by these tags.
type Log struct {
	Written unit.Day // by what it tells itself, else by its name
	At      basis.Origin
	Format  int       `key:"log,required" doc:"number of the format; this version reads 1" range:"1 1000000" show:"1"`
	Client  string    `key:"client,required" doc:"the client's code, so that a file in the wrong folder is found" show:"tern-04"`
	Block   int       `key:"block,required" doc:"number of the block" range:"1 999" show:"3"`
	Stamp   string    `key:"written" doc:"when the file was written, day and time by the client's clock: then it may have any name" show:"2026-04-27 18:03"`
	Digest  string    `key:"digest" doc:"of the page that it was written on; not used yet" show:"5c1e"`
	Done    []Done    `key:"done" doc:"one exercise of one day"`
	Knee    []Report  `key:"knee" doc:"how the knee was on a day"`
	NotDone []NotDone `key:"not_done" doc:"a session or an exercise that was left out"`
	Efforts []Effort  `key:"effort" doc:"how hard a session was as a whole"`
	Also    string    `key:"also" doc:"what else was done, in the client's words" example:"team training 60 min"`
}

// LogFormat is the number of the format of logs that this version reads.
const LogFormat = 1

// Done is one exercise of one day, by leg.
type Done struct {
	At     basis.Origin
	On     unit.Day `key:"on,required" doc:"the day"`
	Do     string   `key:"do,required" doc:"id of the exercise" show:"leg-press-single"`
	Place  string   `key:"place" doc:"where it was not the place of that week" show:"home"`
	Device string   `key:"device" doc:"where it was not the device of the page" show:"press"`
	Left   *Sets    `key:"left" doc:"what the left leg did"`
	Right  *Sets    `key:"right" doc:"what the right leg did"`
	Both   *Sets    `key:"both" doc:"of an exercise with both legs together"`
}

// Sets are the sets of one leg with one load: what was put on or pinned, in the unit that the device is marked in. Sets with
// another load are another line of done. What is no set of repetitions is told by the clock or by a count.
type Sets struct {
	At       basis.Origin
	InKg     basis.Num[unit.Count]     `key:"kg" doc:"what was put on or pinned" range:"0 600" show:"50"`
	InLb     basis.Num[unit.Count]     `key:"lb" doc:"the same, at a device marked in pounds" range:"0 1300" show:"110"`
	Reps     []basis.Num[unit.Count]   `key:"reps,list" doc:"set by set" range:"0 100" show:"[10, 10, 9]"`
	Time     []basis.Num[unit.Seconds] `key:"time,list" doc:"of a hold, or of work by the clock: how long, set by set" range:"0 28800" show:"[30, 30, 25]"`
	Contacts basis.Num[unit.Count]     `key:"foot_contacts" doc:"landings, all together" range:"0 1000" show:"60"`
	Rounds   basis.Num[unit.Count]     `key:"rounds" doc:"rounds of hard and easy" range:"0 100" show:"6"`
	Times    basis.Num[unit.Count]     `key:"times" doc:"how often on that day, of what is done several times a day" range:"0 50" show:"5"`
	Reserve  basis.Num[unit.Count]     `key:"reserve" doc:"repetitions that would still have been possible; of several sets the fewest" range:"0 20" show:"2"`
	Load     basis.Num[unit.Kilograms] // filled by Read from kg or lb
}

// Report is how the knee was on a day, in the client's words. It may pause and never opens.
type Report struct {
	At       basis.Origin
	On       unit.Day               `key:"on,required" doc:"the day"`
	Pain     basis.Num[unit.Points] `key:"pain" doc:"worst of the day" range:"0 10" show:"1"`
	Morning  basis.Num[unit.Points] `key:"pain_am" doc:"the morning after" range:"0 10" show:"0"`
	Kind     PainKind               `key:"kind" doc:"what the pain is like"`
	Swelling Swelling               `key:"swelling" doc:"against the day before"`
}

// Swelling is what the client sees; it is no sweep test.
type Swelling string

const (
	SameSwelling     Swelling = "same"
	MoreSwelling     Swelling = "more"
	MuchMoreSwelling Swelling = "much more"
)

func (Swelling) Words() []string { return []string{"same", "more", "much more"} }

// NotDone is a session or an exercise that was left out, and why.
type NotDone struct {
	At  basis.Origin
	On  unit.Day `key:"on,required" doc:"the day"`
	Do  string   `key:"do" doc:"id of the exercise; the whole session where it is left out" show:"leg-press-single"`
	Why string   `key:"why,required" doc:"why, in the client's words" show:"machine out of order"`
}

// Effort is how hard a session was as a whole, 0 to 10 on the modified CR10, and how long it took.
type Effort struct {
	At      basis.Origin
	On      unit.Day                `key:"on,required" doc:"the day"`
	Rating  basis.Num[unit.Points]  `key:"rating,required" doc:"of the whole session: 0 is rest, 10 the hardest" range:"0 10" show:"6"`
	Minutes basis.Num[unit.Count]   `key:"minutes,required" doc:"how long it took" range:"1 480" show:"50"`
	Length  basis.Num[unit.Seconds] // filled by Read from minutes
}

// DoneSet is what one leg did of one exercise on one day.
type DoneSet struct {
	Side unit.Side
	*Sets
	*Done
	*Log
}

// Sides are the legs that a line of done speaks of.
func (d *Done) Sides() (list []DoneSet) {
	for _, leg := range []DoneSet{{Side: unit.Left, Sets: d.Left}, {Side: unit.Right, Sets: d.Right}, {Side: unit.Both, Sets: d.Both}} {
		if leg.Sets != nil {
			leg.Done = d
			list = append(list, leg)
		}
	}
	return list
}

// told is what a later log tells again: the same exercise of the same leg on the same day.
type told struct {
	on   unit.Day
	do   string
	side unit.Side
}

// DoneUpTo is all that was done by logs that were written up to a day. Where two logs tell of one exercise, leg and day the later
// one is believed: it is the client's last word.
func (c *Client) DoneUpTo(written unit.Day) (list []DoneSet) {
	newest := map[told]*Log{}
	each := func(see func(told, DoneSet)) {
		for i := range c.Logs {
			l := &c.Logs[i]
			for j := range l.Done {
				for _, s := range l.Done[j].Sides() {
					s.Log = l
					if !l.Written.After(written) {
						see(told{s.Done.On, s.Do, s.Side}, s)
					}
				}
			}
		}
	}
	each(func(t told, s DoneSet) { newest[t] = s.Log })
	each(func(t told, s DoneSet) {
		if newest[t] == s.Log {
			list = append(list, s)
		}
	})
	return list
}
