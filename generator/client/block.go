package client

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Block is what the therapist asks of one block: a file of blocks/, named by its number.
type Block struct {
	Number     int // the file's name
	At         basis.Origin
	Starts     unit.Day    `key:"starts,required" doc:"first day of the block"`
	Weeks      int         `key:"weeks,required" doc:"how many weeks it has" range:"1 12" show:"4"`
	By         string      `key:"by,required" doc:"id of the therapist who asks for it" show:"imbali"`
	Delivery   Delivery    `key:"delivery" doc:"with whom the client trains, for the worksheet"`
	Supervised Supervision `key:"supervised" doc:"how far somebody looks on, for the worksheet"`
	NextVisit  *unit.Day   `key:"next_visit" doc:"day of the next visit; printed for the client" show:"2026-05-04"`
	Shown      *unit.Day   `key:"shown" doc:"day on which somebody showed the client these exercises; printed for the client" show:"2026-04-06"`
	Routine    string      `key:"routine" doc:"when and where the client trains, as the client put it; printed above the diary, which leaves lines for it where it is missing" show:"After work I go straight to the gym."`
	Hurdle     string      `key:"hurdle" doc:"what may get in the way, and what the client does then; printed below the routine" show:"If I am late, I do the first two exercises."`
	Cuffed     *Cuffed     `key:"cuffed" doc:"the therapist's word that this client may wear a pressure cuff in this block; without it no exercise is cuffed"`
	Overrides  []Override  `key:"override" doc:"a deviation from what is computed, with its reason"`
}

// Cuffed is the therapist's word that a client may wear a pressure cuff; the worksheet lists what to ask before.
type Cuffed struct {
	At  basis.Origin
	By  string `key:"by,required" doc:"id of the therapist who has asked the client about what forbids a cuff" show:"imbali"`
	Why string `key:"reason" doc:"for whoever reads the file" show:"loads are still low"`
}

// Override is a deviation, with its reason; the worksheet prints it.
type Override struct {
	At       basis.Origin
	Exercise string                    `key:"exercise,required" doc:"id of the exercise" show:"leg-press-single"`
	Side     unit.Side                 `key:"side" doc:"left, right; every box of the exercise where it is left out"`
	Sets     *int                      `key:"sets" doc:"sets, instead of those of the slot" range:"1 20" show:"2"`
	Reps     *int                      `key:"reps" doc:"repetitions, instead of those of the slot" range:"1 100" show:"8"`
	Reserve  *int                      `key:"reserve" doc:"repetitions that stay possible, instead of those of the slot" range:"0 10" show:"3"`
	Plates   basis.Num[unit.Kilograms] `key:"plates" doc:"what to put on; never above what has been computed unless the reason is the surgeon's" range:"0 600" show:"40"`
	Range    *unit.Reach               `key:"range" doc:"may only tighten" show:"[0, 60]"`
	Leave    bool                      `key:"leave_out" doc:"drop the exercise"`
	Reason   string                    `key:"reason,required" doc:"pain, swelling, travel, equipment, technique, wish or surgeon; more words after a colon" show:"travel: no time for a third set"`
}
