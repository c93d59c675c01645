package client

import (
	"fmt"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Conditions of a test of force: what the day says, else the set-up of that test.
func (c *Client) Conditions(s *Strength) Conditions {
	have, typed := s.Conditions, c.Setups[s.Test].Conditions
	if have.Gauge == "" {
		have.Gauge = typed.Gauge
	}
	if have.Mode == "" {
		have.Mode = typed.Mode
	}
	if have.Mode == "" {
		have.Mode = IsometricMode
	}
	if !have.Angle.OK() {
		have.Angle = typed.Angle
	}
	if have.Speed == nil {
		have.Speed = typed.Speed
	}
	if have.Tared == nil {
		have.Tared = typed.Tared
	}
	if !have.Shank.OK() {
		have.Shank = typed.Shank
	}
	if have.Model == "" {
		have.Model = typed.Model
	}
	if !have.WeighedAt.OK() {
		have.WeighedAt = typed.WeighedAt
	}
	return have
}

// LimbWeight is what the sensor showed with the relaxed leg on it: what the day says, else the set-up.
func (c *Client) LimbWeight(s *Strength, side unit.Side) basis.Num[unit.Newtons] {
	pull, arm := s.Left, c.Setups[s.Test].Left
	if side == unit.Right {
		pull, arm = s.Right, c.Setups[s.Test].Right
	}
	if pull.LimbWeight.OK() {
		return pull.LimbWeight
	}
	return arm.LimbWeight
}

// weighed reports whether a leg was weighed.
func (c *Client) weighed(s *Strength) bool {
	return c.LimbWeight(s, unit.Left).OK() || c.LimbWeight(s, unit.Right).OK()
}

// Arm is the lever of a leg: what the day says, else the set-up.
func (c *Client) Arm(s *Strength, side unit.Side) basis.Num[unit.Metres] {
	pull, arm := s.Left, c.Setups[s.Test].Left
	if side == unit.Right {
		pull, arm = s.Right, c.Setups[s.Test].Right
	}
	if pull.Arm.OK() {
		return pull.Arm
	}
	return arm.Arm
}

// Untared reports whether a test of force must be corrected for gravity: isometric, away from 90 degrees, not tared.
func (c Conditions) Untared() bool {
	angle, ok := c.Angle.Value()
	return c.Mode == IsometricMode && ok && angle != 90 && (c.Tared == nil || !*c.Tared)
}

// conditions asks that a force says at which bend it was measured, and what the weight of the shank did to it. What the
// set-up lacks is told once, not on every test day.
func (r *reader) conditions(s *Strength) {
	setup := basis.Origin{File: r.dir + "/client.toml", Key: "setup." + s.Test}
	have := r.c.Conditions(s)
	tested := len(s.Left.Peak)+len(s.Right.Peak) > 0
	if !tested || r.spoilt(setup) || r.told[s.Test] {
		return
	}
	at, here := s.At.At("angle_deg"), fmt.Sprintf("here or in [setup.%s] of client.toml", s.Test)
	if strings.HasSuffix(at.File, ".csv") {
		here = fmt.Sprintf("in [setup.%s] of client.toml", s.Test) // a sheet has no column for it
	}
	if _, typed := r.c.Setups[s.Test]; typed && !s.Angle.OK() {
		at, here = setup.At("angle_deg"), "here"
	}
	switch {
	case have.Mode == IsometricMode && !have.Angle.OK():
		r.wrong(at, fmt.Sprintf("%s does not say at which bend it is made", s.Test), "write angle_deg "+here)
	case have.Untared() && r.c.weighed(s) && !have.WeighedAt.OK():
		r.wrong(at, fmt.Sprintf("%s does not say at which bend the leg was weighed", s.Test), "write weighed_at_deg "+here+", best near 50")
	case have.Untared() && r.c.weighed(s):
		return
	case have.Untared() && have.Tared == nil:
		r.wrong(at, fmt.Sprintf("%s is made away from 90°, where the weight of the shank counts", s.Test),
			fmt.Sprintf("write tared = true %s if that weight was taken away before the pull, else tared = false and shank_cm, or limb_weight_n of each leg", here))
	case have.Untared() && !have.Shank.OK():
		r.wrong(at, fmt.Sprintf("%s is made away from 90° and the shank was not weighed away", s.Test), "write shank_cm "+here+", or limb_weight_n of each leg and weighed_at_deg")
	case have.Untared() && have.Model == DeLeva && r.c.Sex == "":
		r.wrong(r.c.At.At("sex"), fmt.Sprintf("model = \"de-leva\" of %s takes the weight of the shank by sex, and none is typed", s.Test), `write sex = "female" or "male" in client.toml, or model = "winter"`)
	default:
		return
	}
	r.told[s.Test] = true
}
