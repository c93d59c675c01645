package unit

// The closed sets that every room speaks of. Each names its words; source judges them at the edge.

// Side is a leg of the body, or both.
type Side string

const (
	Left  Side = "left"
	Right Side = "right"
	Both  Side = "both"
)

func (Side) Words() []string { return []string{"left", "right", "both"} }

// Opposite is the other leg; both stays both.
func (s Side) Opposite() Side {
	switch s {
	case Left:
		return Right
	case Right:
		return Left
	}
	return s
}

// Grade is what the sweep test finds, in order: zero, trace, 1+, 2+, 3+ (Sturgill 2009). The empty grade was not looked at.
type Grade string

const (
	GradeZero  Grade = "zero"
	GradeTrace Grade = "trace"
	Grade1     Grade = "1+"
	Grade2     Grade = "2+"
	Grade3     Grade = "3+"
)

func (Grade) Words() []string { return []string{"zero", "trace", "1+", "2+", "3+"} }

// Rank orders the grades from 0; -1 where there is none.
func (g Grade) Rank() int {
	for i, w := range g.Words() {
		if w == string(g) {
			return i
		}
	}
	return -1
}

// Standing says how far a rule may be trusted.
type Standing string

const (
	Instruction    Standing = "instruction"
	Published      Standing = "published"
	SecondHand     Standing = "second-hand"
	ToolDefault    Standing = "tool default"
	CommonPractice Standing = "common practice"
	FromMemory     Standing = "from memory"
)

func (Standing) Words() []string {
	return []string{"instruction", "published", "second-hand", "tool default", "common practice", "from memory"}
}
