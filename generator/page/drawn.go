package page

import (
	"slices"

	"paceleaf/generator/figure"
)

// Drawn returns the view with a picture in every figure that names a drawing. A page whose view says that nothing has
// changed need not be drawn: so whoever holds many views draws one at a time.
func Drawn(v View) (View, error) {
	v.Parts = slices.Clone(v.Parts)
	for i := range v.Parts {
		nodes, err := drawnNodes(v.Parts[i].Nodes)
		if err != nil {
			return View{}, err
		}
		v.Parts[i].Nodes = nodes
	}
	return v, nil
}

func drawnNodes(nodes []Node) ([]Node, error) {
	nodes = slices.Clone(nodes)
	for i := range nodes {
		n := &nodes[i]
		if d := n.Drawing; d != nil && d.svg == nil {
			own := *d
			own.ID = anchor(own.ID)
			svg, err := figure.Draw(own.Pose, figure.Options{ID: own.ID, Title: oneLine(n.Title), Describe: own.describe(n.Says), Side: own.Side, Range: own.Range, Moves: own.Play != ""})
			if err != nil {
				return nil, err
			}
			own.svg = svg
			n.Drawing = &own
		}
		below, err := drawnNodes(n.Nodes)
		if err != nil {
			return nil, err
		}
		n.Nodes = below
	}
	return nodes, nil
}

// FromMarkdown turns a person's Markdown into nodes: headings, paragraphs and flat lists; the rest becomes text.
func FromMarkdown(source string) []Node { return fromMarkdown(source) }
