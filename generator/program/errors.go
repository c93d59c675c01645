package program

import (
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Error is what is known of the error of one measure, from programs/errors.toml. An error that nobody has published is not
// known, not zero. It holds only for tests that were made as its own were: where it names a gauge, a tool or a score of the
// trials, for no other.
type Error struct {
	At       basis.Origin
	Measure  string        `key:"measure,required" doc:"test.quantity, such as hop-single.lsi" show:"hop-single.lsi"`
	Gauge    string        `key:"gauge" doc:"holds only for a gauge whose kind has this word" show:"belt-fixed"`
	AngleBy  string        `key:"angle_by" doc:"holds only for an angle measured with this tool" show:"long-goniometer"`
	Trial    string        `key:"trial" doc:"holds only for this score of the trials: best or mean" show:"best"`
	SEM      *Mark         `key:"sem" doc:"standard error of measurement, in the unit of the measure; percent of the value where the measure is no percentage" show:"3.49 percent"`
	MDC90    *Mark         `key:"mdc90" doc:"the printed smallest real change at 90 %, where no standard error is" show:"8.1 percent"`
	MDC95    *Mark         `key:"mdc95" doc:"the printed smallest real change at 95 %, where no standard error is" show:"9.7 percent"`
	Band     *Mark         `key:"band" doc:"half the width of the printed band of one score, where no standard error is" show:"5 deg"`
	Source   string        `key:"source" doc:"key of the bibliography" show:"reid-2007"`
	Standing unit.Standing `key:"standing,required" doc:"how far the figure may be trusted"`
	Note     string        `key:"note" doc:"what a reader should know of it" show:"42 people after reconstruction" said:"desk"`
}

// ErrorFile is programs/errors.toml.
type ErrorFile struct {
	Errors []Error `key:"error,required" doc:"what is known of the error of one measure; the first entry that holds counts"`
}

// Errors are the errors known, the clinic's before the shipped ones.
type Errors []Error

// Made is how a value was made, as far as an error may depend on it.
type Made struct{ Measure, GaugeKind, AngleBy, Trial string }

// For returns what is known of the error of a value; nil where nothing is.
func (all Errors) For(made Made) *Error {
	for i := range all {
		e := &all[i]
		if e.Measure == made.Measure && strings.Contains(strings.ToLower(made.GaugeKind), strings.ToLower(e.Gauge)) &&
			(e.AngleBy == "" || e.AngleBy == made.AngleBy) && (e.Trial == "" || e.Trial == made.Trial) {
			return e
		}
	}
	return nil
}

// errors reads errors.toml of every layer; of two entries that both hold, the clinic's is found first.
func (r *reader) errors() (all Errors) {
	for _, data := range r.Folder.Layers("errors.toml") {
		var layer ErrorFile
		r.faults = append(r.faults, source.TOML("programs/errors.toml", data, &layer)...)
		for _, e := range layer.Errors {
			r.vouched(e.Source, e.Standing, e.At)
			if e.SEM == nil && e.MDC90 == nil && e.MDC95 == nil && e.Band == nil {
				r.wrong(e.At.At("measure"), "the error of "+e.Measure+" says no number", "write sem, mdc90, mdc95 or band, with the unit in the key")
			}
			all = append(all, e)
		}
		r.p.Files = append(r.p.Files, "errors.toml")
	}
	return all
}
