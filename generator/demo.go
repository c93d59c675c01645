package generator

import (
	"fmt"
	"io/fs"
	"regexp"

	"paceleaf/generator/unit"
)

// Demo returns the files of the demo clinic. With a day, all its dates are moved by whole weeks, so that the newest
// block of its clients has that day in its first week: weekdays and weeks stay, only floors counted in months shift.
func Demo(templates fs.FS, on unit.Day) (map[string][]byte, error) {
	clinic, err := fs.Sub(templates, "demo/saltmarsh")
	if err != nil {
		return nil, err
	}
	files := map[string][]byte{}
	err = fs.WalkDir(clinic, ".", func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		files[name], err = fs.ReadFile(clinic, name)
		return err
	})
	if err != nil || on.IsZero() {
		return files, err
	}
	newest := DemoDay(files)
	if newest.IsZero() {
		return nil, fmt.Errorf("the demo clinic has no block")
	}
	return moved(files, on.WeeksSince(newest)), nil
}

var (
	starts = regexp.MustCompile(`(?m)^starts = (\d{4}-\d{2}-\d{2})`)
	dated  = regexp.MustCompile(`\b\d{4}-\d{2}-\d{2}\b`)
)

// DemoDay is the first day of the newest block: the day that the demo's overview is made for.
func DemoDay(files map[string][]byte) (newest unit.Day) {
	for _, data := range files {
		if m := starts.FindSubmatch(data); m != nil {
			if d, err := unit.ParseDay(string(m[1])); err == nil && d.After(newest) {
				newest = d
			}
		}
	}
	return newest
}

// moved returns the files with every day in names and texts later by some weeks.
func moved(files map[string][]byte, weeks int) map[string][]byte {
	shift := func(s string) string {
		d, err := unit.ParseDay(s)
		if err != nil {
			return s
		}
		return d.AddWeeks(weeks).String()
	}
	shifted := map[string][]byte{}
	for name, data := range files {
		text := dated.ReplaceAllStringFunc(string(data), shift)
		shifted[dated.ReplaceAllStringFunc(name, shift)] = []byte(text)
	}
	return shifted
}
