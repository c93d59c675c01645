package figure

// The closed words of a [figure] table. The zero value is the first that each lists.

// View is the side from which the body is seen.
type View string

const (
	FromSide  View = "side"
	FromFront View = "front"
)

func (View) Words() []string { return []string{"side", "front"} }

// Frame is the segment that the allowed range is drawn on.
type Frame string

const (
	OnThigh Frame = "thigh"
	OnShank Frame = "shank"
)

func (Frame) Words() []string { return []string{"thigh", "shank"} }

// Work says which legs are drawn as working.
type Work string

const (
	NearWorks Work = "near"
	BothWork  Work = "both"
	NoneWorks Work = "none"
)

func (Work) Words() []string { return []string{"near", "both", "none"} }

// Motion is how the body gets from start to end.
type Motion string

const (
	Repeat  Motion = "repeat"  // goes there and comes back
	Hold    Motion = "hold"    // nothing moves: one frame
	Flight  Motion = "flight"  // leaves the ground: each frame obeys a limit by itself
	Cycle   Motion = "cycle"   // turns, as a pedal
	Passive Motion = "passive" // weight or hands move it
)

func (Motion) Words() []string { return []string{"repeat", "hold", "flight", "cycle", "passive"} }

// Part is a place of the body that an arrow follows or that equipment hangs on.
type Part string

func (Part) Words() []string {
	return []string{"knee", "ankle", "heel", "ball", "hip", "shoulder", "hand", "head", "shin", "foot", "far-foot"}
}

// Close is what a second, larger picture of the knee shows.
type Close string

const (
	Sinks  Close = "sinks"  // the back of the knee goes down
	Glides Close = "glides" // the kneecap is moved, seen from the front
	Ranges Close = "range"  // the knee with its range, which would lie behind the limbs
)

func (Close) Words() []string { return []string{"sinks", "glides", "range"} }

// Rest is the place of the body that an anchor puts somewhere.
type Rest string

func (Rest) Words() []string {
	return []string{"foot", "ball", "heel", "toe", "knee", "seat", "back", "front", "hip", "shoulder", "far-foot", "side"}
}
