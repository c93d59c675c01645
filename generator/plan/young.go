package plan

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
)

// grown is the age below which a client is a young person: a guardian reads and signs too, values are taken per kilogram
// of the day's mass, and the clinic's own floor for sport counts.
const grown = client.GrownAt

// Young reports whether the client is under age on the block's first day. An age that is not known is not young.
func (p *Plan) Young() bool {
	return p.Client.Born.Under(grown, p.AsOf)
}

// drivesFrom is the age from which a page speaks of driving; common practice, no source: laws differ from land to land.
const drivesFrom = 17

// TooYoungToDrive reports whether the client is known to be younger than people are who drive.
func (p *Plan) TooYoungToDrive() bool {
	return p.Client.Born.Under(drivesFrom, p.AsOf)
}

// youngFloor is the clinic's own floor in months for a young person's return to sport.
// youngFloor is the note of the clinic's own floor.
const youngFloor basis.Said = "the clinic's own floor for young people"

func (j judge) youngFloor(a *program.Activity, clinic *client.Clinic) []Criterion {
	months := clinic.Under18.SportNotBeforeMonths
	if !a.Sport || months == 0 || !j.c.Born.Under(grown, j.asOf) {
		return nil
	}
	rule := &program.Criterion{EarliestMonth: &months, Standing: "common practice", Note: string(youngFloor)}
	c := Criterion{ID: a.ID + ".time-under-18", Of: a.ID, Measure: "time", Rule: rule}
	j.floor(&c)
	return []Criterion{c}
}

// guardian asks who signs with a young client.
func guardian(p *Plan) []Mistake {
	if !p.Young() || p.Client.Guardian != "" {
		return nil
	}
	return []Mistake{{At: p.Client.At.At("born"), Ask: true, What: fmt.Sprintf("%s is under %d and no guardian is named", p.Client.Code, grown),
		Instead: `write guardian = "mother", "father" or who else signs with the client; no name is needed`}}
}
