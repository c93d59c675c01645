package page

import (
	"cmp"
	"strings"

	"paceleaf/generator/basis"
)

// howEach is the last part: how each number on the page came to be, down to the file and key in which the first of them was typed. It is
// printed only where it has been opened.
func (d *desk) howEach() Part {
	named := func(key string, lines []string) Node {
		return group("sums", d.say(key), 3, bullets("sum", lines...))
	}
	nodes := []Node{
		named("sums-newest", d.newestSums()),
		named("sums-loads", d.doseSums()),
		named("sums-limits", d.limitSums()),
		named("sums-back", d.backSums()),
		d.lines(),
		named("sums-groups", sums(&d.tests, groupSteps(d.p.Groups)...)),
		named("sums-earlier", sums(&d.tests, testSteps(d.p.Found)...)),
		d.formulas(),
		d.typedIn(),
	}
	if nodes = kept(nodes); len(nodes) == 0 {
		return Part{}
	}
	return d.onScreen("sums", d.say("sums-line", "n", sumsIn(nodes)), append([]Node{d.note("how-to-read")}, nodes...)...)
}

// sumsIn counts the lines of sums.
func sumsIn(nodes []Node) (n int) {
	for _, node := range nodes {
		if node.Class == "sum" {
			n += len(node.Items)
		}
		n += sumsIn(node.Nodes)
	}
	return n
}

// typedIn lists every typed value behind the plan, in the order of files and keys; the trials of one list on one line.
func (d *desk) typedIn() Node {
	table := d.table("typed", d.say("typed-caption"), "file", "key", "typed", "kept")
	last := basis.Origin{}
	for _, s := range trailOf(d.p).typed() {
		at := s.At
		if i := strings.LastIndexByte(at.Key, '['); i > 0 && strings.HasSuffix(at.Key, "]") {
			at.Key = at.Key[:i]
		}
		typed, kept := cmp.Or(s.Typed, s.Text), d.outcome(s)
		if n := len(table.Rows) - 1; n >= 0 && at == last {
			row := table.Rows[n]
			row[2].Spans, row[3].Spans = plain(textOf(row[2].Spans)+", "+typed), plain(textOf(row[3].Spans)+", "+kept)
			continue
		}
		table.row("", standsAt(basis.Origin{File: at.File, Line: at.Line}, nil), at.Key, typed, kept)
		last = at
	}
	return table
}
