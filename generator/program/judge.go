package program

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// judge holds a program against itself: what each file alone cannot know.
func (r *reader) judge() {
	p := r.p
	for i, key := range p.File.Sources {
		r.cited(key, basis.Origin{File: p.At.File, Key: fmt.Sprintf("sources[%d]", i)})
	}
	r.presets()
	for _, ph := range p.Phases {
		r.judgePhase(ph)
	}
	for i := range p.Limits {
		r.judgeLimit(&p.Limits[i])
	}
	for i := range p.Activities {
		r.judgeActivity(&p.Activities[i])
	}
	for _, g := range p.Goals {
		r.vouched(g.Source, g.Standing, g.At)
		if (g.AtLeast == nil) == (g.AtMost == nil) {
			r.wrong(g.At.At("measure"), fmt.Sprintf("the goal of %q needs one mark", g.Measure), "write at_least or at_most, with the unit in the key")
		}
		r.measure(g.Measure, g.At.At("measure"))
	}
	r.judgeEnd()
	r.alone()
	for _, ex := range p.Exercises {
		r.judgeExercise(ex)
	}
}

// judgeActivity names an activity that has no title, and judges what it needs.
func (r *reader) judgeActivity(a *Activity) {
	if a.Title == "" {
		a.Title = strings.ToUpper(a.ID[:min(1, len(a.ID))]) + strings.ReplaceAll(a.ID[min(1, len(a.ID)):], "-", " ")
	}
	r.criteria(a.Needs)
}

// cited asks that a source stands in the bibliography.
func (r *reader) cited(key string, at basis.Origin) {
	if _, known := r.p.Sources[key]; key != "" && !known {
		instead := "add [" + key + "] there, or mend the key; the library's page of sources names all keys"
		if near := source.Closest(key, slices.Sorted(maps.Keys(r.p.Sources)), meantShown); len(near) > 0 {
			instead = "did you mean " + strings.Join(near, " or ") + "? Else add [" + key + "] there"
		}
		r.wrong(at, fmt.Sprintf("source %q is not in programs/sources.toml", key), instead)
	}
}

// vouched asks for a source wherever the standing claims one.
func (r *reader) vouched(key string, s unit.Standing, at basis.Origin) {
	r.cited(key, at.At("source"))
	if key == "" && (s == unit.Published || s == unit.SecondHand) {
		r.wrong(at.At("standing"), fmt.Sprintf("standing %q without a source", s),
			`write source = "…", or standing = "tool default", "common practice" or "from memory"`)
	}
}

func (r *reader) presets() {
	for kind, name := range r.p.Presets {
		var names []string
		for _, l := range r.p.Limits {
			if string(l.Kind) == kind && l.Preset != "" && !slices.Contains(names, l.Preset) {
				names = append(names, l.Preset)
			}
		}
		if !slices.Contains(names, name) {
			instead := "leave it out: the limits of this program name no preset of it"
			if len(names) > 0 {
				instead = "write one of " + strings.Join(names, ", ") + ", or leave it out for our composite"
			}
			r.wrong(basis.Origin{File: r.p.At.File, Key: "presets." + kind}, fmt.Sprintf("there is no preset %q of %s", name, kind), instead)
		}
	}
}

func (r *reader) judgePhase(ph *Phase) {
	r.criteria(ph.Enter)
	ids := map[string]bool{}
	for _, s := range ph.Slots {
		if ids[s.ID] {
			r.wrong(s.At.At("id"), fmt.Sprintf("slot %q stands twice", s.ID), "give each slot an id of its own")
		}
		ids[s.ID] = true
		if s.WeeklyPercent > 0 && len(s.Waves) > 0 {
			r.wrong(s.At.At("weekly_percent"), "weekly_percent and waves together", "keep one of the two")
		}
		r.vouched(s.Source, s.Standing, s.At)
		r.dose(s)
	}
	r.speeds(ph)
	r.deloads(ph)
	r.sessions(ph)
	for _, s := range ph.Sessions {
		for i, id := range s.Slots {
			if !ids[id] {
				r.wrong(s.At.At(fmt.Sprintf("slots[%d]", i)), fmt.Sprintf("there is no slot %q in this phase", id), "write the id of a [[slot]]")
			}
		}
	}
}

// speeds asks that one exercise has one speed in a phase: a page says it once.
func (r *reader) speeds(ph *Phase) {
	first := map[string]Slot{}
	for _, s := range ph.Slots {
		for _, id := range s.Choose {
			if other, chosen := first[id]; chosen && (other.Lift != s.Lift || other.Lower != s.Lower) {
				r.wrong(s.At.At("choose"), fmt.Sprintf("slots %q and %q ask two speeds of %s", other.ID, s.ID, id), "write the same lift_s and lower_s in both, or choose another exercise")
			}
			first[id] = s
		}
	}
}

