package client

import (
	"fmt"
	"strings"

	"paceleaf/generator/basis"
)

// Ids: what the clinic has under a name, and what to write where a client's file names something that it does not have.

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
