package source

import (
	"fmt"
	"reflect"
	"strings"
	"testing"
)

func TestReadSheet(t *testing.T) {
	rows := []struct {
		name, text string
		heads      string // joined by |
		rows       []string
		says       []string
	}{
		{"plain", "code,mass_kg\ntern-04,64.1\n", "code|mass_kg", []string{"2:tern-04|64.1"}, nil},
		{"semicolons, where the head line has no comma", "code;mass_kg\ntern-04;64,1\n", "code|mass_kg", []string{"2:tern-04|64,1"}, nil},
		{"semicolon inside a sheet with commas", "code,note\ntern-04,a; b\n", "code|note", []string{"2:tern-04|a; b"}, nil},
		{"BOM and CRLF, as a spreadsheet saves", "\xef\xbb\xbfcode,a\r\nx,1\r\n", "code|a", []string{"2:x|1"}, nil},
		{"spaces around", " code , a \n x ,\t1 \n", "code|a", []string{"2:x|1"}, nil},
		{"blank lines and empty rows", "\n\ncode,a\n\n,,\n,\nx,1\n", "code|a", []string{"7:x|1"}, nil},
		{"quotes with a comma and a line end", "code,a\nx,\"1, 2\n3\"\ny,4\n", "code|a", []string{"2:x|1, 2\n3", "4:y|4"}, nil},
		{"empty cells are cells", "code,a,b\nx,,\n", "code|a|b", []string{"2:x||"}, nil},
		{"a spreadsheet's own first line", "sep=;\r\ncode;a\r\nx;1\r\n", "code|a", []string{"3:x|1"}, nil},
		{"empty sheet", "\n", "", nil, []string{"d.csv:1: the sheet is empty; write a line of heads first"}},
		{"all mistakes at once", "code,a,,a\nx,1\ny,1,2,3,4\nz,\"1\"2,3,4\nq,1,2,3\n", "code|a||a", []string{"5:q|1|2|3"}, []string{
			`d.csv:1: column 3 has no head; write what stands under it, or take the column out`,
			`d.csv:1: the head "a" stands in columns 2 and 4; keep one`,
			`d.csv:2: this row has 2 cells, the head line has 4; write one cell for each head, - for not tested`,
			`d.csv:3: this row has 5 cells, the head line has 4; write one cell for each head, - for not tested`,
			`d.csv:4: a quotation mark is not closed, or stands inside a cell without quotes; put the whole cell in quotes and double those inside: "a ""b"" c"`}},
		{"quote not closed", "code,a\nx,\"1\ny,2\n", "code|a", nil, []string{
			`d.csv:2: a quotation mark is not closed, or stands inside a cell without quotes; put the whole cell in quotes and double those inside: "a ""b"" c"`}},
		{"broken heads", "code,\"a\nx,1\n", "", nil, []string{
			`d.csv:1: a quotation mark is not closed, or stands inside a cell without quotes; put the whole cell in quotes and double those inside: "a ""b"" c"`}},
		{"one cell", "code,a\nx\n", "code|a", nil, []string{`d.csv:2: this row has 1 cell, the head line has 2; write one cell for each head, - for not tested`}},
		{"control character", "code,a\nx,\x07\n", "code|a", []string{"2:x|\x07"}, []string{`d.csv:2: column 2 holds the control character U+0007; take it out`}},
		{"another encoding", "code,a\nx,\xe9\n", "", nil, []string{`d.csv:2: this line is not UTF-8 text; save the file as UTF-8`}},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			s, fs := ReadSheet("d.csv", []byte(r.text))
			if got, want := fs.Error(), strings.Join(r.says, "\n"); got != want {
				t.Errorf("\n got %s\nwant %s", got, want)
			}
			if s == nil {
				return
			}
			var rows []string
			for _, row := range s.Rows {
				rows = append(rows, fmt.Sprintf("%d:%s", row.Line, texts(row.Cells)))
			}
			if texts(s.Heads) != r.heads || !reflect.DeepEqual(rows, r.rows) {
				t.Errorf("got %s and %q, want %s and %q", texts(s.Heads), rows, r.heads, r.rows)
			}
		})
	}
}

func texts(cells []Cell) string {
	list := make([]string, len(cells))
	for i, c := range cells {
		list[i] = c.Text
	}
	return strings.Join(list, "|")
}

func TestCellsKnowTheirPlace(t *testing.T) {
	s, _ := ReadSheet("d.csv", []byte("code,a,b\nx,\"1\n2\",3\n"))
	if got, want := s.Rows[0].Cells[2], (Cell{"3", 3, 3}); got != want {
		t.Errorf("got %v, want %v", got, want)
	}
}

// FuzzSheet: no panic, every row is as wide as the heads, every line exists, the same again.
func FuzzSheet(f *testing.F) {
	for _, s := range []string{"code,a\nx,1\n", "code;a\nx;1", "\"a\"\"b\",\"c\nd\"\n1,2\n", "a,a,\n1\n\"", "\xef\xbb\xbf;;\n", "a\r\rb,\"\r\n\""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		s, fs := ReadSheet("d.csv", []byte(text))
		last := strings.Count(text, "\n") + 1
		for _, fault := range fs {
			if fault.Line < 1 && len(text) <= maxBytes || fault.Line > last {
				t.Errorf("line %d of %d: %v", fault.Line, last, fault)
			}
		}
		again, fs2 := ReadSheet("d.csv", []byte(text))
		if !reflect.DeepEqual(s, again) || !reflect.DeepEqual(fs, fs2) {
			t.Error("another result the second time")
		}
		if s == nil {
			return
		}
		before := 0
		for _, row := range s.Rows {
			if len(row.Cells) != len(s.Heads) || row.Line <= before || row.Line > last {
				t.Errorf("row %v after line %d; %d heads", row, before, len(s.Heads))
			}
			before = row.Line
		}
	})
}
