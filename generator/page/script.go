package page

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	html "html/template"
	"strings"
)

// jobs are the scripts of each kind of page, one job a file of script/, in the order in which they run. A page of another
// kind has none, and no page needs one to be read.
var jobs = map[string][]string{
	"handout": {"motion", "page", "kept", "overdue", "weeks", "day", "send", "start"},
	undated:   {"motion"},
}

// undated is a handout without a day to tick.
const undated = "handout without a diary"

// scripts joins the files of each kind. Their comments and indents stay with us: every byte goes through a slow phone.
func (s sources) scripts() (map[string]html.JS, error) {
	made := map[string]html.JS{}
	for kind, names := range jobs {
		all := "(() => {\"use strict\";\n"
		for _, name := range names {
			file := "templates/script/" + name + ".js"
			body, there := s["script/"+name+".js"]
			if !there {
				return nil, fmt.Errorf("%s: is missing; a %s needs it", file, kind)
			}
			for _, end := range []string{"</", "<!--"} {
				if strings.Contains(strings.ToLower(body), end) {
					return nil, fmt.Errorf("%s: %q would end the script; write it in another way", file, end)
				}
			}
			all += bare(body)
		}
		made[kind] = html.JS(all + "})()\n")
	}
	return made, nil
}

// bare is a script without its comment lines, its indents and the spaces around its operators. So no text in a script may
// run over a line, or live by the spaces around such a sign.
func bare(body string) string {
	var kept strings.Builder
	for line := range strings.Lines(body) {
		if line = strings.TrimSpace(line); line != "" && !strings.HasPrefix(line, "//") {
			kept.WriteString(operators.Replace(line) + "\n")
		}
	}
	return kept.String()
}

var operators = strings.NewReplacer(" => ", "=>", " = ", "=", " == ", "==", " && ", "&&", " || ", "||", " ?? ", "??", " ||= ", "||=", ", ...", ",...")

// scriptOf is the script of a page.
func (p *Printer) scriptOf(v View) html.JS {
	if v.Kind == "handout" && v.Diary == nil {
		return p.scripts[undated]
	}
	return p.scripts[v.Kind]
}

func hashed(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}
