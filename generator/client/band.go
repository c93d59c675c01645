package client

import "fmt"

// A band has a force only where the clinic has measured it: its length at rest and two points. Makers' figures were too high for five
// grades of eight (Uchida 2016), so none are shipped.

// Band reports whether the device is a band that was measured.
func (d *Device) Band() bool { return d.Kind == "band" && d.Rest.OK() && len(d.Points) == 2 }

// halfBand says what is wrong with the measurement of a band; empty where nothing is, or where none was made.
func (d *Device) halfBand() (what, instead string) {
	const two = "measure two points with a luggage scale: rest_cm, and [[place.device.point]] with length_cm and force_n, twice"
	switch {
	case !d.Rest.OK() && len(d.Points) == 0:
		return "", ""
	case d.Kind != "band":
		return fmt.Sprintf("%s is no band and has points of one", d.ID), "take rest_cm and the points out, or write kind = \"band\""
	case !d.Band():
		return fmt.Sprintf("the band %s has %d of two points, or no length at rest", d.ID, len(d.Points)), two
	}
	a, b := d.Points[0], d.Points[1]
	if a.Length.Or(0) > b.Length.Or(0) {
		a, b = b, a
	}
	if a.Length.Or(0) < d.Rest.Or(0) || a.Length.Or(0) == b.Length.Or(0) || a.Force.Or(0) >= b.Force.Or(0) {
		return fmt.Sprintf("the points of band %s do not rise: longer than at rest, and harder the longer", d.ID), two
	}
	return "", ""
}
