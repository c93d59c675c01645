package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// ByLacks and ByBeyond turn the two keys of the straight end into one angle.
var (
	ByLacks  = basis.Rule{Name: "straight end, short of straight", Sum: "$1", Source: "0 is straight; what lacks counts positive"}
	ByBeyond = basis.Rule{Name: "straight end, beyond straight", Sum: "0 − $1", Source: "0 is straight; what goes beyond counts negative"}
	ByTenth  = basis.Rule{Name: "cut to a tenth", Sum: "down($1 ÷ $2) × $2", Source: "one rounding, toward caution"}
	byGiven  = basis.Rule{Name: "step of the cut"}
)

// knee takes range, swelling and pain of a day.
func (f *finder) knee(d *client.TestDay) {
	k := KneeDay{On: d.On, AngleBy: string(d.AngleBy), PainKind: string(d.PainKind), Effusion: d.Effusion, EffusionAt: d.At.At("effusion")}
	pain := f.stem("pain", d, func(t *client.TestDay) bool { return t.PainWorst.OK() })
	morning := f.stem("pain", d, func(t *client.TestDay) bool { return t.PainNextMorning.OK() })
	k.Pain = d.PainWorst.Named(pain.id("", "worst")).On(d.On)
	k.Morning = d.PainNextMorning.Named(morning.id("", "next-morning")).On(d.On)
	k.QuadsLag = d.QuadsLag.Named(f.stem("quads-lag", d, func(t *client.TestDay) bool { return t.QuadsLag.OK() }).id("", "angle")).On(d.On)
	k.Mass = d.Mass.Named(f.stem("body", d, func(t *client.TestDay) bool { return t.Mass.OK() }).id("", "mass")).On(d.On)
	k.Left, k.Right = f.angles(d, unit.Left), f.angles(d, unit.Right)
	k.EffusionBy, k.EffusionHidden = d.EffusionMethod, f.hidden(d, k)
	if !d.On.Before(f.event.Date) {
		f.ends.keep(k)
	}
	f.Knees = append(f.Knees, k)
	if d.On.Before(f.event.Date) {
		return // what the knee was like before the event opens nothing after it
	}
	if k.Pain.OK() {
		f.put(measured("pain", k.Pain, d.On))
	}
	if k.Morning.OK() {
		f.put(measured("pain-next-morning", k.Morning, d.On))
	}
	if k.QuadsLag.OK() {
		f.put(measured("quads-lag", k.QuadsLag, d.On))
	}
	if d.Effusion != "" {
		f.put(f.effusion(d, k))
	}
}

// angles takes the range of one knee.
func (f *finder) angles(d *client.TestDay, side unit.Side) KneeAngles {
	of := func(t *client.TestDay) client.KneeRange {
		if side == unit.Left {
			return t.Left
		}
		return t.Right
	}
	r := of(d)
	straight := f.stem("extension", d, func(t *client.TestDay) bool {
		return of(t).LacksExtension.OK() || of(t).BeyondStraight.OK()
	})
	bend := f.stem("flexion", d, func(t *client.TestDay) bool { return of(t).Flexion.OK() })
	var a KneeAngles
	switch {
	case r.LacksExtension.OK():
		lacks := r.LacksExtension.Named(straight.id(string(side), "lacks")).On(d.On)
		a.Straight = basis.Of1(straight.id(string(side), "straight-end"), ByLacks, func(l unit.Degrees) unit.Degrees { return l }, lacks).On(d.On)
	case r.BeyondStraight.OK():
		beyond := r.BeyondStraight.Named(straight.id(string(side), "beyond")).On(d.On)
		a.Straight = basis.Of1(straight.id(string(side), "straight-end"), ByBeyond, func(b unit.Degrees) unit.Degrees { return 0 - b }, beyond).On(d.On)
	}
	a.Flexion = r.Flexion.Named(bend.id(string(side), "angle")).On(d.On)
	return a
}

// angled are the angles of the event's knee and of the other; of both knees the worse end counts on each.
func (f *finder) angled(k KneeDay) (mine, theirs KneeAngles) {
	switch f.event.Side {
	case unit.Right:
		return k.Right, k.Left
	case unit.Both:
		mine = k.Left
		if s, ok := k.Right.Straight.Value(); ok && s > mine.Straight.Or(s-1) {
			mine.Straight = k.Right.Straight
		}
		if b, ok := k.Right.Flexion.Value(); ok && b < mine.Flexion.Or(b+1) {
			mine.Flexion = k.Right.Flexion
		}
		return mine, KneeAngles{}
	}
	return k.Left, k.Right
}

// tenth cuts a share down to a tenth, as it is compared and printed.
func tenth(id string, share basis.Num[unit.Percent]) basis.Num[unit.Percent] {
	step := basis.Given("rounding.tenth", byGiven, unit.Percent(0.1), "shares are compared and printed in tenths")
	return basis.Cut(id, ByTenth, unit.CutTo[unit.Percent], share, step)
}
