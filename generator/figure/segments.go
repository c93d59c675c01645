package figure

// Segment lengths as hundredths of stature. Source: Drillis and Contini 1966, Report 1166.03, New York University, as
// reprinted in Winter, Biomechanics and Motor Control of Human Movement, Fig. 4.1. The source is seen, the digits are from
// memory; testdata/published/figure/segments.csv holds them, and that they close to the whole of stature.
const (
	footLength    = 15.2
	footHeight    = 3.9 // floor to ankle centre
	shankLength   = 24.6
	thighLength   = 24.5
	trunkLength   = 28.8 // hip to shoulder
	headAndNeck   = 18.2
	upperArm      = 18.6
	forearmLength = 14.6
	hipHalf       = 5.0 // joint centre from the middle line
	shoulderHalf  = 10.4
)

// What no source gives: our own drawing values.
const (
	waistAt  = 0.36                  // hinge of the two pieces of the trunk, as a share of its length from the hip
	lower    = trunkLength * waistAt // pelvis piece
	upper    = trunkLength - lower   // chest piece
	fistAt   = 4.9                   // middle of the fist from the wrist
	heelBack = 2.8                   // ankle to heel, along the sole
	ballFore = 6.6                   // ankle to ball of the foot, along the sole
	toeFore  = 3.5                   // ball to toes
)

// Radii of the discs that the body is made of, which are also the distances at which it rests on a surface.
const (
	rHip, rThigh, rKnee, rCalf, rAnkle = 5.5, 4.7, 3.5, 3.5, 2.2
	rHeel, rBall, rToe                 = 1.9, 1.35, 1.05
	rShoulder, rElbow, rWrist, rFist   = 2.9, 2.1, 1.5, 2.0
	rSeated                            = 5.6 // hip above a seat or a bench
	rSupine                            = 7.1 // hip above a mat, on the back: the buttocks touch
	rBack                              = 5.6 // shoulder above a mat
	rKneel                             = 3.6
)
