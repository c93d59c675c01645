package main

import (
	"fmt"

	"github.com/spf13/cobra"
)

func (a *app) why() *cobra.Command {
	var asJSON bool
	c := &cobra.Command{
		Use:   "why CLIENT [ID]",
		Short: "Say where a number comes from, down to the file and line in which it was typed",
		Long: `Why prints a number's chain: each sum as it can be redone with a pocket calculator, the rule and its source, and the
file and line of what was typed. Without an ID it lists what can be asked of the client's newest block, in groups. A load
that is paused has no number: then it says what called the pause, and what it waits for.`,
		Example:           "  paceleaf why tern-04\n  paceleaf why tern-04 leg-press-single.left.w1.load\n  paceleaf why tern-04 --json",
		Args:              args(1, 2, "the client's code, and perhaps an id"),
		ValidArgsFunction: a.codes,
		RunE: func(_ *cobra.Command, args []string) error {
			house, err := a.open()
			if err != nil {
				return err
			}
			if err := known(house.Codes(), args[0]); err != nil {
				return err
			}
			done := house.Plan(args[0])
			if err := a.faults(done.Faults); err != nil {
				return err
			}
			if done.Plan == nil {
				return errInput
			}
			id := ""
			if len(args) > 1 {
				id = args[1]
			}
			text, ok := house.Why(done, id)
			if asJSON && ok {
				data, _ := house.WhyJSON(done, id)
				text = string(data)
			}
			return a.answer(text, ok, id)
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "the plan as JSON, with every number's steps")
	return c
}

// answer prints what was asked for, or what is nearest to it.
func (a *app) answer(text string, ok bool, id string) error {
	if ok {
		fmt.Fprint(a.out, text)
		return nil
	}
	fmt.Fprintf(a.errs, "there is no number %q; the nearest are:\n%s", id, text)
	return errInput
}
