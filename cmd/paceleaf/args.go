package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"
)

// args asks for some arguments, and names them in the error.
func args(least, most int, what string) cobra.PositionalArgs {
	return func(c *cobra.Command, given []string) error {
		switch {
		case len(given) < least:
			return usageError{fmt.Errorf("%s needs %s; write: %s", c.CommandPath(), what, c.UseLine())}
		case len(given) > most:
			return usageError{fmt.Errorf("%s takes no %q; write: %s", c.CommandPath(), given[most], c.UseLine())}
		}
		return nil
	}
}

var noArgs = args(0, 0, "")

// known asks that a client exists.
func known(codes []string, code string) error {
	if slices.Contains(codes, code) {
		return nil
	}
	if len(codes) > 12 {
		codes = append(slices.Clone(codes[:12]), "…")
	}
	return fmt.Errorf("there is no client %q; write one of %s", code, strings.Join(codes, ", "))
}
