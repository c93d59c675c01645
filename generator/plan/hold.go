package plan

import (
	"fmt"

	"paceleaf/generator/client"
)

// held adds a pause that the therapist has called between visits. It stands until the knee is looked at again, and it is
// weighed like any other signal: the strictest wins. One from before the event was called for another state of the knee.
func (s *Symptoms) held(h *client.Hold, event *client.Event) {
	if h == nil || h.From.Before(event.Date) {
		return
	}
	g := Signal{Action: Pause, Level: "block", On: h.From, Code: "hold", Because: fmt.Sprintf("held from %s by %s (%s)", h.From, h.By, h.Reason)}
	s.Signals = append(s.Signals, g)
	s.Held = h
	if g.Action.Rank() > s.Action.Rank() {
		s.Action, s.Because, s.Level = g.Action, g.Because, g.Level
	}
}
