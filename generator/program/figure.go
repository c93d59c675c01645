package program

import (
	"paceleaf/generator/figure"
	"paceleaf/generator/source"
)

// judgeFigure holds the pose of an exercise against bodies and against the exercise's own range. A clinic's own exercise
// may lack it: then a question is asked, as for its words.
func (r *reader) judgeFigure(ex *Exercise) {
	if !ex.Figure.Drawn() {
		r.faults.Add(source.Fault{File: ex.At.File, What: "the exercise has no figure: its page will show only words",
			Instead: "add [figure] with [figure.start] and [figure.end], copied from a like exercise", Ask: true})
		return
	}
	for _, f := range figure.Judge(ex.Figure, ex.Range) {
		r.wrong(ex.At.At("figure."+f.Key), f.What, f.Instead)
	}
}
