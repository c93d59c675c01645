package page

import (
	"fmt"
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// A load as a therapist asks about it: what the device says where it is marked in pounds, and why there is none where the page
// says "find your weight".

// loadID is how the load of a week is named.
func loadID(p plan.Prescription, week int) string {
	return fmt.Sprintf("%s.%s.w%d.load", p.Exercise.ID, p.Side, week)
}

// unfound are the loads of the block that the page leaves to be found, each with why.
func unfound(p *plan.Plan) (ids []string, why map[string]string) {
	why = map[string]string{}
	for _, pr := range p.Prescriptions {
		for _, w := range pr.Weeks {
			if id := loadID(pr, w.Week); w.FindYourWeight && !slices.Contains(ids, id) {
				ids = append(ids, id)
				why[id] = w.Why.String()
			}
		}
	}
	return ids, why
}

// toFind says of a load that the page asks for it and why there is none.
func toFind(why string) string { return "— find your weight: " + why }

// inPounds are the loads of devices that are marked in pounds, as they are set there.
func inPounds(p *plan.Plan) map[string]string {
	loads := map[string]string{}
	for _, pr := range p.Prescriptions {
		for _, w := range pr.Weeks {
			if kg, ok := w.Plates.Value(); ok && marked(pr.Device) {
				loads[loadID(pr, w.Week)] = fmt.Sprintf("%g lb", float64(unit.CutTo(unit.Kilograms(float64(kg)/unit.KilogramsPerPound), 0.01)))
			}
		}
	}
	return loads
}
