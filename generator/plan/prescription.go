package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Prescription is one exercise for one leg (or both together) over the weeks of the block.
type Prescription struct {
	Exercise      *program.Exercise
	Slot          *program.Slot
	Side          unit.Side
	Role          string // operated, other, donor, index, both
	Device        *client.Device
	Setup         *client.Setup             // what the client sets at the machine; nil where nothing is typed
	Easier        *program.Exercise         // a step back that limits, place and knee allow all through the block; nil: none
	Harder        *program.Exercise         // a step on, likewise
	Weeks         []WeekDose                // only the weeks in which the exercise is chosen
	Sessions      []string                  // ids of the sessions it stands in
	OneRM         basis.Num[unit.Kilograms] // estimate behind the load; missing with its reason
	Span          finding.Span              // of the estimate, over all equations
	Way           finding.Way               // how its loads are reckoned
	Body          *finding.Body             // what moves of the body; nil: none
	StepShare     basis.Num[unit.Percent]   // which share of the first load one step of the device is
	Tonnage       basis.Num[unit.Kilograms] // what one session of the first week moves in all
	Volume        basis.Num[unit.Percent]   // relative volume of that session: repetitions times share of the maximum
	Mechanics     Mechanics                 // of the first load
	FromIsometric *IsometricStart           // beside "find your weight": for the therapist only
	LiftedOn      unit.Day
	Logged        bool        // the estimate comes from a logged set of LiftedOn, not from a lift
	Level         int         // of a ladder: the rung to begin on, from 1; 0: no ladder
	Tested        *unit.Reach // range of the lift test
}

// WeekDose is what is to be done in one week.
type WeekDose struct {
	Week           int
	Starts         unit.Day
	Due            bool // week 1; later weeks are ceilings, earned by the last completed week
	Dose           program.Dose
	Range          *unit.Reach               // allowed this week: the exercise's own range met with all limits; nil where it has none
	RangeBy        basis.Said                // which measured end of the knee made the range as narrow as it is; empty where limits or nature did
	Bends          *unit.Degrees             // of an exercise for range that RangeBy narrowed: how far the knee bends now
	Plates         basis.Num[unit.Kilograms] // what is put on or pinned
	Moved          basis.Num[unit.Kilograms]
	Each           []SetDose                            // set by set, where they differ; else empty
	Fourth         []FourthSet                          // of method daily-adjusted: set 4, by the repetitions of set 3
	Pressure       basis.Num[unit.MillimetresOfMercury] // of a cuff
	Time           basis.Num[unit.Seconds]              // how long a cuff is worn, or how long a stimulated set takes
	HoldAt         basis.Num[unit.Newtons]              // of a held exercise: the force to hold, in HoldIn
	HoldIn         string                               // unit of the gauge: N, kgf or lbf
	Stretch        basis.Num[unit.Metres]               // how long to pull a band
	PerSide        []unit.Kilograms                     // plates on each side, heaviest first; nil on a stack
	CutError       basis.Num[unit.Percent]              // by how much the step of the device left the load lighter than planned
	AskedReps      int                                  // repetitions of the program, where they were raised
	Reps           basis.Num[unit.Count]                // repetitions that were raised for it; missing where they were not
	Share          basis.Num[unit.Percent]              // after the cut: true share of the one-repetition maximum
	Implied        basis.Num[unit.Count]                // after the cut: repetitions that are really left in reserve
	FindYourWeight bool
	Why            basis.Said // of find your weight: why there is no load
	NearPin        int        // the hole of the set-up that stops at the most bent allowed angle; 0: none
	PinDeg         unit.Degrees
}

// Dropped is a choice that was passed over, with the reason.
type Dropped struct {
	Slot     string
	Exercise string
	Side     unit.Side
	Week     int
	Because  basis.Said
	Empty    bool // the slot has no choice left in this week
	Paused   bool // symptoms keep the knee from it
}
