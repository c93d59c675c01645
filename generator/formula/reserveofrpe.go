package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of the fewest and the most in reserve.
var (
	ByReserveOfRPE     = basis.Rule{Name: "reserve of a rating, at least", Sum: "min(4, max(0, down(10 − $1)))", Source: "RIR-anchored scale, Zourdos 2016; halves second-hand"}
	ByMostReserveOfRPE = basis.Rule{Name: "reserve of a rating, at most", Sum: "−down($1 − 10)", Source: "RIR-anchored scale, Zourdos 2016; halves second-hand"}
)

// ReserveOfRPE returns the fewest repetitions in reserve that a rating of effort means: 10 is none, 9 one, 8.5 one to two, 5 to 6
// four to six. Loads are reckoned with the fewest, for that gives the lower maximum.
//
// Source: the scale anchored in repetitions in reserve, Zourdos 2016, JSCR 30(1):267–275; halves in reprints; 5 to 6: J Hum Kinet 2024.
// Studied: 29 lifters. People say about one repetition too few (Halperin 2022). It is no CR10 and no OMNI: a 7 there is another thing.
// Refuses: a rating below 5, which tells of light effort and no number; above 10; not in halves; between 5 and 6.
func ReserveOfRPE(rating unit.Points) (unit.Count, error) {
	if err := rated(rating); err != nil {
		return 0, err
	}
	return unit.Count(min(4, math.Floor(float64(10-rating)))), nil
}

// MostReserveOfRPE returns the most repetitions in reserve that a rating of effort means; 6 of a rating of 5 or 6.
//
// Source: as ReserveOfRPE.
// Studied: as ReserveOfRPE.
// Refuses: as ReserveOfRPE.
func MostReserveOfRPE(rating unit.Points) (unit.Count, error) {
	if err := rated(rating); err != nil {
		return 0, err
	}
	if rating <= 6 {
		return 6, nil
	}
	return unit.Count(math.Ceil(float64(10 - rating))), nil
}

// MostReserveOfRPERule returns the rule by which MostReserveOfRPE reckons.
func MostReserveOfRPERule(rating unit.Points) basis.Rule {
	by := ByMostReserveOfRPE
	if rating <= 6 {
		by.Sum = "6"
	}
	return by
}

func rated(rating unit.Points) error {
	switch twice := float64(2 * rating); {
	case !number(rating) || rating < 0 || rating > 10 || twice != math.Floor(twice):
		return errors.New("a rating of effort is 0 to 10, in halves: no reserve")
	case rating < 5:
		return errors.New("a rating below 5 tells of light effort and of no number in reserve")
	case rating == 5.5:
		return errors.New("the scale has no 5.5: no reserve")
	}
	return nil
}
