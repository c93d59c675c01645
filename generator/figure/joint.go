package figure

// span is how far a joint is drawn to move, in degrees.
type span struct{ lo, hi float64 }

// What joints are drawn to do. Knee, hip and the free ankle lie within published normal ranges, which
// testdata/published/figure/joint-ranges.csv lists with their sources. The last two are our own: a loaded lunge bends the
// ankle further (from memory, 35 to 40), and of one who kneels or lies face down the foot lies flat on the floor (drawn).
var (
	kneeSpan     = span{-5, 140}
	hipSpan      = span{-20, 125}
	ankleSpan    = span{-55, 20}
	shoulderSpan = span{-60, 180}
	elbowSpan    = span{0, 150}
	standingSpan = span{-55, 35}
	flatFootSpan = span{-66, 20}
)

func (s span) holds(v float64) bool { return v >= s.lo-0.05 && v <= s.hi+0.05 }
