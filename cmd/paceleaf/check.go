package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"paceleaf/generator"
)

// checking is what check was asked for.
type checking struct {
	json, cert, pages bool
	codes             []string // the clients that it is about
}

func (a *app) check() *cobra.Command {
	var how checking
	c := &cobra.Command{
		Use:   "check [CLIENT]",
		Short: "Say every mistake, with file, line and what to write instead",
		Long: `Check reads everything and writes nothing. A mistake stops the pages of what it stands in: clinic.toml stops all,
a program stops its clients, a client only itself. A question is something possible but unusual; --strict takes it
for a mistake. Programs, phases, limits, exercises and notes of the clinic are judged even where nobody uses them yet.
With CLIENT only what concerns this client is said: its own files, and what all clients share.
With --cert it also lists what each plan, or the one of CLIENT, leaves open of what a reported exercise program has to
state, with --pages questions about how the handouts read and how much they ask for. Exit code 0: no mistake; 1: the input is wrong; 2: the command is wrong.`,
		Example:           "  paceleaf check\n  paceleaf check tern-04\n  paceleaf check --clinic saltmarsh --json\n  paceleaf check --cert tern-04\n  paceleaf check --pages tern-04",
		Args:              args(0, 1, "at most a client"),
		ValidArgsFunction: a.codes,
		RunE: func(_ *cobra.Command, args []string) error {
			files, err := a.files()
			if err != nil {
				return err
			}
			house, faults := generator.Open(files)
			if house == nil {
				return a.checked(how, nil, faults, nil)
			}
			codes := house.Codes()
			if len(args) > 0 {
				if err := known(codes, args[0]); err != nil {
					return err
				}
				codes = args
			}
			faults = append(faults, generator.About(codes, house.Codes(), house.Check(today()))...)
			if how.pages {
				faults = append(faults, house.CheckPages(codes)...)
			}
			faults.Sort()
			var cert []generator.Certified
			if how.cert {
				cert = house.CERT(codes)
			}
			how.codes = codes
			return a.checked(how, house, faults, cert)
		},
	}
	c.Flags().BoolVar(&how.json, "json", false, "for editors: the faults as JSON on standard output")
	c.Flags().BoolVar(&how.cert, "cert", false, "list what each plan leaves open of the 19 lines of a reported exercise program (CERT)")
	c.Flags().BoolVar(&how.pages, "pages", false, "ask about each handout too: how it reads, how much it asks for (PEMAT)")
	a.strictFlag(c)
	return c
}

// checked tells what was found; house is nil where a mistake stops all.
func (a *app) checked(how checking, house *generator.House, faults generator.Faults, cert []generator.Certified) error {
	if how.json {
		return a.faultsJSON(house, faults, cert)
	}
	a.certLines(cert)
	if err := a.faults(faults); err != nil {
		return err
	}
	if house != nil {
		fmt.Fprintf(a.out, "%s, no mistake", counted(len(how.codes), "client"))
		if n := len(faults.Asked()); n > 0 {
			fmt.Fprintf(a.out, ", %s", counted(n, "question"))
		}
		fmt.Fprintln(a.out, ".")
	}
	return nil
}

// certLines says of each plan how many lines are stated, and each open one.
func (a *app) certLines(cert []generator.Certified) {
	for _, c := range cert {
		fmt.Fprintf(a.out, "%s: %d of %d lines of a reported exercise program are stated\n", c.Client, c.Lines-len(c.Open), c.Lines)
		for _, line := range c.Open {
			fmt.Fprintf(a.out, "  open %s\n", line)
		}
	}
}

func (a *app) faultsJSON(house *generator.House, faults generator.Faults, cert []generator.Certified) error {
	var read func(string) []byte
	if house != nil {
		read = house.Text
	}
	if _, err := a.out.Write(generator.FaultsJSON(faults, read, cert)); err != nil {
		return err
	}
	if len(faults.Wrong()) > 0 || a.strict && len(faults) > 0 {
		return errInput
	}
	return nil
}
