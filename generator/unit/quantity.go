// Package unit holds the quantities of the trade as types, and the civil day.
//
// A force cannot be passed where a torque is wanted, and each type knows the endings that a key of a file may
// carry for it (peak_n, peak_kgf, peak_lbf), so that what a therapist types is converted once, here, and never again.
// It rounds nothing and formats nothing: rounding belongs to finding and plan, formatting to page.
package unit

// Quantity is any number with a unit. Unit is the symbol under which the value is kept, in the SI writing.
type Quantity interface {
	~float64
	Unit() string
}

// Ending is one way to name the unit of a quantity in a key: the key peak with Ending "kgf" is written peak_kgf.
// One unit of the ending is Factor units of the type.
type Ending struct {
	Name   string  // what follows the underscore in the key
	Symbol string  // how the unit is printed
	Factor float64 // multiply the typed number by this
}

// Measured is a quantity that may stand in a file: it names its endings, the type's own first.
// A single ending with an empty name means a bare key (reps, pain_worst).
type Measured interface {
	Unit() string
	Endings() []Ending
}

type (
	Newtons      float64 // force
	NewtonMetres float64 // torque
	NmPerKg      float64 // torque per kilogram of body mass
	Kilograms    float64 // mass
	Metres       float64 // length; typed in centimetres or inches
	Degrees      float64 // angle of the knee: 0 is straight, negative beyond straight
	Percent      float64 // share in hundredths
	Seconds      float64
	Weeks        float64
	Months       float64
	Count        float64 // repetitions, sets, contacts: a number of things
	Points       float64 // a score or a rating

	MillimetresOfMercury float64 // pressure of a cuff
)

// Units as printed.
func (Newtons) Unit() string      { return "N" }
func (NewtonMetres) Unit() string { return "N·m" }
func (NmPerKg) Unit() string      { return "N·m/kg" }
func (Kilograms) Unit() string    { return "kg" }
func (Metres) Unit() string       { return "m" }
func (Degrees) Unit() string      { return "°" }
func (Percent) Unit() string      { return "%" }
func (Seconds) Unit() string      { return "s" }
func (Weeks) Unit() string        { return "weeks" }
func (Months) Unit() string       { return "months" }
func (Count) Unit() string        { return "" }
func (Points) Unit() string       { return "" }

// Unit is mmHg, the unit that cuffs are marked in.
func (MillimetresOfMercury) Unit() string { return "mmHg" }

// Conversion factors.
const (
	// NewtonsPerKgf is standard gravity, exact. Source: 3rd CGPM, 1901.
	NewtonsPerKgf = 9.80665
	// KilogramsPerPound is exact. Source: international yard and pound agreement, 1959.
	KilogramsPerPound = 0.45359237
	// NewtonsPerLbf follows from the two above: 0.45359237 × 9.80665, exact.
	NewtonsPerLbf = 4.4482216152605
	// MetresPerInch is exact. Source: international yard and pound agreement, 1959.
	MetresPerInch = 0.0254
)

// Endings of each quantity that may be typed.
func (Newtons) Endings() []Ending {
	return []Ending{{"n", "N", 1}, {"kgf", "kgf", NewtonsPerKgf}, {"lbf", "lbf", NewtonsPerLbf}}
}
func (NewtonMetres) Endings() []Ending { return []Ending{{"nm", "N·m", 1}} }
func (NmPerKg) Endings() []Ending      { return []Ending{{"nm_per_kg", "N·m/kg", 1}} }
func (Kilograms) Endings() []Ending {
	return []Ending{{"kg", "kg", 1}, {"lb", "lb", KilogramsPerPound}}
}
func (Metres) Endings() []Ending {
	return []Ending{{"cm", "cm", 0.01}, {"in", "in", MetresPerInch}, {"m", "m", 1}}
}
func (Degrees) Endings() []Ending { return []Ending{{"deg", "°", 1}} }
func (Percent) Endings() []Ending { return []Ending{{"percent", "%", 1}} }
func (Seconds) Endings() []Ending { return []Ending{{"s", "s", 1}, {"min", "min", 60}} }
func (Weeks) Endings() []Ending   { return []Ending{{"weeks", "weeks", 1}} }
func (Months) Endings() []Ending  { return []Ending{{"months", "months", 1}} }
func (Count) Endings() []Ending   { return []Ending{{"", "", 1}} }
func (Points) Endings() []Ending  { return []Ending{{"", "", 1}} }
func (MillimetresOfMercury) Endings() []Ending {
	return []Ending{{"mmhg", "mmHg", 1}}
}
