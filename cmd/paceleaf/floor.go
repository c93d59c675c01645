package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"paceleaf/generator"
	"paceleaf/site"
)

func (a *app) floor() *cobra.Command {
	var on, place string
	c := &cobra.Command{
		Use:   "floor",
		Short: "Make a sheet of one day for the room: by station, who does what",
		Long: `Floor makes OUT/desk/floor.html: station by station, each client who trains on that day, with leg, load, repetitions, range
and set-up, a blank to write in, and what is paused. The next build takes it away: it is a sheet for one day.`,
		Example: "  paceleaf floor\n  paceleaf floor --on 2026-04-06 --place gym",
		Args:    noArgs,
		RunE: func(*cobra.Command, []string) error {
			when, err := day(on)
			if err != nil {
				return err
			}
			if when.IsZero() {
				when = today()
			}
			house, err := a.open()
			if err != nil {
				return err
			}
			if err := knownPlace(house, place); err != nil {
				return err
			}
			made, err := house.Floor(when, place)
			if err != nil {
				return err
			}
			return a.putFloor(house, made)
		},
	}
	c.Flags().StringVar(&on, "on", "", "the day (default today)")
	c.Flags().StringVar(&place, "place", "", "one place of clinic.toml (default all)")
	c.Flags().StringVar(&a.outDir, "out", "", "where the sheet goes (default CLINIC/out)")
	_ = c.MarkFlagDirname("out")
	return c
}

func knownPlace(house *generator.House, place string) error {
	if place == "" || house.Clinic.Place(place) != nil {
		return nil
	}
	ids := make([]string, len(house.Clinic.Places))
	for i, p := range house.Clinic.Places {
		ids[i] = p.ID
	}
	return usageError{errors.New("there is no place " + place + " in clinic.toml; write one of: " + strings.Join(ids, ", "))}
}

func (a *app) putFloor(house *generator.House, made generator.Floored) error {
	dir := a.outOf(a.clinic)
	out, err := site.Open(dir)
	if err != nil {
		return err
	}
	_, err = house.PutFloor(out, made)
	if closing := out.Close(); err == nil {
		err = closing
	}
	if err != nil {
		return err
	}
	wrong := a.faults(made.Faults)
	fmt.Fprintln(a.out, filepath.Join(dir, filepath.FromSlash(generator.FloorFile)))
	fmt.Fprintln(a.out, counted(made.Here, "client")+" on the sheet. The next build takes it away.")
	return wrong
}
