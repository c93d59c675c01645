package client

import "testing"

func TestMisnamed(t *testing.T) {
	for _, row := range []struct{ name, ending, want, why string }{
		{"23.11.2026.toml", ".toml", "name the file by its day, as in AS", "which number is the month is not ours to guess"},
		{"2026-11-31.toml", ".toml", "the calendar has no 2026-11-31: name the file by its day, as in AS", "November has 30 days"},
		{"2026-11-24.toml.txt", ".toml", "take .txt off its name: 2026-11-24.toml", "a simple editor adds it, and a file browser hides it"},
		{"2026-11-24 (1).toml", ".toml", "it looks like a second one of 2026-11-24: keep one, named 2026-11-24.toml", "a second download"},
		{"2026-11-24 copy.toml", ".toml", "it looks like a second one of 2026-11-24: keep one, named 2026-11-24.toml", "a copy made by hand"},
		{"2026-11-24.xlsx", ".csv", "save the sheet as CSV, as in AS", "a workbook is no sheet"},
		{"2026-11-24.csv", ".toml", "name the file by its day, as in AS", "a sheet among test days"},
	} {
		if got := misnamed(row.name, row.ending, "AS"); got != row.want {
			t.Errorf("%s: %q, want %q (%s)", row.name, got, row.want, row.why)
		}
	}
}
