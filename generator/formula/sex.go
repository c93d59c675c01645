package formula

// Sex chooses the body segments of a formula, and nothing else.
type Sex string

const (
	Female Sex = "female"
	Male   Sex = "male"
)
