package source_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// described is a file with a key of each way to write one.
type described struct {
	Name   string                    `key:"name,required" doc:"the name" show:"Auk"`
	Born   unit.Grade                `key:"grade"`
	Mass   basis.Num[unit.Kilograms] `key:"mass,required" doc:"of the day" range:"25 250" ask:"40 160" show:"141 lb"`
	Reps   *int                      `key:"reps" range:"1 100" show:"8"`
	On     unit.Day                  `key:"on"`
	Bend   *unit.Reach               `key:"bend" example:"[0, 70]"`
	Words  []unit.Side               `key:"sides,lone"`
	Left   describedLeg              `key:"left"`
	Right  describedLeg              `key:"right"`
	Days   []describedDay            `key:"day,required" doc:"a day"`
	Setups map[string]describedLeg   `key:"setup"`
}

type describedLeg struct {
	Peak []unit.Newtons `key:"peak,list" show:"[3, 4]"`
}

type describedDay struct {
	On   unit.Day       `key:"on,required"`
	More []describedDay `key:"more"`
}

func TestKeyTables(t *testing.T) {
	peaks := source.Key{Names: []string{"peak_n", "peak_kgf", "peak_lbf"}, Write: "a list, each a number in N, kgf or lbf; or one without brackets", Shown: "peak_n", Value: "[3, 4]"}
	left := peaks
	left.Names, left.Shown = []string{"left.peak_n", "left.peak_kgf", "left.peak_lbf"}, "left.peak_n"
	want := []source.KeyTable{
		{Alike: []source.Alike{{Listed: "left.", Others: []string{"right."}}}, Keys: []source.Key{
			{Names: []string{"name"}, Must: true, Write: "text", About: "the name", Shown: "name", Value: `"Auk"`},
			{Names: []string{"grade"}, Write: `"zero", "trace", "1+", "2+" or "3+"`, Shown: "grade", Value: `"zero"`},
			{Names: []string{"mass_kg", "mass_lb"}, Must: true, Write: "a number in kg or lb, 25 to 250 kg, mostly 40 to 160 kg", About: "of the day", Shown: "mass_lb", Value: "141"},
			{Names: []string{"reps"}, Write: "a whole number, 1 to 100", Shown: "reps", Value: "8"},
			{Names: []string{"on"}, Write: "a day", Shown: "on", Value: "2026-04-06"},
			{Names: []string{"bend_deg"}, Write: "[straightest, most bent], each -15 to 160°", Shown: "bend_deg", Value: "[0, 70]"},
			{Names: []string{"sides"}, Write: `a list, each "left", "right" or "both"; or one without brackets`, Shown: "sides", Value: `["left"]`},
			left,
		}},
		{Header: "[[day]]", About: "a day", Keys: []source.Key{{Names: []string{"on"}, Must: true, Write: "a day", Shown: "on", Value: "2026-04-06"}}},
		{Header: "[[day.more]]", Same: "[[day]]"},
		{Header: "[setup.ID]", Keys: []source.Key{peaks}},
	}
	if diff := cmp.Diff(want, source.KeyTables[described]()); diff != "" {
		t.Error(diff)
	}
}

// TestSchema pins what a schema says of a unit, of two spellings and of a table that holds itself.
func TestSchema(t *testing.T) {
	text := source.Schema[described]("a file", "what it is")
	var got struct {
		Title       string
		Description string
		Properties  map[string]json.RawMessage
		Required    []string
		AllOf       []json.RawMessage
		Additional  *bool                      `json:"additionalProperties"`
		Defs        map[string]json.RawMessage `json:"$defs"`
	}
	if err := json.Unmarshal(text, &got); err != nil {
		t.Fatal(err)
	}
	tight := func(raw json.RawMessage) string {
		return strings.Join(strings.Fields(string(raw)), "")
	}
	for _, c := range []struct{ what, got, want string }{
		{"own unit", tight(got.Properties["mass_kg"]), `{"description":"oftheday.Writeanumberinkgorlb,25to250kg,mostly40to160kg","type":"number","minimum":25,"maximum":250}`},
		{"other unit, moved outward", tight(got.Properties["mass_lb"]), `{"description":"oftheday.Writeanumberinkgorlb,25to250kg,mostly40to160kg","type":"number","minimum":55.115,"maximum":551.156,"examples":[141]}`},
		{"one of two must be there", tight(got.AllOf[0]), `{"anyOf":[{"required":["mass_kg"]},{"required":["mass_lb"]}]}`},
		{"not both", tight(got.AllOf[1]), `{"not":{"anyOf":[{"required":["mass_kg","mass_lb"]}]}}`},
		{"a table that holds itself", tight(got.Defs["describedDay"]), `{"type":"object","properties":{"on":{"description":"Writeaday","type":"string","format":"date","examples":["2026-04-06"]},` +
			`"more":{"type":"array","items":{"$ref":"#/$defs/describedDay"}}},"additionalProperties":false,"required":["on"]}`},
		{"must", strings.Join(got.Required, " "), "name day"},
		{"head", got.Title + ": " + got.Description, "a file: what it is"},
	} {
		if c.got != c.want {
			t.Errorf("%s: got %s, want %s", c.what, c.got, c.want)
		}
	}
	if got.Additional == nil || *got.Additional {
		t.Error("unknown keys are let through")
	}
	if again := source.Schema[described]("a file", "what it is"); string(again) != string(text) {
		t.Error("the same struct gives other bytes")
	}
}

// TestMessagesKeepTheGap: the example of the reference does not stand in a message: nobody should take over another clinic's facts.
func TestMessagesKeepTheGap(t *testing.T) {
	var into described
	got := source.TOML("f.toml", []byte("mass_kg = 70\nday = [{ on = 2026-04-06 }]\n"), &into).Error()
	if want := `f.toml:1: name is missing; write name = "…"`; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}
