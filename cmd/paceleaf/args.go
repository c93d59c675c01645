package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"
)

// args asks for some arguments, and names them in the error.
func args(least, most int, what string) cobra.PositionalArgs {
	return func(c *cobra.Command, given []string) error {
		verb := strings.TrimPrefix(c.CommandPath(), c.Root().Name()+" ")
		switch {
		case len(given) < least:
			return usageError{fmt.Errorf("%s needs %s; write: %s", verb, what, c.UseLine())}
		case len(given) > most:
			return usageError{fmt.Errorf("%s takes no %q; write: %s", verb, given[most], c.UseLine())}
		}
		return nil
	}
}

var noArgs = args(0, 0, "")

// verbs asks that what stands behind a command is one of its verbs.
func verbs(c *cobra.Command, given []string) error {
	if len(given) == 0 {
		return nil
	}
	c.SuggestionsMinimumDistance = 2
	near := c.SuggestionsFor(given[0])
	if len(near) == 0 {
		for _, v := range c.Commands() {
			if v.IsAvailableCommand() && v.Name() != "help" && v.Name() != "completion" {
				near = append(near, v.Name())
			}
		}
		return usageError{fmt.Errorf("%s has no verb %q; write one of %s", c.CommandPath(), given[0], strings.Join(near, ", "))}
	}
	return usageError{fmt.Errorf("%s has no verb %q; did you mean %s?", c.CommandPath(), given[0], strings.Join(near, " or "))}
}

// badFlag says what is wrong with a flag, without the names of our tools.
func badFlag(_ *cobra.Command, err error) error {
	what, _, notNumber := strings.Cut(err.Error(), ": strconv.")
	if notNumber {
		what += "; write a whole number"
	}
	return usageError{errors.New(what)}
}

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
