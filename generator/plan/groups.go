package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Groups is what groups of people showed about a new injury, for a therapist to talk about. It is a rate of groups against each
// other and never the chance of one person; nothing is opened or closed by it, and no page of a client has it.
type Groups struct {
	NotLike  basis.Said               // why this person is not like those who were studied; then there are no numbers
	Show     bool                     // the clinic asks for the numbers
	Linear   basis.Num[formula.Ratio] // by symmetry of the quadriceps, rule of thumb,
	Rate     basis.Num[formula.Ratio] // as the source reckons it,
	Low      basis.Num[formula.Ratio] // and the ends of its interval
	High     basis.Num[formula.Ratio] //
	Early    basis.Num[formula.Ratio] // of a return on the block's first day against one at nine months
	Symmetry basis.Num[unit.Percent]  // that the rates by symmetry are of
}

// grownUp is the age from which people are like those who were studied. Chosen: the ages of the group were not read, so the
// young are left out.
const grownUp = client.GrownAt

var byMonths = basis.Rule{Name: "full months since the event", Source: "calendar months, clamped"}

// groups are told after a reconstruction only; nil for anybody else.
func groups(clinic *client.Clinic, c *client.Client, event *client.Event, found *finding.Findings, asOf unit.Day) *Groups {
	if event.Procedure != studied {
		return nil
	}
	g := &Groups{Show: clinic.ShowRelativeRate, NotLike: notLike(c, event, asOf)}
	if g.NotLike != "" {
		return g
	}
	months := basis.Given("groups.months", byMonths, unit.Months(asOf.MonthsSince(event.Date)), "on the block's first day")
	g.Early = basis.Try1("groups.early-return", formula.ByRelativeRateByMonth, formula.RelativeRateByMonth, months)
	m := found.Measure("knee-extension.lsi")
	if len(m.Doubts) > 0 {
		g.Symmetry = basis.Refused[unit.Percent]("groups.symmetry", basis.Rule{Name: "symmetry"}, basis.Say("the test is in doubt: {a}", m.Doubts[0]))
	} else {
		g.Symmetry = symmetryIn(found, m)
	}
	g.Linear = basis.Try1("groups.rate-linear", formula.ByRelativeRateLinear, formula.RelativeRateLinear, g.Symmetry)
	g.Rate = basis.Try1("groups.rate", formula.ByRelativeRate, formula.RelativeRate, g.Symmetry)
	g.Low = basis.Try1("groups.rate-low", formula.ByRelativeRateLow, formula.RelativeRateLow, g.Symmetry)
	g.High = basis.Try1("groups.rate-high", formula.ByRelativeRateHigh, formula.RelativeRateHigh, g.Symmetry)
	return g
}

// studied is the operation that the people of the groups had had.
const studied = "acl-reconstruction"

// notLike says why a person is not like those who were studied: adults of twisting sports after a first reconstruction.
func notLike(c *client.Client, event *client.Event, asOf unit.Day) basis.Said {
	switch {
	case c.Born.Year == 0:
		return "the age is not known, and the young were not read about"
	case c.Born.Under(grownUp, asOf):
		return "under 18: the young were not read about"
	case !c.SoundOther() || event.Side == unit.Both:
		return "the other leg is no sound reference: both knees of those who were studied were not injured"
	case c.Sport != "twisting" && c.Sport != "contact":
		return "no twisting or contact sport: those who were studied did one"
	case len(c.Events) > 1:
		return "more than one event: those who were studied had had one"
	}
	return ""
}

// symmetryIn is the newest symmetry of the quadriceps with its basis.
func symmetryIn(found *finding.Findings, m finding.Measure) (lsi basis.Num[unit.Percent]) {
	for i := range found.Strength {
		if t := &found.Strength[i]; t.Test == "knee-extension" && t.On == m.On && m.OK {
			lsi = t.LSI
		}
	}
	return lsi
}
