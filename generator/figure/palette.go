package figure

// Palette is the set of colours of a figure under one light. Each stands in a custom property of its name, so that a
// page, or a clinic, may give its own.
type Palette struct {
	Body, Far, Work, Twin, Ghost, Outline string
	Kit, Pad, Move, Text, Elastic         string
	Range, Edge, Back                     string
}

// The palettes: a day's screen, a dark one, and paper. All colours are our own choice; palette_test.go holds their
// contrast against the rule.
var (
	Light = Palette{Body: "#7b8783", Far: "#e3e6e0", Work: "#0a4f43", Twin: "#5e9a8b", Ghost: "#f0eee6", Outline: "#6f7b77",
		Kit: "#77807c", Pad: "#e4e1d6", Move: "#a4460f", Text: "#1c2624", Elastic: "#6a4f9e", Range: "#f2d493", Edge: "#8a5a00", Back: "#fffdf8"}
	Dark = Palette{Body: "#8b9692", Far: "#343d3a", Work: "#8fd6bf", Twin: "#4f8877", Ghost: "#252d2a", Outline: "#8d9894",
		Kit: "#8a9591", Pad: "#2c3532", Move: "#f0a06a", Text: "#eceae2", Elastic: "#b9a3e6", Range: "#5a4719", Edge: "#f0c67a", Back: "#1b211f"}
	Print = Palette{Body: "#808a86", Far: "#e6e8e4", Work: "#0a4f43", Twin: "#5e9a8b", Ghost: "#f4f3ee", Outline: "#6a7572",
		Kit: "#6f7875", Pad: "#e8e6de", Move: "#a4460f", Text: "#000000", Elastic: "#6a4f9e", Range: "#f4dba6", Edge: "#8a5a00", Back: "#ffffff"}
)

// named lists the custom properties, in the order of the style sheet.
func (p Palette) named() [][2]string {
	return [][2]string{{"body", p.Body}, {"far", p.Far}, {"work", p.Work}, {"twin", p.Twin}, {"ghost", p.Ghost},
		{"outline", p.Outline}, {"kit", p.Kit}, {"pad", p.Pad}, {"move", p.Move}, {"text", p.Text}, {"elastic", p.Elastic},
		{"range", p.Range}, {"edge", p.Edge}, {"bg", p.Back}}
}
