package program

// The closed sets of a program. source judges them at the edge; after reading the core trusts them.

// Muscle, Chain, Contraction, Resistance, Legs: what an exercise is.
type (
	Muscle      string
	Chain       string
	Contraction string
	Resistance  string
	Legs        string
)

const (
	OpenChain   Chain = "open"
	ClosedChain Chain = "closed"
	NoChain     Chain = "none"

	Isometric  Contraction = "isometric"
	Concentric Contraction = "concentric"
	Eccentric  Contraction = "eccentric"
	Passive    Contraction = "passive"
	Stretch    Contraction = "stretch-shortening"

	External     Resistance = "external"
	Body         Resistance = "body"
	Time         Resistance = "time"
	FootContacts Resistance = "foot-contacts"
	Distance     Resistance = "distance"

	EachLeg      Legs = "each"     // a box for the operated leg and one for the other
	OperatedOnly Legs = "operated" // only the event's own leg
)

func (Muscle) Words() []string {
	return []string{"quadriceps", "hamstrings", "gluteals", "hip-abductors", "adductors", "calf", "trunk", "range", "heart-and-lungs", "balance"}
}
func (Chain) Words() []string { return []string{"open", "closed", "none"} }
func (Contraction) Words() []string {
	return []string{"isometric", "concentric", "eccentric", "passive", "stretch-shortening"}
}
func (Resistance) Words() []string {
	return []string{"external", "body", "time", "foot-contacts", "distance"}
}
func (Legs) Words() []string { return []string{"each", "operated"} }

// LegRole is which leg a limit is for.
type LegRole string

const (
	OperatedLeg LegRole = "operated"
	DonorLeg    LegRole = "donor"
)

func (LegRole) Words() []string { return []string{"operated", "donor"} }

// GraftFrom is where the graft of a leg came from: rows about the place where it was taken are for the leg that gave it.
type GraftFrom string

const (
	FromSame  GraftFrom = "same"
	FromOther GraftFrom = "other"
	FromDonor GraftFrom = "allograft"
)

func (GraftFrom) Words() []string { return []string{"same", "other", "allograft"} }
