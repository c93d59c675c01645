package client_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator/client"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// A client is read here as a clinic types it: a folder of text.

const clinic = `paceleaf = 1
name = "Test Clinic"
emergency = "999"
[[phone]]
who = "clinic"
number = "020 7946 0000"
hours = "always"
[[phone]]
who = "surgeon's ward"
number = "020 7946 0263"
hours = "day and night"
[[therapist]]
id = "imbali"
name = "Imbali R."
role = "physiotherapist"
[[place]]
id = "gym"
[[place.device]]
id = "press"
kind = "angled-leg-press"
plates_kg = [20, 10, 5]
`

const person = `program = "acl-reconstruction"
place = "gym"
training_days = ["mon"]
other_leg = "sound"
`

func operation(date, side, more string) string {
	return fmt.Sprintf("[[event]]\nkind = \"operation\"\nprocedure = \"acl-reconstruction\"\ndate = %s\nside = %q\ngraft = \"hamstring\"\n%s", date, side, more)
}

// read reads the client tern-04 of these files beside a clinic; client.toml is a person and what is given.
func read(t *testing.T, more string, files map[string]string) (*client.Client, source.Faults) {
	t.Helper()
	folder := fstest.MapFS{"clinic.toml": {Data: []byte(clinic)}, "clients/tern-04/client.toml": {Data: []byte(person + more)}}
	for name, text := range files {
		folder["clients/tern-04/"+name] = &fstest.MapFile{Data: []byte(text)}
	}
	over := source.Over(folder)
	c, faults := client.ReadClinic(over)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	return client.Read(over, "tern-04", c, nil)
}

