package browser_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// isLog holds a file that was sent against what was typed. Time and digest are the page's own.
func (p tab) isLog(text, want string) {
	p.Helper()
	var got, typed map[string]any
	if err := json.Unmarshal([]byte(text), &got); err != nil {
		p.Fatalf("%v in %s", err, text)
	}
	if err := json.Unmarshal([]byte(want), &typed); err != nil {
		p.Fatal(err)
	}
	for _, own := range []string{"log", "client", "block", "written", "digest"} {
		if got[own] == nil {
			p.Errorf("the log does not say %q:\n%s", own, text)
		}
		delete(got, own)
	}
	for key, v := range got {
		if list, is := v.([]any); is && len(list) == 0 {
			delete(got, key)
		}
	}
	if diff := cmp.Diff(typed, got); diff != "" {
		p.Errorf("what was typed is not what was sent (-typed +sent):\n%s\n%s", diff, text)
	}
}

// TestDiaryIsSentAndRead fills in a day as a client would, presses "send", and has Paceleaf read the very file, under the name
// that it came with and under those that messengers give.
func TestDiaryIsSentAndRead(t *testing.T) {
	p := diaryOf(t, "tern-04", "2026-04-08")
	p.hand(`press("Wed 8 April")
		tick("Leg press", "LEFT"); tick("Leg press", "RIGHT")
		box("Leg press").querySelector("button").click()
		write("Leg press", "LEFT", "How many more", "2")
		write("Leg press", "RIGHT", "Weight on each side", "37.5"); write("Leg press", "RIGHT", "Set 1", "10"); write("Leg press", "RIGHT", "Set 2", "9")
		tick("Heel raise", "LEFT")
		tick("Leg curl", "Left out"); write("Leg curl", "", "Why?", "machine out of order")
		write("The whole session", "", "How hard", "6"); write("The whole session", "", "How many minutes", "50")
		write("Your knee", "", "Worst pain", "1"); write("Your knee", "", "Pain next morning", "0"); write("Your knee", "", "Swelling", "same")`)
	name, text := p.sent()
	if name != "2026-04-08.json" {
		t.Errorf("the file is called %s, and a log is called by its day", name)
	}
	p.isLog(text, `{"done": [
		{"on": "2026-04-08", "do": "leg-press-single", "left": {"kg": 52.5, "reps": [10, 10, 10], "reserve": 2}, "right": {"kg": 75, "reps": [10, 9]}},
		{"on": "2026-04-08", "do": "heel-raise-single", "left": {}}],
		"knee": [{"on": "2026-04-08", "pain": 1, "pain_am": 0, "swelling": "same"}],
		"not_done": [{"on": "2026-04-08", "do": "leg-curl-machine", "why": "machine out of order"}],
		"effort": [{"on": "2026-04-08", "rating": 6, "minutes": 50}]}`)
	for _, name := range []string{name, "DOC-20260411-WA0003.json", "2026-04-08 (1).json", "attachment.txt"} {
		if l := taken(t, "tern-04", name, text); l.Written.String() != "2026-04-08" || len(l.Done) != 2 || len(l.Efforts) != 1 {
			t.Errorf("%s is read as written on %s, with %d lines and %d ratings", name, l.Written, len(l.Done), len(l.Efforts))
		}
	}
}

// TestDiarySetsThatDiffer: a client whose sets had different weights tells each, on each side as the box says; sets of one
// weight are one line of the log.
func TestDiarySetsThatDiffer(t *testing.T) {
	p := diaryOf(t, "tern-04", "2026-04-08")
	p.hand(`press("Wed 8 April"); tick("Leg press", "LEFT")
		box("Leg press").querySelector("button").click()
		named("button", "Not the same weight").click()
		write("Leg press", "LEFT", "Weight on each side in kg, Set 3", "20")
		write("Leg press", "LEFT", "Set 3", "7"); write("Leg press", "LEFT", "How many more", "1")`)
	_, text := p.sent()
	p.isLog(text, `{"done": [
		{"on": "2026-04-08", "do": "leg-press-single", "left": {"kg": 52.5, "reps": [10, 10], "reserve": 1}},
		{"on": "2026-04-08", "do": "leg-press-single", "left": {"kg": 40, "reps": [7], "reserve": 1}}]}`)
	if l := taken(t, "tern-04", "2026-04-08.json", text); len(l.Done) != 2 || l.Done[1].Left.Load.Or(0) != 40 {
		t.Errorf("read as %+v", l.Done)
	}
}

// TestDiaryOfAMethod: where the box itself asks for sets that differ, each has its own weight, and of one without a number
// nothing is taken over. The page's data are made to ask so; no client of the demo clinic trains so.
func TestDiaryOfAMethod(t *testing.T) {
	p := open(t, "about:blank", look{before: clock("2026-04-08") + `
		{ const parse = JSON.parse; JSON.parse = text => { const d = parse(text); d.moves?.[0].legs[0].asked.forEach(a => a.as = {loads: [10, 20, 20, null], reps: [10, 6, null, null]}); return d } }`})
	p.navigate(handoutOf(t, "tern-04"))
	p.emptied()
	p.hand(`press("Wed 8 April"); tick("Leg press", "LEFT")
		box("Leg press").querySelector("button").click()
		write("Leg press", "LEFT", "Set 3", "12"); write("Leg press", "LEFT", "Weight on each side in kg, Set 4", "22.5"); write("Leg press", "LEFT", "Set 4", "8")`)
	_, text := p.sent()
	p.isLog(text, `{"done": [
		{"on": "2026-04-08", "do": "leg-press-single", "left": {"kg": 20, "reps": [10]}},
		{"on": "2026-04-08", "do": "leg-press-single", "left": {"kg": 40, "reps": [6, 12]}},
		{"on": "2026-04-08", "do": "leg-press-single", "left": {"kg": 45, "reps": [8]}}]}`)
}

