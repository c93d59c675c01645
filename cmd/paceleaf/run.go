package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"time"

	"github.com/spf13/cobra"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// Version is written into every page's key and small print.
const Version = "0.1.0"

// Exit codes (fixed: scripts rely on them).
const (
	exitDone  = 0
	exitInput = 1 // the input is wrong
	exitUsage = 2 // the command is wrong
)

// errInput is a mistake in the files, already printed.
var errInput = errors.New("the input is wrong")

// usageError is a command that is wrong.
type usageError struct{ error }

// run carries out one command and returns its exit code.
func run(args []string, out, errs io.Writer) int {
	a := &app{out: out, errs: errs}
	root := a.root()
	root.SetArgs(args)
	root.SetOut(out)
	root.SetErr(errs)
	verb, err := root.ExecuteC()
	var usage usageError
	switch {
	case err == nil:
		return exitDone
	case errors.Is(err, errInput):
		return exitInput
	case errors.As(err, &usage), !a.started:
		fmt.Fprint(errs, misused(verb, err))
		return exitUsage
	}
	fmt.Fprintln(errs, "paceleaf:", err)
	return exitInput
}

// testOnlyWithoutLibrary spares scripts that look at clients' pages the making of the library.
var testOnlyWithoutLibrary bool

// app is one command under way.
type app struct {
	out, errs io.Writer
	clinic    string
	outDir    string
	strict    bool
	on        unit.Day // the day that the overview is for; zero: today
	started   bool     // the arguments were right; what fails now is the work
}

func (a *app) root() *cobra.Command {
	root := &cobra.Command{
		Use:   "paceleaf",
		Short: "Handouts, worksheets and plans for knees, from a clinic's folder of TOML",
		Long: `Paceleaf reads a clinic's folder (programs, clients, tests) and makes what a client takes home,
what the therapist decides by, and a plan with every number's sum.

Begin here:
  paceleaf demo                       a made-up clinic, written and built
  paceleaf start clinic               your own, in an empty folder
  paceleaf check                      every mistake, with file and line
  paceleaf build                      pages into out/
  paceleaf why tern-04                where each number comes from
  paceleaf keys test                  every key of a kind of file, with examples

It computes; it decides nothing. A licensed professional reads and signs what it makes.`,
		Example:          "  paceleaf check --clinic saltmarsh",
		SilenceUsage:     true,
		SilenceErrors:    true,
		Args:             verbs,
		RunE:             func(c *cobra.Command, _ []string) error { return c.Help() },
		PersistentPreRun: func(*cobra.Command, []string) { a.started = true },
	}
	root.PersistentFlags().StringVar(&a.clinic, "clinic", ".", "the clinic's folder")
	_ = root.MarkPersistentFlagDirname("clinic")
	root.SetFlagErrorFunc(badFlag)
	root.AddCommand(a.demo(), a.start(), a.check(), a.build(), a.why(), a.hold(), a.floor(), a.keys(), a.version())
	return root
}

// files are the three folders that pages are made of. The clinic's is opened so that no link leads out of it.
func (a *app) files() (generator.Files, error) {
	root, err := os.OpenRoot(a.clinic)
	if err != nil {
		return generator.Files{}, fmt.Errorf("the clinic's folder %s cannot be opened; name another by --clinic", a.clinic)
	}
	on := a.on
	if on.IsZero() {
		on = today()
	}
	return generator.Files{Clinic: root.FS(), Programs: programs.FS, Templates: templates.FS, Version: Version, Today: on, WithoutLibrary: testOnlyWithoutLibrary}, nil
}

// open reads what all clients share; its mistakes are printed.
func (a *app) open() (*generator.House, error) {
	files, err := a.files()
	if err != nil {
		return nil, err
	}
	house, faults := generator.Open(files)
	if house == nil {
		return nil, a.faults(faults)
	}
	return house, nil
}

// faults prints mistakes and questions; it returns errInput where there is a mistake (with --strict: or a question).
func (a *app) faults(faults generator.Faults) error {
	wrong, asked := faults.Wrong(), faults.Asked()
	for _, f := range wrong {
		fmt.Fprintln(a.errs, f.Error())
	}
	for _, f := range asked {
		fmt.Fprintln(a.errs, "question:", f.Error())
	}
	switch {
	case len(wrong) > 0:
		fmt.Fprintf(a.errs, "%s.\n", counted(len(wrong), "mistake"))
		return errInput
	case len(asked) > 0 && a.strict:
		fmt.Fprintf(a.errs, "%s; with --strict each counts as a mistake.\n", counted(len(asked), "question"))
		return errInput
	}
	return nil
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// today is the one place that reads the clock.
func today() unit.Day {
	now := time.Now()
	return unit.Day{Year: now.Year(), Month: now.Month(), Date: now.Day()}
}

// day reads a --on flag.
func day(text string) (unit.Day, error) {
	if text == "" {
		return unit.Day{}, nil
	}
	d, err := unit.ParseDay(text)
	if err != nil {
		return d, usageError{err}
	}
	return d, nil
}

// codes completes clients' codes.
func (a *app) codes(_ *cobra.Command, given []string, _ string) ([]cobra.Completion, cobra.ShellCompDirective) {
	if len(given) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	files, err := a.files()
	if err != nil {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	if house, _ := generator.Open(files); house != nil {
		return house.Codes(), cobra.ShellCompDirectiveNoFileComp
	}
	return nil, cobra.ShellCompDirectiveNoFileComp
}
