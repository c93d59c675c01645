package source

import (
	"fmt"
	"reflect"

	"paceleaf/generator/unit"
)

// fillReach fills a range of bend: two angles, the straightest first.
func (w *walker) fillReach(v reflect.Value, raw any, at spot) {
	f := &field{form: asReach, name: at.key, limits: &span{float64(unit.Full.Straightest), float64(unit.Full.MostBent)}}
	list, ok := asList(raw)
	if !ok {
		w.wrongKind(f, raw, at)
		return
	}
	if len(list) != 2 {
		w.wrong(at, fmt.Sprintf("%s has %s", at.key, counted(len(list), "number")), f.sample(at))
		return
	}
	var ends [2]float64
	for i, raw := range list {
		end := spot{at.key, item(at.path, i), at.ending}
		n, ok := w.number(f, raw, end)
		if !ok {
			return
		}
		w.bounded(f, n, n, end)
		ends[i] = n
	}
	if ends[0] > ends[1] {
		w.wrong(at, fmt.Sprintf("%s has the more bent end first", at.key), fmt.Sprintf("write %s = [%s, %s]", at.key, decimal(ends[1]), decimal(ends[0])))
		return
	}
	v.Set(reflect.ValueOf(unit.Reach{Straightest: unit.Degrees(ends[0]), MostBent: unit.Degrees(ends[1])}))
}
