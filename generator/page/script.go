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

// scripts joins the files of each kind.
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
			all += body
		}
		short, err := smallScript(all+"})()\n", "templates/script/{"+strings.Join(names, ",")+"}.js")
		if err != nil {
			return nil, err
		}
		made[kind] = html.JS(short)
	}
	return made, nil
}

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
