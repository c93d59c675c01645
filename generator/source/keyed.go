package source

import "reflect"

// fillKeyed hands a number or a word to a type that knows itself what its key's ending means.
func (w *walker) fillKeyed(f *field, v reflect.Value, raw any, at spot) {
	switch n := raw.(type) {
	case float64:
		if _, ok := w.number(f, n, at); !ok {
			return
		}
	case string:
		text, ok := w.clean(n, at)
		if !ok {
			return
		}
		raw = text
	case int64:
	default:
		w.wrongKind(f, raw, at)
		return
	}
	w.judge(at, v.Addr().Interface().(fromKeyed).FromKeyed(at.ending, raw))
}