// TestDiaryOfAWeekWithoutRepetitions: a leg that is weighed in another week asks for no weight where this one has no repetitions,
// and the day fills. The page's data are made to ask so.
func TestDiaryOfAWeekWithoutRepetitions(t *testing.T) {
	p := open(t, "about:blank", look{before: clock("2026-04-08") + `
		{ const parse = JSON.parse; JSON.parse = text => { const d = parse(text); d.moves?.[0].legs[0].asked.forEach(a => a.as = {time_s: [40, 40]}); return d } }`})
	p.navigate(handoutOf(t, "tern-04"))
	p.emptied()
	p.hand(`press("Wed 8 April"); tick("Leg press", "LEFT")
		if (box("Leg press").querySelector(".of-leg").textContent.includes("Weight")) throw Error("a weight is asked for")
		box("Leg press").querySelector("button").click()`)
	_, text := p.sent()
	p.isLog(text, `{"done": [{"on": "2026-04-08", "do": "leg-press-single", "left": {"time_s": [40, 40]}}]}`)
}

// TestDiaryByTheClock: what is no set of repetitions is told in what its box asks for: minutes, landings, times a day.
func TestDiaryByTheClock(t *testing.T) {
	for _, c := range []struct{ code, on, title, typed, want string }{
		{"tern-04", "2026-04-06", "Bike", `write("Bike", "BOTH", "Minutes", "12")`, `{"both": {"time_min": [12]}, "do": "stationary-cycling"}`},
		{"oyster-16", "2026-04-07", "Jump up", `write("Jump up", "BOTH", "Landings", "20")`, `{"both": {"foot_contacts": 20}, "do": "countermovement-jump"}`},
		{"dunlin-02", "2026-04-06", "Heel prop", `named(".of-leg button", "As the box says", 1).click(); write("Heel prop", "LEFT", "How often", "3")`, `{"left": {"time_min": [5], "times": 3}, "do": "heel-prop"}`},
	} {
		t.Run(c.title, func(t *testing.T) {
			p := diaryOf(t, c.code, c.on)
			leg := map[bool]string{true: "LEFT", false: "BOTH"}[strings.Contains(c.want, "left")]
			p.hand(`tick("` + c.title + `", "` + leg + `"); ` + strings.Replace(c.typed, `named(".of-leg button", "As the box says", 1)`, `box("`+c.title+`").querySelector("button")`, 1))
			_, text := p.sent()
			p.isLog(text, `{"done": [`+strings.Replace(c.want, "{", `{"on": "`+c.on+`", `, 1)+`]}`)
			if l := taken(t, c.code, c.on+".json", text); len(l.Done) != 1 {
				t.Errorf("read as %+v", l.Done)
			}
		})
	}
}

// TestDiaryOfADayLeftOut: a day that was left out whole counts as answered, and says why.
func TestDiaryOfADayLeftOut(t *testing.T) {
	p := diaryOf(t, "tern-04", "2026-04-06")
	p.hand(`tick("The whole session", "I left out"); write("The whole session", "", "Why?", "a cold")`)
	if got := p.eachText(".day-rail [aria-pressed=true]"); !strings.HasSuffix(got[0], "✓") {
		t.Errorf("the day is %q", got)
	}
	_, text := p.sent()
	p.isLog(text, `{"not_done": [{"on": "2026-04-06", "why": "a cold"}]}`)
	taken(t, "tern-04", "2026-04-06.json", text)
}

// TestDiaryNeverInvents holds that nothing is sent which nobody said: an empty diary, a load without its times, an unanswered
// question, a rating without its minutes. What is missing is said with its day, and the day is opened.
func TestDiaryNeverInvents(t *testing.T) {
	p := diaryOf(t, "tern-04", "2026-04-08")
	p.hand(`press("Send")`)
	if !strings.Contains(p.told(), "nothing to send") {
		t.Errorf("an empty diary: the page says %q", p.told())
	}
	if zero := p.eachText(".kept select option:checked:not([value=''])"); len(zero) != 0 {
		t.Errorf("these hold an answer before anybody gave one: %q", zero)
	}
	p.hand(`press("Mon 6 April"); tick("Leg curl", "LEFT"); write("Leg curl", "LEFT", "Weight", "20"); press("Wed 8 April"); press("Send")`)
	if !strings.Contains(p.told(), "Mon 6 April: You wrote a weight. Write how many times") || p.eachText(".day h3")[0] != "Mon 6 April" {
		t.Errorf("a load without its times: the page says %q and shows %q", p.told(), p.eachText(".day h3"))
	}
	p.hand(`write("Leg curl", "LEFT", "Weight", ""); press("Wed 8 April"); write("The whole session", "", "How hard", "0"); press("Mon 6 April"); press("Send")`)
	if !strings.Contains(p.told(), "Wed 8 April: Write both") || p.eachText(".day h3")[0] != "Wed 8 April" {
		t.Errorf("a rating without its minutes: the page says %q and shows %q", p.told(), p.eachText(".day h3"))
	}
	p.hand(`write("The whole session", "", "How many minutes", "40")`)
	_, text := p.sent()
	p.isLog(text, `{"done": [{"on": "2026-04-06", "do": "leg-curl-machine", "left": {}}], "effort": [{"on": "2026-04-08", "rating": 0, "minutes": 40}]}`)
}
