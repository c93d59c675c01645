package generator

import (
	"slices"

	"paceleaf/generator/client"
	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/site"
)

// FloorFile is where the floor sheet lies in the output folder, and floorGroup its group: the next build takes it away,
// for a sheet of an earlier day, or of plans that have changed, must not lie about.
const (
	FloorFile  = "desk/floor.html"
	floorGroup = "floor"
)

// Floored is a floor sheet, with who is not on it because the files hold mistakes.
type Floored struct {
	Here   int // clients with a session on the day
	File   site.File
	Faults source.Faults
}

// Floor is the sheet of one day for the room in which clients train at once; place narrows it to one place of the clinic.
// A client whose files hold mistakes stands in Faults and not on the sheet.
func (h *House) Floor(on unit.Day, place string) (Floored, error) {
	var made Floored
	var clients []page.FloorClient
	for _, code := range h.codes {
		planned := h.Plan(code)
		if wrong := planned.Faults.Wrong(); len(wrong) > 0 || planned.Plan == nil {
			made.Faults = append(made.Faults, wrong...)
			continue
		}
		if c, ok := page.FloorOf(h.planOn(planned, on), on, h.words); ok {
			clients = append(clients, c)
			if c.Here {
				made.Here++
			}
		}
	}
	made.Faults.Sort()
	printer, err := h.Printer()
	if err != nil {
		return made, err
	}
	html, err := printer.HTML(page.Floor(h.Clinic, on, place, clients, h.words))
	made.File = site.File{Path: FloorFile, Data: html}
	return made, err
}

// planOn is the plan whose block runs on a day: not the newest where the next block is typed ahead.
func (h *House) planOn(newest Planned, on unit.Day) *plan.Plan {
	if !newest.Plan.Block.Starts.After(on) {
		return newest.Plan
	}
	then := *newest.Client
	then.Blocks = slices.DeleteFunc(slices.Clone(then.Blocks), func(b client.Block) bool { return b.Starts.After(on) })
	if p, _ := plan.Compute(h.Clinic, newest.Plan.Program, &then); p != nil {
		return p
	}
	return newest.Plan
}

// PutFloor writes the sheet beside what a build has made.
func (h *House) PutFloor(out *site.Site, made Floored) (site.Written, error) {
	out.Partial()
	return out.Put(floorGroup, "", []site.File{made.File})
}
