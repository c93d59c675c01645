package main

import (
	"github.com/spf13/cobra"
)

func (a *app) build() *cobra.Command {
	var workers int
	c := &cobra.Command{
		Use:   "build",
		Short: "Make the pages of all clients into a folder",
		Long: `Build makes, for every client with a block:

  OUT/hand/CLIENT/handout.html, handout.md     what the client gets (a draft until it is signed)
  OUT/desk/CLIENT/worksheet.html, plan.json    the therapist's alone
  OUT/desk/overview.html                       all clients

Only what has changed is made again. A client with a mistake keeps its earlier pages and is listed; then the exit code is 1.`,
		Example: "  paceleaf build\n  paceleaf build --clinic saltmarsh --out /media/stick/pages",
		Args:    noArgs,
		RunE: func(*cobra.Command, []string) error {
			house, err := a.open()
			if err != nil {
				return err
			}
			return a.buildHouse(house, a.outOf(a.clinic), workers)
		},
	}
	c.Flags().StringVar(&a.outDir, "out", "", "where the pages go (default CLINIC/out)")
	_ = c.MarkFlagDirname("out")
	c.Flags().IntVar(&workers, "workers", 0, "how many clients at once (default: one for each core)")
	a.strictFlag(c)
	return c
}

func (a *app) strictFlag(c *cobra.Command) {
	c.Flags().BoolVar(&a.strict, "strict", false, "take each question for a mistake")
}
