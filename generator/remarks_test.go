package generator_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// TestDemoPagesPassPEMAT: every item of PEMAT-P that a machine can judge passes on each handout of the demo.
func TestDemoPagesPassPEMAT(t *testing.T) {
	files, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		t.Fatal(err)
	}
	clinic := fstest.MapFS{}
	for name, data := range files {
		clinic[name] = &fstest.MapFile{Data: data}
	}
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	if house == nil {
		t.Fatal(faults)
	}
	for _, code := range house.Codes() {
		for _, remark := range house.Remarks(house.Plan(code)) {
			if !strings.Contains(remark.Error(), "(PEMAT") {
				t.Logf("%s: %s", code, remark.Error()) // how many exercises is no item of PEMAT-P
				continue
			}
			t.Errorf("%s: %s", code, remark.Error())
		}
	}
}
