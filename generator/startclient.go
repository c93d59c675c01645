package generator

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/program"
)

// programToStart is the program that the scaffold of a client names where none is asked for.
const programToStart = "acl-reconstruction"

// StartClient is a client.toml to fill in, with the event from which the program's weeks count; no program: programToStart.
func (h *House) StartClient(code, programID string) (Started, error) {
	ids := h.library.IDs()
	switch {
	case programID != "" && !slices.Contains(ids, programID):
		return Started{}, fmt.Errorf("there is no program %q; write one of %s", programID, strings.Join(ids, ", "))
	case programID == "" && slices.Contains(ids, programToStart):
		programID = programToStart
	case programID == "":
		programID = first(ids)
	}
	p := h.program(programID).program
	if p == nil {
		return Started{}, fmt.Errorf("program %s has mistakes of its own; paceleaf check names them", programID)
	}
	event, err := scaffold(h.Templates, eventToStart(p.CountsFrom), "", map[string]string{"procedure": p.CountsFrom})
	if err != nil {
		return Started{}, err
	}
	fill := h.unitsToStart()
	maps.Copy(fill, map[string]string{"code": code, "program": programID, "programs": h.programsToStart(), "event": strings.TrimSpace(string(event.Data)),
		"place": first(h.places()), "places": strings.Join(h.places(), ", "), "therapist": h.therapist(""), "phase": p.Phases[0].ID, "phases": strings.Join(phaseIDs(p), ", ")})
	return scaffold(h.Templates, "client.toml", "clients/"+code+"/client.toml", fill)
}

// eventToStart is the template of the event that a program counts from.
func eventToStart(from string) string {
	switch from {
	case string(client.Injury), string(client.Start), programToStart:
		return "event-" + from + ".toml"
	}
	return "event-operation.toml"
}

// unitsToStart are examples in the clinic's units, and the clinic's own gauge.
func (h *House) unitsToStart() map[string]string {
	gauge := "?"
	if len(h.Clinic.Gauges) > 0 {
		gauge = h.Clinic.Gauges[0].ID
	}
	if h.Clinic.Units == client.Imperial {
		return map[string]string{"gauge": gauge, "height": "height_in = 67", "arm": "arm_in = 12"}
	}
	return map[string]string{"gauge": gauge, "height": "height_cm = 170", "arm": "arm_cm = 31"}
}

func (h *House) places() (ids []string) {
	for _, p := range h.Clinic.Places {
		ids = append(ids, p.ID)
	}
	return ids
}

func phaseIDs(p *program.Program) (ids []string) {
	for _, ph := range p.Phases {
		ids = append(ids, ph.ID)
	}
	return ids
}

// programsToStart are comments that list all programs, by what their weeks count from.
func (h *House) programsToStart() string {
	by := map[string][]string{}
	for _, id := range h.library.IDs() {
		if p := h.program(id).program; p != nil {
			by[p.CountsFrom] = append(by[p.CountsFrom], id)
		}
	}
	lines := []string{}
	for _, from := range slices.Sorted(maps.Keys(by)) {
		lines = append(lines, fmt.Sprintf("# %s: weeks count from the [[event]] of %s", strings.Join(by[from], ", "), eventOf(from)))
	}
	return strings.Join(lines, "\n")
}

// eventOf is the line of an event from which a program counts.
func eventOf(from string) string {
	if from == string(client.Injury) || from == string(client.Start) {
		return fmt.Sprintf("kind = %q", from)
	}
	return fmt.Sprintf("procedure = %q", from)
}
