package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByFlexionCorrected is the rule of FlexionCorrected.
var ByFlexionCorrected = basis.Rule{Name: "gravity taken off", Sum: "$1 − $2", Source: "direction: Nelson & Duncan 1983"}

// FlexionCorrected returns the torque of bending without the help of the leg's weight: T − G.
//
// Source: sum of moments; that neglect makes bending look stronger: Nelson & Duncan 1983 (Phys Ther 63:674, place from memory).
// Studied: sitting, thigh level, sensor not set to zero with the leg on it. Czaplicki 2015 reports up to 12 % less
// after correction at 60°/s (second-hand).
// Refuses: nothing; the caller knows whether the sensor was set to zero.
func FlexionCorrected(T, G unit.NewtonMetres) unit.NewtonMetres { return T - G }
