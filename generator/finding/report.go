package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Report is how the client said the knee was on one day: of several lines of a day the worst of each. No measure is made
// of it, so no criterion can be met by it (rules 30).
type Report struct {
	On       unit.Day
	Pain     basis.Num[unit.Points]
	Morning  basis.Num[unit.Points]
	Kind     client.PainKind
	Swelling client.Swelling
	At       basis.Origin
}

// reports gathers the client's own reports from the event on, up to the day, oldest first.
func (f *finder) reports() {
	for i := range f.c.Logs {
		for _, k := range f.c.Logs[i].Knee {
			if !k.On.After(f.AsOf) && !k.On.Before(f.event.Date) {
				f.report(k)
			}
		}
	}
}

// report lays a line over what the day has already.
func (f *finder) report(k client.Report) {
	at := 0
	for at < len(f.Reports) && f.Reports[at].On.Before(k.On) {
		at++
	}
	if at == len(f.Reports) || f.Reports[at].On != k.On {
		f.Reports = append(f.Reports[:at], append([]Report{{On: k.On, At: k.At}}, f.Reports[at:]...)...)
	}
	r := &f.Reports[at]
	stem := "report." + k.On.String()
	r.Pain = worse(r.Pain, k.Pain.Named(stem+".pain").On(k.On))
	r.Morning = worse(r.Morning, k.Morning.Named(stem+".pain-next-morning").On(k.On))
	if r.Kind == "" || k.Kind.Alarming() && !r.Kind.Alarming() {
		r.Kind = k.Kind
	}
	if rank(k.Swelling) > rank(r.Swelling) {
		r.Swelling = k.Swelling
	}
}

func worse(a, b basis.Num[unit.Points]) basis.Num[unit.Points] {
	if !a.OK() || b.OK() && b.Or(0) > a.Or(0) {
		return b
	}
	return a
}

// rank orders what was said of swelling; -1 where nothing was.
func rank(s client.Swelling) int {
	for i, w := range s.Words() {
		if w == string(s) {
			return i
		}
	}
	return -1
}
