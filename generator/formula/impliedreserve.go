package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByImpliedReserve is the rule of ImpliedReserve.
var ByImpliedReserve = basis.Rule{Name: "implied reserve", Sum: "$1 − $2", Source: "repetitions in reserve, Zourdos 2016"}

// ImpliedReserve returns how many repetitions are left when r of n are done: q = n − r. Below zero the set cannot be
// finished at this load. For a planned load n comes from ImpliedToFailure.
//
// Source: repetitions in reserve, Zourdos 2016, JSCR 30(1):267–275.
// Studied: as ToFailure.
// Refuses: nothing; ImpliedToFailure has refused before.
func ImpliedReserve(n, r unit.Count) unit.Count { return n - r }
