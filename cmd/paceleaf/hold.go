package main

import (
	"errors"
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"

	"paceleaf/generator"
)

func (a *app) hold() *cobra.Command {
	var from, reason, by string
	c := &cobra.Command{
		Use:   "hold CLIENT --reason REASON",
		Short: "Call a pause between visits, and make its page",
		Long: `Hold adds one file to the client's folder and builds: the client's page then says that hard work of the knee is paused,
and OUT/hand/CLIENT/hold.html is the one page to send. The pause stands until a later test day has looked at the knee.`,
		Example:           `  paceleaf hold tern-04 --from 2026-04-15 --reason "swelling: after a long walk"`,
		Args:              args(1, 1, "the client's code"),
		ValidArgsFunction: a.codes,
		RunE: func(_ *cobra.Command, args []string) error {
			if reason == "" {
				return usageError{errors.New(`it needs a reason; write --reason "swelling: …" (pain, swelling or surgeon, more words after a colon)`)}
			}
			when, err := day(from)
			if err != nil {
				return err
			}
			if when.IsZero() {
				when = today()
			}
			err = a.startFor(args[0], func(house *generator.House, done generator.Planned) (generator.Started, error) {
				return house.StartHold(done.Client, when, by, reason)
			}, "The page to send, once it is signed:")
			if err != nil {
				return err
			}
			out := a.outOf(a.clinic)
			fmt.Fprintln(a.out, "  "+filepath.Join(out, "hand", args[0], "hold.html"))
			house, err := a.open()
			if err != nil {
				return err
			}
			return a.buildHouse(house, out, 0)
		},
	}
	c.Flags().StringVar(&from, "from", "", "its first day (default today)")
	c.Flags().StringVar(&reason, "reason", "", "pain, swelling or surgeon; more words after a colon")
	c.Flags().StringVar(&by, "by", "", "id of the therapist (default: who made the block)")
	c.Flags().StringVar(&a.outDir, "out", "", "where the pages go (default CLINIC/out)")
	return c
}
