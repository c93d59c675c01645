package page

import "paceleaf/generator/figure"

// Chart is a picture drawn from numbers, as data: a course over weeks or a line of dates. As with a Drawing, a signature is over
// what is drawn and not over the hand that draws it.
type Chart struct {
	Course *figure.Chart    `json:"course,omitempty"`
	Dates  *figure.DateLine `json:"dates,omitempty"`
	svg    []byte
}

// charted is a course with its picture. named is the name of the picture, title and says stand below it. Where it cannot be drawn, its words stand alone: the table beside it has the numbers.
func charted(named, title, says string, c figure.Chart) Node {
	n := Node{Kind: "figure", Class: "chart-of", Title: title, Says: says}
	c.ID, c.Unit, c.Across, c.Title, c.Describe = anchor(c.ID), oneLine(c.Unit), oneLine(c.Across), oneLine(named), oneLine(says)
	for i := range c.Lines {
		c.Lines[i].Name = oneLine(c.Lines[i].Name)
	}
	for i := range c.Marks {
		c.Marks[i].Name = oneLine(c.Marks[i].Name)
	}
	if svg, err := c.Draw(); err == nil {
		n.Chart = &Chart{Course: &c, svg: svg}
	}
	return n
}

// dated is a line of dates with its picture; the list of dates beside it has the words.
func dated(named, title, says string, d figure.DateLine) Node {
	d.ID, d.Across, d.Title, d.Describe = anchor(d.ID), oneLine(d.Across), oneLine(named), oneLine(says)
	for i := range d.Days {
		d.Days[i].Name = oneLine(d.Days[i].Name)
	}
	svg, err := d.Draw()
	if err != nil {
		return Node{}
	}
	return Node{Kind: "figure", Class: "chart-of", Title: title, Says: says, Chart: &Chart{Dates: &d, svg: svg}}
}
