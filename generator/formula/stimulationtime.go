package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByStimulationTime is the rule of StimulationTime.
var ByStimulationTime = basis.Rule{Name: "time of electrical stimulation", Sum: "$1 × ($2 + $3)", Source: "dose: Nussbaum 2017, Table 7"}

// StimulationTime returns how long a session of muscle stimulation takes: contractions·(on + off). 12 to 15 of 10 s with 50 s off
// take 12 to 15 min.
//
// Source: Nussbaum 2017, Physiother Can 69(5):1–76, Table 7, doi 10.3138/ptc.2015-88: after reconstruction, knee about 65°, highest
// current that is borne, on 6 to 10 s, off 12 to 50 s, 12 to 15 contractions, 3 days a week for 4 to 6 weeks from the first week.
// Studied: quadriceps after reconstruction. Who must not be stimulated is not settled here.
// Refuses: a number of contractions, an on or an off outside that dose.
func StimulationTime(contractions unit.Count, on, off unit.Seconds) (unit.Seconds, error) {
	switch {
	case !number(contractions) || contractions < 12 || contractions > 15:
		return 0, errors.New("12 to 15 contractions were studied: no session")
	case !number(on) || on < 6 || on > 10:
		return 0, errors.New("6 to 10 s on were studied: no session")
	case !number(off) || off < 12 || off > 50:
		return 0, errors.New("12 to 50 s off were studied: no session")
	}
	return unit.Seconds(float64(contractions) * float64(on+off)), nil
}
