package page

import (
	"regexp"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// letterPlan is the plan of the worksheet's tests with a question to the surgeon and notes of reasons.
func letterPlan() *plan.Plan {
	p := deskPlan()
	p.Client.Called, p.Client.Goal = "Jo", "Play handball again"
	p.Flags = append(p.Flags, plan.Flag{ID: "ask-surgeon", About: "meniscus-unknown", Says: "nobody has written what was done"})
	p.Goals = []plan.GoalState{{Goal: &program.Goal{Measure: "extension", Tell: "surgeon"}, State: "late", By: civil("2026-02-09"), Sense: "at most", Mark: program.Mark{Number: 0, Unit: "°"},
		Found: &basis.Step{ID: "extension", Value: 3, Unit: "°", Typed: "3"}, On: testDay}}
	p.Program.Notes = []*program.Note{
		{ID: "pressing", Title: "Pressing early", Exercises: []string{"leg-press-single"}},
		{ID: "bending", Title: "Bending under load", Kinds: []unit.Kind{unit.LoadedBend}},
		{ID: "alike", Title: "Legs alike"},
		{ID: "elsewhere", Title: "Something else", Exercises: []string{"cutting-drill"}, Kinds: []unit.Kind{unit.Kneeling}},
	}
	for i := range p.Limits {
		p.Limits[i].Touches = true
	}
	p.Clinic.Phones = []client.Phone{{Who: "clinic", Number: "020 7946 0000", Hours: "Mon to Fri, 8 to 18"}}
	return p
}

func TestLetter(t *testing.T) {
	v := Letter(letterPlan(), deskWords(t))
	text := said(v)
	for _, row := range []struct{ want, why string }{
		{"DRAFT", "nothing is signed"},
		{"About: tern-04, operation, ACL reconstruction, hamstring, repair of a vertical tear of the medial meniscus", "whose letter, by code, and what was done in words"},
		{"12 full weeks", "how long ago"},
		{"Strength, knee-extension | 102.6 N·m; 1.6 N·m/kg | 127.1 N·m; 1.98 N·m/kg | 80.7 % ± 3.5 %", "both legs with the error"},
		{"Leg press, one leg (left leg only: 50 kg)", "what is trained, on which leg, with its load"},
		{"Leg curl (right leg only: weight to be found)", "a load that is not known is not told"},
		{"loaded bend: 0° to 70°, until Mon 20 April (surgeon, Dr Auk, letter, Mon 2 February)", "a limit, with whose word it is"},
		{"our program; published", "a row of ours says so"},
		{"The next stage (Learn to run) waits for: bend against the other knee (at least 95 %)", "what is missing"},
		{"Running: closed, its waiting time ended on Mon 6 April. 2 of 3 passed. Missing: single hop", "what is not open"},
		{"meniscus-unknown: nobody has written what was done", "the plan's question"},
		{"Tell: full extension 3°, wanted at most 0° by Mon 9 February", "a goal that is late"},
		{"your word takes the place of ours", "the surgeon's word comes first"},
		{"Pressing early; Bending under load; Legs alike", "the decisions that apply"},
		{"020 7946 0000", "whom to call"},
		{"Name, role, registration: …", "where to sign"},
	} {
		if !strings.Contains(text, row.want) {
			t.Errorf("the letter does not say %q: %s", row.want, row.why)
		}
	}
	if t.Failed() {
		t.Log(text)
	}
	if unknown := regexp.MustCompile(`‹[^›]*›`).FindAllString(text, -1); len(unknown) > 0 {
		t.Errorf("words that are not there: %v", unknown)
	}
}

// TestLetterIsOfACode: a letter may be sent on. Name, birth and goal of the client stand on other pages.
func TestLetterIsOfACode(t *testing.T) {
	text := said(Letter(letterPlan(), deskWords(t)))
	for _, private := range []string{"Jo ", "Jo,", "handball", "1998", "Something else", "clients/", "programs/"} {
		if strings.Contains(text, private) {
			t.Errorf("the letter says %q:\n%s", private, text)
		}
	}
}

// TestLetterLinksNotes: only where the clinic says where its library is served.
func TestLetterLinksNotes(t *testing.T) {
	p := letterPlan()
	for library, want := range map[string]string{"": "", "https://library.saltmarsh.example/": "https://library.saltmarsh.example/notes/pressing-colleagues.html"} {
		p.Clinic.Library = library
		got := ""
		for _, part := range Letter(p, deskWords(t)).Parts {
			if part.ID != "letter-contested" {
				continue
			}
			for _, s := range part.Nodes[0].Spans {
				if s.Text == "Pressing early" {
					got = s.Href
				}
			}
		}
		if got != want {
			t.Errorf("with the library at %q the note leads to %q, want %q", library, got, want)
		}
	}
}

// TestLettersOfTheDemo: HTML says what Markdown says, and no sentence is missing.
func TestLettersOfTheDemo(t *testing.T) {
	w, printer := deskWords(t), samplePrinter(t)
	for _, p := range demoPlans(t) {
		v := Letter(p, w)
		text := said(v)
		if unknown := regexp.MustCompile(`‹[^›]*›`).FindAllString(text, -1); len(unknown) > 0 {
			t.Errorf("%s: words that are not there: %v", p.Client.Code, unknown)
		}
		if name := p.Client.Called; name != "" && regexp.MustCompile(`\b`+regexp.QuoteMeta(name)+`\b`).MatchString(text) {
			t.Errorf("%s: the letter names the client", p.Client.Code)
		}
		lawHolds(t, printer, v)
	}
}
