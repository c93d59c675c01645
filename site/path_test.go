package site

import (
	"strings"
	"testing"
)

func TestCheckPath(t *testing.T) {
	for _, row := range []struct{ path, wrong, reason string }{
		{"hand/tern-04/handout.html", "", "the usual page"},
		{"desk/overview.html", "", "one folder"},
		{"a", "", "a file in the output folder itself"},
		{"library/figures/leg-press-left.v2.svg", "", "a dot inside a name"},
		{"console.html", "", "begins like a device, is none"},
		{"com10.txt", "", "Windows has com0 to com9 only"},
		{"", "is empty", "no name"},
		{"/etc/passwd", "root of the disk", "absolute"},
		{"../x", "has the part ..", "leads out"},
		{"hand/../../x", "has the part ..", "leads out from within"},
		{"hand/./x", "has the part .", "two spellings of one file"},
		{"hand//x", "empty part", "two spellings of one file"},
		{"hand/", "empty part", "a folder"},
		{`hand\x`, "backslash", "a folder on Windows, a name elsewhere"},
		{"c:/x", "character ':'", "a drive on Windows"},
		{".paceleaf.json", "starts with a dot", "our own manifest"},
		{"hand/.hidden/x", "starts with a dot", "hidden folder"},
		{"hand/x.", "ends in a dot", "Windows drops the dot"},
		{"con", "device", "device"},
		{"hand/NUL.html", "device", "device, other case, with an ending"},
		{"lpt1.tar.gz", "device", "only the part before the first dot counts"},
		{"hand/jörg/x", "character 'ö'", "stored in two ways on two systems"},
		{"hand/a b", "character ' '", "a blank in a link"},
		{"hand/a\nb", `character '\n'`, "two lines in a message"},
		{"x.tmp-paceleaf", "temporary", "would be swept away"},
		{"x.TMP-paceleaf", "temporary", "the same on some disks"},
		{strings.Repeat("a", 121), "part of 121", "long part"},
		{strings.Repeat("a/", 90) + "a", "has 181", "long path"},
	} {
		err := checkPath(row.path)
		if (err == nil) != (row.wrong == "") || err != nil && !strings.Contains(err.Error(), row.wrong) {
			t.Errorf("%q (%s): got %v, want %q", row.path, row.reason, err, row.wrong)
		}
		if err != nil && !strings.Contains(err.Error(), "; ") {
			t.Errorf("%q: %v says no remedy", row.path, err)
		}
	}
}
