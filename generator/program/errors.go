package program

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Error is the standard error of measurement of one measure, from programs/errors.toml. An error that nobody has published
// is not known, not zero.
type Error struct {
	At       basis.Origin
	Measure  string        `key:"measure,required" doc:"test.quantity, such as hop-single.lsi"`
	SEM      *Mark         `key:"sem,required" doc:"standard error of measurement, in the unit of the measure"`
	Source   string        `key:"source"`
	Standing unit.Standing `key:"standing,required"`
	Note     string        `key:"note"`
}

// Errors are the errors known, by measure.
type Errors map[string]Error

// errors reads errors.toml of every layer, the clinic's entries over the shipped ones, by measure.
func (r *reader) errors() Errors {
	all := Errors{}
	for _, data := range r.Folder.Layers("errors.toml") {
		var layer struct {
			Errors []Error `key:"error,required"`
		}
		r.faults = append(r.faults, source.TOML("programs/errors.toml", data, &layer)...)
		for _, e := range layer.Errors {
			if _, own := all[e.Measure]; !own {
				r.vouched(e.Source, e.Standing, e.At)
				all[e.Measure] = e
			}
		}
		r.p.Files = append(r.p.Files, "errors.toml")
	}
	return all
}
