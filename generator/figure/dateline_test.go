package figure

import (
	"encoding/xml"
	"fmt"
	"math"
	"math/rand"
	"slices"
	"testing"
)

func chanceDates(r *rand.Rand) DateLine {
	d := DateLine{ID: "d", Across: "weeks since the operation", Title: "title", Describe: "says", Block: Spell{From: 12, To: 16}}
	kinds := []DateKind{LimitDay, StartDay, VisitDay}
	for range 1 + r.Intn(12) {
		d.Days = append(d.Days, LineDay{X: 12 + r.Float64()*float64(1+r.Intn(60)), Name: fmt.Sprintf("%d September", 1+r.Intn(30)), Kinds: kinds[:1+r.Intn(3)]})
	}
	slices.SortFunc(d.Days, func(a, b LineDay) int { return int(math.Copysign(1, a.X-b.X)) })
	return d
}

// Names keep apart, and no stem runs through the name of another day.
func TestDateLineNamesKeepApart(t *testing.T) {
	r := rand.New(rand.NewSource(4))
	for i := range 1000 {
		d := chanceDates(r)
		svg, err := d.Draw()
		if err != nil {
			t.Fatal(err)
		}
		var back drawing
		if err := xml.Unmarshal(svg, &back); err != nil {
			t.Fatal(err)
		}
		apartAndInside(t, back, fmt.Sprint("dates ", i))
		stems := starts(readChart{drawing: back}.path("c-stem"))
		if len(stems) != len(d.Days) {
			t.Fatalf("%d stems of %d days", len(stems), len(d.Days))
		}
		for k, text := range back.Texts {
			for _, stem := range stems {
				b := boxOf(text.Class, text.X, text.Y, text.Text)
				if text.Class == "c-day" && stem.X > b.left+0.3 && stem.X < b.right-0.3 && topOf(back, stems, stem) < b.top {
					t.Errorf("dates %d: a stem runs through %q, text %d", i, text.Text, k)
				}
			}
		}
	}
}

// topOf is how high a stem reaches: to the height of its own name, which stands 3 to its right.
func topOf(d drawing, _ []point, stem point) float64 {
	for _, text := range d.Texts {
		if text.Class == "c-day" && math.Abs(text.X-3-stem.X) < 0.11 {
			return text.Y - lettered*0.72
		}
	}
	return math.Inf(1)
}

func TestDateLineOfLittle(t *testing.T) {
	d := chanceDates(rand.New(rand.NewSource(5)))
	d.Days = d.Days[:1]
	d.Block = Spell{From: d.Days[0].X, To: d.Days[0].X}
	if _, err := d.Draw(); err != nil {
		t.Error(err)
	}
	d.Days[0].X = math.NaN()
	if _, err := d.Draw(); err == nil {
		t.Error("a week that is no number was drawn")
	}
	d.Days = nil
	if _, err := d.Draw(); err == nil {
		t.Error("a line without a day was drawn")
	}
}

// The block of some weeks is seen beside days of a year: it has a part of the line of its own, the days stay in their order, and
// no number of a week lies on another.
func TestDateLineShowsItsBlock(t *testing.T) {
	d := DateLine{ID: "d", Across: "weeks", Title: "t", Describe: "d", Block: Spell{From: 12, To: 16}}
	for i, x := range []float64{14, 15.9, 16.1, 18, 26, 35, 48} {
		d.Days = append(d.Days, LineDay{X: x, Name: fmt.Sprintf("%d May", i+1), Kinds: []DateKind{VisitDay}})
	}
	if !d.Broken() {
		t.Fatal("48 weeks and a block of 4 stand on one scale")
	}
	xs := d.weeks()
	if wide := xs.place(16) - xs.place(12); wide < 60 {
		t.Errorf("the block is %.0f wide, want 60 of 300", wide)
	}
	for i := 1; i < len(d.Days); i++ {
		if xs.place(d.Days[i].X) <= xs.place(d.Days[i-1].X) {
			t.Errorf("week %g does not stand after week %g", d.Days[i].X, d.Days[i-1].X)
		}
	}
	d.Days = d.Days[:4]
	if d.Broken() {
		t.Error("6 weeks need no second scale")
	}
}
