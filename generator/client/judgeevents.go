package client

import (
	"fmt"
	"slices"

	"paceleaf/generator/unit"
)

// What an injury, an operation and a start must say, and what two of them cannot both be.

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
