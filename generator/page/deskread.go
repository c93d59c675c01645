package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
)

// How the first sheet and the letter write what a reader takes in at a glance: errors and changes no finer than anybody reads the test. Whether
// a change is real was judged before, on the whole number, which stands in the parts below.

// readDecimals are the decimals in which a quantity is read. Common practice, no source: a goniometer is read in whole degrees.
var readDecimals = map[string]int{"°": 0, "%": 1, "N·m/kg": 2, "kg": 1}

// readTo is a number rounded as one reads it.
func readTo(v float64, symbol string) string {
	decimals, known := readDecimals[symbol]
	if !known {
		return withUnit(resultNumber(v), symbol)
	}
	rounded, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'f', decimals, 64), 64)
	return withUnit(resultNumber(rounded), symbol)
}

// since is the change of a measure, and whether it is more than the error of the test.
func (d *desk) since(measure string) string {
	i := slices.IndexFunc(d.p.Changes, func(c plan.Change) bool { return c.Measure == measure })
	if i < 0 || d.p.Changes[i].Delta == nil {
		return ""
	}
	c, error := d.p.Changes[i], ""
	if e := c.Error.MDC95; e != nil {
		error = readTo(e.Value, e.Unit)
	}
	return d.say("since-"+dashes.Replace(string(c.Verdict)), "change", d.changeRead(c), "day", d.w.ShortDay(c.Before.On), "error", error)
}

// changeRead is a change with its sign: of a symmetry in points, for it is no share of what was there before; of the straight end in words,
// because more degrees are worse there.
func (d *desk) changeRead(c plan.Change) string {
	text := readTo(c.Delta.Value, c.Delta.Unit)
	switch zero := text == readTo(0, c.Delta.Unit); {
	case c.Measure == "extension" && zero:
		return text
	case c.Measure == "extension" && c.Delta.Value > 0:
		return d.say("straight-lost", "n", text)
	case c.Measure == "extension":
		return d.say("straight-won", "n", readTo(-c.Delta.Value, c.Delta.Unit))
	case c.Delta.Value > 0 && !zero:
		text = "+" + text
	}
	if c.Delta.Unit == "%" && strings.HasSuffix(c.Measure, ".lsi") {
		return d.say("points-of-symmetry", "n", strings.TrimSuffix(text, " %"))
	}
	return text
}

// straightEnd is the straight end of a knee in words: two signs are in use for it, and a reader cannot see which one we took.
func (d *desk) straightEnd(a finding.KneeAngles) string {
	v, ok := a.Straight.Value()
	switch {
	case !ok:
		return ""
	case v > 0:
		return d.say("straight-lacks", "n", degreesText(v))
	case v < 0:
		return d.say("straight-beyond", "n", degreesText(-v))
	}
	return d.say("straight-zero")
}
