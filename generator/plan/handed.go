package plan

import "paceleaf/generator/client"

// What a plan hands on of a client, under its own name: page prints it and needs no arrow to the room that reads it.
type (
	Clinic    = client.Clinic
	Phone     = client.Phone
	Device    = client.Device
	Place     = client.Place
	Block     = client.Block
	Away      = client.Away
	Event     = client.Event
	Setup     = client.Setup
	Therapist = client.Therapist
)

// Operated reports whether the weeks count from an operation, not from an injury or a start.
func (p *Plan) Operated() bool { return p.Event != nil && p.Event.Kind == client.Operation }

// LargePrint is the wish of a client who reads with difficulty.
const LargePrint = client.LargePrint

// EnoughPhones is how many numbers with hours a page should have besides the emergency number.
const EnoughPhones = client.EnoughPhones
