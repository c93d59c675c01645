package page

import "github.com/yuin/goldmark/util"

// unescaped is what a person meant by a run of Markdown text: \* is a star, &amp; an ampersand.
func unescaped(raw []byte, verbatim bool) string {
	if verbatim {
		return string(raw)
	}
	return string(util.ResolveNumericReferences(util.ResolveEntityNames(util.UnescapePunctuations(raw))))
}
