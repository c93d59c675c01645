package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// stimulation is how long a stimulated set takes: contractions times on and off. The current itself is what the client can bear.
func (l *loader) stimulation(w *WeekDose) {
	s := l.slot.Stimulated
	if l.slot.Method != program.StimulatedBy || s == nil {
		return
	}
	id := func(what string) string { return l.slot.ID + ".stimulated-" + what }
	w.Time = basis.Try3(l.weekID(w.Week, "stimulation-time"), formula.ByStimulationTime, formula.StimulationTime,
		basis.Given(id("contractions"), byDose, unit.Count(s.Contractions), "contractions"), basis.Given(id("on"), byDose, s.On, "on"), basis.Given(id("off"), byDose, s.Off, "off"))
}
