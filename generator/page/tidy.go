package page

import (
	"net/url"
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// tidy is what both printers print: the same view with its texts on one line each, nothing empty, every table as wide as
// its head. So no text can begin a line of Markdown that it should not begin, and no letter breaks a page.
func tidy(v View) View {
	for _, s := range []*string{&v.Kind, &v.Lang, &v.Dir, &v.Title, &v.Draft, &v.Code, &v.Running, &v.Print} {
		*s = oneLine(*s)
	}
	if v.Dir != "rtl" {
		v.Dir = "ltr"
	}
	parts := make([]Part, 0, len(v.Parts))
	for _, p := range v.Parts {
		parts = append(parts, Part{ID: anchor(p.ID), Title: oneLine(p.Title), Nodes: tidyNodes(p.Nodes)})
	}
	v.Parts = parts
	return isolatedIn(v)
}

func tidyNodes(nodes []Node) (tidied []Node) {
	for _, n := range nodes {
		n.ID, n.Class, n.Title, n.Says = anchor(n.ID), classes(n.Class), oneLine(n.Title), oneLine(n.Says)
		n.Level = min(max(n.Level, 3), 6)
		n.Spans, n.Nodes = tidySpans(n.Spans), tidyNodes(n.Nodes)
		n.Items, n.Facts = tidyItems(n.Items), tidyFacts(n.Facts)
		n.Head, n.Rows = tidyTable(n.Head, n.Rows)
		if !ownPicture.MatchString(n.File) {
			n.File = ""
		}
		if !n.empty() {
			tidied = append(tidied, n)
		}
	}
	return tidied
}

func tidyItems(items [][]Span) (tidied [][]Span) {
	for _, item := range items {
		if item = tidySpans(item); len(item) > 0 {
			tidied = append(tidied, item)
		}
	}
	return tidied
}

func tidyFacts(facts []Fact) (tidied []Fact) {
	for _, f := range facts {
		f.Label, f.Value = oneLine(f.Label), tidySpans(f.Value)
		if len(f.Value) > 0 || f.Label != "" {
			tidied = append(tidied, f)
		}
	}
	return tidied
}

// tidyTable makes all rows as wide as the widest.
func tidyTable(head []string, rows [][]Cell) ([]string, [][]Cell) {
	width := len(head)
	for _, r := range rows {
		width = max(width, len(r))
	}
	if width == 0 || len(rows) == 0 {
		return nil, nil
	}
	h := make([]string, width)
	for i, t := range head {
		h[i] = oneLine(t)
	}
	all := make([][]Cell, len(rows))
	for i, r := range rows {
		all[i] = make([]Cell, width)
		for j, c := range r {
			all[i][j] = Cell{Spans: tidySpans(c.Spans), Head: c.Head, Class: classes(c.Class)}
		}
	}
	return h, all
}

// tidySpans joins runs of one style, drops what is empty, and trims both ends.
func tidySpans(spans []Span) (tidied []Span) {
	for _, s := range spans {
		s.Text = squeezed(s.Text, true)
		s.Href = destination(s.Href)
		if s.Text == "" {
			continue
		}
		if last := len(tidied) - 1; last >= 0 {
			t := &tidied[last]
			if strings.HasSuffix(t.Text, " ") {
				s.Text = strings.TrimPrefix(s.Text, " ")
			}
			if t.Strong == s.Strong && t.Em == s.Em && t.Href == s.Href {
				t.Text += s.Text
				continue
			}
		}
		if s.Text != "" {
			tidied = append(tidied, s)
		}
	}
	for len(tidied) > 0 {
		first := &tidied[0]
		if first.Text = strings.TrimLeftFunc(first.Text, unicode.IsSpace); first.Text != "" {
			break
		}
		tidied = tidied[1:]
	}
	for last := len(tidied) - 1; last >= 0; last-- {
		t := &tidied[last]
		if t.Text = strings.TrimRightFunc(t.Text, unicode.IsSpace); t.Text != "" {
			break
		}
		tidied = tidied[:last]
	}
	return tidied
}

// squeeze makes every run of spaces and line ends one space, and drops what no page may hold. A space that does not break
// becomes a plain one too: whoever searches a page for "3 × 10" finds it, in the file and in a mail.
func squeeze(text string) string { return squeezed(text, false) }

// squeezed squeezes a text and may leave the spaces that do not break: HTML then keeps their line together by its style.
func squeezed(text string, unbroken bool) string {
	if squeezedAlready(text) {
		return text
	}
	var b strings.Builder
	space := false
	for _, r := range strings.ToValidUTF8(text, string(utf8.RuneError)) {
		switch {
		case unbroken && r == '\u00a0':
			b.WriteRune(r)
			space = false
			continue
		case unicode.IsSpace(r):
			if !space {
				b.WriteByte(' ')
			}
			space = true
			continue
		case unicode.Is(unicode.Cc, r), r == '\ufeff', r >= '\u202a' && r <= '\u202e', r >= '\ufdd0' && r <= '\ufdef', r&0xfffe == 0xfffe:
			continue
		}
		b.WriteRune(r)
		space = false
	}
	return b.String()
}

// squeezedAlready reports whether a text is plain letters with single spaces: most are, and need no copy.
func squeezedAlready(text string) bool {
	for i := range len(text) {
		if c := text[i]; c < ' ' || c > '~' || c == ' ' && i > 0 && text[i-1] == ' ' {
			return false
		}
	}
	return true
}

func oneLine(text string) string { return strings.TrimFunc(squeeze(text), unicode.IsSpace) }

// ourPage is a page of a client as the overview finds it.
var ourPage = regexp.MustCompile(`^(\.\./hand/)?[a-z0-9-]+/(handout|hold|worksheet|retest|letter)\.(html|md)$`)

// ofLibrary is a page of the library, from another one of it, and ownPicture a picture of it.
var (
	ofLibrary  = regexp.MustCompile(`^(\.\./)?((exercises|programs|notes)/)?[a-z0-9-]+\.html(#[a-z0-9-]+)?$`)
	ownPicture = regexp.MustCompile(`^(\.\./)?figures/[a-z0-9-]+\.svg$`)
)

// destination lets only five kinds of link through: https, a telephone, a place on this page, a page of ours for one person, a
// page of the library.
func destination(href string) string {
	switch {
	case strings.HasPrefix(href, "tel:") && len(href) > 4 && strings.Trim(href[4:], "+"+onlyInThePhones) == "":
		return href
	case strings.HasPrefix(href, "#") && anchor(href[1:]) != "":
		return "#" + anchor(href[1:])
	case ourPage.MatchString(href), ofLibrary.MatchString(href):
		return href
	case strings.HasPrefix(href, "https://"):
		if u, err := url.Parse(href); err == nil && u.Host != "" && u.User == nil && strings.IndexFunc(u.Host, notHost) < 0 {
			return escapedURL.Replace(u.String())
		}
	}
	return ""
}

// escapedURL closes what would end a link in Markdown.
var escapedURL = strings.NewReplacer("(", "%28", ")", "%29", "<", "%3C", ">", "%3E", "\\", "%5C", "*", "%2A", "_", "%5F", "&", "&", "|", "%7C", " ", "%20", "\"", "%22", "'", "%27", "`", "%60", "[", "%5B", "]", "%5D")

func notHost(r rune) bool {
	return !(r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || r == '.' || r == '-' || r == ':')
}

// anchor keeps what may stand in an id.
func anchor(id string) string {
	return strings.Map(func(r rune) rune {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '-' {
			return r
		}
		return -1
	}, strings.ToLower(id))
}

// classes keeps a list of classes.
func classes(list string) string {
	all := strings.Fields(list)
	for i, c := range all {
		all[i] = anchor(c)
	}
	return strings.Join(strings.Fields(strings.Join(all, " ")), " ")
}
