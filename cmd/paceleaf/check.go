package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"paceleaf/generator"
)

func (a *app) check() *cobra.Command {
	var asJSON bool
	c := &cobra.Command{
		Use:   "check",
		Short: "Say every mistake, with file, line and what to write instead",
		Long: `Check reads everything and writes nothing. A mistake stops the pages of what it stands in: clinic.toml stops all,
a program stops its clients, a client only itself. A question is something possible but unusual; --strict takes it
for a mistake. Exit code 0: no mistake; 1: the input is wrong; 2: the command is wrong.`,
		Example: "  paceleaf check\n  paceleaf check --clinic saltmarsh --json",
		Args:    noArgs,
		RunE: func(*cobra.Command, []string) error {
			files, err := a.files()
			if err != nil {
				return err
			}
			house, faults := generator.Open(files)
			if house != nil {
				faults = append(faults, house.Check(today())...)
				faults.Sort()
			}
			if asJSON {
				return a.faultsJSON(faults)
			}
			if err := a.faults(faults); err != nil {
				return err
			}
			if house != nil {
				fmt.Fprintf(a.out, "%s, no mistake", counted(len(house.Codes()), "client"))
				if n := len(faults.Asked()); n > 0 {
					fmt.Fprintf(a.out, ", %s", counted(n, "question"))
				}
				fmt.Fprintln(a.out, ".")
			}
			return nil
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "for editors: the faults as JSON on standard output")
	a.strictFlag(c)
	return c
}

func (a *app) faultsJSON(faults generator.Faults) error {
	if _, err := a.out.Write(generator.FaultsJSON(faults)); err != nil {
		return err
	}
	if len(faults.Wrong()) > 0 || a.strict && len(faults) > 0 {
		return errInput
	}
	return nil
}
