package client

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// judge holds the clinic against itself.
func (c *Clinic) judge() (faults source.Faults) {
	wrong := func(at basis.Origin, what, instead string) {
		faults.Add(source.Fault{File: at.File, Key: at.Key, What: what, Instead: instead})
	}
	unique := func(seen map[string]bool, id string, at basis.Origin, thing string) {
		if id != "" && seen[id] {
			wrong(at.At("id"), fmt.Sprintf("%s %q stands twice", thing, id), "give each an id of its own")
		}
		seen[id] = true
	}
	if len(c.Phones) > 0 && len(c.Phones) < EnoughPhones {
		faults.Add(source.Fault{File: c.Phones[0].At.File, Line: c.Phones[0].At.Line, Key: c.Phones[0].At.At("who").Key, Ask: true,
			What:    "a client has one number to call besides the emergency number",
			Instead: `add a [[phone]] for after hours or the surgeon's ward; until then pages say to call the emergency number outside these hours`})
	}
	therapists, places, gauges := map[string]bool{}, map[string]bool{}, map[string]bool{}
	for _, t := range c.Therapists {
		unique(therapists, t.ID, t.At, "therapist")
	}
	for _, g := range c.Gauges {
		unique(gauges, g.ID, g.At, "gauge")
		if g.Place != "" && c.Place(g.Place) == nil {
			wrong(g.At.At("place"), fmt.Sprintf("there is no place %q", g.Place), "write the id of a [[place]], or leave it out")
		}
	}
	for i := range c.Places {
		p := &c.Places[i]
		unique(places, p.ID, p.At, "place")
		devices := map[string]bool{}
		for j := range p.Devices {
			d := &p.Devices[j]
			unique(devices, d.ID, d.At, "device")
			d.judge(wrong)
		}
	}
	return faults
}

// judge holds a device against itself.
func (d *Device) judge(wrong func(at basis.Origin, what, instead string)) {
	if what, instead := d.halfBand(); what != "" {
		wrong(d.At.At("point"), what, instead)
	}
	if d.AddOn.OK() && d.Step.OK() && d.AddOn.Or(0) >= d.Step.Or(0) {
		wrong(d.At.At("add_on_kg"), fmt.Sprintf("the add-on of %s is no smaller than a step of its stack", d.ID), "write the weight of the small piece that is hung on, or leave it out")
	}
}

// Format is the number of the format that this version reads.
const Format = 1

// Place returns the place of that id; nil where there is none.
func (c *Clinic) Place(id string) *Place {
	for i := range c.Places {
		if c.Places[i].ID == id {
			return &c.Places[i]
		}
	}
	return nil
}

// Therapist returns the therapist of that id; nil where there is none.
func (c *Clinic) Therapist(id string) *Therapist {
	for i := range c.Therapists {
		if c.Therapists[i].ID == id {
			return &c.Therapists[i]
		}
	}
	return nil
}

// Gauge returns the gauge of that id; nil where there is none.
func (c *Clinic) Gauge(id string) *Gauge {
	for i := range c.Gauges {
		if c.Gauges[i].ID == id {
			return &c.Gauges[i]
		}
	}
	return nil
}

// Device returns the device of that id; nil where there is none.
func (p *Place) Device(id string) *Device {
	for i := range p.Devices {
		if p.Devices[i].ID == id {
			return &p.Devices[i]
		}
	}
	return nil
}

// judge holds a client against itself and the clinic.
func (r *reader) judge() {
	c := r.c
	r.place(c.Place, c.At.At("place"))
	r.events()
	for _, s := range c.Stages {
		r.therapist(s.By, s.At.At("by"))
	}
	for _, o := range c.Opened {
		r.therapist(o.By, o.At.At("by"))
	}
	for _, w := range c.Waived {
		r.therapist(w.By, w.At.At("by"))
		if w.From.IsZero() && !r.spoilt(w.At) {
			r.ask(w.At.At("criterion"), fmt.Sprintf("the waiver of %s has no day", w.Criterion), "write from = the day of the decision: a waiver counts no longer than to the next operation")
		}
	}
	r.references()
	for i := range c.Limits {
		r.limit(&c.Limits[i])
	}
	for _, a := range c.Away {
		if !r.spoilt(a.At) && a.Until.Before(a.From) {
			r.wrong(a.At.At("until"), fmt.Sprintf("until %s lies before from %s", a.Until, a.From), "write the last day away")
		}
		r.place(a.Place, a.At.At("place"))
	}
	r.trainingDays()
	r.days()
	for id, s := range c.Setups {
		r.setup(id, s)
	}
	r.setupNames()
	for i := range c.Tests {
		r.tests(&c.Tests[i])
	}
	r.holds()
	r.blocks()
	r.logs()
}

