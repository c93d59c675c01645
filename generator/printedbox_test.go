package generator_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/unit"
)

var heads = regexp.MustCompile(`(?m)^### \d+\\\. `)

// box is the part of the page for an exercise: its first leg's box, the range that both legs share, and how fast.
func (w printedWeek) box(exercise string) string {
	e := w.plan.Program.Exercises[exercise]
	if e == nil {
		return ""
	}
	for _, part := range heads.Split(w.text, -1)[1:] {
		title, rest, _ := strings.Cut(part, "\n")
		if title != e.Title {
			continue
		}
		_, box, _ := strings.Cut(rest, "\n#### ")
		box, _, _ = strings.Cut(box, "\n#### ")
		if shared := bothLegs.FindString(rest); shared != "" {
			box += "\n" + shared
		}
		if _, speed, there := strings.Cut(rest, "- **Speed** "); there {
			speed, _, _ = strings.Cut(speed, "\n")
			box += "\nSpeed: " + speed
		}
		return box
	}
	return ""
}

// bothLegs is the line above two boxes that holds for each of them.
var bothLegs = regexp.MustCompile(`(?m)^\*\*BOTH legs:\*\*.*$`)

// rhythm is after how many days the exercise comes again, by the calendar of the block; "uneven" where that changes.
func (w printedWeek) rhythm(exercise string) string {
	var sessions []string
	for _, r := range w.plan.Prescriptions {
		if r.Exercise.ID == exercise {
			sessions = append(sessions, r.Sessions...)
		}
	}
	gap, last := 0, unit.Day{}
	for _, d := range w.plan.Sessions {
		if !slices.Contains(sessions, d.Session) {
			continue
		}
		if !last.IsZero() {
			if n := d.Day.Sub(last); gap != 0 && n != gap {
				return "uneven"
			} else {
				gap = n
			}
		}
		last = d.Day
	}
	return strconv.Itoa(gap)
}

// share is a share of the maximum of the left leg's first week: of a load, after the cut to the step; of a hold, as asked.
func (w printedWeek) share(c doseCell) string {
	for _, r := range w.plan.Prescriptions {
		if r.Exercise.ID != c.exercise || r.Side == unit.Right {
			continue
		}
		if c.what == "hold_percent" {
			return fmt.Sprint(float64(r.Slot.HoldPercent))
		}
		if v, ok := r.Weeks[0].Share.Value(); ok {
			return fmt.Sprint(float64(v))
		}
		return fmt.Sprintf("no share: %v", r.Weeks[0].Why)
	}
	return "not prescribed"
}

// boxReading is where a box says what.
var boxReading = map[string]*regexp.Regexp{
	"sets":     regexp.MustCompile(`\*\*(\d+) × `),
	"reps":     regexp.MustCompile(`\*\*\d+ × (\d+(?: to \d+)?)(?: ·|\*)`),
	"contacts": regexp.MustCompile(`\*\*\d+ × (\d+) landings?\*`),
	"minutes":  regexp.MustCompile(`\*\*(\d+) min`),
	"hold_s":   regexp.MustCompile(`hold (\d+) s`),
	"rest_s":   regexp.MustCompile(`rest (?:(\d+) min)? ?(?:(\d+) s)?`),
	"lift_s":   regexp.MustCompile(`Speed: .*?(\d+) s up`),
	"lower_s":  regexp.MustCompile(`Speed: .*?(\d+) s down`),
	"reserve":  regexp.MustCompile(`stop when (\d+) more`),
	"bend":     regexp.MustCompile(`Hold your knee at (\d+)°`),
}

var (
	moves     = regexp.MustCompile(`Move from [^.]*°[^.]*\.`)
	toTheLast = regexp.MustCompile(`lift just \d+ times|until you cannot do one more`) // none is left in reserve
	degreesIn = regexp.MustCompile(`(\d+)°`)
)

// readBox reads one figure of a printed box.
func readBox(box, what string) string {
	switch what {
	case "rm":
		reps, err := strconv.Atoi(readBox(box, "reps"))
		reserve, left := strconv.Atoi(readBox(box, "reserve"))
		if err != nil || left != nil && !toTheLast.MatchString(box) {
			return "no repetition maximum in " + box
		}
		return strconv.Itoa(reps + reserve)
	case "range", "bend_most":
		var ends []int
		for _, m := range degreesIn.FindAllStringSubmatch(moves.FindString(box), -1) {
			n, _ := strconv.Atoi(m[1])
			ends = append(ends, n)
		}
		if len(ends) != 2 {
			return "no range in " + box
		}
		slices.Sort(ends)
		if what == "bend_most" {
			return strconv.Itoa(ends[1])
		}
		return fmt.Sprintf("%d to %d", ends[0], ends[1])
	}
	m := boxReading[what].FindStringSubmatch(box)
	switch {
	case m == nil:
		return "nothing in " + box
	case what == "rest_s":
		min, _ := strconv.Atoi(m[1])
		s, _ := strconv.Atoi(m[2])
		return strconv.Itoa(60*min + s)
	}
	return m[1]
}
