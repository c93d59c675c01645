package figure

import "paceleaf/generator/basis"

// Pose is the [figure] table of an exercise: two or three frames of a body, what stands around it, and how it is shown.
// Angles are degrees, lengths hundredths of stature.
type Pose struct {
	At      basis.Origin
	View    View      `key:"view" doc:"the side from which the body is seen; side unless said"`
	Frame   Frame     `key:"range_frame" doc:"thigh for an open chain, shank for a closed one: what the allowed range is drawn on"`
	Hidden  bool      `key:"range_hidden" doc:"the limit moves the leg, but no range is drawn"`
	Radius  float64   `key:"range_radius" range:"10 40" doc:"of the drawn range; 23 unless said"`
	Work    Work      `key:"work" doc:"which legs are drawn as working; near unless said"`
	Motion  Motion    `key:"motion" doc:"how the body gets from start to end; repeat unless said"`
	Above   float64   `key:"from_above" range:"0 1" doc:"front view: how much lower what comes toward the reader is drawn, as a share of its way; of one who lies"`
	Track   Part      `key:"track" doc:"what the arrow follows; without it there is no arrow"`
	Shift   []float64 `key:"track_shift" range:"-80 80" doc:"moves the arrow by x and y; without it a free place is found" show:"[4, -6]"`
	Lift    float64   `key:"track_lift" range:"0 60" doc:"height of a flight above the line between its ends"`
	Push    []float64 `key:"push" range:"-40 40" doc:"of a hold or a flight: way and length of an arrow that shows where to push, or where it goes" show:"[0, -12]"`
	CloseUp Close     `key:"close_up" doc:"the knee is drawn once more, larger"`
	Kit     []Kit     `key:"kit" doc:"a piece of equipment that is drawn"`
	Floor   *Floor    `key:"floor_plan" doc:"the way over the floor, seen from above"`
	Start   *Body     `key:"start" doc:"where the movement begins"`
	Middle  *Body     `key:"middle" doc:"a frame between, where two do not tell it"`
	End     *Body     `key:"end" doc:"only what differs from the start; a limb that is named is written whole"`
}

// Drawn reports whether there is anything to draw.
func (p Pose) Drawn() bool { return p.Start != nil }

// Body is one frame.
type Body struct {
	At     basis.Origin
	Anchor *Anchor  `key:"anchor" doc:"the part of the body that rests on something"`
	Trunk  *float64 `key:"trunk" range:"-180 180" doc:"lean of the pelvis from upright; forward positive, lying on the back -90"`
	Bend   *float64 `key:"bend" range:"-40 60" doc:"further lean of the chest against the pelvis"`
	Neck   *float64 `key:"neck" range:"-60 60" doc:"nod of the head against the chest"`
	Near   *Leg     `key:"near" doc:"the working leg"`
	Far    *Leg     `key:"far" doc:"the other leg; as near where both work"`
	Arm    *Arm     `key:"arm" doc:"the near arm"`
	FarArm *Arm     `key:"far_arm" doc:"as arm unless said"`
	Roll   *float64 `key:"roll" range:"-110 110" doc:"front view: 90 lies on the other side, -90 on the working side"`
	Lean   *float64 `key:"lean" range:"-40 40" doc:"front view: side bend of the trunk, toward the other side positive"`
}

// Anchor puts a place of the body somewhere; all else follows from the angles.
type Anchor struct {
	Point Rest      `key:"point,required" doc:"which part rests"`
	At    []float64 `key:"at,required" range:"-100 140" doc:"x and height of the surface that it rests on" show:"[0, 0]"`
}

// Leg is written in one of five ways: by hip, knee and ankle; flat, with knee and ankle; with the knee and a ball or heel
// that rests on a height; with the knee and the direction of the foot; or with a ball or heel on a point.
type Leg struct {
	Hip    *float64  `key:"hip" range:"-60 160" doc:"bend of the hip"`
	Knee   *float64  `key:"knee" range:"-15 160" doc:"bend of the knee"`
	Ankle  *float64  `key:"ankle" range:"-80 50" doc:"toes up positive"`
	Flat   bool      `key:"flat" doc:"the sole is level: the hip is found"`
	BallOn *float64  `key:"ball_on" range:"-20 100" doc:"height of the surface under the ball of the foot: the hip is found from the knee"`
	HeelOn *float64  `key:"heel_on" range:"-20 100" doc:"the same for the heel"`
	Toward *float64  `key:"toward" range:"0 200" doc:"direction from hip to ankle, 90 ahead, 180 up: the hip is found from the knee"`
	BallAt []float64 `key:"ball_at" range:"-100 140" doc:"place of the ball of the foot: hip and knee are found" show:"[30, 10]"`
	HeelAt []float64 `key:"heel_at" range:"-100 140" doc:"the same for the heel" show:"[10, 0]"`
	Pitch  float64   `key:"pitch" range:"-100 100" doc:"lift of the heel of a placed foot; negative lifts the toes"`
	Slope  float64   `key:"slope" range:"-150 60" doc:"of the surface under the foot, down to the toes positive"`
	Out    float64   `key:"out" range:"-40 90" doc:"front view: the thigh, outward"`
	Shin   float64   `key:"shin_out" range:"-90 90" doc:"front view: the shank against the thigh, outward"`
}

// Arm is written by angles against the chest, hanging by angles against gravity, or with the hand on a point.
type Arm struct {
	Shoulder float64   `key:"shoulder" range:"-90 200" doc:"the upper arm against the chest; forward positive"`
	Elbow    float64   `key:"elbow" range:"-10 160" doc:"bend of the elbow"`
	Hang     bool      `key:"hang" doc:"the shoulder's angle is against straight down"`
	HandAt   []float64 `key:"hand_at" range:"-100 140" doc:"place of the hand" show:"[20, 60]"`
	HandOn   Part      `key:"hand_on" doc:"the hand holds a place of the near leg"`
	Flip     bool      `key:"flip" doc:"a placed arm bends the other way"`
	Out      float64   `key:"out" range:"-90 190" doc:"front view: the upper arm, outward"`
	Fore     float64   `key:"fore" range:"-170 170" doc:"front view: the forearm against the upper arm, outward"`
	Short    float64   `key:"short" range:"0.1 1" doc:"front view: share of the forearm that is seen"`
}