// spoilt reports whether the reader has found a mistake in a table already, or in its whole file: what would follow from
// it is not told as a second mistake.
func (r *reader) spoilt(table basis.Origin) bool {
	return slices.ContainsFunc(r.faults, func(f source.Fault) bool {
		inside := f.Key == "" || f.Key == table.Key || strings.HasPrefix(f.Key, table.Key+".")
		return !f.Ask && f.File == table.File && inside
	})
}

func (r *reader) place(id string, at basis.Origin) {
	if id == "" || r.clinic.Place(id) != nil {
		return
	}
	var ids []string
	for _, p := range r.clinic.Places {
		ids = append(ids, p.ID)
	}
	r.wrong(at, fmt.Sprintf("there is no place %q in clinic.toml", id), oneOf(ids, "add a [[place]] there"))
}

func (r *reader) therapist(id string, at basis.Origin) {
	if id == "" || r.clinic.Therapist(id) != nil {
		return
	}
	var ids []string
	for _, t := range r.clinic.Therapists {
		ids = append(ids, t.ID)
	}
	r.wrong(at, fmt.Sprintf("there is no therapist %q in clinic.toml", id), oneOf(ids, "add a [[therapist]] there"))
}

func (r *reader) gauge(id string, at basis.Origin) {
	if id == "" || r.clinic.Gauge(id) != nil {
		return
	}
	var ids []string
	for _, g := range r.clinic.Gauges {
		ids = append(ids, g.ID)
	}
	r.wrong(at, fmt.Sprintf("there is no gauge %q in clinic.toml", id), oneOf(ids, "add a [[gauge]] there"))
}

// oneOf says what to write where an id is not known: one of those that are, or what else to do.
func oneOf(ids []string, otherwise string) string {
	switch len(ids) {
	case 0:
		return otherwise
	case 1:
		return fmt.Sprintf("write %q, or %s", ids[0], otherwise)
	}
	return "write one of " + strings.Join(ids, ", ") + ", or " + otherwise
}

// references holds the therapist's word on the reference against the other leg.
func (r *reader) references() {
	for _, ref := range r.c.References {
		r.therapist(ref.By, ref.At.At("by"))
		if r.c.SoundOther() && !r.spoilt(ref.At) {
			r.ask(ref.At.At("use"), "the other leg is called sound, so symmetry counts and this reference does not", "take it out, or mend other_leg")
		}
	}
}

func (r *reader) trainingDays() {
	for i, d := range r.c.TrainingDays {
		if slices.Contains(r.c.TrainingDays[:i], d) && d != "" {
			r.wrong(r.c.At.At(fmt.Sprintf("training_days[%d]", i)), fmt.Sprintf("training day %s stands twice", d), "keep one: a day has one session")
		}
	}
}

func (r *reader) events() {
	for i, e := range r.c.Events {
		if r.spoilt(e.At) {
			continue
		}
		twice := func(o Event) bool {
			return o.Kind == e.Kind && o.Procedure == e.Procedure && o.Date == e.Date && (o.Side == e.Side || o.Side == unit.Both || e.Side == unit.Both)
		}
		if slices.ContainsFunc(r.c.Events[:i], twice) {
			r.wrong(e.At.At("date"), fmt.Sprintf("the %s of %s stands twice for one knee", e.Kind, e.Date), "keep one: what else was done that day stands in also")
		}
		if e.Kind == Operation && e.Procedure == "" {
			r.wrong(e.At.At("kind"), "an operation without its procedure", `write procedure = "acl-reconstruction"`)
		}
		if e.Procedure == "acl-reconstruction" && e.Graft == "" {
			r.wrong(e.At.At("procedure"), "a reconstruction without its graft", `write graft = "hamstring", "patellar-tendon", "quadriceps-tendon" or "allograft"`)
		}
		if e.Graft != "" && e.Graft != "allograft" && e.GraftFrom == "" {
			r.wrong(e.At.At("graft"), "the leg that gave the graft is not said", `write graft_from = "left" or "right"`)
		}
		other := func(o Event) bool {
			return o.Kind == Operation && e.Kind == Operation && o.Side == e.Side.Opposite() && o.Side != e.Side
		}
		if r.c.OtherLeg == "sound" && e.Side != "" && slices.ContainsFunc(r.c.Events[:i], other) {
			r.wrong(r.c.At.At("other_leg"), "both knees were operated, yet the other leg is called sound", `write other_leg = "operated-too"`)
		}
		if e.GraftFrom != "" && e.GraftFrom != e.Side && e.Side != "" && r.c.OtherLeg == "sound" {
			r.wrong(r.c.At.At("other_leg"), "the other leg gave the graft, yet it is called sound", `write other_leg = "donor"`)
		}
	}
}

