package client

import (
	"slices"
	"strings"
)

// IsStrengthTest reports whether a name is one under which a test day may give a strength test: knee-extension, or knee-extension-60.
func IsStrengthTest(name string) bool {
	return slices.ContainsFunc(strengthTests, func(t string) bool { return name == t || strings.HasPrefix(name, t+"-") })
}

// IsHop reports whether a name is the one of a hop: hop-single.
func IsHop(name string) bool { return hopTests[name] != "" }
