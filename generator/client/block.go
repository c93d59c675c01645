package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Block is what the therapist asks of one block: a file of blocks/, named by its number.
type Block struct {
	Number    int // the file's name
	At        basis.Origin
	Starts    unit.Day   `key:"starts,required"`
	Weeks     int        `key:"weeks,required" range:"1 12"`
	By        string     `key:"by,required"`
	NextVisit *unit.Day  `key:"next_visit"`
	Overrides []Override `key:"override"`
}

// Override is a deviation, with its reason; the worksheet prints it.
type Override struct {
	At       basis.Origin
	Exercise string                    `key:"exercise,required"`
	Side     unit.Side                 `key:"side" doc:"left, right; every box of the exercise where it is left out"`
	Sets     *int                      `key:"sets" range:"1 20"`
	Reps     *int                      `key:"reps" range:"1 100"`
	Reserve  *int                      `key:"reserve" range:"0 10"`
	Plates   basis.Num[unit.Kilograms] `key:"plates" doc:"what to put on; never above what has been computed unless the reason is the surgeon's" range:"0 600"`
	Range    *unit.Reach               `key:"range" doc:"may only tighten"`
	Leave    bool                      `key:"leave_out" doc:"drop the exercise"`
	Reason   string                    `key:"reason,required" doc:"pain, swelling, travel, equipment, technique, wish or surgeon; more words after a colon"`
}
