package client

import (
	"fmt"
	"time"

	"paceleaf/generator/unit"
)

// Month is a month of birth: no day is kept of a client. The zero Month is not known.
type Month struct {
	Year  int
	Month time.Month
}

// FromText reads "1998-04".
func (m *Month) FromText(s string) error {
	t, err := time.Parse("2006-01", s)
	if err != nil {
		return fmt.Errorf("%q is not a month; write year-month, as in \"1998-04\"", s)
	}
	*m = Month{t.Year(), t.Month()}
	return nil
}

// GrownAt is the age from which a client is grown up.
const GrownAt = 18

// Age is the age in full years on a day, taken at its youngest: as if born on the last day of the month. -1 is not known.
func (m Month) Age(on unit.Day) int {
	if m.Year == 0 {
		return -1
	}
	born := unit.Day{Year: m.Year, Month: m.Month, Date: 1}.AddMonths(1).AddDays(-1)
	return on.MonthsSince(born) / 12
}

// Under reports whether an age is known, and below the given one.
func (m Month) Under(age int, on unit.Day) bool {
	is := m.Age(on)
	return is >= 0 && is < age
}
