package plan_test

import (
	"encoding/csv"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// published reads a table of testdata/published/plan: rows by the names of its head.
func published(t *testing.T, name string) (rows []map[string]string) {
	t.Helper()
	f, err := os.Open("../../testdata/published/plan/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, cells := range all[1:] {
		row := map[string]string{}
		for i, head := range all[0] {
			row[head] = cells[i]
		}
		rows = append(rows, row)
	}
	return rows
}

// seatedKick plans one week from a day on, of a client whose therapist has recorded the third stage, and says through
// which range the seated kick without weight may go. Nothing but the limit narrows it.
func seatedKick(t *testing.T, w who, from unit.Day) string {
	t.Helper()
	w.starts, w.weeks = from.String(), 1
	w.stages = "rebuild " + or(w.date, "2026-01-05")
	p := w.plan(t)
	return reach(dose(p, "knee-extension-no-added-weight", unit.Left, 1))
}

// Rule 1: weeks are full weeks since the event: day 27 is week 3, day 28 week 4.
func TestRule01_WeekFourBeginsOnDay28(t *testing.T) {
	for _, row := range []struct {
		day  string
		want string
		why  string
	}{
		{"2026-02-01", "3", "27 days after 5 January"},
		{"2026-02-02", "4", "28 days: week 4 begins"},
		{"2026-03-30", "12", "84 days, across the change to summer time in Europe"},
		{"2026-03-29", "11", "83 days: the day of the change itself"},
	} {
		w := who{starts: row.day}
		if got := fmt.Sprint(w.plan(t).Weeks[0].SinceEvent); got != row.want {
			t.Errorf("%s: week %s, want %s (%s)", row.day, got, row.want, row.why)
		}
	}
}

// Rule 1: months are clamped: 30 May 2025 + 9 months = 28 February 2026.
func TestRule01_MonthsAreClamped(t *testing.T) {
	sport := "[[activity]]\nid = \"sport\"\nkinds = [\"contact\"]\n[[activity.needs]]\nearliest_month = 9\n"
	files := bare(rows("contact", "", "40", "{ week = 0, allowed = false }"), sport, `"squat"`)
	p := who{date: "2025-05-30", starts: "2026-02-27", files: files}.plan(t)
	if got := criterion(t, p, "sport.time").NotBefore.String(); got != "2026-02-28" {
		t.Errorf("the floor of full sport is %s, want 2026-02-28", got)
	}
	if got := activity(t, p, "sport").NotBefore.String(); got != "2026-03-06" {
		t.Errorf("full sport not before %s, want 2026-03-06: the limit on contact holds 40 weeks", got)
	}
	if c := criterion(t, p, "sport.time"); c.State != plan.NotMet {
		t.Errorf("the day before the floor: %s", c.State)
	}
	if c := criterion(t, who{date: "2025-05-30", starts: "2026-02-28", files: files}.plan(t), "sport.time"); c.State != plan.Met {
		t.Errorf("on the floor: %s", c.State)
	}
}

// Rule 2: tests, stages and opened activities dated after the block's first day are as if they had not been; the test of
// that morning counts. Limits count by their own from, whenever they were said.
func TestRule02_AsOfTheBlocksFirstDay(t *testing.T) {
	w := who{starts: "2026-04-06", stages: "rebuild 2026-03-02, run 2026-04-07", more: setups + opened("running", "2026-04-07"),
		tests: map[string]string{
			"2026-04-06": straightKnees + pull("knee-extension", "[331]", "[410]"),
			"2026-04-07": straightKnees + "[[questionnaire]]\nid = \"acl-rsi\"\nscore = 90\n" + pull("knee-extension", "[400]", "[410]"),
		}}
	p := w.plan(t)
	if v := p.Found.Measure("knee-extension.lsi"); v.Number != 80.7 {
		t.Errorf("symmetry %v, want 80.7: this morning's test, not tomorrow's", v.Number)
	}
	if p.Stage.Set.ID != "rebuild" {
		t.Errorf("stage %s: tomorrow's stage is not yet", p.Stage.Set.ID)
	}
	if a := activity(t, p, "running"); a.State != "closed" {
		t.Errorf("running is %s: it is opened tomorrow", a.State)
	}
	w.more += limit("loaded-bend", "range_deg = [0, 40]", "2026-04-06", "", "surgeon", "Dr Auk", "2026-04-20")
	if got := reach(dose(w.plan(t), "squat", unit.Both, 1)); got != "0-40" {
		t.Errorf("a letter said on 20 April that holds from 6 April: squat %s, want 0-40", got)
	}
}

// Rule 3: a training week takes the strictest limit in force on any of its days.
func TestRule03_StrictestOfTheSevenDays(t *testing.T) {
	for _, row := range []struct {
		from, want, why string
	}{
		{"2026-02-16", "20-90", "week 6 on every day"},
		{"2026-02-15", "45-90", "begins on the last day of week 5: the stricter holds all week"},
		{"2026-02-17", "20-90", "begins on the second day of week 6, ends in week 7: week 6 holds"},
		{"2026-02-22", "20-90", "begins on the last day of week 6"},
		{"2026-02-23", "10-90", "week 7"},
		{"2026-03-01", "10-90", "six of seven days are free, one is not"},
		{"2026-03-02", "0-90", "the first day without the limit"},
		{"2026-02-01", "not prescribed", "begins on the last closed day"},
	} {
		if got := seatedKick(t, who{}, day(row.from)); got != row.want {
			t.Errorf("from %s: %s, want %s (%s)", row.from, got, row.want, row.why)
		}
	}
}

// The published rows, day by day after an operation on 5 January 2026: a week that begins on the day and the six after it
// takes the stricter of the rows that it touches.
func TestRule03_KNGFDayByDay(t *testing.T) {
	operation := day("2026-01-05")
	rows := published(t, "kngf-straightening.csv")
	held := func(d unit.Day) (from int) { // -1: closed
		from = -1
		for _, row := range rows {
			if week, _ := strconv.Atoi(row["week"]); week <= d.WeeksSince(operation) {
				switch row["held"] {
				case "-":
					from = -1
				case "free":
					from = 0
				default:
					from, _ = strconv.Atoi(row["held"])
				}
			}
		}
		return from
	}
	for n := 0; n < 84; n++ { // from week 12 on the machine is the first choice
		d := operation.AddDays(n)
		straightest := 0
		for i := range 7 {
			if h := held(d.AddDays(i)); h < 0 {
				straightest = -1
				break
			} else {
				straightest = max(straightest, h)
			}
		}
		want := fmt.Sprintf("%d-90", straightest)
		if straightest < 0 {
			want = "not prescribed"
		}
		if got := seatedKick(t, who{}, d); got != want {
			t.Errorf("day %d (%s, week %d): %s, want %s", n, d, d.WeeksSince(operation), got, want)
		}
	}
}

// Rule 5 and the published rows of added weight: closed until the week, then open; opened by the therapist where it says so.
func TestRule05_AddedWeightByGraft(t *testing.T) {
	for _, row := range published(t, "kngf-added-weight.csv") {
		first, _ := strconv.Atoi(row["first_week"])
		operation := day("2026-01-05")
		open := func(week, days int, more string) bool {
			w := who{graft: row["graft"], stages: "rebuild 2026-01-05", more: more, starts: operation.AddWeeks(week).AddDays(days).String(), weeks: 1}
			return dose(w.plan(t), "knee-extension-machine", unit.Left, 1) != nil
		}
		if open(first, -1, "") || !open(first, 0, "") {
			t.Errorf("%s: not closed up to week %d and open from it", row["graft"], first)
		}
		may, err := strconv.Atoi(row["therapist_may_open_from"])
		if err != nil {
			w := who{graft: row["graft"], starts: "2026-03-02", more: opened("added-weight", "2026-02-02")}
			if _, faults := w.planned(t); len(faults.Wrong()) == 0 {
				t.Errorf("%s: [[opened]] of added weight passes, though nothing lets a therapist open it", row["graft"])
			}
			continue
		}
		early := opened("added-weight", "2026-01-12")
		if open(may, -1, early) {
			t.Errorf("%s: opened in week 1 it holds before week %d", row["graft"], may)
		}
		// the machine goes where the straightening allows it: 45 to 90 in week 4
		if !open(may, 0, early) {
			t.Errorf("%s: opened in week 1 it does not hold from week %d", row["graft"], may)
		}
		if late := opened("added-weight", "2026-02-23"); open(6, 6, late) || !open(7, 0, late) {
			t.Errorf("%s: opened on 23 February (week 7) it holds from another day", row["graft"])
		}
	}
}

// Rule 5: added weight on straightening closes no press: a limit with on speaks only of exercises that also name it.
func TestRule05_OnScopesALimit(t *testing.T) {
	p := who{starts: "2026-03-09", stages: "rebuild 2026-03-02"}.plan(t)
	if why := because(p, "knee-extension-machine", 1); !strings.HasPrefix(why, "added-weight: closed") {
		t.Errorf("the extension machine in week 9: %q", why)
	}
	if dose(p, "leg-press-single", unit.Left, 1) == nil {
		t.Errorf("the press in week 9: %q", because(p, "leg-press-single", 1))
	}
}

// own is a program of the clinic's own, laid over the shipped one: one phase with the slots that are given.
func own(slots ...string) map[string]string {
	var b strings.Builder
	b.WriteString("title = \"Own\"\naim = \"Try.\"\n")
	for i, choose := range slots {
		reps := "sets = 3\nreps = 10\nreserve = 2\nweekly_percent = 2.5"
		fmt.Fprintf(&b, "[[slot]]\nid = \"slot-%d\"\nchoose = [%s]\n%s\n", i+1, choose, reps)
	}
	b.WriteString("[[session]]\nid = \"a\"\nslots = [")
	for i := range slots {
		fmt.Fprintf(&b, "\"slot-%d\", ", i+1)
	}
	b.WriteString("]\n")
	return map[string]string{"programs/phases/settle.toml": b.String()}
}

func with(files map[string]string, name, text string) map[string]string {
	files[name] = text
	return files
}

// Rule 5: a day that no row covers is closed, never free; the plan names it.
func TestRule05_AGapIsClosed(t *testing.T) {
	gap := "[[limit]]\nkind = \"loaded-bend\"\nstanding = \"tool default\"\nlifts_week = 8\nsteps = [ { week = 4, range_deg = [0, 50] } ]\n"
	w := who{files: with(own(`"mini-squat"`), "programs/limits/acl-also.toml", gap), weeks: 1}
	for _, row := range []struct{ from, want, why string }{
		{"2026-01-05", "not prescribed", "no row covers weeks 0 to 3"},
		{"2026-02-01", "not prescribed", "the last day of the gap"},
		{"2026-02-02", "0-45", "the row begins"},
	} {
		w.starts = row.from
		p := w.plan(t)
		if got := reach(dose(p, "mini-squat", unit.Both, 1)); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.from, got, row.want, row.why)
		}
	}
	w.starts = "2026-01-05"
	p := w.plan(t)
	found := false
	for _, f := range p.Flags {
		found = found || f.ID == "gap" && f.About == "loaded-bend"
	}
	if !found {
		t.Errorf("no flag names the gap: %v", p.Flags)
	}
}

