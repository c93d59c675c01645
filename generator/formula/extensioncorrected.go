package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByExtensionCorrected is the rule of ExtensionCorrected.
var ByExtensionCorrected = basis.Rule{Name: "gravity added", Sum: "$1 + $2", Source: "direction: Nelson & Duncan 1983"}

// ExtensionCorrected returns the torque of straightening with the leg's weight given back: T + G. The muscle lifted the leg as well.
//
// Source: sum of moments; that neglect makes straightening look weaker: Nelson & Duncan 1983 (Phys Ther 63:674, place from memory).
// Studied: sitting, thigh level, sensor not set to zero with the leg on it.
// Refuses: nothing; the caller knows whether the sensor was set to zero.
func ExtensionCorrected(T, G unit.NewtonMetres) unit.NewtonMetres { return T + G }
