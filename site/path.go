package site

import (
	"fmt"
	"slices"
	"strings"
)

// A path must mean the same file on every system to which a clinic may copy
// the folder. So it is plain ASCII: no letter that one system stores in two
// ways, nothing that Windows forbids, nothing hidden.
const (
	longestPath = 180 // chosen: leaves 80 of Windows' 260 for the folder above
	longestPart = 120 // chosen: 255 less the endings of temporary names, halved
)

// tmpEnding marks a file of ours that is not finished.
const tmpEnding = ".tmp-paceleaf"

// keptEnding marks the second name of an old page while its group is renamed.
const keptEnding = ".kept" + tmpEnding

// checkPath says what is wrong with the path of a page.
func checkPath(path string) error {
	wrong := func(what, instead string) error {
		return fmt.Errorf("path %q %s; %s", path, what, instead)
	}
	switch {
	case path == "":
		return wrong("is empty", "name a file")
	case len(path) > longestPath:
		return wrong(fmt.Sprintf("has %d characters", len(path)), fmt.Sprintf("use at most %d", longestPath))
	case strings.Contains(path, `\`):
		return wrong("has a backslash", "write /")
	case strings.HasPrefix(path, "/"):
		return wrong("starts at the root of the disk", "write it relative to the output folder")
	}
	for part := range strings.SplitSeq(path, "/") {
		if what, instead := checkPart(part); what != "" {
			return wrong(what, instead)
		}
	}
	return nil
}

func checkPart(part string) (what, instead string) {
	switch {
	case part == "":
		return "has an empty part", "write one / between two names, none at the end"
	case part == "..", part == ".":
		return "has the part " + part, "write it without"
	case part[0] == '.':
		return "has a part that starts with a dot", "begin with a letter or digit"
	case part[len(part)-1] == '.':
		return "has a part that ends in a dot", "Windows drops it, so leave it out"
	case len(part) > longestPart:
		return fmt.Sprintf("has a part of %d characters", len(part)), fmt.Sprintf("use at most %d", longestPart)
	case strings.HasSuffix(strings.ToLower(part), tmpEnding):
		return "ends like a temporary file", "choose another ending than " + tmpEnding
	case reserved(part):
		return "has a name that Windows keeps for a device", "choose another than " + part
	}
	for _, r := range part {
		if !plain(r) {
			return fmt.Sprintf("has the character %q", r), "use a to z, 0 to 9, - _ and ."
		}
	}
	return "", ""
}

func plain(r rune) bool {
	return 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z' || '0' <= r && r <= '9' || r == '-' || r == '_' || r == '.'
}

// reserved reports whether Windows would open a device: con, con.html and
// con.tar.gz all do.
func reserved(part string) bool {
	stem, _, _ := strings.Cut(strings.ToLower(part), ".")
	if slices.Contains([]string{"con", "prn", "aux", "nul", "conin$", "conout$"}, stem) {
		return true
	}
	return len(stem) == 4 && (stem[:3] == "com" || stem[:3] == "lpt") && '0' <= stem[3] && stem[3] <= '9'
}

// fold gives two paths the same key if some file system takes them for one.
func fold(path string) string { return strings.ToLower(path) }

// checkWord says what is wrong with the name or key of a group. Both stand in
// the manifest between quotes, unescaped.
func checkWord(kind, word string) error {
	for _, r := range word {
		if r <= ' ' || r > '~' || r == '"' || r == '\\' {
			return fmt.Errorf("%s %q has the character %q; use letters, digits and signs other than quotes", kind, word, r)
		}
	}
	longest := longestPath
	if kind == "key" {
		longest = LongestKey
	}
	if len(word) > longest {
		return fmt.Errorf("%s %q has %d characters; use at most %d", kind, word, len(word), longest)
	}
	return nil
}

// parent is the folder of a path, "" for the output folder itself.
func parent(path string) string {
	if i := strings.LastIndexByte(path, '/'); i >= 0 {
		return path[:i]
	}
	return ""
}

func base(path string) string { return path[strings.LastIndexByte(path, '/')+1:] }
