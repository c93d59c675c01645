package main

import (
	"fmt"
	"os"
	"path/filepath"
	"time"

	"github.com/schollz/progressbar/v3"
	"golang.org/x/term"

	"paceleaf/generator"
	"paceleaf/site"
)

// outOf is where the pages go: --out, or out/ in the clinic's folder.
func (a *app) outOf(clinic string) string {
	if a.outDir != "" {
		return a.outDir
	}
	return filepath.Join(clinic, "out")
}

// buildHouse builds and says what was done.
func (a *app) buildHouse(house *generator.House, dir string, workers int) (err error) {
	out, err := site.Open(dir)
	if err != nil {
		return err
	}
	report, err := house.Build(out, workers, a.progress())
	if closing := out.Close(); err == nil {
		err = closing
	}
	if err != nil {
		return err
	}
	wrong := a.faults(report.Faults)
	fmt.Fprintf(a.out, "%s built, %d unchanged", counted(report.Built, "client"), report.Fresh)
	if report.Waiting > 0 {
		fmt.Fprintf(a.out, ", %d without a block", report.Waiting)
	}
	if report.Failed > 0 {
		fmt.Fprintf(a.out, ", %d with mistakes (earlier pages kept)", report.Failed)
	}
	fmt.Fprintf(a.out, "; %s written to %s\n", counted(report.New+report.Changed, "file"), dir)
	a.libraryLine(report, dir)
	return wrong
}

// libraryLine says what became of the public library.
func (a *app) libraryLine(report generator.Report, dir string) {
	if n := report.Library.New + report.Library.Changed + report.Library.Removed; n > 0 {
		fmt.Fprintf(a.out, "library (no person in it): %s written to %s\n", counted(report.Library.New+report.Library.Changed, "file"), filepath.Join(dir, "library"))
		return
	}
	fmt.Fprintln(a.out, "library: unchanged")
}

// buildLibrary makes the public library alone.
func (a *app) buildLibrary(house *generator.House, dir string, workers int) (err error) {
	out, err := site.Open(dir)
	if err != nil {
		return err
	}
	report, err := house.BuildLibrary(out, workers)
	if closing := out.Close(); err == nil {
		err = closing
	}
	if err != nil {
		return err
	}
	wrong := a.faults(report.Faults)
	a.libraryLine(report, dir)
	return wrong
}

// progress shows a bar on standard error, only at a terminal.
func (a *app) progress() func(done, of int) {
	f, isFile := a.errs.(*os.File)
	if !isFile || !term.IsTerminal(int(f.Fd())) {
		return nil
	}
	var bar *progressbar.ProgressBar
	return func(done, of int) {
		if bar == nil {
			bar = progressbar.NewOptions(of, progressbar.OptionSetWriter(f), progressbar.OptionSetDescription("clients"),
				progressbar.OptionShowCount(), progressbar.OptionThrottle(100*time.Millisecond), progressbar.OptionClearOnFinish(),
				progressbar.OptionUseANSICodes(os.Getenv("NO_COLOR") == ""))
		}
		_ = bar.Set(done)
		if done == of {
			_ = bar.Finish()
		}
	}
}
