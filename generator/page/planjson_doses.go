package page

import (
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

type (
	prescriptionJSON struct {
		Exercise string     `json:"exercise"`
		Side     unit.Side  `json:"side"`
		Role     string     `json:"role"`
		Slot     string     `json:"slot,omitempty"`
		Device   string     `json:"device,omitempty"`
		Level    int        `json:"level,omitempty"` // of a ladder: the rung to begin on, from 1
		Sessions []string   `json:"sessions,omitempty"`
		Weeks    []weekJSON `json:"weeks"`
	}
	weekJSON struct {
		Week           int          `json:"week"`
		Starts         unit.Day     `json:"starts"`
		Due            bool         `json:"due"`
		Sets           *int         `json:"sets,omitempty"`
		Reps           *int         `json:"reps,omitempty"`
		RepsTo         *int         `json:"reps_to,omitempty"` // repetitions first, up to so many
		Reserve        *int         `json:"reserve,omitempty"`
		Hold           *jsonNumber  `json:"hold_s,omitempty"`
		TimesADay      *int         `json:"times_a_day,omitempty"`
		Minutes        *int         `json:"minutes,omitempty"`
		WorkFor        *jsonNumber  `json:"work_s,omitempty"` // of one set, or of a round's hard part
		Rounds         *int         `json:"rounds,omitempty"`
		Effort         *int         `json:"effort,omitempty"` // of 10
		Talk           program.Talk `json:"talk,omitempty"`
		Contacts       *int         `json:"foot_contacts,omitempty"`
		Rest           *jsonNumber  `json:"rest_s,omitempty"`
		Plates         *jsonNumber  `json:"plates_kg,omitempty"`
		Moved          *jsonNumber  `json:"moved_kg,omitempty"`
		PerSide        []jsonNumber `json:"per_side_kg,omitempty"`
		Range          []jsonNumber `json:"range_deg,omitempty"`
		RangeBy        string       `json:"range_by,omitempty"` // the measured end that narrowed it
		Share          *jsonNumber  `json:"share_percent,omitempty"`
		Implied        *jsonNumber  `json:"implied_reserve,omitempty"`
		Pin            int          `json:"pin,omitempty"`
		AskedReps      int          `json:"asked_reps,omitempty"` // of the program, where a coarse step raised them
		Each           []setJSON    `json:"each,omitempty"`       // set by set, where they differ
		Stretch        *jsonNumber  `json:"stretch_m,omitempty"`  // of a band
		HoldAt         *jsonNumber  `json:"hold_n,omitempty"`     // force of a hold
		Pressure       *jsonNumber  `json:"cuff_mmhg,omitempty"`
		FindYourWeight bool         `json:"find_your_weight,omitempty"`
		Why            string       `json:"why,omitempty"`
		Basis          string       `json:"basis,omitempty"`
	}
	setJSON struct {
		Plates *jsonNumber `json:"plates_kg,omitempty"`
		Reps   *int        `json:"reps,omitempty"` // left out: as many as can be done
	}
	droppedJSON struct {
		Slot     string    `json:"slot"`
		Exercise string    `json:"exercise"`
		Side     unit.Side `json:"side"`
		Week     int       `json:"week"`
		Because  string    `json:"because"`
		Empty    bool      `json:"empty,omitempty"`
		Paused   bool      `json:"paused,omitempty"`
	}
)

func prescriptionsIn(all []plan.Prescription, t *trail) []prescriptionJSON {
	out := []prescriptionJSON{}
	for _, pr := range all {
		one := prescriptionJSON{Exercise: pr.Exercise.ID, Side: pr.Side, Role: pr.Role, Level: pr.Level, Sessions: pr.Sessions, Weeks: []weekJSON{}}
		if pr.Slot != nil {
			one.Slot = pr.Slot.ID
		}
		if pr.Device != nil {
			one.Device = pr.Device.ID
		}
		for _, w := range pr.Weeks {
			one.Weeks = append(one.Weeks, weekIn(w, t))
		}
		out = append(out, one)
	}
	return out
}

func weekIn(w plan.WeekDose, t *trail) weekJSON {
	out := weekJSON{Week: w.Week, Starts: w.Starts, Due: w.Due,
		Sets: w.Dose.Sets, Reps: w.Dose.Reps, RepsTo: w.Dose.RepsTo, Reserve: w.Dose.Reserve, Hold: jsonOptional(w.Dose.HoldFor), TimesADay: w.Dose.TimesADay,
		Minutes: w.Dose.Minutes, Contacts: w.Dose.Contacts, Rest: jsonOptional(w.Dose.Rest),
		Plates: knownNumber(w.Plates), Moved: knownNumber(w.Moved), Range: bendPair(w.Range), RangeBy: w.RangeBy.String(), Share: knownNumber(w.Share), Implied: knownNumber(w.Implied),
		Pin: w.NearPin, FindYourWeight: w.FindYourWeight, Why: w.Why.String(), Basis: t.id(w.Plates.Step())}
	if out.Basis == "" {
		out.Basis = t.id(w.Moved.Step())
	}
	out.WorkFor, out.Rounds, out.Effort, out.Talk = jsonOptional(w.Dose.WorkFor), w.Dose.Rounds, w.Dose.Effort, w.Dose.Talk
	out.AskedReps, out.Stretch, out.HoldAt, out.Pressure = w.AskedReps, knownNumber(w.Stretch), knownNumber(w.HoldAt), knownNumber(w.Pressure)
	for _, s := range w.Each {
		out.Each = append(out.Each, setJSON{knownNumber(s.Plates), s.Reps})
	}
	for _, kg := range w.PerSide {
		out.PerSide = append(out.PerSide, jsonNumber(kg))
	}
	return out
}

func droppedIn(all []plan.Dropped) []droppedJSON {
	out := []droppedJSON{}
	for _, d := range all {
		out = append(out, droppedJSON{d.Slot, d.Exercise, d.Side, d.Week, d.Because.String(), d.Empty, d.Paused})
	}
	return out
}