func (r *reader) limit(l *Limit) {
	if r.spoilt(l.At) {
		return
	}
	if what, instead := l.Allowance.Misfit(l.Kind); what != "" {
		r.wrong(l.At.At("kind"), what, instead)
	}
	if l.Lifts != nil && !l.Lifts.After(l.From) {
		r.wrong(l.At.At("lifts"), fmt.Sprintf("lifts %s does not lie after from %s", l.Lifts, l.From), "write the first day without the limit")
	}
}

func (r *reader) setup(id string, s Setup) {
	r.gauge(s.Gauge, s.At.At("gauge"))
	if s.Device == "" {
		return
	}
	at := s.Place
	if at == "" {
		at = r.c.Place
	} else {
		r.place(at, s.At.At("place"))
	}
	r.device(s.Device, at, s.At.At("device"))
}

func (r *reader) device(id, at string, from basis.Origin) {
	place := r.clinic.Place(at)
	if id == "" || place == nil || place.Device(id) != nil {
		return
	}
	var ids []string
	for i := range place.Devices {
		ids = append(ids, place.Devices[i].ID)
	}
	r.wrong(from, fmt.Sprintf("there is no device %q at %s", id, at), oneOf(ids, "add a [[place.device]] to "+at+" in clinic.toml"))
}

func (r *reader) blocks() {
	blocks := r.c.Blocks
	for i := range blocks {
		b := &blocks[i]
		r.therapist(b.By, b.At.At("by"))
		if b.Cuffed != nil {
			r.therapist(b.Cuffed.By, b.Cuffed.At.At("by"))
		}
		for _, o := range b.Overrides {
			r.override(o)
		}
		if b.NextVisit != nil && b.NextVisit.Before(b.Starts) {
			r.wrong(b.At.At("next_visit"), fmt.Sprintf("next_visit %s lies before the block's first day %s", b.NextVisit, b.Starts), "write the day of the visit after it")
		}
		if i == 0 {
			continue
		}
		before := &blocks[i-1]
		if end := before.Starts.AddWeeks(before.Weeks); b.Starts.Before(end) && !before.Starts.IsZero() && !b.Starts.IsZero() {
			r.wrong(b.At.At("starts"), fmt.Sprintf("block %d begins %s, while block %d runs to %s", b.Number, b.Starts, before.Number, end.AddDays(-1)),
				fmt.Sprintf("begin on %s or later, or shorten block %d", end, before.Number))
		}
	}
}

// reasons are the words that an override's reason begins with.
var reasons = []string{"pain", "swelling", "travel", "equipment", "technique", "wish", "surgeon"}

func (r *reader) override(o Override) {
	if r.spoilt(o.At) {
		return
	}
	if o.Sets == nil && o.Reps == nil && o.Reserve == nil && !o.Plates.OK() && o.Range == nil && !o.Leave {
		r.wrong(o.At, "an override that sets nothing", "write sets, reps, reserve, plates_kg, range_deg or leave_out = true")
	}
	r.surgeonsWord(o)
	word, _, _ := strings.Cut(o.Reason, ":")
	if o.Reason != "" && !slices.Contains(reasons, strings.TrimSpace(word)) {
		r.wrong(o.At.At("reason"), fmt.Sprintf("reason %q does not begin with a known word", o.Reason),
			"begin with one of "+strings.Join(reasons, ", ")+"; more words after a colon")
	}
}
