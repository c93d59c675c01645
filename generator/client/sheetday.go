package client

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// sheetDay gathers the cells of a row as the document that a test file would be.
type sheetDay struct {
	row    sheetRow
	doc    map[string]any
	heads  map[string]string // path in the document -> head of the column
	faults source.Faults
}

// origin names file, row and column of a path of the document.
func (d *sheetDay) origin(path string) basis.Origin {
	o := basis.Origin{File: d.row.file, Line: d.row.line, Key: path}
	for p := path; p != ""; p = parent(p) {
		if h, known := d.heads[p]; known {
			o.Key = h
			break
		}
	}
	return o
}

func parent(path string) string {
	if i := strings.LastIndexAny(path, ".["); i >= 0 {
		return path[:i]
	}
	return ""
}

func (d *sheetDay) cell(text, cell string) {
	switch {
	case slices.Contains(plainHeads, text):
		d.set(text, scalar(cell), text)
	case slices.Contains(questionnaires, text):
		i := d.entry("questionnaire", "id", text)
		d.set(fmt.Sprintf("questionnaire[%d].score", i), scalar(cell), text)
	default:
		d.test(splitHead(text), text, cell)
	}
}

var shortSet = regexp.MustCompile(`\d\s*(kg|lb)?\s*[x×]\s*\d`)

func (d *sheetDay) test(h head, text, cell string) {
	switch {
	case h.leg == "range_deg":
		i := d.entry("lift", "exercise", h.test)
		d.set(fmt.Sprintf("lift[%d].range_deg", i), numbers(cell), text)
	case hopTests[h.test] != "":
		i := d.entry("hop", "test", strings.TrimPrefix(h.test, "hop-"))
		key := map[string]string{"": hopTests[h.test], "cm": "distance_cm", "in": "distance_in", "s": "time_s", "count": "count"}[h.ending]
		d.leg(fmt.Sprintf("hop[%d].%s", i, h.leg), key, numbers(cell), text, cell)
	case h.test == YBalanceTest:
		key := ""
		if slices.Contains(reachEndings, h.ending) {
			key = h.ending + "_cm"
		}
		value := numbers(cell)
		if h.ending == "leg" {
			value = scalar(cell)
		}
		d.leg("y_balance."+h.leg, key, value, text, cell)
	case h.test == RiseTest:
		d.leg("single_leg_rise."+h.leg, "seat_cm", scalar(cell), text, cell)
	case slices.Contains(strengthTests, h.test):
		i := d.entry("strength", "test", h.test)
		key := "peak_" + h.ending
		switch h.ending {
		case "":
			key = "peak_n"
		case "nm":
			key = "torque_nm"
		}
		d.leg(fmt.Sprintf("strength[%d].%s", i, h.leg), key, numbers(cell), text, cell)
	default:
		i := d.entry("lift", "exercise", h.test)
		path := fmt.Sprintf("lift[%d].%s", i, h.leg)
		if shortSet.MatchString(cell) {
			d.set(path, cell, text)
			return
		}
		if numbers(cell) != nil {
			d.faults.Add(source.Fault{File: d.row.file, Line: d.row.line, What: fmt.Sprintf("column %s holds trials (%s), yet %s is no test of force", text, cell, h.test),
				Instead: "head it by one of " + strings.Join(strengthTests, ", ") + " and the leg; a set of a lift is written 60x8+0"})
			return
		}
		d.leg(path, "", nil, text, cell)
	}
}

// leg sets the value of one leg, or that it was stopped for pain.
func (d *sheetDay) leg(path, key string, value any, text, cell string) {
	switch {
	case cell == "x":
		d.set(path+".stopped_for_pain", true, text)
	case key == "" || value == nil:
		d.faults.Add(source.Fault{File: d.row.file, Line: d.row.line, What: fmt.Sprintf("%q in column %s is no value", cell, text),
			Instead: `write numbers with spaces between (318 331 325), a set (60x8+0), "-" for not tested or "x" for stopped for pain`})
	default:
		d.set(path+"."+key, value, text)
	}
}

// entry finds or adds the entry of a list that has this id, and returns its place.
func (d *sheetDay) entry(list, key, id string) int {
	entries, _ := d.doc[list].([]map[string]any)
	for i, e := range entries {
		if e[key] == id {
			return i
		}
	}
	d.doc[list] = append(entries, map[string]any{key: id})
	return len(entries)
}

var pathPart = regexp.MustCompile(`([^.\[\]]+)(?:\[(\d+)\])?`)

// set puts a value at a path of the document and notes its column.
func (d *sheetDay) set(path string, value any, column string) {
	d.heads[path] = column
	at := d.doc
	parts := pathPart.FindAllStringSubmatch(path, -1)
	for _, p := range parts[:len(parts)-1] {
		if p[2] != "" {
			i, _ := strconv.Atoi(p[2])
			at = at[p[1]].([]map[string]any)[i]
			continue
		}
		next, ok := at[p[1]].(map[string]any)
		if !ok {
			next = map[string]any{}
			at[p[1]] = next
		}
		at = next
	}
	at[parts[len(parts)-1][1]] = value
}

// scalar reads a cell as TOML would: a whole number, a number, else a text.
func scalar(cell string) any {
	if n, err := strconv.ParseInt(cell, 10, 64); err == nil {
		return n
	}
	if f, err := strconv.ParseFloat(cell, 64); err == nil {
		return f
	}
	return cell
}

// numbers reads trials with spaces between; nil where one is no number.
func numbers(cell string) any {
	var list []any
	for _, field := range strings.Fields(cell) {
		n := scalar(field)
		if _, isText := n.(string); isText {
			return nil
		}
		list = append(list, n)
	}
	return list
}
