package generator_test

import (
	"strings"
	"testing"

	"paceleaf/generator/page"
)

// pageOf is the handout of a walker as text, and its lines.
func pageOf(t *testing.T, w walker) string {
	t.Helper()
	house, made := w.plan(t)
	var texts []string
	for _, part := range page.Handout(made, house.Words()).Parts {
		texts = append(append(texts, part.Title), read(part.Nodes)...)
	}
	return strings.ReplaceAll(strings.Join(texts, "\n"), "\u00a0", " ")
}

// TestPagesFitTheCondition: what a page warns of and forbids belongs to what happened to that knee.
func TestPagesFitTheCondition(t *testing.T) {
	start := func(id string, phase, weeks int) walker {
		w := at(shippedProgram(t, id), phase)
		w.starts = w.starts.AddWeeks(weeks)
		return w
	}
	both := start("knee-osteoarthritis", 2, 0)
	both.both = true
	for _, row := range []struct {
		name       string
		who        walker
		says, lack []string
		why        string
	}{
		{"a new knee in its second week", start("total-knee-replacement", 0, 1),
			[]string{"watch your calf, your breath, fever and the wound most", "The wound is red", "No running", "Do not kneel"}, nil, "clots and infection first"},
		{"a new knee in week 10", start("total-knee-replacement", 2, 4), []string{"watch your calf, your breath, fever and the wound most"}, []string{"watch most for a pop"}, "first_signs_weeks is 12"},
		{"a new knee in week 14", start("total-knee-replacement", 3, 2), []string{"The wound is red", "No running", "Leave these out until your physiotherapist says so."}, []string{"In these first weeks, watch"}, "no week opens running"},
		{"a sore tendon in its first week", start("patellar-tendon-heavy-slow", 0, 0), []string{"Watch most for a pop", "your doctor and your physiotherapist"},
			[]string{"wound", "crutches", "brace", "operat", "surgeon's note", "Do not drive"}, "nothing happened to this knee but that a program began"},
		{"a sore kneecap in its first week", start("kneecap-pain", 0, 0), []string{"bend only to 45°", "Do not kneel"}, []string{"wound", "crutches", "brace"}, "the limits of that program hold"},
		{"two worn knees at the end", both, []string{"BOTH knees", "If it flares up: 48 hours"}, []string{"wound", "crutches", "(other)"}, "there is no other leg"},
		{"before the operation", start("before-acl-reconstruction", 0, 0), []string{"watch your calf and your breath most"}, []string{"The wound"}, "nothing has been cut yet"},
		{"the day of the operation", start("acl-delaware", 0, 0), []string{"The wound is red", "crutches", "Do not drive"}, nil, "all of it was cut today"},
	} {
		text := pageOf(t, row.who)
		for _, want := range row.says {
			if !strings.Contains(text, want) {
				t.Errorf("%s: the page does not say %q (%s)", row.name, want, row.why)
			}
		}
		for _, lack := range row.lack {
			if i := strings.Index(text, lack); i >= 0 {
				t.Errorf("%s: the page says %q (%s)", row.name, text[max(0, i-60):min(len(text), i+60)], row.why)
			}
		}
	}
}
