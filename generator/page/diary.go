package page

import (
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Diary is what the handout's script works with: which boxes there are to tick on which day, and what it says. The script
// writes a log from it, in the shape that client.Log reads; nothing of it stands in the text of the page, where the grid for
// paper says the same. It is part of the view, so a signature is over its words too.
type Diary struct {
	Client string            `json:"client"`
	Block  int               `json:"block"`
	Ends   string            `json:"ends"` // last day of the block
	Weeks  []string          `json:"weeks"`
	Days   []DiaryDay        `json:"days"`
	Moves  []DiaryMove       `json:"moves"`
	Words  map[string]string `json:"words"`
}

// DiaryDay is one training day: which moves it asks for, by their place in Moves.
type DiaryDay struct {
	On   string `json:"on"`
	Week int    `json:"week"`
	Says string `json:"says"`
	Do   []int  `json:"do"`
}

// DiaryMove is one exercise, with its legs.
type DiaryMove struct {
	Do    string     `json:"do"` // id of the exercise, as a log names it
	At    string     `json:"at"` // anchor of its boxes on the page
	Title string     `json:"title"`
	Legs  []DiaryLeg `json:"legs"`
}

// DiaryLeg is one box.
type DiaryLeg struct {
	Side  unit.Side   `json:"side"`
	Says  string      `json:"says"`
	Load  string      `json:"load,omitempty"`  // what its number counts: kg, lb; empty where the box has no load
	Twice bool        `json:"twice,omitempty"` // the number is of one side of a bar or sledge, and a log wants both
	Asked []DiaryDose `json:"asked,omitempty"` // week by week
	Later [][]int     `json:"later,omitempty"` // the weeks of each line of the box about later weeks, in their order
}

// diaryWords are the sentences of the script.
var diaryWords = []string{
	"diary.weeks", "diary.days", "diary.lead", "diary.ticked", "diary.leg-done", "diary.same", "diary.load-kg",
	"diary.load-lb", "diary.side-kg", "diary.side-lb", "diary.differ", "diary.more", "diary.left-out", "diary.left-day", "diary.why",
	"diary.no-reason", "diary.knee", "diary.pain", "diary.morning", "diary.kind", "diary.ache", "diary.sharp",
	"diary.catching", "diary.giving-way", "diary.swelling", "diary.swelling-same", "diary.swelling-more",
	"diary.swelling-much", "diary.not-said", "diary.also", "diary.send", "diary.sent", "diary.shared", "diary.nothing",
	"diary.session", "diary.rating", "diary.minutes", "diary.no-times", "diary.no-both", "diary.undo", "diary.undone", "diary.no-undo", "diary.later", "diary.forget", "diary.forget-sure", "diary.forgotten", "diary.full",
}

// diary gathers what the script needs. A block without a session has none.
func (h handout) diary() *Diary {
	w := h.w
	d := &Diary{Client: h.Client.Code, Block: h.Block.Number, Ends: h.ends().String(), Words: map[string]string{}}
	for _, key := range diaryWords {
		_, name, _ := strings.Cut(key, ".")
		d.Words[name] = w.Say(key, "file", "%") // the script puts the name of the file in
	}
	for key, name := range logWords {
		d.Words[key] = w.Say("diary."+name, "n", "%")
	}
	d.Words["overdue"] = w.Say("diary.overdue", "day", w.Day(h.ends()))
	moves := h.moves()
	for i, m := range moves {
		d.Moves = append(d.Moves, h.diaryMove(i+1, m))
	}
	for _, week := range h.Weeks {
		d.Weeks = append(d.Weeks, w.Say("diary.week", "week", week.Number))
		for _, day := range h.trainingDays(week.Number) {
			d.Days = append(d.Days, h.diaryDay(week.Number, day, moves))
		}
	}
	if len(d.Days) == 0 {
		return nil
	}
	return d
}

func (h handout) diaryDay(week int, sessions []plan.SessionDay, moves []move) DiaryDay {
	day := DiaryDay{On: sessions[0].Day.String(), Week: week, Says: h.w.DayMonth(sessions[0].Day), Do: []int{}}
	for i, m := range moves {
		asked := m.anyWeek(func(d plan.WeekDose) bool { return d.Week == week })
		if asked && slices.ContainsFunc(sessions, func(s plan.SessionDay) bool { return m.in(s.Session) }) {
			day.Do = append(day.Do, i)
		}
	}
	return day
}

func (h handout) diaryMove(number int, m move) DiaryMove {
	to := DiaryMove{Do: m.Exercise.ID, At: h.anchorOf(m), Title: h.w.Say("exercise.title", "n", number, "title", m.Exercise.Title)}
	for _, p := range m.Legs {
		to.Legs = append(to.Legs, h.diaryLeg(m, p))
	}
	return to
}

func (h handout) diaryLeg(m move, p plan.Prescription) DiaryLeg {
	leg := DiaryLeg{Side: p.Side, Says: h.boxTitle(p)}
	if slices.ContainsFunc(p.Weeks, hasLoad) {
		leg.Load = "kg"
		if marked(p.Device) {
			leg.Load = "lb"
		}
	}
	leg.Twice = p.Device != nil && len(p.Device.Plates) > 0 && !p.Device.Single
	for _, d := range p.Weeks {
		if h.pausedThroughout() {
			d = inWeek(p.Weeks[0], d.Week)
		}
		if as := leg.asBoxSays(d); len(as) > 0 {
			leg.Asked = append(leg.Asked, DiaryDose{Week: d.Week, As: as})
		}
	}
	for _, s := range h.stretches(p, h.at(m) != "") {
		leg.Later = append(leg.Later, s.weeks)
	}
	return leg
}

// hasLoad reports whether a log has a place for the load of a week's dose: beside repetitions alone.
func hasLoad(d plan.WeekDose) bool {
	return (d.Dose.Reps != nil || len(d.Each) > 0) && (d.FindYourWeight || d.Plates.Or(0) > 0)
}
