package page

import (
	"slices"

	"paceleaf/generator/plan"
)

// weeks is the table of the weeks, leg by leg. Weeks that ask the same are one line, and so are legs; columns that say nothing are left out.
// What all lines say alike is handed back beside it, to be said once.
func (d *desk) weeks(legs []plan.Prescription) (Node, []Fact) {
	loads := slices.ContainsFunc(legs, loaded)
	columns := []string{"leg", "week", "dose", "range", "plates", "moved", "share", "implied", "why"}
	if !loads {
		columns = slices.Delete(columns, 4, 8)
	}
	table := d.table("weeks", "", columns...)
	var rows [][]string
	for _, pr := range legs {
		for _, row := range d.weeksOf(pr, loads) {
			if i := slices.IndexFunc(rows, func(have []string) bool { return slices.Equal(have[1:], row[1:]) }); i >= 0 && len(d.weeksOf(legs[0], loads)) == 1 {
				rows[i][0] = nonEmpty(", ", rows[i][0], row[0])
				continue
			}
			rows = append(rows, row)
		}
	}
	for _, row := range rows {
		table.row("", row...)
	}
	return d.saidOnce(withoutEmpty(table), "dose", "range")
}

// saidOnce takes columns out of a table of several lines where all lines say the same.
func (d *desk) saidOnce(table Node, columns ...string) (Node, []Fact) {
	var shared []Fact
	for _, c := range columns {
		title := d.say("column-" + c)
		i := slices.Index(table.Head, title)
		if i < 0 || len(table.Rows) < 2 || slices.ContainsFunc(table.Rows, func(row []Cell) bool { return textOf(row[i].Spans) != textOf(table.Rows[0][i].Spans) }) {
			continue
		}
		shared = append(shared, fact(title, textOf(table.Rows[0][i].Spans)))
		table = without(table, i)
	}
	return table, shared
}

// weeksOf are the lines of one leg.
func (d *desk) weeksOf(pr plan.Prescription, loads bool) (rows [][]string) {
	for i := 0; i < len(pr.Weeks); {
		j, cells := i+1, d.weekOf(pr.Weeks[i], loads)
		for j < len(pr.Weeks) && slices.Equal(cells, d.weekOf(pr.Weeks[j], loads)) {
			j++
		}
		var numbers []int
		for _, w := range pr.Weeks[i:j] {
			numbers = append(numbers, w.Week)
		}
		rows = append(rows, append([]string{d.roleOf(pr), d.say("week", "number", spanOf(numbers), "day", d.w.ShortDay(pr.Weeks[i].Starts))}, cells...))
		i = j
	}
	return rows
}

// weekOf is a line of the table without leg and week.
func (d *desk) weekOf(w plan.WeekDose, loads bool) []string {
	cells := []string{d.doseOf(w), d.rangeOf(w)}
	if loads {
		cells = append(cells, d.plates(w), amount(w.Moved), amount(w.Share), left(w.Implied))
	}
	return append(cells, d.whyDose(w))
}

// withoutEmpty takes out the columns that say nothing in any row.
func withoutEmpty(table Node) Node {
	for i := len(table.Head) - 1; i > 0; i-- {
		if slices.ContainsFunc(table.Rows, func(row []Cell) bool { return textOf(row[i].Spans) != "–" }) {
			continue
		}
		table = without(table, i)
	}
	return table
}

// without takes a column out.
func without(table Node, i int) Node {
	table.Head = slices.Delete(table.Head, i, i+1)
	for r := range table.Rows {
		table.Rows[r] = slices.Delete(table.Rows[r], i, i+1)
	}
	return table
}
