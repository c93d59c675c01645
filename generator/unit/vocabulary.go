package unit

// The vocabulary of limits and of what they ask a client for. It stands here, below both, because a program's limit and a
// surgeon's instruction in a client's file are written in the same words.

// Kind is what a limit limits.
type Kind string

const (
	WeightBearing          Kind = "weight-bearing"
	Brace                  Kind = "brace"
	PassiveBend            Kind = "passive-bend"
	ActiveBend             Kind = "active-bend"
	LoadedBend             Kind = "loaded-bend"
	StraighteningUnderLoad Kind = "straightening-under-load"
	AddedWeight            Kind = "added-weight"
	HamstringWork          Kind = "hamstring-work"
	MaximalEffort          Kind = "maximal-effort"
	Impact                 Kind = "impact"
	Running                Kind = "running"
	Twisting               Kind = "twisting"
	Kneeling               Kind = "kneeling"
	Contact                Kind = "contact"
)

func (Kind) Words() []string {
	return []string{"weight-bearing", "brace", "passive-bend", "active-bend", "loaded-bend", "straightening-under-load",
		"added-weight", "hamstring-work", "maximal-effort", "impact", "running", "twisting", "kneeling", "contact"}
}

// Work is how hard a hamstring may be worked, in order.
type Work string

const (
	NoWork     Work = "none"
	Active     Work = "active"
	Resisted   Work = "resisted"
	Lengthened Work = "lengthened"
)

func (Work) Words() []string { return []string{"none", "active", "resisted", "lengthened"} }

// Rank orders the grades from 0; -1 where there is none.
func (w Work) Rank() int { return rank(w.Words(), string(w)) }

// Graft, Sport and OtherLeg are typed in a client's file and asked for by limits and criteria.
type (
	Graft    string
	Sport    string
	OtherLeg string
)

const (
	Hamstring         Graft    = "hamstring"
	PatellarTendon    Graft    = "patellar-tendon"
	QuadricepsTendon  Graft    = "quadriceps-tendon"
	Allograft         Graft    = "allograft"
	Sound             OtherLeg = "sound"
	InjuredBefore     OtherLeg = "injured-before"
	Donor             OtherLeg = "donor"
	OperatedToo       OtherLeg = "operated-too"
	NoSport           Sport    = "none"
	StraightLineSport Sport    = "straight-line"
	TwistingSport     Sport    = "twisting"
	ContactSport      Sport    = "contact"
)

func (Graft) Words() []string {
	return []string{"hamstring", "patellar-tendon", "quadriceps-tendon", "allograft"}
}
func (Sport) Words() []string { return []string{"none", "straight-line", "twisting", "contact"} }
func (OtherLeg) Words() []string {
	return []string{"sound", "injured-before", "donor", "operated-too"}
}

// Device kinds: what exercises need and places have.
type DeviceKind string

func (DeviceKind) Words() []string {
	return []string{"angled-leg-press", "horizontal-leg-press", "knee-extension-stack", "leg-curl-stack", "barbell", "dumbbell",
		"cable", "ankle-weight", "band", "box", "bike", "bench", "mat", "strap", "wall", "rail", "treadmill", "sled", "stack",
		"hack-squat", "leg-curl-seated-stack", "rack", "post", "slant-board", "ball", "balance-board", "cuff", "stimulator"}
}

func rank(words []string, w string) int {
	for i, s := range words {
		if s == w {
			return i
		}
	}
	return -1
}
