package main

import (
	"fmt"
	"maps"
	"path/filepath"

	"github.com/spf13/cobra"

	"paceleaf/generator"
	"paceleaf/site"
	"paceleaf/templates"
)

func (a *app) demo() *cobra.Command {
	var on string
	c := &cobra.Command{
		Use:   "demo [DIR]",
		Short: "Write a made-up clinic into an empty folder and build it",
		Long: `Demo writes Saltmarsh Knee Clinic, an invented clinic with invented clients, into DIR (default saltmarsh) and
builds its pages. --on moves all its dates by whole weeks, so that a block is under way on that day.`,
		Example: "  paceleaf demo\n  paceleaf demo my-demo --on 2026-09-14",
		Args:    args(0, 1, "at most a folder"),
		RunE: func(_ *cobra.Command, args []string) error {
			dir := "saltmarsh"
			if len(args) > 0 {
				dir = args[0]
			}
			when, err := day(on)
			if err != nil {
				return err
			}
			files, err := generator.Demo(templates.FS, when)
			if err != nil {
				return err
			}
			a.on = generator.DemoDay(files)
			maps.Copy(files, generator.Schemas(generator.SchemaFolder))
			if err := site.Fill(dir, files); err != nil {
				return err
			}
			a.clinic = dir
			house, err := a.open()
			if err != nil {
				return err
			}
			if err := a.buildHouse(house, a.outOf(dir), 0); err != nil {
				return err
			}
			a.opens(house, a.outOf(dir))
			return nil
		},
	}
	c.Flags().StringVar(&on, "on", "", "move the dates so that a block is under way on this day, as in 2026-09-14")
	c.Flags().StringVar(&a.outDir, "out", "", "where the pages go (default DIR/out)")
	return c
}

// opens says what to open: the page from which all others are reached, and one client's own two.
func (a *app) opens(house *generator.House, out string) {
	code := house.Codes()[len(house.Codes())-1]
	pages := []struct{ name, what string }{
		{filepath.Join(out, "desk", "overview.html"), "all clients: who needs you first; leads to every page"},
		{filepath.Join(out, "hand", code, "handout.html"), "what a client takes home"},
		{filepath.Join(out, "desk", code, "worksheet.html"), "what you decide by"},
		{filepath.Join(out, "library", "index.html"), "for everybody: exercises, programs, sources"},
	}
	widest := 0
	for _, p := range pages {
		widest = max(widest, len(p.name))
	}
	fmt.Fprintln(a.out, "Open in a browser:")
	for _, p := range pages {
		fmt.Fprintf(a.out, "  %-*s  %s\n", widest, p.name, p.what)
	}
	fmt.Fprintf(a.out, "Then try: paceleaf why %s --clinic %s\n", code, a.clinic)
}
