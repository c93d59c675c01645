package main

import (
	"errors"
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"

	"paceleaf/generator"
	"paceleaf/site"
	"paceleaf/templates"
)

func (a *app) start() *cobra.Command {
	c := &cobra.Command{
		Use:   "start",
		Short: "Begin a file: clinic, client, test, block, program, phase, limit, exercise, note or language",
		Long: `Start adds one commented file to fill in, and never changes a file that is there. Put your own in the place of
every "?"; paceleaf check says what is still missing.`,
		Example: "  paceleaf start client tern-04\n  paceleaf start test tern-04 --on 2026-05-04\n  paceleaf start block tern-04",
		Args:    verbs,
		RunE:    func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(a.startClinic(), a.startClient(), a.startTest(), a.startBlock(), a.startLanguage())
	for _, k := range generator.LibraryKinds {
		c.AddCommand(a.startLibrary(k))
	}
	return c
}

func (a *app) startClinic() *cobra.Command {
	return &cobra.Command{
		Use:     "clinic [DIR]",
		Short:   "clinic.toml, in an empty folder",
		Example: "  paceleaf start clinic my-clinic",
		Args:    args(0, 1, "at most a folder"),
		RunE: func(_ *cobra.Command, args []string) error {
			dir := a.clinic
			if len(args) > 0 {
				dir = args[0]
			}
			file, err := generator.StartClinic(templates.FS)
			if err != nil {
				return err
			}
			files := generator.Schemas(generator.SchemaFolder)
			files[file.Name] = file.Data
			if err := site.Fill(dir, files); err != nil {
				return err
			}
			a.clinic = dir
			schemas := filepath.Join(dir, filepath.FromSlash(generator.SchemaFolder))
			return a.added(file, schemas+"  for editors that complete and check TOML\nThen: paceleaf start client CODE")
		},
	}
}

func (a *app) startClient() *cobra.Command {
	var program string
	c := &cobra.Command{
		Use:   "client CODE",
		Short: "client.toml of a new client",
		Long: `A client is a code, not a name: small letters, digits and hyphens. The file has the event from which the program's
weeks count: --program names another than acl-reconstruction.`,
		Example: "  paceleaf start client tern-04\n  paceleaf start client heron-07 --program total-knee-replacement",
		Args:    args(1, 1, "a code, such as tern-04"),
		RunE: func(_ *cobra.Command, args []string) error {
			if err := generator.Code(args[0]); err != nil {
				return usageError{err}
			}
			house, err := a.openToAdd()
			if err != nil {
				return err
			}
			file, err := house.StartClient(args[0], program)
			if err != nil {
				return err
			}
			return a.add(file, "Then: paceleaf start test "+args[0]+", paceleaf start block "+args[0])
		},
	}
	c.Flags().StringVar(&program, "program", "", "the program that the client is on (default acl-reconstruction)")
	return c
}

// refuse prints the mistakes for which no file is added.
func (a *app) refuse(wrong generator.Faults) error {
	err := a.faults(wrong)
	fmt.Fprintln(a.errs, "No file was added. Mend these first.")
	return err
}

// openToAdd opens the house; where that fails it also says that nothing was added.
func (a *app) openToAdd() (*generator.House, error) {
	house, err := a.open()
	if errors.Is(err, errInput) {
		fmt.Fprintln(a.errs, "No file was added. Mend these first.")
	}
	return house, err
}

func (a *app) startTest() *cobra.Command {
	var on string
	c := &cobra.Command{
		Use:               "test CODE",
		Short:             "a test day: the tests due, with last time's values as comments",
		Example:           "  paceleaf start test tern-04 --on 2026-05-04",
		Args:              args(1, 1, "the client's code"),
		ValidArgsFunction: a.codes,
		RunE: func(_ *cobra.Command, args []string) error {
			when, err := day(on)
			if err != nil {
				return err
			}
			if when.IsZero() {
				when = today()
			}
			return a.startFor(args[0], func(house *generator.House, done generator.Planned) (generator.Started, error) {
				return house.StartTest(done, when)
			}, "Then: paceleaf check")
		},
	}
	c.Flags().StringVar(&on, "on", "", "the day of the test (default today)")
	return c
}

func (a *app) startBlock() *cobra.Command {
	var on string
	c := &cobra.Command{
		Use:               "block CODE",
		Short:             "the next block",
		Example:           "  paceleaf start block tern-04\n  paceleaf start block tern-04 --on 2026-05-04",
		Args:              args(1, 1, "the client's code"),
		ValidArgsFunction: a.codes,
		RunE: func(_ *cobra.Command, args []string) error {
			when, err := day(on)
			if err != nil {
				return err
			}
			return a.startFor(args[0], func(house *generator.House, done generator.Planned) (generator.Started, error) {
				return house.StartBlock(done.Client, when)
			}, "Then: paceleaf build")
		},
	}
	c.Flags().StringVar(&on, "on", "", "its first day (default: the day after the last block)")
	return c
}

// startFor begins a file of a client that has no mistakes.
func (a *app) startFor(code string, begin func(*generator.House, generator.Planned) (generator.Started, error), then string) error {
	house, err := a.openToAdd()
	if err != nil {
		return err
	}
	if err := known(house.Codes(), code); err != nil {
		return err
	}
	done := house.Plan(code)
	if wrong := done.Faults.Wrong(); len(wrong) > 0 {
		return a.refuse(wrong)
	}
	file, err := begin(house, done)
	if err != nil {
		return err
	}
	return a.add(file, then)
}

// add adds one file; a file that is there is never changed.
func (a *app) add(file generator.Started, then string) error {
	if err := site.Add(a.clinic, file.Name, file.Data); err != nil {
		return err
	}
	return a.added(file, then)
}

func (a *app) added(file generator.Started, then string) error {
	fmt.Fprintln(a.out, filepath.Join(a.clinic, filepath.FromSlash(file.Name)))
	fmt.Fprintln(a.out, then)
	return nil
}
