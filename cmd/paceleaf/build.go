package main

import (
	"github.com/spf13/cobra"
)

func (a *app) build() *cobra.Command {
	var workers int
	var on string
	var library bool
	c := &cobra.Command{
		Use:   "build",
		Short: "Make the pages of all clients into a folder",
		Long: `Build makes, for every client with a block:

  OUT/hand/CLIENT/handout.html, handout.md     what the client gets (a draft until it is signed)
  OUT/desk/CLIENT/worksheet.html, plan.json    the therapist's alone
  OUT/desk/CLIENT/letter.html, letter.md       a draft to the surgeon or referrer, for the therapist to sign
  OUT/desk/overview.html                       all clients: who needs you first, as of today or of --on

and for everybody, without any person in it:

  OUT/library/index.html                       exercises, programs, notes of reasons and sources

Only what has changed is made again. A client with a mistake keeps its earlier pages and is listed; then the exit code is 1.
A mistake of a program stops its clients alone; all others are built. A mistake in any program or exercise that the library shows makes the
exit code 1. Questions about your own programs that no client follows, and about files that no program reads, are check's alone: --strict does not see them.`,
		Example: "  paceleaf build\n  paceleaf build --clinic saltmarsh --out /media/stick/pages",
		Args:    noArgs,
		RunE: func(*cobra.Command, []string) error {
			var err error
			if a.on, err = day(on); err != nil {
				return err
			}
			house, err := a.open()
			if err != nil {
				return err
			}
			if library {
				return a.buildLibrary(house, a.outOf(a.clinic), workers)
			}
			return a.buildHouse(house, a.outOf(a.clinic), workers)
		},
	}
	c.Flags().StringVar(&a.outDir, "out", "", "where the pages go (default CLINIC/out)")
	_ = c.MarkFlagDirname("out")
	c.Flags().BoolVar(&library, "library", false, "only the library; no client is read")
	c.Flags().IntVar(&workers, "workers", 0, "how many clients at once (default: one for each core)")
	c.Flags().StringVar(&on, "on", "", "the day that the overview is for (default today)")
	a.strictFlag(c)
	return c
}

func (a *app) strictFlag(c *cobra.Command) {
	c.Flags().BoolVar(&a.strict, "strict", false, "take each question for a mistake")
}
