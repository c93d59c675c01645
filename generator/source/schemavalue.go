package source

import (
	"math"

	"paceleaf/generator/unit"
)

// described is the schema of a field under a key with an ending, with what an editor shows of it.
func (s *schemas) described(f *field, e unit.Ending) *node {
	n := s.ending(f, e)
	if n.Ref != "" {
		n = &node{AllOf: []*node{n}} // older editions pass over what stands beside a reference
	}
	n.Description = f.doc
	if !f.holdsTables() && f.form != asTable {
		if n.Description != "" {
			n.Description += ". "
		}
		n.Description += "Write " + f.writing()
	}
	if example := f.shownIn(e); example != nil {
		n.Examples = []any{example}
	}
	return n
}

// of is the schema of a field whose key has no unit.
func (s *schemas) of(f *field) *node { return s.ending(f, f.spellings()[0]) }

// ending is the schema of a value behind a key with that ending.
func (s *schemas) ending(f *field, e unit.Ending) *node {
	switch f.form {
	case asTable:
		return s.refer(f.typ)
	case asShort:
		return &node{AnyOf: []*node{textNode(false), s.refer(f.typ)}}
	case asItems:
		return s.listNode(f, e)
	case asTables:
		return &node{Type: "object", AdditionalProperties: new(bool), PatternProperties: properties{{id.String(), s.of(f.holds)}}}
	default:
		return f.scalar(e)
	}
}

func (s *schemas) listNode(f *field, e unit.Ending) *node {
	item := s.ending(f.holds, e)
	list := &node{Type: "array", Items: item}
	if f.required {
		list.MinItems = ptr(1)
	}
	if f.lone {
		return &node{AnyOf: []*node{list, item}}
	}
	return list
}

// scalar is the schema of what is no table and no list of them.
func (f *field) scalar(e unit.Ending) *node {
	switch f.form {
	case asWord:
		return &node{Enum: wordNodes(f.words)}
	case asBool:
		return &node{Type: "boolean"}
	case asDay:
		return &node{Type: "string", Format: "date"}
	case asReach:
		ends := f.numberNode("number", e, &span{float64(unit.Full.Straightest), float64(unit.Full.MostBent)})
		return &node{Type: "array", Items: ends, MinItems: ptr(2), MaxItems: ptr(2)}
	case asWhole:
		return f.numberNode("integer", e, f.limits)
	case asNumber, asMeasure, asTyped:
		return f.numberNode("number", e, f.limits)
	case asKeyed:
		n := f.numberNode("number", e, f.limits)
		if words := f.keyWords(e); len(words) > 0 {
			return &node{AnyOf: []*node{n, {Enum: wordNodes(words)}}}
		}
		return n
	case asOwnText:
		return textNode(f.required)
	default:
		n := textNode(f.required)
		n.Type, n.Minimum = []string{"string", "integer"}, ptr(0.0) // a name may look like a number: see fillText
		n.Not = &node{Enum: []any{gap}}
		return n
	}
}

func textNode(must bool) *node {
	n := &node{Type: "string", MaxLength: ptr(maxRunes)}
	if must {
		n.MinLength = ptr(1)
	}
	return n
}

// numberNode bounds a number in the unit of its key. A bound that is not round there is moved outward: a schema refuses
// nothing that the reader takes.
func (f *field) numberNode(kind string, e unit.Ending, limits *span) *node {
	n := &node{Type: kind}
	if limits == nil {
		return n
	}
	factor := e.Factor
	if factor == 0 {
		factor = 1
	}
	n.Minimum, n.Maximum = ptr(outward(limits.lo/factor, math.Floor)), ptr(outward(limits.hi/factor, math.Ceil))
	return n
}

const (
	boundParts = 1e3 // of one, to which a bound is moved outward
	sureParts  = 1e6 // of one: a bound so near to a round one is meant to be it
)

func outward(v float64, toward func(float64) float64) float64 {
	v = math.Round(v*sureParts) / sureParts
	return toward(v*boundParts) / boundParts
}

func wordNodes(words []string) (list []any) {
	for _, w := range words {
		list = append(list, w)
	}
	return list
}

func ptr[T any](v T) *T { return &v }
