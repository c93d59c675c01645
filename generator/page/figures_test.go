package page

import (
	"encoding/xml"
	"regexp"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Pictures on a page: what they say, whom they show, and that no limit is drawn wider than it is.

// samplePicture is a figure with one text in each place.
func samplePicture(text string) Node {
	n, err := pictured(text+" n", text, text+" s", Drawing{ID: "fig-" + text, Pose: shippedPose("squat"), Side: unit.Left, Range: reach(0, 60)})
	if err != nil {
		panic(err)
	}
	return n
}

// picture is a drawing as a stranger reads it.
type picture struct {
	ID     string      `xml:"id,attr"`
	Named  string      `xml:"aria-labelledby,attr"`
	Role   string      `xml:"role,attr"`
	Title  pictureText `xml:"title"`
	Says   pictureText `xml:"desc"`
	Digits []string    `xml:"text"`
}

type pictureText struct {
	ID   string `xml:"id,attr"`
	Text string `xml:",chardata"`
}

func readPicture(t *testing.T, n Node) (p picture) {
	t.Helper()
	if err := xml.Unmarshal([]byte(n.Picture()), &p); err != nil {
		t.Fatalf("%v\n%s", err, n.Picture())
	}
	return p
}

// inside are the nodes of a kind or a class, in reading order.
func inside(nodes []Node, is func(Node) bool) (all []Node) {
	for _, n := range nodes {
		if is(n) {
			all = append(all, n)
		}
		all = append(all, inside(n.Nodes, is)...)
	}
	return all
}

func hasPicture(n Node) bool { return n.Drawing != nil }
func ofClass(class string) func(Node) bool {
	return func(n Node) bool { return slices.Contains(strings.Fields(n.Class), class) }
}

// Every text comes out as it went in, and nothing of it is a tag.
func TestPictureOfHostileText(t *testing.T) {
	for _, bad := range append(slices.Clone(hostile), "</title><script>x</script>", "</svg><b>", "]]>", "' onload='x") {
		n := samplePicture(bad)
		p := readPicture(t, n)
		if got, want := asRead(p.Title.Text), asRead(bad+" n"); got != want {
			t.Errorf("%q: the title is %q", bad, got)
		}
		if got, want := asRead(p.Says.Text), asRead(bad+" s"); got != want {
			t.Errorf("%q: the description is %q", bad, got)
		}
		if tag := regexp.MustCompile(`<(script|b|img|a|foreignObject)\b|<[^>]* on[a-z]+=`).FindString(string(n.Picture())); tag != "" {
			t.Errorf("%q: the picture has %s", bad, tag)
		}
	}
}

// The ear gets from the picture the name of the exercise, the movement in words, and what the eye reads below it.
func TestPictureSaysItsCaption(t *testing.T) {
	w, pictures := sampleWords(t), 0
	for name, sample := range samples() {
		h := handout{sample, w}
		for _, m := range h.moves() {
			for _, n := range inside(h.figures(m), hasPicture) {
				pictures++
				p := readPicture(t, n)
				if got, want := p.Title.Text+" "+p.Says.Text, asRead(m.Exercise.Title+": "+n.Title+" "+n.Drawing.Shows+" "+n.Says); got != want {
					t.Errorf("%s: the picture says %q, below it stands %q", name, got, want)
				}
				if n.Drawing.Shows != "" && n.Drawing.Shows != m.Exercise.Describe || strings.Contains(textOf(n.Caption()), m.Exercise.Describe) {
					t.Errorf("%s: the movement is told by the picture alone: %q, %q", name, n.Drawing.Shows, textOf(n.Caption()))
				}
				if p.Role != "img" || p.Named != p.Title.ID+" "+p.Says.ID || !strings.HasPrefix(p.Title.ID, p.ID) {
					t.Errorf("%s: the picture is not named by its own texts: %+v", name, p)
				}
				if leg := w.Say("leg." + string(n.Drawing.Side)); !strings.Contains(p.Title.Text, leg) {
					t.Errorf("%s: the title %q does not name the %s", name, p.Title.Text, leg)
				}
			}
		}
	}
	if pictures < 8 {
		t.Errorf("only %d pictures", pictures)
	}
}

// TestScenes: one picture where one tells it all; a second where the range changes; another leg's own where the picture
// would show it more than it may do.
func TestScenes(t *testing.T) {
	weeks := func(r ...*unit.Reach) []*unit.Reach { return r }
	for _, tt := range []struct {
		name       string
		own, other []*unit.Reach
		limited    bool // the other leg has limits of its own
		want       string
	}{
		{"one range", weeks(reach(0, 60), reach(0, 60)), nil, false, "LEFT leg. 0–60"},
		{"it opens in week 3", weeks(reach(0, 60), reach(0, 60), reach(0, 90), reach(0, 90)), nil, false, "LEFT leg, weeks 1 and 2. 0–60 | LEFT leg, weeks 3 and 4. 0–90"},
		{"it opens twice", weeks(reach(0, 60), reach(0, 70), reach(0, 90)), nil, false, "LEFT leg, week 1. 0–60 | LEFT leg, week 3. 0–90"},
		{"it closes for a week", weeks(reach(0, 90), reach(0, 60), reach(0, 90)), nil, false, "LEFT leg, weeks 1 and 3. 0–90 | LEFT leg, week 2. 0–60"},
		{"the other leg may do more", weeks(reach(0, 60)), weeks(reach(0, 90)), false, "LEFT leg. 0–60"},
		{"the other leg has none", weeks(reach(0, 60)), weeks(nil), false, "LEFT leg. 0–60"},
		{"the other leg may do less", weeks(reach(0, 90)), weeks(reach(0, 60)), true, "LEFT leg. 0–90 | RIGHT leg. 0–60"},
		{"it was tested in less", weeks(reach(0, 90)), weeks(reach(0, 60)), false, "LEFT leg. 0–90"},
		{"it may do less in week 2", weeks(reach(0, 60), reach(0, 90)), weeks(reach(0, 70), reach(0, 70)), true, "LEFT leg, week 1. 0–60 | LEFT leg, week 2. 0–90 | RIGHT leg. 0–70"},
		{"a range that is no part of the movement", weeks(reach(100, 120)), nil, false, "LEFT leg. none"},
	} {
		h := handout{samplePlan(), sampleWords(t)}
		h.Prescriptions = []plan.Prescription{ranged(h.Prescriptions[0], unit.Left, "operated", tt.own)}
		if tt.limited {
			h.Limits = append(h.Limits, plan.Window{Side: unit.Right, Kind: unit.LoadedBend})
		}
		if tt.other != nil {
			h.Prescriptions = append(h.Prescriptions, ranged(h.Prescriptions[0], unit.Right, "other", tt.other))
		}
		var got []string
		for _, n := range h.figures(h.moves()[0]) {
			shows := "none"
			if n.Drawing != nil {
				shows = strings.ReplaceAll(strings.Join(readPicture(t, n).Digits, "–"), "°", "")
			} else if !strings.Contains(n.Says, h.w.Say("figure.none")) {
				t.Errorf("%s: nothing says that there is no picture: %q", tt.name, n.Says)
			}
			got = append(got, n.Title+" "+shows)
		}
		if got := strings.Join(got, " | "); got != tt.want {
			t.Errorf("%s:\n%s\nwant\n%s", tt.name, got, tt.want)
		}
	}
}

// ranged is a prescription of a leg with a range for each week.
func ranged(p plan.Prescription, side unit.Side, role string, ranges []*unit.Reach) plan.Prescription {
	p.Side, p.Role, p.Weeks = side, role, nil
	for i, r := range ranges {
		p.Weeks = append(p.Weeks, plan.WeekDose{Week: i + 1, Range: r})
	}
	return p
}

// Both legs of a fair page: a right knee is drawn as the mirror of a left one, and says so.
func TestPicturesOfBothSides(t *testing.T) {
	for _, side := range []unit.Side{unit.Left, unit.Right} {
		p := samplePlan()
		p.Client.Events[0].Side = side
		h := handout{p, sampleWords(t)}
		first := inside(h.figures(h.moves()[0]), hasPicture)[0]
		if first.Drawing.Side != side {
			t.Errorf("the operated %s leg: drawn is the %s", side, first.Drawing.Side)
		}
	}
}
