package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"paceleaf/generator"
	"paceleaf/generator/source"
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

// jsonFault is a fault as editors read it.
type jsonFault struct {
	File     string `json:"file"`
	Line     int    `json:"line"`
	Severity string `json:"severity"` // mistake, question
	What     string `json:"what"`
	Instead  string `json:"instead"`
}

func (a *app) faultsJSON(faults source.Faults) error {
	list := make([]jsonFault, len(faults))
	for i, f := range faults {
		list[i] = jsonFault{f.File, f.Line, "mistake", f.What, f.Instead}
		if f.Ask {
			list[i].Severity = "question"
		}
	}
	if _, err := a.out.Write(source.WriteJSON(map[string]any{"format": 1, "faults": list})); err != nil {
		return err
	}
	if len(faults.Wrong()) > 0 || a.strict && len(faults) > 0 {
		return errInput
	}
	return nil
}
