package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// BySessionLoad is the rule of SessionLoad.
var BySessionLoad = basis.Rule{Name: "session load", Sum: "$1 × $2 ÷ 60", Source: "Foster 2001"}

// SessionLoad returns the load of a session in units of its own: how hard it was as a whole, 0 to 10 on the modified CR10, times
// its minutes. It is asked for about half an hour after; from a minute to 14 days after it is much the same (Foster 2021).
//
// Source: Foster 2001, JSCR 15:109–115.
// Studied: athletes. The scale is no reserve (ReserveOfRPE) and no OMNI.
// Refuses: a rating outside 0 to 10; a length of zero or less, or above 8 hours.
func SessionLoad(rating unit.Points, length unit.Seconds) (unit.Points, error) {
	switch {
	case !number(rating) || rating < 0 || rating > 10:
		return 0, errors.New("a session is rated 0 to 10: no session load")
	case !positive(length) || length > 8*3600:
		return 0, errors.New("a session takes above 0 and up to 480 min: no session load")
	}
	return unit.Points(float64(float64(rating)*float64(length)) / 60), nil
}
