package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// What the weeks before have earned (rules 22). A ceiling grows only through weeks in which the exercise is done on this machine,
// one after the other. After one week without it the last ceiling is repeated; after two or more it begins one step lower,
// and comes back to it the week after. A week away counts as missed.

// missedWeeks are how many weeks without an exercise ask for a step lower. Common practice, no source.
const missedWeeks = 2

var byStepLower = basis.Rule{Name: "one step lower after two weeks or more without", Sum: "max(0, $1 − $2)", Source: "common practice, no source (rules 22)"}

// weeksEarned is what stands behind the load of a week.
type weeksEarned struct {
	growth  int  // weeks of growth
	climbed int  // weeks earned since the first one
	lower   bool // a step lower, after weeks without it
}

// earned is what stands behind a week. Nothing is earned from the week on in which stay or a step back came to light.
func (l *loader) earned(week int) (w weeksEarned) {
	last, growing := 0, l.lastGrowing(l.e, week)
	for _, n := range append(l.doneBefore(week), week) {
		switch gap := n - last - 1; {
		case last == 0:
			w.growth, w.lower = -l.delay(l.e, l.side, n), l.lapsed(n)
		case gap >= missedWeeks:
			w.lower = true
		case gap == 0 && w.lower:
			w.lower = false
		case gap == 0 && n <= growing:
			w.growth++
			w.climbed++
		}
		last = n
	}
	return w
}

// doneBefore are the weeks of the block before this one in which the slot asks a leg for the exercise on this device.
func (l *loader) doneBefore(week int) (done []int) {
	for _, r := range l.plan.Prescriptions {
		if r.Slot != l.slot || r.Exercise != l.e || r.Side != l.side || r.Device != l.device {
			continue
		}
		for _, w := range r.Weeks {
			if w.Week < week {
				done = append(done, w.Week)
			}
		}
	}
	return done
}

// lapsed reports whether two weeks or more without the exercise lie directly before the first week in which it is done. A lift or a
// set of these weeks measured the leg as it is: then nothing is taken off.
func (l *loader) lapsed(first int) bool {
	on := l.sourceDay()
	if on.IsZero() || l.weeks[first-1].Starts.Sub(on) < 7*missedWeeks {
		return false
	}
	missed := 0
	for missed < first-1 && l.weeks[first-2-missed].Away != nil {
		missed++
	}
	if missed == first-1 {
		missed += l.missedBefore()
	}
	if missed >= missedWeeks {
		l.missed[l.e.ID+"."+string(l.side)] = missed
	}
	return missed >= missedWeeks
}

// sourceDay is the day of the set or lift behind a load; zero where there is none.
func (l *loader) sourceDay() unit.Day {
	switch {
	case l.logged != nil:
		return l.logged.on
	case l.lift != nil:
		return l.lift.On
	}
	return unit.Day{}
}

// missedBefore are the whole weeks without the exercise up to the block's first day: since the newest week in which a log tells of
// it, else since the end of the block before. What no log tells of is not called missed.
func (l *loader) missedBefore() int {
	last := 0
	for i := range l.told {
		if t := &l.told[i]; t.Do == l.e.ID && t.Side == l.side {
			last = max(last, t.week)
		}
	}
	if last > 0 {
		return l.block.Starts.Sub(l.asked.Block.Starts.AddWeeks(last)) / 7
	}
	return withoutBlock(l.client, l.block)
}

// withoutBlock are the whole weeks between a block and the one before; 0 where there is none before.
func withoutBlock(c *client.Client, b *client.Block) int {
	var before *client.Block
	for i := range c.Blocks {
		if o := &c.Blocks[i]; o.Number < b.Number {
			before = o
		}
	}
	if before == nil {
		return 0
	}
	return max(0, b.Starts.Sub(before.Starts.AddWeeks(before.Weeks))/7)
}

// steppedLower takes one step off a load after weeks without the exercise.
func (l *loader) steppedLower(load basis.Num[unit.Kilograms], week int) basis.Num[unit.Kilograms] {
	if !l.lower {
		return load
	}
	return basis.Of2(l.weekID(week, "one-step-lower"), byStepLower, func(x, step unit.Kilograms) unit.Kilograms {
		return max(0, x-step)
	}, load, stepMoved(l.place, l.device))
}

// tooLightBefore reports whether an earlier week of the block passed the exercise over because the machine cannot be set so low:
// growth that nobody earned brings it back in no later one.
func (l *loader) tooLightBefore(week int) bool {
	return slices.ContainsFunc(l.plan.Dropped, func(d Dropped) bool {
		return d.Slot == l.slot.ID && d.Exercise == l.e.ID && d.Side == l.side && d.Week < week && d.Because == lighterThanPin && l.weeks[d.Week-1].Place == l.place
	})
}

// flagMissed tells of loads that begin a step lower, and of weeks without a block.
func (p *planner) flagMissed() {
	for _, r := range p.plan.Prescriptions {
		about := r.Exercise.ID + "." + string(r.Side)
		if n := p.missed[about]; n > 0 && r.Weeks[0].Plates.OK() {
			p.flag("weeks-missed", about, "{a} weeks without it: one step lower", n)
			delete(p.missed, about)
		}
	}
	if n := withoutBlock(p.client, p.block); n >= missedWeeks {
		p.flag("weeks-without-a-block", "block", "{a} weeks lie between this block and the one before: loads of older lifts begin one step lower", n)
	}
}
