package client

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
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
	c.judgeLook(wrong)
	c.judgeLibrary(wrong)
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
		if len(p.Devices) == 0 {
			faults.Add(source.Fault{File: p.At.File, Key: p.At.At("id").Key, Ask: true, What: fmt.Sprintf("place %q has no equipment: what needs any is passed over there", p.ID),
				Instead: "add a [[place.device]] for each thing that stands there, if only a mat"})
		}
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