// Rule 5: a kind that an instruction alone names is closed before its first window, and free from the day it lifts.
func TestRule05_OutsideTheWindowsOfAnInstruction(t *testing.T) {
	w := who{files: own(`"stationary-cycling"`), weeks: 1,
		more: limit("active-bend", "range_deg = [0, 110]", "2026-01-19", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05")}
	w.files["programs/phases/settle.toml"] = strings.Replace(w.files["programs/phases/settle.toml"], "reps = 10\nreserve = 2\nweekly_percent = 2.5", "minutes = 10", 1)
	for _, row := range []struct{ from, want, why string }{
		{"2026-01-05", "not prescribed", "before the first window: closed"},
		{"2026-01-18", "not prescribed", "its last day"},
		{"2026-01-19", "30-110", "the instruction"},
		{"2026-02-15", "30-110", "its last day"},
		{"2026-02-16", "30-110", "lifted: free"},
	} {
		w.starts = row.from
		if got := reach(dose(w.plan(t), "stationary-cycling", unit.Both, 1)); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.from, got, row.want, row.why)
		}
	}
}

// Rule 5: an instruction without lifts holds until further notice.
func TestRule05_UntilFurtherNotice(t *testing.T) {
	w := who{starts: "2029-01-01", weeks: 1, files: own(`"squat"`), more: limit("loaded-bend", "range_deg = [0, 50]", "2026-02-02", "", "surgeon", "Dr Auk", "2026-02-02")}
	if got := reach(dose(w.plan(t), "squat", unit.Both, 1)); got != "0-50" {
		t.Errorf("three years on: %s, want 0-50", got)
	}
}

