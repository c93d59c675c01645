package main

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/spf13/cobra"
)

// misused says what is wrong with a command, how its verb is written, and what a right one looks like.
func misused(c *cobra.Command, err error) string {
	lines := []string{c.CommandPath() + ": " + err.Error()}
	if form := strings.TrimSuffix(c.UseLine(), " [flags]"); form != c.CommandPath() || c.Example == "" {
		lines = append(lines, "  write: "+form)
	}
	for example := range strings.Lines(c.Example) {
		lines = append(lines, "  as in: "+strings.TrimSpace(example))
	}
	return strings.Join(append(lines, "  more:  "+c.CommandPath()+" --help"), "\n") + "\n"
}

// args asks for some arguments, and names them in the error.
func args(least, most int, what string) cobra.PositionalArgs {
	return func(_ *cobra.Command, given []string) error {
		switch {
		case len(given) < least:
			return usageError{fmt.Errorf("it needs %s", what)}
		case len(given) > most:
			return usageError{fmt.Errorf("it takes no %q", given[most])}
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
		return usageError{fmt.Errorf("there is no verb %q; write one of %s", given[0], strings.Join(near, ", "))}
	}
	return usageError{fmt.Errorf("there is no verb %q; did you mean %s?", given[0], strings.Join(near, " or "))}
}

// badFlag says what is wrong with a flag, without the names of our tools.
func badFlag(c *cobra.Command, err error) error {
	what, tool, wrongValue := strings.Cut(err.Error(), ": strconv.")
	switch {
	case strings.HasPrefix(what, "unknown "):
		what += "; write one of " + strings.Join(flagsOf(c), ", ")
	case wrongValue && strings.HasPrefix(tool, "ParseBool"):
		what += "; leave the value out"
	case wrongValue:
		what += "; write a whole number"
	}
	return usageError{errors.New(what)}
}

// flagName is a flag in the list that the library writes of a verb's flags.
var flagName = regexp.MustCompile(`--[a-z]+`)

// flagsOf are the flags of a verb, its own and those of all verbs.
func flagsOf(c *cobra.Command) (names []string) {
	for line := range strings.Lines(c.Flags().FlagUsages()) {
		names = append(names, flagName.FindString(line))
	}
	return names
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
