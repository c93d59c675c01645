package formula

import "errors"

// segments are the masses of shank and foot as a share of body mass, and where the centre of the shank lies as a share of
// its length from the knee.
type segments struct{ shank, foot, centre float64 }

var (
	// deLeva is measured from the knee to the outer ankle bone. Source: de Leva 1996, Table 4 (J Biomech 29:1223–1230),
	// read in an openly published teaching data file.
	deLeva = map[Sex]segments{Female: {0.0481, 0.0129, 0.4416}, Male: {0.0433, 0.0137, 0.4459}}
	// plagenhoef. Source: Plagenhoef 1983, read in an openly published teaching data file.
	plagenhoef = map[Sex]segments{Female: {0.0535, 0.0133, 0.419}, Male: {0.0475, 0.0143, 0.434}}
)

var errSex = errors.New("the segments of the body are known for female and male only: choose the table that does not ask")
