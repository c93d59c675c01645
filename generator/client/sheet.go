package client

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// The day sheet says the same as a test file in one row a client. Heads are the keys and ids of the test file, with the
// leg behind a test and a unit where it is not newtons or centimetres: knee-extension.left.lbf. A cell "-" is not
// tested; "x" is tried and stopped for pain.

// Sheets are the day sheets of a clinic, read once, with the rows of each client.
type Sheets struct {
	rows  map[string][]sheetRow
	codes []string
}

type sheetRow struct {
	file  string
	line  int
	on    unit.Day
	heads []string
	cells []string
}

// strengthTests are the tests of force that a sheet may name; any other id with a leg behind it is a lift.
var strengthTests = []string{"knee-extension", "knee-flexion", "hip-abduction", "hip-adduction", "hip-extension", "plantarflexion"}

// hopTests are the heads of hops, with the unit of their bare cells.
var hopTests = map[string]string{"hop-single": "distance_cm", "hop-triple": "distance_cm", "hop-crossover": "distance_cm",
	"hop-timed-6m": "time_s", "hop-side": "count", "hop-vertical": "distance_cm"}

// reachEndings are what stands behind the leg in a head of the Y-balance: y-balance.left.anterior.
var reachEndings = []string{"anterior", "posteromedial", "posterolateral", "leg"}

// plainHeads are keys of the test day itself.
var plainHeads = []string{"by", "mass_kg", "mass_lb", "pain_worst", "pain_next_morning", "pain_kind", "effusion", "effusion_method", "quads_lag_deg", "angle_by", "reason",
	"left.lacks_extension_deg", "left.beyond_straight_deg", "left.flexion_deg",
	"right.lacks_extension_deg", "right.beyond_straight_deg", "right.flexion_deg"}

// ReadSheets reads days/*.csv.
func ReadSheets(folder source.Folder) (*Sheets, source.Faults) {
	s := &Sheets{rows: map[string][]sheetRow{}}
	var faults source.Faults
	if err := folder.Trouble("days"); err != nil {
		faults.Add(source.Unreadable("days", err))
	}
	for _, e := range folder.List("days") {
		name := "days/" + e.Name
		stem, isCSV := strings.CutSuffix(e.Name, ".csv")
		on, err := unit.ParseDay(stem)
		if e.Dir || !isCSV || err != nil {
			faults.Add(source.Fault{File: name, What: "this name is no day sheet", Instead: misnamed(e.Name, ".csv", "days/2026-04-06.csv")})
			continue
		}
		data, _, err := folder.Read(name)
		if err != nil {
			faults.Add(source.Unreadable(name, err))
			continue
		}
		sheet, wrong := source.ReadSheet(name, data)
		faults = append(faults, wrong...)
		if len(wrong.Wrong()) == 0 {
			faults = append(faults, s.take(sheet, on)...)
		}
	}
	slices.Sort(s.codes)
	return s, faults
}

// take judges the heads and files the rows by client.
func (s *Sheets) take(sheet *source.Sheet, on unit.Day) (faults source.Faults) {
	heads := make([]string, len(sheet.Heads))
	code := -1
	for i, h := range sheet.Heads {
		heads[i] = h.Text
		if h.Text == "code" {
			code = i
		} else if what, instead := judgeHead(h.Text); what != "" {
			faults.Add(source.Fault{File: sheet.File, Line: h.Line, What: what, Instead: instead})
		}
	}
	if code < 0 {
		if !strings.Contains(strings.Join(heads, ""), "\t") { // else it is the tabs that hide it
			faults.Add(source.Fault{File: sheet.File, Line: 1, What: "no column is headed code", Instead: "head the column of the clients' codes: code"})
		}
		return faults
	}
	seen := map[string]int{}
	for _, row := range sheet.Rows {
		id := row.Cells[code].Text
		if first, twice := seen[id]; twice {
			faults.Add(source.Fault{File: sheet.File, Line: row.Line, What: fmt.Sprintf("%s has a row already, on line %d", id, first), Instead: "keep one row a client"})
			continue
		}
		seen[id] = row.Line
		cells := make([]string, len(row.Cells))
		for i, c := range row.Cells {
			cells[i] = c.Text
		}
		if _, known := s.rows[id]; !known {
			s.codes = append(s.codes, id)
		}
		s.rows[id] = append(s.rows[id], sheetRow{sheet.File, row.Line, on, heads, cells})
	}
	return faults
}

