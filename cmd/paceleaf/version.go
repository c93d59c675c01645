package main

import (
	"fmt"
	"runtime"

	"github.com/spf13/cobra"
)

func (a *app) version() *cobra.Command {
	return &cobra.Command{
		Use:   "version",
		Short: "Say which version this is",
		Args:  noArgs,
		RunE: func(*cobra.Command, []string) error {
			fmt.Fprintf(a.out, "paceleaf %s (format 1, %s)\n", Version, runtime.Version())
			return nil
		},
	}
}
