package source

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
)

// Sheet is the clinic's day sheet: a head line and rows, as a spreadsheet saves them.
type Sheet struct {
	File  string
	Heads []Cell
	Rows  []Row
}

// Row is one line of a sheet; it has a cell for every head.
type Row struct {
	Line  int
	Cells []Cell
}

// Cell is one text of a sheet, without spaces around it. Column counts from 1, as the columns of a spreadsheet do.
type Cell struct {
	Text         string
	Line, Column int
}

// ReadSheet reads a sheet with commas, or with semicolons where the head line has these and no comma. It knows the form of
// a sheet, not the meaning of a cell. Rows that are wrong are left out.
func ReadSheet(file string, data []byte) (*Sheet, Faults) {
	if f, bad := notText(file, data); bad {
		return nil, Faults{f}
	}
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	s := sheetReader{sheet: &Sheet{File: file}, csv: csv.NewReader(bytes.NewReader(data))}
	s.csv.Comma = separator(data)
	s.csv.FieldsPerRecord = -1
	s.read()
	if len(s.sheet.Heads) == 0 && len(s.faults) == 0 {
		s.wrong(1, "the sheet is empty", "write a line of heads first")
	}
	s.faults.Sort()
	return s.sheet, s.faults
}

// separator looks at the first line that is not blank.
func separator(data []byte) rune {
	head, _, _ := bytes.Cut(bytes.TrimLeft(data, " \t\r\n"), []byte("\n"))
	if bytes.IndexByte(head, ';') >= 0 && bytes.IndexByte(head, ',') < 0 {
		return ';'
	}
	return ','
}

type sheetReader struct {
	sheet  *Sheet
	csv    *csv.Reader
	faults Faults
}

func (s *sheetReader) wrong(line int, what, instead string) {
	s.faults.Add(Fault{File: s.sheet.File, Line: line, What: what, Instead: instead})
}

func (s *sheetReader) read() {
	for {
		record, err := s.csv.Read()
		var broken *csv.ParseError
		switch {
		case errors.Is(err, io.EOF):
			return
		case errors.As(err, &broken):
			s.wrong(broken.StartLine, "a quotation mark is not closed, or stands inside a cell without quotes", `put the whole cell in quotes and double those inside: "a ""b"" c"`)
			if s.sheet.Heads == nil {
				return // without heads the rows mean nothing
			}
		case err != nil:
			s.wrong(1, "the sheet cannot be read", "save it as CSV")
			return
		case s.sheet.Heads == nil && strings.HasPrefix(record[0], "sep="):
			// a spreadsheet's own line: it names the separator, which is seen anyhow
		default:
			s.take(s.cells(record))
		}
	}
}

// cells trims the texts of a record and notes where they stand.
func (s *sheetReader) cells(record []string) []Cell {
	cells := make([]Cell, len(record))
	for i, text := range record {
		line, _ := s.csv.FieldPos(i)
		cells[i] = Cell{strings.TrimSpace(text), line, i + 1}
		if r, bad := unprintable(cells[i].Text); bad {
			s.wrong(line, fmt.Sprintf("column %d holds the control character %U", i+1, r), "take it out")
		}
	}
	return cells
}

func (s *sheetReader) take(cells []Cell) {
	switch {
	case blankRow(cells):
	case s.sheet.Heads == nil:
		s.sheet.Heads = cells
		s.judgeHeads()
	case len(cells) != len(s.sheet.Heads):
		s.wrong(cells[0].Line, fmt.Sprintf("this row has %s, the head line has %d", counted(len(cells), "cell"), len(s.sheet.Heads)), "write one cell for each head, - for not tested")
	default:
		s.sheet.Rows = append(s.sheet.Rows, Row{cells[0].Line, cells})
	}
}

// blankRow is a row without any text: spreadsheets save the rows under the last one as separators alone.
func blankRow(cells []Cell) bool {
	for _, c := range cells {
		if c.Text != "" {
			return false
		}
	}
	return true
}

func (s *sheetReader) judgeHeads() {
	first := map[string]int{}
	for _, head := range s.sheet.Heads {
		at, twice := first[head.Text]
		switch {
		case head.Text == "":
			s.wrong(head.Line, fmt.Sprintf("column %d has no head", head.Column), "write what stands under it, or take the column out")
		case twice:
			s.wrong(head.Line, fmt.Sprintf("the head %q stands in columns %d and %d", clipped(head.Text), at, head.Column), "keep one")
		default:
			first[head.Text] = head.Column
		}
	}
}
