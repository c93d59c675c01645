package client

import (
	"fmt"
	"path"
	"regexp"
	"slices"
	"strings"

	"paceleaf/generator/unit"
)

// A test day and a day sheet are named by their day. What a file browser, a spreadsheet or a slip of the hand makes of such a
// name is said as what it is.

var (
	dayLike   = regexp.MustCompile(`^\d{4}-\d{2}-\d{2}$`)
	secondOne = regexp.MustCompile(`^(\d{4}-\d{2}-\d{2})( \(\d+\)|[ -]*[Cc]opy.*)$`)
	tables    = []string{".xlsx", ".xls", ".ods", ".numbers", ".tsv"}
)

// misnamed says what to do with a file whose name is no day with the ending wanted; as is how a right one looks.
func misnamed(name, ending, as string) (instead string) {
	stem := strings.TrimSuffix(name, path.Ext(name))
	named := secondOne.FindStringSubmatch(stem)
	_, notInCalendar := unit.ParseDay(stem)
	switch ext := strings.ToLower(path.Ext(name)); {
	case ext == ".txt" && strings.HasSuffix(stem, ending):
		return fmt.Sprintf("take .txt off its name: %s", stem)
	case ending == ".csv" && slices.Contains(tables, ext):
		return "save the sheet as CSV, as in " + as
	case named != nil && ext == ending:
		return fmt.Sprintf("it looks like a second one of %s: keep one, named %s%s", named[1], named[1], ending)
	case dayLike.MatchString(stem) && notInCalendar != nil:
		return fmt.Sprintf("the calendar has no %s: name the file by its day, as in %s", stem, as)
	}
	return "name the file by its day, as in " + as
}
