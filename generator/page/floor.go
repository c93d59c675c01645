package page

import (
	"cmp"
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// The floor sheet is for a room in which several clients train at once: by station, each one's leg, load, repetitions and
// range, with a blank to write in, and who rests what. It is made for one day and goes old with it.

// FloorClient is what the floor sheet says of one client on one day.
type FloorClient struct {
	Code   string
	Block  int
	Week   int    // of the block
	Paused string // why the knee's hard work rests; empty: it does not
	Here   bool   // a session falls on the day
	Lines  []FloorLine
}

// FloorLine is one exercise of one leg.
type FloorLine struct {
	Place, Station string // ids of the place and of the device; a line without a device has no station
	Machine        string // how the station is called
	Exercise       string
	Leg            string
	SetUp          string
	Load           string
	Dose           string
	Range          string
	Paused         bool
}

// FloorOf is the client's share of the sheet; ok is false where no block of the plan holds the day.
func FloorOf(p *plan.Plan, on unit.Day, w *words.Words) (c FloorClient, ok bool) {
	h := handout{p, w}
	at := slices.IndexFunc(p.Weeks, func(k plan.Week) bool { return !on.Before(k.Starts) && !on.After(k.Ends) })
	if at < 0 {
		return c, false
	}
	week := p.Weeks[at]
	c = FloorClient{Code: p.Client.Code, Block: p.Block.Number, Week: week.Number}
	if p.Symptoms.Action.Rank() >= plan.Pause.Rank() {
		c.Paused = cmp.Or(w.Reason(p.Symptoms.Because), sheet{w}.word("action", string(p.Symptoms.Action)))
	}
	today := sessionsOn(p.Sessions, on)
	c.Here = len(today) > 0
	for _, m := range h.moves() {
		for _, leg := range m.Legs {
			i := slices.IndexFunc(leg.Weeks, func(d plan.WeekDose) bool { return d.Week == week.Number })
			if i >= 0 && sharesOne(leg.Sessions, today) {
				c.Lines = append(c.Lines, h.floorLine(m, leg, leg.Weeks[i], week))
			}
		}
	}
	c.Lines = append(c.Lines, h.floorRests(week, today)...)
	return c, true
}

// sessionsOn are the sessions of the day that are done in turn: what is done every day is done at home.
func sessionsOn(days []plan.SessionDay, on unit.Day) (ids []string) {
	for _, d := range days {
		if d.Day == on && !d.Daily {
			ids = append(ids, d.Session)
		}
	}
	return ids
}

func sharesOne(a, b []string) bool {
	return slices.ContainsFunc(a, func(id string) bool { return slices.Contains(b, id) })
}

func (h handout) floorLine(m move, leg plan.Prescription, d plan.WeekDose, week plan.Week) FloorLine {
	line := FloorLine{Exercise: leg.Exercise.Title, Leg: h.floorLeg(leg), SetUp: h.floorSetUp(leg.Setup), Dose: h.floorDose(leg, d), Range: h.floorRange(d)}
	if week.Place != nil {
		line.Place = week.Place.ID
	}
	if leg.Device != nil {
		line.Station, line.Machine = leg.Device.ID, h.machine(leg.Device)
	}
	switch {
	case d.FindYourWeight:
		line.Load = sheet{h.w}.say("floor-find")
	case len(d.Each) > 0:
		line.Load = h.eachLoads(leg, d)
	default:
		line.Load = h.loadOf(leg, d)
	}
	if line.Load != "" && !d.Due && !d.FindYourWeight {
		line.Load = sheet{h.w}.say("floor-up-to", "load", line.Load)
	}
	return line
}

// floorLeg is the leg in words, with what it is to the client.
func (h handout) floorLeg(leg plan.Prescription) string {
	name := h.w.Say("leg." + string(leg.Side))
	if role := h.role(leg); role != "" {
		return h.w.Say("leg.with-role", "leg", name, "role", role)
	}
	return name
}

func (h handout) floorSetUp(s *plan.Setup) string {
	if s == nil {
		return ""
	}
	var parts []string
	for _, set := range []struct{ key, value string }{{"seat", s.Seat}, {"back", s.Back}, {"pad", s.Pad}} {
		if set.value != "" {
			parts = append(parts, h.w.Say("setup."+set.key)+" "+set.value)
		}
	}
	return nonEmpty(dot, parts...)
}

// floorDose is how much of what, and how hard, without the load.
func (h handout) floorDose(leg plan.Prescription, d plan.WeekDose) string {
	var parts []string
	if leg.Level > 0 {
		parts = append(parts, h.rung(leg, d))
	}
	parts = append(parts, h.amount(d)...)
	parts = append(parts, h.besides(leg, d)...)
	switch r := d.Dose.Reserve; {
	case r == nil:
	case *r == 0:
		parts = append(parts, h.w.Say("dose.to-the-end"))
	default:
		parts = append(parts, sheet{h.w}.say("floor-reserve", "n", *r))
	}
	return nonEmpty(dot, parts...)
}

func (h handout) floorRange(d plan.WeekDose) string {
	if d.Range == nil || d.Range.Empty() {
		return ""
	}
	text := sheet{h.w}.reach(d.Range)
	if d.NearPin > 0 {
		text += dot + sheet{h.w}.say("floor-pin", "n", d.NearPin)
	}
	return text
}

// floorRests are the exercises that symptoms keep the knee from in this week: one line a slot and leg.
func (h handout) floorRests(week plan.Week, today []string) (lines []FloorLine) {
	seen := map[string]bool{}
	for _, d := range h.Dropped {
		e := h.Program.Exercises[d.Exercise]
		key := d.Slot + "/" + string(d.Side)
		if e == nil || !d.Paused || d.Week != week.Number || seen[key] || !h.slotIn(d.Slot, today) {
			continue
		}
		seen[key] = true
		line := FloorLine{Exercise: e.Title, Leg: h.w.Say("leg." + string(d.Side)), Paused: true}
		if week.Place != nil {
			line.Place = week.Place.ID
			if at := deviceFor(week.Place, e.Needs); at != nil {
				line.Station, line.Machine = at.ID, h.machine(at)
			}
		}
		lines = append(lines, line)
	}
	return lines
}

// slotIn reports whether a slot stands in one of the sessions.
func (h handout) slotIn(slot string, sessions []string) bool {
	if h.Stage.Set == nil {
		return false
	}
	for _, s := range h.Stage.Set.Sessions {
		if slices.Contains(sessions, s.ID) && slices.Contains(s.Slots, slot) {
			return true
		}
	}
	return false
}

// deviceFor is the first device of the place that the exercise asks for.
func deviceFor(place *plan.Place, needs []unit.DeviceKind) *plan.Device {
	for i := range place.Devices {
		if slices.Contains(needs, place.Devices[i].Kind) {
			return &place.Devices[i]
		}
	}
	return nil
}

// Floor is the sheet of one day. place narrows it to one place; empty: all of them.
func Floor(clinic *plan.Clinic, on unit.Day, place string, clients []FloorClient, w *words.Words) View {
	s := sheet{w}
	v := View{Format: 1, Kind: "floor", Lang: w.Lang, Dir: w.Dir, Title: s.say("floor-window", "day", w.Day(on), "clinic", clinic.Name),
		Running: s.say("floor-running", "day", w.Day(on), "clinic", clinic.Name)}
	head := s.part("floor-head", s.note("floor-note"), s.floorPeople(clients))
	head.Title = s.say("floor-title", "day", w.Day(on))
	v.Parts = append(v.Parts, head)
	for _, p := range clinic.Places {
		if part := s.floorPlace(p, clients); len(part.Nodes) > 0 && (place == "" || p.ID == place) {
			v.Parts = append(v.Parts, part)
		}
	}
	return v
}

// floorPeople says who is here, whose knee rests, and who is not here on the day.
func (s sheet) floorPeople(clients []FloorClient) Node {
	var here, paused, away []string
	for _, c := range clients {
		switch {
		case !c.Here:
			away = append(away, c.Code)
		default:
			here = append(here, s.say("floor-client", "code", c.Code, "week", c.Week))
		}
		if c.Here && c.Paused != "" {
			paused = append(paused, c.Code+": "+c.Paused)
		}
	}
	return factual("floor", s.labelled("floor-here", cmp.Or(nonEmpty(", ", here...), s.say("nobody"))),
		s.labelled("floor-paused", nonEmpty("; ", paused...)), s.labelled("floor-not-here", nonEmpty(", ", away...)))
}

// floorPlace is a part of one place: a table for each station that is used, in the order of the clinic's file, and one for
// what needs no station.
func (s sheet) floorPlace(place plan.Place, clients []FloorClient) Part {
	part := Part{ID: "floor-" + place.ID, Title: cmp.Or(place.Name, place.ID)}
	stations := make([]string, 0, len(place.Devices)+1)
	for _, d := range place.Devices {
		stations = append(stations, d.ID)
	}
	for _, id := range append(stations, "") {
		table := s.table("floor", s.say("floor-no-station"), "floor-client", "leg", "floor-exercise", "floor-load", "floor-dose", "floor-range", "floor-set-up", "floor-done")
		for _, c := range clients {
			for _, line := range c.Lines {
				if line.Place == place.ID && line.Station == id {
					table.Title = cmp.Or(line.Machine, table.Title)
					s.floorRow(&table, c, line)
				}
			}
		}
		part.Nodes = append(part.Nodes, table)
	}
	part.Nodes = kept(part.Nodes)
	return part
}

func (s sheet) floorRow(table *Node, c FloorClient, line FloorLine) {
	if line.Paused {
		table.row("floor-paused", c.Code, line.Leg, line.Exercise, s.say("floor-paused-today"), "", "", "", "")
	} else {
		table.row("", c.Code, line.Leg, line.Exercise, line.Load, line.Dose, line.Range, line.SetUp, "")
	}
	last := table.Rows[len(table.Rows)-1]
	last[len(last)-1].Spans = nil // to write in
}
