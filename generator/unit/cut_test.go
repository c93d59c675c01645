package unit

import (
	"math"
	"testing"
)

func TestCutTo(t *testing.T) {
	for _, row := range []struct {
		x, step, want float64
		why           string
	}{
		{54.285714285714285, 2.5, 52.5, "down, never to the nearest"},
		{52.5, 2.5, 52.5, "on the step"},
		{52.4999999, 2.5, 50, "a ten-millionth under the step is under it"},
		{80.69999999999999, 0.1, 80.7, "the last bits of a float are forgiven"},
		{100 * 260.0 / 325, 0.1, 80, "260 of 325 is 80.0"},
		{100 * 259.0 / 325, 0.1, 79.6, "259 of 325"},
		{79.99, 0.1, 79.9, "never rounded up to the mark"},
		{-3.06, 0.1, -3.1, "down is down below zero too"},
		{0, 2.5, 0, ""},
		{7, 0, 7, "no step: unchanged"},
		{7, -1, 7, "no step: unchanged"},
		{22.679618500000002, 4.5359237, 22.6796185, "50 lb in steps of 10 lb"},
	} {
		if got := CutTo(row.x, row.step); math.Abs(got-row.want) > 1e-9 {
			t.Errorf("%v to %v: %v, want %v (%s)", row.x, row.step, got, row.want, row.why)
		}
	}
	if got := CutTo(Percent(100*80.7/100), 0.1); got != 80.7 {
		t.Errorf("a tenth prints as itself: %v", got)
	}
}

// TestTies: of all pairs of typed forces and levers whose true symmetry is exactly a mark, each reaches it, and none that
// is one newton short does. The truth is reckoned in whole numbers.
func TestTies(t *testing.T) {
	ties, short := 0, 0
	for _, mark := range []int{60, 70, 75, 80, 85, 90, 95, 100} {
		for other := 100; other <= 900; other++ {
			if other*mark%100 != 0 {
				continue
			}
			operated := other * mark / 100
			for _, arm := range []float64{0.27, 0.31, 0.33, 0.345} {
				share := func(n int) Percent {
					return CutTo(Percent(100*(float64(n)*arm)/(float64(other)*arm)), 0.1)
				}
				ties++
				if share(operated) != Percent(mark) {
					t.Errorf("%d of %d N at %v m is exactly %d, and was cut to %v", operated, other, arm, mark, share(operated))
				}
				short++
				if share(operated-1) >= Percent(mark) {
					t.Errorf("%d of %d N is under %d, and was cut to %v", operated-1, other, mark, share(operated-1))
				}
			}
		}
	}
	if ties < 4000 {
		t.Errorf("only %d ties were tried", ties)
	}
}

// Loads that lie exactly on a step stay on it.
func TestLoadsOnTheStep(t *testing.T) {
	for _, step := range []Kilograms{0.5, 1, 1.25, 2, 2.5, 4.5359237, 5} {
		for n := range 120 {
			on := Kilograms(float64(n) * float64(step))
			for _, x := range []Kilograms{on, Kilograms(float64(on) * 0.3 / 0.3), Kilograms(float64(on)/0.7) * 0.7} {
				if got := CutTo(x, step); math.Abs(float64(got-on)) > 1e-9 {
					t.Errorf("%v in steps of %v: %v", x, step, got)
				}
			}
		}
	}
}

func TestReach(t *testing.T) {
	for _, row := range []struct {
		a, b   Reach
		want   Reach
		empty  bool
		within bool
		why    string
	}{
		{Reach{0, 90}, Reach{45, 90}, Reach{45, 90}, false, false, ""},
		{Reach{45, 60}, Reach{0, 90}, Reach{45, 60}, false, true, "inside"},
		{Reach{0, 30}, Reach{60, 90}, Reach{60, 30}, true, false, "nothing in common"},
		{Reach{0, 60}, Reach{60, 90}, Reach{60, 60}, false, false, "one angle in common is not empty: a knee can be held there"},
		{Reach{-5, 20}, Reach{0, 90}, Reach{0, 20}, false, false, "beyond straight"},
		{Reach{60, 30}, Reach{0, 10}, Reach{60, 10}, true, true, "nothing lies within everything"},
	} {
		m := row.a.Meet(row.b)
		if m != row.want || m.Empty() != row.empty || row.a.Within(row.b) != row.within {
			t.Errorf("%v and %v: %v empty %v within %v (%s)", row.a, row.b, m, m.Empty(), row.a.Within(row.b), row.why)
		}
		if row.b.Meet(row.a) != m {
			t.Errorf("%v and %v do not meet alike", row.a, row.b)
		}
		if m.Empty() && m.Arc() != 0 {
			t.Errorf("an empty range has an arc of %v", m.Arc())
		}
	}
	if !(Reach{-10, 140}).Within(Full) {
		t.Error("a bendy knee lies within Full")
	}
}

func TestGradesAndSides(t *testing.T) {
	for i, g := range []Grade{GradeZero, GradeTrace, Grade1, Grade2, Grade3} {
		if g.Rank() != i {
			t.Errorf("%s has rank %d", g, g.Rank())
		}
	}
	if Grade("").Rank() != -1 || Grade("4+").Rank() != -1 {
		t.Error("what was not looked at has no rank")
	}
	if Left.Opposite() != Right || Right.Opposite() != Left || Both.Opposite() != Both {
		t.Error("opposite sides")
	}
}
