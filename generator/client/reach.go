package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// YBalance is a test of reach on one leg in three directions. The side is the leg that stands.
type YBalance struct {
	At    basis.Origin
	Trial Trial     `key:"trial" doc:"best or mean of the trials; best where it is left out; never trended across"`
	Left  ReachSide `key:"left" doc:"standing on the left leg"`
	Right ReachSide `key:"right" doc:"standing on the right leg"`
}

// ReachSide is what one leg reached while standing on it.
type ReachSide struct {
	At             basis.Origin
	Anterior       []basis.Num[unit.Metres] `key:"anterior,list" doc:"trials of the reach to the front" range:"0.1 1.6" show:"[62, 64, 63]"`
	Posteromedial  []basis.Num[unit.Metres] `key:"posteromedial,list" doc:"trials of the reach back and inward" range:"0.1 1.6" show:"[98, 101, 100]"`
	Posterolateral []basis.Num[unit.Metres] `key:"posterolateral,list" doc:"trials of the reach back and outward" range:"0.1 1.6" show:"[92, 95, 94]"`
	Leg            basis.Num[unit.Metres]   `key:"leg" doc:"hip bone to inner ankle; where it differs from the set-up" range:"0.4 1.3" show:"91"`
	NotTested      basis.Said               `key:"not_tested" doc:"why not" show:"swollen that day"`
	StoppedForPain bool                     `key:"stopped_for_pain" doc:"tried and stopped: no value counts"`
}

// Done reports whether any reach was typed.
func (s ReachSide) Done() bool {
	return len(s.Anterior)+len(s.Posteromedial)+len(s.Posterolateral) > 0
}

// Rise is a test of standing up from lower and lower seats on one leg.
type Rise struct {
	At    basis.Origin
	Left  RiseSide `key:"left" doc:"on the left leg"`
	Right RiseSide `key:"right" doc:"on the right leg"`
}

// RiseSide is the lowest seat that one leg stood up from.
type RiseSide struct {
	At             basis.Origin
	Seat           basis.Num[unit.Metres] `key:"seat" doc:"height of the lowest seat" range:"0.01 0.99" ask:"0.1 0.7" show:"40"`
	NotTested      basis.Said             `key:"not_tested" doc:"why not" show:"swollen that day"`
	StoppedForPain bool                   `key:"stopped_for_pain" doc:"tried and stopped: no value counts"`
}

// StandingLeg is the length of a leg: what the day says, else the set-up.
func (c *Client) StandingLeg(y *YBalance, side unit.Side) basis.Num[unit.Metres] {
	typed, setup := y.Left.Leg, c.Setups[YBalanceTest].Left.Leg
	if side == unit.Right {
		typed, setup = y.Right.Leg, c.Setups[YBalanceTest].Right.Leg
	}
	if typed.OK() {
		return typed
	}
	return setup
}

// The ids of these two tests.
const (
	YBalanceTest = "y-balance"
	RiseTest     = "single-leg-rise"
)
