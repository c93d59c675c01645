package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Swelling inside the knee (rules 28). Each way of looking may miss some of it: a grade is what was seen, and Hidden how much
// may be there all the same. So a look can always say "too much", and only one that could have seen it "little enough".

// ByLooked is the sweep test; byOther what was looked at in another way.
var (
	ByLooked = basis.Rule{Name: "looked at", Source: "sweep test, Sturgill 2009"}
	byOther  = basis.Rule{Name: "looked at in another way than by the sweep test", Source: "the therapist's own grade"}
)

// sweepNeeds is how much a knee may lack of straight for its sweep test to count. The works that report the test ask for a
// knee that is straight or nearly so and name no degrees. 5° is tool default: a goniometer tells no such knee from a straight
// one (smallest detectable change 5.4° within one rater, extension-error-2024). Before any impact a knee must lack nothing anyhow.
const sweepNeeds unit.Degrees = 5

// coarse is what the kneecap tap and the tape may miss: textbooks give them moderate swelling and more. Tool default.
const coarse = unit.Grade1

// hidden is the swelling that a look may have missed; empty where the method sees the least.
func (f *finder) hidden(d *client.TestDay, k KneeDay) unit.Grade {
	switch d.EffusionMethod {
	case client.Ultrasound:
		return ""
	case client.PatellarTap, client.Girth:
		return coarse
	}
	if lacks := f.lacks(k); lacks > sweepNeeds {
		return unit.Grade3
	}
	return ""
}

// lacks is what the event's knee falls short of straight: as measured on the day, else as last measured since the event, for a
// knee that nobody measured again is no straighter. 0 where nobody ever measured.
func (f *finder) lacks(k KneeDay) unit.Degrees {
	if !k.On.Before(f.event.Date) {
		k.Left.Straight, k.Right.Straight = known(k.Left.Straight, f.ends.Left), known(k.Right.Straight, f.ends.Right)
	}
	angles, _ := f.angled(k)
	return max(0, angles.Straight.Or(0))
}

// straightEnds are the straight ends of both knees, as last measured since the event.
type straightEnds struct{ Left, Right basis.Num[unit.Degrees] }

func (e *straightEnds) keep(k KneeDay) {
	e.Left, e.Right = known(k.Left.Straight, e.Left), known(k.Right.Straight, e.Right)
}

func known(today, last basis.Num[unit.Degrees]) basis.Num[unit.Degrees] {
	if today.OK() {
		return today
	}
	return last
}

// AtWorst is the most swelling that a look leaves room for.
func (k KneeDay) AtWorst() unit.Grade { return worseGrade(k.Effusion, k.EffusionHidden) }

// AtWorst is the measure as it would be, were there all the swelling that the look may have missed.
func (m Measure) AtWorst() Measure {
	m.Grade = worseGrade(m.Grade, m.Hidden)
	return m
}

func worseGrade(a, b unit.Grade) unit.Grade {
	if b.Rank() > a.Rank() {
		return b
	}
	return a
}

func (f *finder) effusion(d *client.TestDay, k KneeDay) Measure {
	id := f.stem("effusion", d, func(t *client.TestDay) bool { return t.Effusion != "" }).id("", "grade")
	by := ByLooked
	if d.EffusionMethod != "" && d.EffusionMethod != client.SweepTest {
		by = byOther
	}
	step := basis.Word(id, by, string(d.Effusion), "")
	step.At, step.On, step.Typed = k.EffusionAt, d.On, string(d.Effusion)
	m := Measure{Name: "effusion", Value: step, Grade: d.Effusion, OK: true, On: d.On, Hidden: k.EffusionHidden}
	if k.AtWorst() == d.Effusion {
		return m
	}
	code, says := "coarse-look", basis.Say("by {a} swelling up to {b} may be missed: a mark below that stays not tested", string(d.EffusionMethod), string(coarse))
	if by == ByLooked {
		code = "sweep-needs-straight"
		says = basis.Say("the sweep test needs a knee that lacks {a}° at most, and this one lacks {b}°: look in another way and say so by effusion_method", float64(sweepNeeds), float64(f.lacks(k)))
	}
	m.HiddenBy = f.doubt(id, code, says)
	return m
}
