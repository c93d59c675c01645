package figure

// Kit is one piece of equipment. Fixed pieces stand at a place; the others go with the body.
type Kit struct {
	Kind   KitKind   `key:"kind,required" doc:"what it is"`
	At     []float64 `key:"at" range:"-120 140" doc:"left end and top of a fixed piece" show:"[-20, 40]"`
	To     []float64 `key:"to" range:"-120 140" doc:"right end of a rail or a band" show:"[30, 60]"`
	Width  float64   `key:"width" range:"0 200" doc:"how wide it is"`
	Height float64   `key:"height" range:"0 120" doc:"how high it is; of a mat or a line seen from the front, how far it comes toward the reader"`
	Lean   float64   `key:"lean" range:"0 80" doc:"of a back rest"`
	On     Part      `key:"on" doc:"what it hangs on"`
	Along  float64   `key:"along" range:"0 1" doc:"place on the shank, 0 at the knee"`
	Behind bool      `key:"behind" doc:"a pad on the calf side"`
}

// KitKind is what a piece is; each draws one primitive.
type KitKind string

const (
	Mat       KitKind = "mat"
	Bench     KitKind = "bench"
	Seat      KitKind = "seat"
	Chair     KitKind = "chair"
	Wall      KitKind = "wall"
	Box       KitKind = "box"
	Board     KitKind = "board"
	Support   KitKind = "support"
	Post      KitKind = "post"
	Rail      KitKind = "rail"
	Bike      KitKind = "bike"
	TowelRoll KitKind = "roll"
	Lever     KitKind = "lever"
	Weight    KitKind = "ankle-weight"
	Barbell   KitKind = "barbell"
	Dumbbell  KitKind = "dumbbell"
	FootPlate KitKind = "foot-plate"
	Slider    KitKind = "slider"
	Strap     KitKind = "strap"
	Band      KitKind = "band"
	Loop      KitKind = "loop"
	Line      KitKind = "line"
	Cone      KitKind = "cone"
	Pads      KitKind = "pads"
	BackPad   KitKind = "back-pad"
	Rocker    KitKind = "rocker"
	Ball      KitKind = "ball"
	Belt      KitKind = "belt"
	Cushion   KitKind = "cushion"
	HipLine   KitKind = "hip-line"
)

func (KitKind) Words() []string {
	return []string{"mat", "bench", "seat", "chair", "wall", "box", "board", "support", "post", "rail", "bike", "roll",
		"lever", "ankle-weight", "barbell", "dumbbell", "foot-plate", "slider", "strap", "band", "loop", "line", "cone",
		"pads", "back-pad", "rocker", "ball", "belt", "cushion", "hip-line"}
}
