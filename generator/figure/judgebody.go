package figure

import "strings"

// sunk is how far a part may be below a surface before it is a mistake, and short how far a foot or a hand from the place
// where it is put, in hundredths of stature; chosen: less is not seen.
const (
	sunk  = 0.9
	short = 0.4
)

// body looks at one frame.
func (j *judge) body(f frame, key string) {
	if j.pose.View == FromFront {
		f.above = 0 // what is drawn lower because it comes toward the reader is in no floor
		j.frontal(solveFront(f), key)
		return
	}
	s := solve(f)
	j.joints(f, s, key)
	j.reach(s, key)
	j.above(s, key)
}

func (j *judge) joints(f frame, s skeleton, key string) {
	in := func(what, name string, v float64, may span, instead string) {
		if !may.holds(v) {
			j.wrong(key+"."+what, name+" at %.0f°, people have %g to %g", instead, v, may.lo, may.hi)
		}
	}
	for _, l := range []struct {
		name string
		leg  leg
		as   Leg
	}{{"near", s.near, f.near}, {"far", s.far, f.far}} {
		in(l.name, "hip", l.leg.hipBend, hipSpan, "change trunk, knee or ankle")
		in(l.name, "knee", l.leg.bend, kneeSpan, "change the knee, or where the foot is")
		in(l.name, "ankle", l.leg.ankleBend, ankleMay(f, l.as), "change the ankle, pitch or slope")
	}
	for _, a := range []struct {
		name string
		arm  arm
		as   Arm
	}{{"arm", s.arm, f.arm}, {"far_arm", s.farArm, f.farArm}} {
		if len(a.as.HandAt) == 0 && a.as.HandOn == "" { // a hand on a place may have its elbow out of the picture's plane
			in(a.name, "shoulder", a.arm.raise, shoulderSpan, "change the shoulder")
		}
		in(a.name, "elbow", a.arm.bend, elbowSpan, "change the elbow, or where the hand is")
	}
}

// ankleMay is what an ankle may do: more under a body that stands on it, and lying flat behind one that kneels or lies
// on the front.
func ankleMay(f frame, g Leg) span {
	switch {
	case f.anchor == "knee" || f.anchor == "front":
		return flatFootSpan
	case g.Flat || g.ways() > 0 || f.anchor == "toe" || f.anchor == "ball":
		return standingSpan
	}
	return ankleSpan
}

func (j *judge) reach(s skeleton, key string) {
	for _, limb := range []struct {
		name, end, joint string
		by               float64
	}{{"near", "foot", "hip", s.near.short}, {"far", "foot", "hip", s.far.short}, {"arm", "hand", "shoulder", s.arm.short}, {"far_arm", "hand", "shoulder", s.farArm.short}} {
		if limb.by > short {
			j.wrong(key+"."+limb.name, "the "+limb.end+" is %.1f out of reach", "put the "+limb.end+" nearer to the "+limb.joint, limb.by)
		}
	}
}

// above: nothing lies below the floor, or in what the working leg stands, sits or lies on. The other leg may hang beside
// it, and a hand may hold it.
func (j *judge) above(s skeleton, key string) {
	for _, p := range []struct {
		name string
		disc
	}{
		{"hip", disc{s.hip, rSeated}}, {"shoulder", disc{s.shoulder, rWrist}}, {"head", disc{s.head, 4.5}},
		{"knee", disc{s.near.knee, rKnee}}, {"heel", disc{s.near.heel, rHeel}}, {"ball", disc{s.near.ball, rBall}},
		{"toe", disc{s.near.toe, rToe}}, {"far heel", disc{s.far.heel, rHeel}}, {"far ball", disc{s.far.ball, rBall}},
		{"far knee", disc{s.far.knee, rKnee}}, {"far toe", disc{s.far.toe, rToe}}, {"far elbow", disc{s.farArm.elbow, rElbow}}, {"far hand", disc{s.farArm.hand, rFist}},
		{"elbow", disc{s.arm.elbow, rElbow}}, {"hand", disc{s.arm.hand, rFist}},
	} {
		if low := p.at.Y - p.r; low < -sunk {
			j.wrong(key, "the "+p.name+" is %.1f below the floor", "raise the anchor, or change the angles", -low)
		}
		for _, k := range j.pose.Kit {
			if k.holds(p.disc) && p.name != "hand" && !strings.HasPrefix(p.name, "far") {
				j.wrong(key, "the "+p.name+" is in the "+string(k.Kind)+"%s", "move one of them", "")
			}
		}
	}
}

// holds reports whether a disc's middle is within a firm piece.
func (k Kit) holds(d disc) bool {
	at := pointOf(k.At)
	deep := map[KitKind]float64{Bench: 4.6, Seat: 4.6, Chair: 3, Box: at.Y, Belt: at.Y, Rocker: 1.8}[k.Kind]
	if k.On == "hip" {
		deep = 0 // as high as the seat comes down
	}
	return d.at.X > at.X && d.at.X < at.X+k.Width && d.at.Y < at.Y && d.at.Y > at.Y-deep
}

// sunkFront is the same as sunk from the front, where a foot that points at the reader is drawn below its sole; chosen.
const sunkFront = 1.6

func (j *judge) frontal(s frontal, key string) {
	for i, name := range []string{"near", "far"} {
		for _, p := range []struct {
			limb, key string
			disc
		}{{"knee", name, disc{s.knees[i], 3.3}}, {"foot", name, disc{s.feet[i], 2}}, {"hand", []string{"arm", "far_arm"}[i], disc{s.wr[i], 1.8}}} {
			if low := p.at.Y - p.r; low < -sunkFront {
				j.wrong(key+"."+p.key, "the "+p.limb+" is %.1f below the floor", "raise the anchor, or change the angles", -low)
			}
		}
	}
}