// Strangers returns a fault for each row whose client has no folder.
func (s *Sheets) Strangers(codes []string) (faults source.Faults) {
	for _, code := range s.codes {
		if !slices.Contains(codes, code) {
			row := s.rows[code][0]
			faults.Add(source.Fault{File: row.file, Line: row.line, What: fmt.Sprintf("there is no client %q", code),
				Instead: "write the code of a folder in clients/, or begin one by: paceleaf start client CODE"})
		}
	}
	return faults
}

// head is a column's meaning: a test with a leg, and the key in which its cells are written.
type head struct {
	test, leg, ending string
}

func splitHead(text string) (h head) {
	parts := strings.Split(text, ".")
	h.test = parts[0]
	if len(parts) > 1 {
		h.leg = parts[1]
	}
	if len(parts) > 2 {
		h.ending = strings.Join(parts[2:], ".")
	}
	return h
}

// nearHeads are the heads that a misspelt one is held against.
var nearHeads = slices.Concat([]string{"code"}, plainHeads, questionnaires)

func startingWith(start string) (heads []string) {
	for _, p := range plainHeads {
		if strings.HasPrefix(p, start) {
			heads = append(heads, p)
		}
	}
	return heads
}

func judgeHead(text string) (what, instead string) {
	if slices.Contains(plainHeads, text) || slices.Contains(questionnaires, text) {
		return "", ""
	}
	h := splitHead(text)
	legs := h.leg == "left" || h.leg == "right" || h.leg == "both"
	switch {
	case strings.Contains(text, "\t"):
		return "tabs stand between the columns", "save the sheet as CSV, with commas or semicolons"
	case h.leg == "range_deg" && h.ending == "" && kebab(h.test):
		return "", ""
	case slices.ContainsFunc(plainHeads, func(p string) bool { return strings.HasPrefix(p, text+"_") }):
		return fmt.Sprintf("head %q has no unit", text), "write " + strings.Join(startingWith(text+"_"), " or ")
	case !legs && source.Meant(text, nearHeads) != "":
		return fmt.Sprintf("head %q is not known", text), "did you mean " + source.Meant(text, nearHeads) + "?"
	case !kebab(h.test) || !legs:
		return fmt.Sprintf("head %q is not known", text),
			"write a key of the test file (mass_kg, left.flexion_deg), a score (acl-rsi), or a test and leg (knee-extension.left)"
	case h.ending != "" && !slices.Contains(slices.Concat([]string{"n", "kgf", "lbf", "nm", "cm", "in", "s", "count"}, reachEndings), h.ending):
		return fmt.Sprintf("unit %q of head %q is not known", h.ending, text), "write n, kgf, lbf, nm, cm, in, s or count, or leave the unit out"
	}
	return "", ""
}

// day makes the test day of a row: the same keys as a test file has, walked by the same reader.
func (s *Sheets) day(row sheetRow, c *Client) (TestDay, source.Faults) {
	d := sheetDay{row: row, doc: map[string]any{}, heads: map[string]string{}}
	for i, text := range row.heads {
		if text != "code" && row.cells[i] != "-" && row.cells[i] != "" {
			d.cell(text, row.cells[i])
		}
	}
	day := TestDay{On: row.on}
	faults := source.Fill(d.doc, d.origin, &day)
	for i := range faults {
		f := &faults[i]
		f.Line = row.line
		if slices.Contains(row.heads, f.Key) && !strings.Contains(f.What, f.Key) {
			f.What = f.Key + ": " + f.What
		}
	}
	day.On = row.on
	return day, append(d.faults, faults...)
}

// Hash writes the rows of a client, for the key by which its pages are known to be fresh.
func (s *Sheets) Hash(code string, to io.Writer) {
	for _, r := range s.rows[code] {
		fmt.Fprintln(to, r.file, r.line, r.on, strings.Join(r.heads, "\x00"), strings.Join(r.cells, "\x00"))
	}
}
