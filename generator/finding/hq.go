package finding

import (
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Ratio is bending strength as a share of straightening strength, of each leg, on one day.
type Ratio struct {
	On          unit.Day
	Test        string // hamstrings-to-quadriceps, with the word behind both tests
	Left, Right basis.Num[unit.Percent]
}

// The two tests of force, and what is made of both.
const (
	extensionTest = "knee-extension"
	flexionTest   = "knee-flexion"
	ratioTest     = "hamstrings-to-quadriceps"
)

// ratios holds every test of bending of a day against the one of straightening with the same word behind its name.
func (f *finder) ratios(d *client.TestDay) {
	day := f.strengthOf(d)
	for _, flexion := range day {
		word, ok := strings.CutPrefix(flexion.Test, flexionTest)
		if !ok {
			continue
		}
		for _, extension := range day {
			if extension.Test == extensionTest+word {
				f.ratio(d, word, extension, flexion)
			}
		}
	}
}

func (f *finder) strengthOf(d *client.TestDay) (day []*StrengthTest) {
	for i := range f.Strength {
		if f.Strength[i].On == d.On {
			day = append(day, &f.Strength[i])
		}
	}
	return day
}

func (f *finder) ratio(d *client.TestDay, word string, extension, flexion *StrengthTest) {
	ids := f.stem(ratioTest+word, d, func(t *client.TestDay) bool {
		return hasStrength(t, extensionTest+word) && hasStrength(t, flexionTest+word)
	})
	r := Ratio{On: d.On, Test: ratioTest + word}
	r.Left, r.Right = quotient(ids, unit.Left, extension, flexion).On(d.On), quotient(ids, unit.Right, extension, flexion).On(d.On)
	f.Ratios = append(f.Ratios, r)
	if d.On.Before(f.event.Date) || f.event.Side == unit.Both {
		return
	}
	mine := r.Left
	if f.operated() == unit.Right {
		mine = r.Right
	}
	m := measured(r.Test+".percent", mine, d.On)
	m.Alike = extension.Alike
	f.put(m)
}

func quotient(ids stem, side unit.Side, extension, flexion *StrengthTest) basis.Num[unit.Percent] {
	id := ids.id(string(side), "percent")
	h, q := flexion.OfSide(side).Torque, extension.OfSide(side).Torque
	a, b := extension.Alike, flexion.Alike
	a.Levers, b.Levers, a.Gravity, b.Gravity = [2]unit.Metres{}, [2]unit.Metres{}, "", "" // torques stand on their own lever
	if apart := a.Apart(b); apart != "" {
		return basis.Refused[unit.Percent](id, formula.ByHamstringsToQuadriceps, basis.Say("straightening and bending were measured differently: {a}", apart), h.Step(), q.Step())
	}
	share := basis.Try2(ids.id(string(side), "ratio"), formula.ByHamstringsToQuadriceps, formula.HamstringsToQuadriceps[unit.NewtonMetres], h, q)
	return tenth(id, share)
}

func hasStrength(t *client.TestDay, test string) bool {
	for i := range t.Strength {
		if t.Strength[i].Test == test {
			return true
		}
	}
	return false
}

func numeral(n int) string { return strconv.Itoa(n) }

// IsRatioTest reports whether a name is the one of the ratio of both muscles of a thigh.
func IsRatioTest(name string) bool { return strings.HasPrefix(name, ratioTest) }
