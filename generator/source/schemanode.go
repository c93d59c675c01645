package source

import (
	"bytes"
	"encoding/json"
	"time"
)

// node is one schema, its keywords in the order in which a person reads them.
type node struct {
	Dialect              string     `json:"$schema,omitempty"`
	Comment              string     `json:"$comment,omitempty"`
	Title                string     `json:"title,omitempty"`
	Description          string     `json:"description,omitempty"`
	Ref                  string     `json:"$ref,omitempty"`
	Type                 any        `json:"type,omitempty"`
	Enum                 []any      `json:"enum,omitempty"`
	Format               string     `json:"format,omitempty"`
	Minimum              *float64   `json:"minimum,omitempty"`
	Maximum              *float64   `json:"maximum,omitempty"`
	MinLength            *int       `json:"minLength,omitempty"`
	MaxLength            *int       `json:"maxLength,omitempty"`
	MinItems             *int       `json:"minItems,omitempty"`
	MaxItems             *int       `json:"maxItems,omitempty"`
	Items                *node      `json:"items,omitempty"`
	Properties           properties `json:"properties,omitempty"`
	PatternProperties    properties `json:"patternProperties,omitempty"`
	AdditionalProperties *bool      `json:"additionalProperties,omitempty"`
	Required             []string   `json:"required,omitempty"`
	AnyOf                []*node    `json:"anyOf,omitempty"`
	AllOf                []*node    `json:"allOf,omitempty"`
	Not                  *node      `json:"not,omitempty"`
	Examples             []any      `json:"examples,omitempty"`
	Defs                 properties `json:"$defs,omitempty"`
}

// properties are schemas by name, in the order of the struct.
type properties []property

type property struct {
	name string
	node *node
}

// MarshalJSON writes an object whose keys stay in order.
func (ps properties) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	for i, p := range ps {
		b.WriteByte("{,"[min(i, 1)])
		if err := e.Encode(p.name); err != nil {
			return nil, err
		}
		b.WriteByte(':')
		if err := e.Encode(p.node); err != nil {
			return nil, err
		}
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// asJSON turns what TOML decodes to into what JSON has: a day becomes a text.
func asJSON(v any) any {
	switch v := v.(type) {
	case time.Time:
		return v.Format(time.DateOnly)
	case map[string]any:
		table := map[string]any{}
		for key, inner := range v {
			table[key] = asJSON(inner)
		}
		return table
	}
	items, isList := asList(v)
	if !isList {
		return v
	}
	list := make([]any, len(items))
	for i, inner := range items {
		list[i] = asJSON(inner)
	}
	return list
}