func civil(t *testing.T, s string) unit.Day {
	t.Helper()
	d, err := unit.ParseDay(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

const gave = "graft_from = \"left\"\n"

// The event from which weeks count: the newest of its kind up to the day, else the first after it.
func TestEventOfTheDay(t *testing.T) {
	first, second, other := operation("2024-03-04", "left", gave), operation("2026-01-05", "left", gave), operation("2025-06-02", "right", "graft_from = \"right\"\n")
	injury := "[[event]]\nkind = \"injury\"\ndate = 2026-02-02\nside = \"left\"\n"
	for _, row := range []struct {
		name, events, counts, on, want string
		why                            string
	}{
		{"one", second, "acl-reconstruction", "2026-02-02", "2026-01-05", ""},
		{"its own day", second, "acl-reconstruction", "2026-01-05", "2026-01-05", "the day itself is week 0"},
		{"still to come", second, "acl-reconstruction", "2026-01-04", "2026-01-05", "the first after the day, so that the mistake can be told"},
		{"revision", first + second, "acl-reconstruction", "2026-02-02", "2026-01-05", "the newer counts"},
		{"revision, typed the other way round", second + first, "acl-reconstruction", "2026-02-02", "2026-01-05", "by its day, not by its place in the file"},
		{"between the two", first + second, "acl-reconstruction", "2025-02-02", "2024-03-04", "the newer is not yet"},
		{"before both", first + second, "acl-reconstruction", "2024-01-01", "2024-03-04", "the first of those to come"},
		{"before both, the other way round", second + first, "acl-reconstruction", "2024-01-01", "2024-03-04", ""},
		{"each leg", first + other + second, "acl-reconstruction", "2025-12-31", "2025-06-02", "of whichever leg"},
		{"an injury after it", second + injury, "acl-reconstruction", "2026-03-02", "2026-01-05", "an injury is not the procedure"},
		{"counts from injuries", second + injury, "injury", "2026-03-02", "2026-02-02", ""},
		{"none of that kind", second, "start", "2026-03-02", "", "nothing is taken instead"},
	} {
		c, _ := read(t, row.events, nil)
		got := ""
		if e := c.Event(row.counts, civil(t, row.on)); e != nil {
			got = e.Date.String()
		}
		if got != row.want {
			t.Errorf("%s: counts from %q, want %q (%s)", row.name, got, row.want, row.why)
		}
	}
}

// What events say of the two legs.
func TestEventsJudged(t *testing.T) {
	left := operation("2026-01-05", "left", gave)
	for _, row := range []struct{ name, text, want, why string }{
		{"one leg", left, "", ""},
		{"the other leg gave", operation("2026-01-05", "left", "graft_from = \"right\"\n"), `the other leg gave the graft, yet it is called sound; write other_leg = "donor"`, "it is no sound reference"},
		{"nobody gave", operation("2026-01-05", "left", ""), "the leg that gave the graft is not said", "a donor leg has limits of its own"},
		{"both legs, one after the other", left + operation("2026-03-02", "right", "graft_from = \"right\"\n"), `both knees were operated, yet the other leg is called sound`, ""},
		{"both on one day", left + operation("2026-01-05", "right", "graft_from = \"right\"\n"), `both knees were operated, yet the other leg is called sound`, ""},
		{"both as one event", operation("2026-01-05", "both", "graft_from = \"both\"\n"), "", "there is no other leg to be sound"},
		{"the same one twice", left + left, "the operation of 2026-01-05 stands twice for one knee", "the second would pass unseen"},
		{"both, and one of them again", operation("2026-01-05", "both", "graft_from = \"both\"\n") + left, "stands twice for one knee", "both has it already"},
		{"a revision", operation("2024-03-04", "left", gave) + left, "", "the same knee on another day"},
		{"an injury and an operation of one day", "[[event]]\nkind = \"injury\"\ndate = 2026-01-05\nside = \"left\"\n" + left, "", "two things happened"},
		{"an operation without its procedure", "[[event]]\nkind = \"operation\"\ndate = 2026-01-05\nside = \"left\"\n", "an operation without its procedure", ""},
	} {
		_, faults := read(t, row.text, nil)
		wrong := faults.Wrong()
		switch {
		case row.want == "" && len(wrong) > 0, row.want != "" && (len(wrong) == 0 || !strings.Contains(wrong.Error(), row.want)):
			t.Errorf("%s: %v, want %q (%s)", row.name, wrong, row.want, row.why)
		}
	}
}

// Files of holds/: their names, their reasons, who called.
func TestHoldsJudged(t *testing.T) {
	good := "by = \"imbali\"\nreason = \"swelling: after football\"\n"
	for _, row := range []struct{ name, file, text, want, why string }{
		{"as the verb writes it", "2026-04-15.toml", good, "", ""},
		{"a reason alone", "2026-04-15.toml", "by = \"imbali\"\nreason = \"pain\"\n", "", "more words may be left out"},
		{"a space before the colon", "2026-04-15.toml", "by = \"imbali\"\nreason = \"surgeon : wait\"\n", "", ""},
		{"another reason", "2026-04-15.toml", "by = \"imbali\"\nreason = \"travel\"\n", `reason "travel" does not begin with a known word`, "an override's reasons are not a hold's"},
		{"a reason that only begins so", "2026-04-15.toml", "by = \"imbali\"\nreason = \"painful\"\n", `reason "painful" does not begin with a known word`, "a word, not its beginning"},
		{"no reason", "2026-04-15.toml", "by = \"imbali\"\n", "reason is missing", ""},
		{"nobody", "2026-04-15.toml", "by = \"embali\"\nreason = \"pain\"\n", `there is no therapist "embali"`, ""},
		{"a date that is none", "2026-02-30.toml", good, "this name is no hold", "February has no thirtieth"},
		{"a name of another order", "15-04-2026.toml", good, "this name is no hold", ""},
		{"another ending", "2026-04-15.txt", good, "this name is no hold", "it would be passed over in silence"},
	} {
		c, faults := read(t, operation("2026-01-05", "left", gave), map[string]string{"holds/" + row.file: row.text})
		wrong := faults.Wrong()
		switch {
		case row.want == "" && (len(wrong) > 0 || len(c.Holds) != 1), row.want != "" && (len(wrong) == 0 || !strings.Contains(wrong.Error(), row.want)):
			t.Errorf("%s: %v, want %q (%s)", row.name, wrong, row.want, row.why)
		}
	}
}

// Held: the newest hold of a block that nobody has looked at since.
func TestHeld(t *testing.T) {
	hold := "by = \"imbali\"\nreason = \"pain\"\n"
	block := map[string]string{"blocks/1.toml": "starts = 2026-04-06\nweeks = 4\nby = \"imbali\"\n"}
	for _, row := range []struct {
		name  string
		files map[string]string
		want  string
		why   string
	}{
		{"none", nil, "", ""},
		{"one", map[string]string{"holds/2026-04-15.toml": hold}, "2026-04-15", ""},
		{"two", map[string]string{"holds/2026-04-15.toml": hold, "holds/2026-04-08.toml": hold}, "2026-04-15", "the newer speaks"},
		{"after the block", map[string]string{"holds/2026-05-04.toml": hold}, "", ""},
		{"after the block, and one in it", map[string]string{"holds/2026-05-04.toml": hold, "holds/2026-04-15.toml": hold}, "2026-04-15", "that of the next block is passed over"},
		{"a kind of pain is a look", map[string]string{"holds/2026-04-15.toml": hold, "tests/2026-04-16.toml": "pain_kind = \"ache\"\n"}, "", ""},
		{"the next morning alone is none", map[string]string{"holds/2026-04-15.toml": hold, "tests/2026-04-16.toml": "pain_next_morning = 1\n"}, "2026-04-15", "asked on the telephone: nobody looked"},
	} {
		files := map[string]string{}
		for _, m := range []map[string]string{block, row.files} {
			for name, text := range m {
				files[name] = text
			}
		}
		c, faults := read(t, operation("2026-01-05", "left", gave), files)
		if len(faults.Wrong()) > 0 {
			t.Fatal(faults)
		}
		got := ""
		if h := c.Held(c.Block()); h != nil && !c.LookedAfter(h) {
			got = h.From.String()
		}
		if got != row.want {
			t.Errorf("%s: held from %q, want %q (%s)", row.name, got, row.want, row.why)
		}
	}
}

// Times away, and limits of a leg.
func TestAwayAndSidesJudged(t *testing.T) {
	limit := func(side string) string {
		return "[[limit]]\nkind = \"loaded-bend\"\nrange_deg = [0, 60]\nside = " + side + "\nfrom = 2026-01-05\nset_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = 2026-01-05\nroute = \"letter\"\n"
	}
	away := func(from, until, place string) string {
		return "[[away]]\nfrom = " + from + "\nuntil = " + until + "\nplace = \"" + place + "\"\n"
	}
	for _, row := range []struct{ name, text, want, why string }{
		{"left", limit(`"left"`), "", ""},
		{"both", limit(`"both"`), "", ""},
		{"misspelt", limit(`"lfet"`), `side "lfet"`, "it would bind the wrong knee"},
		{"a capital", limit(`"Left"`), `side "Left"`, "words are written small"},
		{"empty", limit(`""`), `side ""`, "left out is left out, not empty"},
		{"one day away", away("2026-05-11", "2026-05-11", "gym"), "", "until is the last day away"},
		{"backwards", away("2026-05-11", "2026-05-10", "gym"), "until 2026-05-10 lies before from 2026-05-11", ""},
		{"nowhere", away("2026-05-11", "2026-05-17", "moon"), `there is no place "moon" in clinic.toml`, ""},
	} {
		_, faults := read(t, operation("2026-01-05", "left", gave)+row.text, nil)
		wrong := faults.Wrong()
		switch {
		case row.want == "" && len(wrong) > 0, row.want != "" && (len(wrong) == 0 || !strings.Contains(wrong.Error(), row.want)):
			t.Errorf("%s: %v, want %q (%s)", row.name, wrong, row.want, row.why)
		}
	}
}

// Age: no day of birth is kept, so a client is taken at the youngest.
func TestAge(t *testing.T) {
	for _, row := range []struct {
		born, on string
		want     int
		why      string
	}{
		{"2008-04", "2026-04-29", 17, "as if born on the 30th"},
		{"2008-04", "2026-04-30", 18, ""},
		{"2008-02", "2026-02-27", 17, "2008 had a 29th: months are clamped"},
		{"2008-02", "2026-02-28", 18, ""},
		{"2008-12", "2026-12-31", 18, ""},
		{"", "2026-12-31", -1, "not known is no age"},
	} {
		var m client.Month
		if row.born != "" {
			if err := m.FromText(row.born); err != nil {
				t.Fatal(err)
			}
		}
		if got := m.Age(civil(t, row.on)); got != row.want {
			t.Errorf("born %q, on %s: %d, want %d (%s)", row.born, row.on, got, row.want, row.why)
		}
	}
}
