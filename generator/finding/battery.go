package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// BatteryTest is the name of the lowest symmetry of the hops of one day.
const BatteryTest = "hop-battery"

// battery takes the lowest symmetry of a day on which two hops or more were tested: one good hop hides no bad one.
func (f *finder) battery(d *client.TestDay) {
	if d.On.Before(f.event.Date) {
		return
	}
	var all []basis.Num[unit.Percent]
	var doubts []basis.Said
	for i := range f.Hops {
		if h := &f.Hops[i]; h.On == d.On && h.LSI.OK() {
			all = append(all, h.LSI)
			doubts = append(doubts, f.Measures["hop-"+h.Test+".lsi"].Doubts...)
		}
	}
	if len(all) < 2 {
		return
	}
	ids := f.stem(BatteryTest, d, func(t *client.TestDay) bool { return len(t.Hops) > 1 })
	lowest := basis.OfList(ids.id("", "lsi"), formula.ByHopBattery, formula.HopBattery, all).On(d.On)
	m := measured(BatteryTest+".lsi", lowest, d.On, doubts...)
	for i := range f.Hops {
		if f.Hops[i].On == d.On {
			m.Alike.Score += f.Hops[i].Test + " " + f.Hops[i].Score + " "
		}
	}
	f.put(m)
}
