// Package finding says what the tests say: torque, symmetry, error, doubt. It takes tests as they were typed and a day,
// and looks at nothing dated after it. It decides nothing: what follows is for plan.
package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Findings is all that can be said of a client as of a day.
type Findings struct {
	AsOf     unit.Day
	Measures map[string]Measure   // by name, test.quantity: knee-extension.lsi, extension, pain
	Order    []string             // names in the order of reading
	History  map[string][]Measure // every value of a measure since the event, oldest first
	Strength []StrengthTest       // every test of force, oldest first
	Lifts    []LiftTest           // every lift, oldest first
	Hops     []HopTest
	Ratios   []Ratio
	Reaches  []YBalance
	Rises    []Rise
	Scores   []Score
	Knees    []KneeDay // range, swelling, pain, day by day, oldest first
	Reports  []Report  // what the client told of the knee, day by day, oldest first; no measure is made of it
	Doubts   []Doubt
	Flags    []Doubt // what is to be looked at and leaves the value as good as it is
}

// Measure is the newest value of one measure, or the reason why there is none.
type Measure struct {
	Name      string
	Value     *basis.Step // number or word; nil or refused: not tested
	Number    float64     // of a number
	Unit      string
	Grade     unit.Grade // of a word
	OK        bool
	On        unit.Day
	Reason    basis.Said   // why not tested
	Doubts    []basis.Said // a doubtful value opens nothing
	Hidden    unit.Grade   // of swelling: how much the look may have missed
	HiddenBy  basis.Said   // why
	Alike     Alike        // what it was measured with
	SEM       *float64     // standard error of measurement in the measure's unit; nil: not published
	SEMSource string
}

// StrengthTest is one test of force on one day.
type StrengthTest struct {
	On          unit.Day
	Test        string
	Gauge       string
	Mode        string
	Angle       basis.Num[unit.Degrees]
	Score       string // best or mean
	Left, Right Leg
	LSI         basis.Num[unit.Percent] // operated over other, cut to a tenth
	Deficit     basis.Num[unit.Percent] // what symmetry lacks to 100
	Preop       basis.Num[unit.Percent] // operated now over other before the operation
	Alike       Alike
	Conditions  string // one word for what may be trended together
}

// Leg is what one leg gave.
type Leg struct {
	Force          basis.Num[unit.Newtons]
	Torque         basis.Num[unit.NewtonMetres]
	PerKg          basis.Num[unit.NmPerKg]
	Spread         basis.Num[unit.Percent]
	NotTested      basis.Said
	StoppedForPain bool
	leverless      bool // no lever was typed: only forces can be compared
}

// LiftTest is one lift on one day.
type LiftTest struct {
	On                unit.Day
	Exercise          string
	Place             string
	Device            string
	Range             *unit.Reach
	Left, Right, Both LiftLeg
	LSI               basis.Num[unit.Percent]
}

// LiftLeg is the set of one leg and the maximum estimated from it.
type LiftLeg struct {
	Moved          basis.Num[unit.Kilograms]
	Reps           basis.Num[unit.Count]
	Reserve        basis.Num[unit.Count]
	OneRM          basis.Num[unit.Kilograms]
	Span           Span // of the estimate over all equations
	NotTested      basis.Said
	StoppedForPain bool
	Doubts         []basis.Said
}

// HopTest is one hop test on one day.
type HopTest struct {
	On          unit.Day
	Test        string
	Score       string // best or mean of the trials
	Left, Right HopLeg
	LSI         basis.Num[unit.Percent]
}

// HopLeg is the score of one leg.
type HopLeg struct {
	Distance       basis.Num[unit.Metres]
	Time           basis.Num[unit.Seconds]
	Count          basis.Num[unit.Count]
	Spread         basis.Num[unit.Percent] // of the trials
	OfHeight       basis.Num[unit.Percent] // of a single hop: distance as a share of height, cut to a tenth
	NotTested      basis.Said
	StoppedForPain bool
}

// KneeDay is how the knee was on one day.
type KneeDay struct {
	On             unit.Day
	Pain           basis.Num[unit.Points]
	Morning        basis.Num[unit.Points]
	PainKind       string
	Effusion       unit.Grade
	EffusionAt     basis.Origin
	EffusionBy     client.EffusionMethod // empty: the sweep test
	EffusionHidden unit.Grade            // swelling that the look may have missed; empty: none
	Left, Right    KneeAngles
	AngleBy        string // what the angles were measured with; empty where it was not said
	QuadsLag       basis.Num[unit.Degrees]
	Mass           basis.Num[unit.Kilograms]
}

// KneeAngles is the range of one knee: Straight is 0 for straight, positive where it lacks, negative beyond.
type KneeAngles struct {
	Straight basis.Num[unit.Degrees]
	Flexion  basis.Num[unit.Degrees]
}

// Doubt is a value that should be looked at before it is trusted.
type Doubt struct {
	ID   string // of the value
	Says basis.Said
	Code string
}