func (r *reader) criteria(list []Criterion) {
	for i := range list {
		c := &list[i]
		r.vouched(c.Source, c.Standing, c.At)
		kinds := 0
		for _, asks := range []bool{c.EarliestWeek != nil || c.EarliestMonth != nil, c.Measure != "", len(c.Any) > 0, len(c.All) > 0} {
			if asks {
				kinds++
			}
		}
		switch {
		case kinds != 1:
			r.wrong(c.At, "a criterion asks for one thing", "write earliest_week or earliest_month, or a measure with its mark, or any = […], or all = […]")
		case c.Measure != "" && c.senses() != 1:
			r.wrong(c.At.At("measure"), fmt.Sprintf("measure %q needs one mark", c.Measure), "write one of at_least, above, at_most, below, with the unit in the key")
		default:
			r.measure(c.Measure, c.At.At("measure"))
		}
		r.criteria(c.Any)
		r.criteria(c.All)
	}
}

// measure asks for the name of a measure: nothing is ever found under a misspelt one.
func (r *reader) measure(name string, at basis.Origin) {
	if name != "" && !strings.Contains(name, ".") && !slices.Contains(plainMeasures, name) {
		r.wrong(at, fmt.Sprintf("measure %q is not known", name),
			"write test.quantity, such as knee-extension.lsi, or one of "+strings.Join(plainMeasures, ", "))
	}
}

// plainMeasures are the measures that are no test.quantity.
var plainMeasures = []string{"pain", "pain-next-morning", "effusion", "extension", "flexion", "quads-lag", "acl-rsi", "acl-rsi-short",
	"ikdc", "koos-pain", "koos-symptoms", "koos-adl", "koos-sport", "koos-qol", "kos-adls", "lefs", "tsk-11", "tegner"}

func (r *reader) judgeLimit(l *Limit) {
	r.vouched(l.Source, l.Standing, l.At)
	last := -1
	for _, s := range l.Steps {
		if s.Week == nil {
			continue // the walker has said so
		}
		if *s.Week <= last {
			r.wrong(s.At.At("week"), fmt.Sprintf("week %d does not come after week %d", *s.Week, last), "put the rows in order of weeks")
		}
		if last < 0 && *s.Week > 0 {
			r.faults.Add(source.Fault{File: s.At.File, Key: s.At.At("week").Key, Ask: true,
				What: fmt.Sprintf("no row covers weeks 0 to %d: they are closed", *s.Week-1), Instead: "write { week = 0, allowed = false } if that is meant"})
		}
		if l.LiftsWeek != nil && *s.Week >= *l.LiftsWeek {
			r.wrong(s.At.At("week"), fmt.Sprintf("week %d lies at or after lifts_week = %d", *s.Week, *l.LiftsWeek), "drop the row, or lift later")
		}
		r.says(s.Allowance, l.Kind, s.At)
		last = *s.Week
	}
}

// says asks that an allowance says one thing, in the words of its kind.
func (r *reader) says(a unit.Allowance, k unit.Kind, at basis.Origin) {
	if what, instead := a.Misfit(k); what != "" {
		r.wrong(at, what, instead)
	}
}

func (r *reader) judgeExercise(ex *Exercise) {
	r.vouched(ex.Source, ex.Standing, ex.At)
	for _, k := range ex.Kinds {
		if k.Bends() && ex.Range == nil {
			r.wrong(ex.At.At("kinds"), fmt.Sprintf("the exercise names %s but no range", k), "write range_deg = [straightest, most bent]")
			break
		}
	}
	if ex.Names(unit.HamstringWork) && ex.Work == "" {
		r.wrong(ex.At.At("kinds"), "the exercise names hamstring-work but not how hard", `write hamstring_work = "active", "resisted" or "lengthened"`)
	}
	if ex.Activity != "" && !slices.ContainsFunc(r.p.Activities, func(a Activity) bool { return a.ID == ex.Activity }) {
		r.wrong(ex.At.At("activity"), fmt.Sprintf("program %s has no activity %q", r.p.ID, ex.Activity), "write the id of an [[activity]]")
	}
	if ex.WeightOnLeg != nil && (!ex.Names(unit.WeightBearing) || ex.ResistedBy != Body && ex.ResistedBy != Time || ex.Names(unit.AddedWeight) || ex.Names(unit.Impact)) {
		r.wrong(ex.At.At("weight_on_leg_percent"), "a share of body weight is for standing work without weights and without landings", `take it out, or mend kinds and resisted_by`)
	}
	if ex.ResistedBy == External && len(ex.Needs) == 0 {
		r.wrong(ex.At.At("resisted_by"), "resisted from outside, but no device is named", "write needs = [\"…\"]")
	}
	r.judgeFigure(ex)
}
