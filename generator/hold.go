package generator

import (
	"fmt"

	"paceleaf/generator/client"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// StartHold is the file of a pause called between visits. The reason begins with pain, swelling or surgeon.
func (h *House) StartHold(c *client.Client, from unit.Day, by, reason string) (Started, error) {
	b := c.Block()
	if b == nil {
		return Started{}, fmt.Errorf("%s has no block to pause; begin one by: paceleaf start block %s --on DATE", c.Code, c.Code)
	}
	if end := b.Starts.AddWeeks(b.Weeks).AddDays(-1); from.After(end) {
		return Started{}, fmt.Errorf("block %d of %s ends %s, before %s; begin the next block instead", b.Number, c.Code, end, from)
	}
	if err := client.HoldReason(reason); err != nil {
		return Started{}, err
	}
	if by == "" {
		by = b.By
	}
	if h.Clinic.Therapist(by) == nil {
		return Started{}, fmt.Errorf("there is no therapist %q in clinic.toml", by)
	}
	text := "#:schema ../../../" + SchemaFolder + "/hold.json\nby = " + source.Quoted(by) + "\nreason = " + source.Quoted(reason) + "\n"
	return Started{Name: fmt.Sprintf("clients/%s/holds/%s.toml", c.Code, from), Data: []byte(text)}, nil
}
