package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Chart is a printed table of shares of the maximum by repetitions to failure: data with a name and a version. Between its
// rows there is nothing.
type Chart struct {
	Name    string
	Version string
	Source  string
	rows    []chartRow
}

type chartRow struct {
	from, to unit.Count // repetitions
	share    unit.Percent
}

// LoadChart is the chart of the NSCA kind as reprinted. Rows 11, 12 and 15 are left out: the reprints and what is remembered of
// the textbook disagree (see the known gaps).
var LoadChart = Chart{"load-chart", "reprint, rows 1 to 10", "load chart of the NSCA kind, second-hand", []chartRow{
	{1, 1, 100}, {2, 2, 95}, {3, 3, 93}, {4, 4, 90}, {5, 5, 87}, {6, 6, 85}, {7, 7, 83}, {8, 8, 80}, {9, 9, 77}, {10, 10, 75},
}}

// RangeChart is an older chart whose rows are ranges of repetitions.
var RangeChart = Chart{"range-chart", "reprint, rows 95 to 60", "older range chart, second-hand", []chartRow{
	{2, 3, 95}, {4, 5, 90}, {6, 7, 85}, {8, 9, 80}, {10, 11, 75}, {12, 13, 70}, {14, 15, 65}, {16, 20, 60},
}}

// ByShareByChart is the rule of ShareByChart for LoadChart; see ShareByChartRule. It is read off and has no sum.
var ByShareByChart = basis.Rule{Name: "share of the maximum, read off the load chart", Source: basis.Said(LoadChart.Source)}

// ShareByChart returns the share of the maximum that a chart prints for whole repetitions to failure.
//
// Source: of each chart; both second-hand.
// Studied: mixed lifts. The leg press allows more repetitions at every load than the bench (Nuzzo 2024).
// Refuses: repetitions that are not whole or for which the chart has no row; nothing is put between two rows.
func ShareByChart(c Chart, n unit.Count) (unit.Percent, error) {
	for _, row := range c.rows {
		if n >= row.from && n <= row.to && n == unit.CutTo(n, 1) {
			return row.share, nil
		}
	}
	return 0, basis.Say("the chart {a} ({b}) has no row for this number of repetitions", c.Name, c.Version)
}

// ShareByChartRule returns the rule by which a chart is read.
func ShareByChartRule(c Chart) basis.Rule {
	return basis.Rule{Name: basis.Say("share of the maximum, read off the {a}, {b}", c.Name, c.Version), Source: basis.Said(c.Source)}
}
