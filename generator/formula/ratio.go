package formula

// Ratio is a pure number: so many times, or a coefficient. It has no unit.
type Ratio float64

// Unit is empty.
func (Ratio) Unit() string { return "" }
