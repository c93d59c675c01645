package client

// Delivery is with whom a client trains.
type Delivery string

const (
	Alone   Delivery = "alone"
	InGroup Delivery = "group"
)

func (Delivery) Words() []string { return []string{"alone", "group"} }

// Supervision is how far somebody looks on.
type Supervision string

func (Supervision) Words() []string { return []string{"never", "at visits", "always"} }
