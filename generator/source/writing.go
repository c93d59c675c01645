package source

import (
	"strings"

	"paceleaf/generator/unit"
)

// writing says what may be written for a field: its kind, units, bounds and words.
func (f *field) writing() string {
	switch f.form {
	case asItems:
		return f.writingOfList()
	case asTables:
		return "a table: any id, and for each " + f.holds.writing()
	case asShort:
		return "text, or the keys below"
	case asWord:
		return either(quoted(f.words))
	case asBool:
		return "true or false"
	case asDay:
		return "a day"
	case asReach:
		full := &span{float64(unit.Full.Straightest), float64(unit.Full.MostBent)}
		return "[straightest, most bent], each " + full.in(degrees[0])
	case asKeyed:
		return f.writingOfKeyed()
	case asWhole:
		return "a whole number" + f.writingOfBounds()
	case asNumber, asMeasure, asTyped:
		return "a number" + f.writingOfUnits() + f.writingOfBounds()
	default:
		return "text"
	}
}

func (f *field) writingOfList() string {
	list := "a list, each " + f.holds.writing()
	if f.holds.form == asText || f.holds.form == asOwnText {
		list = "a list of texts"
	}
	if f.lone {
		return list + "; or one without brackets"
	}
	return list
}

func (f *field) writingOfUnits() string {
	var symbols []string
	for _, e := range f.endings {
		if e.Symbol != "" {
			symbols = append(symbols, e.Symbol)
		}
	}
	if len(symbols) == 0 {
		return ""
	}
	return " in " + either(symbols)
}

func (f *field) writingOfBounds() (text string) {
	own := unit.Ending{Factor: 1}
	if len(f.endings) > 0 {
		own = f.endings[0]
	}
	if f.limits != nil {
		text = ", " + f.limits.in(own)
	}
	if f.usual != nil {
		text += ", mostly " + f.usual.in(own)
	}
	return text
}

func (f *field) writingOfKeyed() string {
	text := "a number" + f.writingOfUnits() + f.writingOfBounds()
	for _, e := range f.endings {
		if words := f.keyWords(e); len(words) > 0 {
			text += ", or " + strings.Join(quoted(words), ", ")
		}
	}
	return text
}
