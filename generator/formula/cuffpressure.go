package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// MillimetresOfMercury is the pressure of a cuff.
type MillimetresOfMercury = unit.MillimetresOfMercury

// The bounds of a cuff's dose. Source: Patterson 2019, Front Physiol 10:533, second-hand.
const (
	cuffShareLeast, cuffShareMost unit.Percent         = 40, 80
	cuffLoadLeast, cuffLoadMost   unit.Percent         = 20, 40
	occlusionMost                 MillimetresOfMercury = 400 // chosen: above it a reading is a slip
)

// CuffRepetitions are the four sets of a dose, 75 in all. Source: Patterson 2019, second-hand; Hughes 2019.
var CuffRepetitions = []unit.Count{30, 15, 15, 15}

// ByCuffPressure is the rule of CuffPressure.
var ByCuffPressure = basis.Rule{Name: "pressure of the cuff", Sum: "$1 × $2 ÷ 100", Source: "Patterson 2019, second-hand; after reconstruction: Hughes 2019"}

// CuffPressure returns the pressure of a cuff as a share of the pressure that stops the flow to this leg, measured on the day
// in the position of the exercise: LOP·share/100.
//
// Source: Patterson 2019, Front Physiol 10:533, second-hand (40 to 80 %); Hughes 2019, Sports Med, used 80 % after reconstruction.
// Studied: adults who were screened for it; after reconstruction 80 % gave more strength than 40 (RCT 2023, 30 people).
// Refuses: a pressure of zero or less or above 400 mmHg; a share outside 40 to 80 %. Who must not wear a cuff is not settled here.
func CuffPressure(LOP MillimetresOfMercury, share unit.Percent) (MillimetresOfMercury, error) {
	switch {
	case !positive(LOP) || LOP > occlusionMost:
		return 0, errors.New("the pressure that stops the flow was not measured: no pressure of the cuff")
	case !number(share) || share < cuffShareLeast || share > cuffShareMost:
		return 0, errors.New("a cuff is worn at 40 to 80 % of the pressure that stops the flow")
	}
	return MillimetresOfMercury(float64(float64(LOP)*float64(share)) / 100), nil
}
