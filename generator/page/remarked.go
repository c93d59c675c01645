package page

import (
	"slices"
	"strconv"
)

// notes are the remarks of a table: a sentence that several rows share stands once below it, and each row has its number.
type notes struct{ said []string }

// mark is the number of a remark, as a row has it: [2].
func (n *notes) mark(text string) string {
	if text == "" {
		return ""
	}
	i := slices.Index(n.said, text)
	if i < 0 {
		i = len(n.said)
		n.said = append(n.said, text)
	}
	return "[" + strconv.Itoa(i+1) + "]"
}

// below is the list of all remarks, to stand under the table.
func (n *notes) below() Node {
	list := Node{Kind: "list", Class: "remarked"}
	for i, text := range n.said {
		list.Items = append(list.Items, []Span{{Text: "[" + strconv.Itoa(i+1) + "] " + text}})
	}
	return list
}
