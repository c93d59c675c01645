package generator

import "paceleaf/generator/source"

// Faults are the mistakes and questions found in a clinic's files, each with file, line and remedy.
type Faults = source.Faults

// jsonFault is a fault as editors read it.
type jsonFault struct {
	File     string `json:"file"`
	Line     int    `json:"line"`
	Severity string `json:"severity"` // mistake, question
	What     string `json:"what"`
	Instead  string `json:"instead"`
}

// FaultsJSON writes faults for editors.
func FaultsJSON(faults Faults) []byte {
	list := make([]jsonFault, len(faults))
	for i, f := range faults {
		list[i] = jsonFault{f.File, f.Line, "mistake", f.What, f.Instead}
		if f.Ask {
			list[i].Severity = "question"
		}
	}
	return source.WriteJSON(map[string]any{"format": 1, "faults": list})
}
