package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// The Y-balance and the rise from a seat bend the standing knee under the whole body: limits speak of them as of any other test
// (rules 9). How deep a knee goes is not typed. Chosen: common practice, no source; what goes less deep is refused with it.
var (
	yBalanceReach = unit.Reach{Straightest: 0, MostBent: 90}
	riseReach     = unit.Reach{Straightest: 0, MostBent: 110}
)

// standingKinds are the kinds of limit that both tests name.
var standingKinds = []unit.Kind{unit.MaximalEffort, unit.LoadedBend, unit.WeightBearing}

// reaches refuses what one leg did in these two tests.
func (t *tester) reaches() {
	if why := t.closed(standingKinds, "", &yBalanceReach, nil); why != "" {
		leg := &t.day.YBalance.Left
		if t.side == unit.Right {
			leg = &t.day.YBalance.Right
		}
		if leg.Done() {
			*leg = client.ReachSide{At: leg.At, NotTested: basis.Say(refusedTest, why)}
			t.ask("y_balance", client.YBalanceTest+", "+string(t.side)+" leg", why)
		}
	}
	if why := t.closed(standingKinds, "", &riseReach, nil); why != "" {
		leg := &t.day.Rise.Left
		if t.side == unit.Right {
			leg = &t.day.Rise.Right
		}
		if leg.Seat.OK() {
			*leg = client.RiseSide{At: leg.At, NotTested: basis.Say(refusedTest, why)}
			t.ask("single_leg_rise", client.RiseTest+", "+string(t.side)+" leg", why)
		}
	}
}
