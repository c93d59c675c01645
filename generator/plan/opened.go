package plan

// everyday are things of daily life that a therapist may open by [[opened]] in any program.
var everyday = []string{"driving"}

// IsOpened reports whether the therapist has opened something since the event, up to the block's first day.
func (p *Plan) IsOpened(id string) bool {
	for _, o := range p.Client.Opened {
		if o.ID == id && !o.From.After(p.AsOf) && !o.From.Before(p.Event.Date) {
			return true
		}
	}
	return false
}