// Rule 6, who wins. The shipped loaded bend of a hamstring graft is 0 to 60 until week 8 (2 March), then 0 to 90 until
// week 16 (27 April), then free. The squat goes through 0 to 90 by nature.
func TestRule06_WhoWins(t *testing.T) {
	bend := func(allow, from, lifts, setBy, name, said string) string {
		return limit("loaded-bend", "range_deg = ["+allow+"]", from, lifts, setBy, name, said)
	}
	for _, row := range []struct {
		name, more, from, want, why string
	}{
		{"a looser", bend("0, 80", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05"), "2026-02-02", "0-80", "a surgeon's word replaces the shipped default, looser too"},
		{"a stricter", bend("0, 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05"), "2026-02-02", "0-50", "… or stricter"},
		{"a physician", bend("0, 80", "2026-01-05", "", "physician", "Dr Eider", "2026-01-05"), "2026-02-02", "0-80", "a physician instructs as well"},
		{"b later of one author", bend("0, 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 80", "2026-01-12", "", "surgeon", "Dr Auk", "2026-01-12"), "2026-02-02", "0-80", "the later word of one author supersedes"},
		{"b order in the file is nothing", bend("0, 80", "2026-01-12", "", "surgeon", "Dr Auk", "2026-01-12") + bend("0, 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05"), "2026-02-02", "0-80", "the day it was said decides"},
		{"b later is the day it was said", bend("0, 80", "2026-01-12", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-12"), "2026-02-02", "0-50", "said later, though it begins earlier"},
		{"b stands again", bend("0, 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 80", "2026-01-12", "2026-02-02", "surgeon", "Dr Auk", "2026-01-12"), "2026-02-02", "0-50", "the later one has lifted, the earlier one still runs"},
		{"b before it stands again", bend("0, 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 80", "2026-01-12", "2026-02-02", "surgeon", "Dr Auk", "2026-01-12"), "2026-01-26", "0-80", "the last week of the later one"},
		{"c two authors", bend("0, 80", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 70", "2026-01-05", "", "physician", "Dr Eider", "2026-02-01"), "2026-02-02", "0-70", "the strictest of both, not the later"},
		{"c two authors, said the other way", bend("0, 70", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 80", "2026-01-05", "", "physician", "Dr Eider", "2026-02-01"), "2026-02-02", "0-70", "a later word of another author loosens nothing"},
		{"c two surgeons", bend("0, 70", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 80", "2026-01-05", "", "surgeon", "Ms Dunlin", "2026-02-01"), "2026-02-02", "0-70", "the author is set_by and name"},
		{"d a therapist tightens the shipped", bend("0, 40", "2026-01-05", "", "therapist", "Imbali R.", "2026-01-05"), "2026-02-02", "0-40", "tightens"},
		{"d a therapist never loosens the shipped", bend("0, 80", "2026-01-05", "", "therapist", "Imbali R.", "2026-01-05"), "2026-02-02", "0-60", "0 to 60 stands"},
		{"d a therapist tightens a surgeon's", bend("0, 80", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 70", "2026-01-05", "", "therapist", "Imbali R.", "2026-01-12"), "2026-02-02", "0-70", "tightens"},
		{"d a therapist never loosens a surgeon's", bend("0, 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 70", "2026-01-05", "", "therapist", "Imbali R.", "2026-01-12"), "2026-02-02", "0-50", "the surgeon's stands"},
		{"e between shipped", "", "2026-02-02", "0-60", "the graft alone"},
		{"window: before", bend("0, 80", "2026-02-09", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05"), "2026-02-02", "0-60", "before from the shipped limit stands"},
		{"window: within", bend("0, 80", "2026-02-09", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05"), "2026-02-09", "0-80", "within it the instruction"},
		{"window: after", bend("0, 80", "2026-02-09", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05"), "2026-02-16", "0-60", "from lifts on the shipped limit stands again"},
		{"window: a week across the end", bend("0, 80", "2026-02-09", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05"), "2026-02-10", "0-60", "one day of the week is outside: the strictest"},
		{"allowed = true", limit("loaded-bend", "allowed = true", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05"), "2026-02-02", "0-90", "the surgeon frees it"},
		{"another operation's word", bend("0, 80", "2025-06-02", "", "surgeon", "Dr Auk", "2025-06-02"), "2026-02-02", "0-60", "a word that begins before the event tightens and opens nothing"},
		{"another operation's strict word", bend("0, 30", "2025-06-02", "", "surgeon", "Dr Auk", "2025-06-02"), "2026-02-02", "0-30", "… but it tightens"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: row.from, weeks: 1, files: own(`"squat"`), more: row.more}
			if got := reach(dose(w.plan(t), "squat", unit.Both, 1)); got != row.want {
				t.Errorf("%s, want %s (%s)", got, row.want, row.why)
			}
		})
	}
}

// Rule 6 (e): the strictest of a graft's and of a repair's schedule.
func TestRule06_ShippedMeetInTheStrictest(t *testing.T) {
	w := who{starts: "2026-01-12", weeks: 1, files: own(`"mini-squat"`), also: `["meniscus-repair-vertical-medial"]`}
	if got := reach(dose(w.plan(t), "mini-squat", unit.Both, 1)); got != "0-30" {
		t.Errorf("graft 0-60, repair 0-30: %s", got)
	}
}

// Rule 6: all that were weighed are kept, and which of them wins.
func TestRule06_AllThatWereWeighedAreKept(t *testing.T) {
	w := who{starts: "2026-02-02", weeks: 2, files: own(`"squat"`), more: limit("loaded-bend", "range_deg = [0, 80]", "2026-02-01", "2026-02-20", "surgeon", "Dr Auk", "2026-02-01")}
	p := w.plan(t)
	surgeon, shipped := windows(p, unit.LoadedBend, "surgeon"), windows(p, unit.LoadedBend, "program")
	if len(surgeon) != 1 || !surgeon[0].Wins || surgeon[0].Name != "Dr Auk" || surgeon[0].Route != "letter" || surgeon[0].Said != day("2026-02-01") {
		t.Errorf("the surgeon's: %+v", surgeon)
	}
	if len(shipped) < 2 {
		t.Fatalf("the shipped rows that it replaces are not kept: %+v", shipped)
	}
}

// Rule 6: a kind of limit binds the event's knee and both legs together, not the other leg.
func TestRule06_TheOtherLegIsFree(t *testing.T) {
	w := who{starts: "2026-03-09", stages: "rebuild 2026-03-02", more: setups,
		tests: map[string]string{"2026-03-09": straightKnees + lift("leg-press-single", "range_deg = [0, 90]", "40 kg x 8+2", "70 kg x 8+2")}}
	w.more += limit("loaded-bend", "range_deg = [0, 50]", "2026-03-02", "", "surgeon", "Dr Auk", "2026-03-02")
	p := w.plan(t)
	if got := reach(dose(p, "leg-press-single", unit.Left, 1)); got != "0-50" {
		t.Errorf("operated leg %s, want 0-50", got)
	}
	if got := reach(dose(p, "leg-press-single", unit.Right, 1)); got != "0-90" {
		t.Errorf("other leg %s, want 0-90", got)
	}
	if got := reach(dose(p, "squat", unit.Both, 1)); got != "0-50" {
		t.Errorf("both legs %s, want 0-50", got)
	}
	if dose(p, "knee-extension-machine", unit.Right, 1) == nil || dose(p, "knee-extension-machine", unit.Left, 1) != nil {
		t.Errorf("the extension machine in week 9: the other leg may, the operated may not")
	}
}

// Rule 7: an empty range drops the exercise with the reason and takes the slot's next choice; an arc under 20° is held still.
func TestRule07_EmptyRangeTakesTheNextChoice(t *testing.T) {
	for _, row := range []struct{ allow, want, why string }{
		{"0, 90", "squat", "everything is allowed"},
		{"0, 20", "squat", "an arc of exactly 20"},
		{"0, 19", "single-leg-stance", "under 20: only holding still"},
		{"95, 120", "heel-raise", "nothing in common with squat or stance"},
	} {
		w := who{starts: "2026-02-02", weeks: 1, files: own(`"squat", "single-leg-stance", "heel-raise"`), more: limit("loaded-bend", "range_deg = ["+row.allow+"]", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")}
		p := w.plan(t)
		if got := chosen(p, "slot-1", unit.Left, 1); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.allow, got, row.want, row.why)
		}
		if row.want == "squat" {
			continue
		}
		if why := because(p, "squat", 1); !strings.Contains(why, "Dr Auk") {
			t.Errorf("%s: the reason %q does not name who set it", row.allow, why)
		}
	}
}

// Rule 7: only two instructions with no common range are an error.
func TestRule07_OnlyContradictingInstructionsAreAnError(t *testing.T) {
	bend := func(allow, from, lifts, setBy, name, said string) string {
		return limit("loaded-bend", "range_deg = ["+allow+"]", from, lifts, setBy, name, said)
	}
	for _, row := range []struct {
		name, more string
		wrong      bool
		why        string
	}{
		{"two doctors", bend("0, 30", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("60, 90", "2026-01-05", "", "physician", "Dr Eider", "2026-01-05"), true, "no common range"},
		{"never at once", bend("0, 30", "2026-01-05", "2026-01-19", "surgeon", "Dr Auk", "2026-01-05") + bend("60, 90", "2026-01-19", "", "physician", "Dr Eider", "2026-01-05"), false, "the one ends where the other begins"},
		{"one author", bend("0, 30", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("60, 90", "2026-01-12", "", "surgeon", "Dr Auk", "2026-01-12"), false, "the later word supersedes"},
		{"superseded", bend("0, 30", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 90", "2026-01-12", "", "surgeon", "Dr Auk", "2026-01-12") + bend("60, 90", "2026-01-19", "", "physician", "Dr Eider", "2026-01-19"), false, "what contradicts has been superseded before the other begins"},
		{"stands again", bend("0, 30", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("0, 90", "2026-01-12", "2026-02-09", "surgeon", "Dr Auk", "2026-01-12") + bend("60, 90", "2026-01-19", "", "physician", "Dr Eider", "2026-01-19"), true, "from 9 February the earlier word stands again"},
		{"a therapist's", bend("0, 30", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05") + bend("60, 90", "2026-01-05", "", "therapist", "Imbali R.", "2026-01-05"), false, "a therapist's tightening closes, it contradicts nobody"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: "2026-02-02", files: own(`"squat"`), more: row.more}
			p, faults := w.planned(t)
			if got := len(faults.Wrong()) > 0; got != row.wrong {
				t.Fatalf("an error: %v, want %v (%s)\n%v", got, row.wrong, row.why, faults)
			}
			if p != nil && row.name == "a therapist's" && dose(p, "squat", unit.Both, 1) != nil {
				t.Errorf("no range is left, yet the squat is prescribed")
			}
		})
	}
}

// Rule 8: "no added weight" means no machine stack: the next choice is the limb's own weight.
func TestRule08_NoAddedWeightIsNoStack(t *testing.T) {
	p := who{starts: "2026-02-23", weeks: 1, stages: "rebuild 2026-02-16"}.plan(t)
	if got := chosen(p, "quadriceps-alone", unit.Left, 1); got != "knee-extension-no-added-weight" {
		t.Errorf("week 7 after a hamstring graft: %s", got)
	}
}

// Rule 4: bend nests. A passive limit binds active and loaded bend, an active one binds loaded bend, not the other way.
func TestRule04_BendNests(t *testing.T) {
	for _, row := range []struct {
		kind, exercise, want, why string
	}{
		{"passive-bend", "heel-slide", "0-50", "passive itself"},
		{"passive-bend", "prone-curl-no-weight", "0-50", "a passive limit binds active bend"},
		{"passive-bend", "squat", "0-50", "… and loaded bend"},
		{"active-bend", "heel-slide", "0-130", "an active limit leaves passive bend"},
		{"active-bend", "prone-curl-no-weight", "0-50", "active itself"},
		{"active-bend", "squat", "0-50", "an active limit binds loaded bend"},
		{"loaded-bend", "heel-slide", "0-130", "a loaded limit leaves passive bend"},
		{"loaded-bend", "prone-curl-no-weight", "0-90", "… and active bend"},
		{"loaded-bend", "squat", "0-50", "loaded itself"},
	} {
		w := who{starts: "2026-06-01", weeks: 1, files: own(`"` + row.exercise + `"`), more: limit(row.kind, "range_deg = [0, 50]", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")}
		p := w.plan(t)
		side := unit.Left
		if p.Program.Exercises[row.exercise].Side == program.BothLegs {
			side = unit.Both
		}
		if got := reach(dose(p, row.exercise, side, 1)); got != row.want {
			t.Errorf("%s on %s: %s, want %s (%s)", row.kind, row.exercise, got, row.want, row.why)
		}
	}
}

// Rule 4: work of the hamstrings is graded: none, active, resisted, lengthened.
func TestRule04_HamstringWorkIsGraded(t *testing.T) {
	for _, row := range []struct{ grade, want, why string }{
		{"none", "side-leg-lift", "not even held"},
		{"active", "prone-curl-no-weight", "moved without a load"},
		{"resisted", "leg-curl-machine", "the machine"},
		{"lengthened", "slider-curl", "all of it"},
	} {
		w := who{starts: "2026-06-01", weeks: 1, files: own(`"slider-curl", "leg-curl-machine", "prone-curl-no-weight", "side-leg-lift"`),
			more: limit("hamstring-work", fmt.Sprintf("grade = %q", row.grade), "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")}
		if got := chosen(w.plan(t), "slot-1", unit.Left, 1); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.grade, got, row.want, row.why)
		}
	}
}

// Rule 6 (d): of two grades the lower holds, whichever was said last.
func TestRule06_TheLowerGradeHolds(t *testing.T) {
	said := func(grade, setBy, name string) string {
		return limit("hamstring-work", fmt.Sprintf("grade = %q", grade), "2026-01-05", "", setBy, name, "2026-01-05")
	}
	for _, more := range []string{
		said("active", "surgeon", "Dr Auk") + said("resisted", "therapist", "Imbali R."), said("resisted", "therapist", "Imbali R.") + said("active", "surgeon", "Dr Auk"),
		said("resisted", "surgeon", "Dr Auk") + said("active", "therapist", "Imbali R."), said("active", "physician", "Dr Eider") + said("resisted", "surgeon", "Dr Auk"),
	} {
		w := who{starts: "2026-06-01", weeks: 1, files: own(`"leg-curl-machine", "prone-curl-no-weight"`), more: more}
		if got := chosen(w.plan(t), "slot-1", unit.Left, 1); got != "prone-curl-no-weight" {
			t.Errorf("%s with\n%s", got, more)
		}
	}
}

// Rule 4: part weight-bearing keeps a standing leg from its body's weight.
func TestRule04_PartWeightBearing(t *testing.T) {
	for _, allow := range []string{"allowed = false", "part_percent = 50", "part_kg = 20"} {
		w := who{starts: "2026-06-01", weeks: 1, files: own(`"heel-raise", "prone-curl-no-weight"`), more: limit("weight-bearing", allow, "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")}
		if got := chosen(w.plan(t), "slot-1", unit.Left, 1); got != "prone-curl-no-weight" {
			t.Errorf("%s: %s", allow, got)
		}
	}
}

// Rule 6: limits bind exercises of both legs, and one that loads both knees though one leg leads: the other leg gets neither.
func TestRule06_BothKneesAreBound(t *testing.T) {
	w := who{starts: "2026-06-01", weeks: 1, files: own(`"squat", "split-squat", "heel-raise-single"`), more: limit("loaded-bend", "allowed = false", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")}
	p := w.plan(t)
	for _, side := range []unit.Side{unit.Left, unit.Right} {
		if got := chosen(p, "slot-1", side, 1); got != "heel-raise-single" {
			t.Errorf("%s leg, loaded bend closed: %s", side, got)
		}
	}
	w.more = limit("loaded-bend", "range_deg = [0, 60]", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")
	w.files = own(`"split-squat"`)
	if got := reach(dose(w.plan(t), "split-squat", unit.Right, 1)); got != "10-60" {
		t.Errorf("the other leg leads, the operated knee bends with it: %s, want 10-60", got)
	}
}
