package generator_test

import (
	"encoding/json"
	"flag"
	"fmt"
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"

	"paceleaf/generator"
	"paceleaf/generator/client"
	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/site"
	"paceleaf/templates"
)

// Laws over whole clinics: the shipped invented clients as of each of their blocks, and variations of them made here,
// some hundred in every run and several hundred with PACELEAF_LONG=1. A law says what must hold between two plans, not what a
// plan says.

// many is the number of cases of a law: a few in every run, all of them with PACELEAF_LONG=1 or while fuzzing.
func many(few, all int) int {
	fuzz := flag.Lookup("test.fuzz")
	if os.Getenv("PACELEAF_LONG") != "" || fuzz != nil && fuzz.Value.String() != "" {
		return all
	}
	return few
}

// folk is one client's folder: names within it, and their text.
type folk map[string]string

func (f folk) change(name string, change func(string) string) folk {
	g := maps.Clone(f)
	g[name] = change(g[name])
	return g
}

// each changes every file, and names too.
func (f folk) each(change func(string) string) folk {
	g := folk{}
	for name, text := range f {
		g[change(name)] = change(text)
	}
	return g
}

// demoFolk are the demo clients, each as of each of its blocks.
func demoFolk(t testing.TB) (all []folk, clinic string) {
	t.Helper()
	files, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		t.Fatal(err)
	}
	whole := map[string]folk{}
	for name, data := range files {
		if code, inside, ok := strings.Cut(strings.TrimPrefix(name, "clients/"), "/"); ok && strings.HasPrefix(name, "clients/") {
			if whole[code] == nil {
				whole[code] = folk{}
			}
			whole[code][inside] = string(data)
		}
	}
	for _, code := range slices.Sorted(maps.Keys(whole)) {
		for n := 1; whole[code][fmt.Sprintf("blocks/%d.toml", n)] != ""; n++ {
			one := folk{}
			for name, text := range whole[code] {
				if !strings.HasPrefix(name, "blocks/") || name == fmt.Sprintf("blocks/%d.toml", n) {
					one[name] = text
				}
			}
			all = append(all, one)
		}
	}
	return all, string(files["clinic.toml"])
}

// variations are clients made from a fixed seed: every graft, repair, stage, place and week, with instructions, opened
// activities, swelling, pain, and tests of every kind, some of them missing.
func variations(n int) (all []folk) {
	r := rand.New(rand.NewPCG(16, 1998))
	pick := func(from ...string) string { return from[r.IntN(len(from))] }
	for nth := range n {
		event := unit.Day{Year: 2025, Month: 9, Date: 1}.AddDays(r.IntN(60))
		week := r.IntN(34)
		starts := event.AddWeeks(week).AddDays(r.IntN(7))
		back := func(days int) string { return starts.AddDays(-r.IntN(days + 1)).String() }
		side, graft := pick("left", "right"), pick("hamstring", "hamstring", "patellar-tendon", "quadriceps-tendon", "allograft")
		other := pick("sound", "sound", "sound", "sound", "injured-before", "operated-too")
		place := pick("gym", "gym", "harbour-gym", "home")
		press := map[string]string{"gym": "press", "harbour-gym": "big-press", "home": ""}[place]
		var b strings.Builder
		say := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
		far, from, born := string(unit.Side(side).Opposite()), side, "1994-06"
		switch nth % 6 { // every sixth has a donor leg, a leg operated too, a leg of its own limit, or is young
		case 1:
			if graft != "allograft" {
				other, from = "donor", far
			}
		case 2:
			other = "operated-too"
		case 4:
			born = "2009-06"
		}
		say("program = \"acl-reconstruction\"\nplace = %q\ntraining_days = %s\nother_leg = %q\nsport = %q\nborn = %q", place,
			pick(`["mon", "wed", "fri"]`, `["tue", "fri"]`, `["mon", "tue", "thu", "sat"]`), other, pick("none", "straight-line", "twisting", "contact"), born)
		say("[[event]]\nkind = \"operation\"\nprocedure = \"acl-reconstruction\"\ndate = %s\nside = %q\ngraft = %q", event, side, graft)
		if graft != "allograft" {
			say("graft_from = %q", from)
		}
		if also := pick("", "", "meniscus-repair-vertical-medial", "meniscus-repair-bucket-handle", "meniscus-repair-root", "partial-meniscectomy"); also != "" {
			say("also = [%q]", also)
		}
		if stage := pick("", "activate", "rebuild", "rebuild", "run", "run"); stage != "" {
			say("[[stage]]\nid = %q\nfrom = %s\nby = \"imbali\"", stage, event.AddDays(r.IntN(starts.Sub(event)+1)))
		}
		if r.IntN(3) == 0 {
			say("[[opened]]\nid = \"running\"\nfrom = %s\nby = \"imbali\"", back(20))
		}
		if r.IntN(2) == 0 {
			kind := pick("loaded-bend", "loaded-bend", "active-bend", "straightening-under-load", "passive-bend")
			from := event.AddDays(r.IntN(40))
			say("[[limit]]\nkind = %q\nrange_deg = [%s, %s]\nfrom = %s", kind, pick("0", "0", "10", "30"), pick("60", "70", "90", "110"), from)
			if r.IntN(2) == 0 {
				say("lifts = %s", from.AddDays(1+r.IntN(120)))
			}
			say("set_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = %s\nroute = \"letter\"", from)
		}
		if r.IntN(4) == 0 {
			say("[[away]]\nfrom = %s\nuntil = %s\nplace = %q", starts.AddDays(r.IntN(20)), starts.AddDays(20), pick("hotel", "home", "harbour-gym"))
		}
		if nth%6 == 2 {
			say("[[event]]\nkind = \"operation\"\nprocedure = \"acl-reconstruction\"\ndate = %s\nside = %q\ngraft = \"allograft\"", event.AddWeeks(-1-nth%29), far)
		}
		if nth%6 == 3 {
			say("[[limit]]\nkind = \"loaded-bend\"\nside = %q\nrange_deg = [0, 50]\nfrom = %s\nset_by = \"physician\"\nname = \"Dr Eider\"\nsaid = %s\nroute = \"call\"", far, event.AddDays(nth%40), event)
		}
		say("[setup.knee-extension]\ngauge = \"belt\"\nmode = \"isometric\"\nangle_deg = 90\nleft.arm_cm = 31\nright.arm_cm = 32")
		say("[setup.knee-flexion]\ngauge = \"belt\"\nmode = \"isometric\"\nangle_deg = 90\nleft.arm_cm = 31\nright.arm_cm = 31")
		if press != "" {
			say("[setup.leg-press-single]\ndevice = %q\npins_deg = [90, 75, 60, 45, 30]", press)
			say("[setup.leg-curl-machine]\ndevice = \"curl\"\n[setup.knee-extension-machine]\ndevice = %q", map[string]string{"gym": "stack", "harbour-gym": "extension"}[place])
		}
		one := folk{"client.toml": b.String(), "blocks/1.toml": fmt.Sprintf("starts = %s\nweeks = %d\nby = \"imbali\"\n", starts, 1+r.IntN(6))}
		for i := range r.IntN(4) {
			b.Reset()
			say("by = \"imbali\"\nmass_kg = %d", 55+r.IntN(40))
			if r.IntN(4) > 0 {
				say("pain_worst = %d\npain_kind = \"ache\"", r.IntN(4))
				if r.IntN(3) > 0 {
					say("pain_next_morning = %d", r.IntN(3))
				}
			}
			if r.IntN(4) > 0 {
				say("effusion = %q", pick("zero", "trace", "trace", "trace", "1+", "2+"))
			}
			if r.IntN(3) > 0 {
				say("%s.lacks_extension_deg = %s\nleft.flexion_deg = %d\nright.flexion_deg = %d\nquads_lag_deg = 0", side, pick("0", "0", "0", "3"), 100+r.IntN(40), 125+r.IntN(15))
			}
			if r.IntN(3) == 0 {
				say("reason = \"asked for by the team\"")
			}
			force := func() int { return 200 + r.IntN(250) }
			if r.IntN(4) > 0 {
				a, c := force(), force()
				say("[[strength]]\ntest = \"knee-extension\"\nleft.peak_n = [%d, %d]\nright.peak_n = [%d, %d]", a, a+r.IntN(20), c, c+r.IntN(40))
			}
			if r.IntN(2) == 0 {
				say("[[strength]]\ntest = \"knee-flexion\"\nleft.peak_n = [%d]\nright.peak_n = [%d]", force(), force())
			}
			if press != "" {
				for _, e := range []string{"leg-press-single", "leg-curl-machine", "knee-extension-machine"} {
					if r.IntN(3) == 0 {
						continue
					}
					say("[[lift]]\nexercise = %q", e)
					if r.IntN(2) == 0 {
						say("range_deg = [0, %s]", pick("60", "70", "90"))
					}
					say("left = \"%d kg x %d+%d\"\nright = \"%d kg x %d+%d\"", 5+r.IntN(80), 5+r.IntN(6), r.IntN(4), 20+r.IntN(80), 5+r.IntN(6), r.IntN(4))
				}
			}
			if r.IntN(4) == 0 {
				say("[[hop]]\ntest = \"single\"\nleft.distance_cm = [%d]\nright.distance_cm = [%d]", 60+r.IntN(90), 60+r.IntN(90))
			}
			b.WriteString(otherTests(nth, i))
			one[fmt.Sprintf("tests/%s.toml", starts.AddDays(-21*i-r.IntN(20)))] = b.String()
		}
		all = append(all, one)
	}
	return all
}

// otherTests are tests of reach, of rising, side hops and answers, for every third client; they take no chance, so that the
// others stay as they are.
func otherTests(nth, day int) string {
	if nth%3 != 0 {
		return ""
	}
	left, right := 40+(nth+7*day)%30, 40+(nth+11*day)%30
	return fmt.Sprintf("[single_leg_rise]\nleft.seat_cm = %d\nright.seat_cm = %d\n[y_balance]\nleft.leg_cm = 88\nleft.anterior_cm = [%d]\nright.anterior_cm = [%d]\n"+
		"left.posteromedial_cm = [%d]\nleft.posterolateral_cm = [%d]\n[[hop]]\ntest = \"side\"\nleft.count = [%d]\nright.count = [%d]\n[[questionnaire]]\nid = \"koos-qol\"\nitems = [%d, \"-\", 2, 1]\n",
		left, right, left+10, right+12, left+40, left+38, left, right, day)
}

// town is a clinic whose clients are all of these.
func town(clinic string, all []folk, more map[string]string) fstest.MapFS {
	files := fstest.MapFS{"clinic.toml": &fstest.MapFile{Data: []byte(clinic)}}
	for i, one := range all {
		for name, text := range one {
			files["clients/"+codeOf(i)+"/"+name] = &fstest.MapFile{Data: []byte(text)}
		}
	}
	for name, text := range more {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return files
}

func codeOf(i int) string { return fmt.Sprintf("bird-%04d", i) }

func open(t testing.TB, files fstest.MapFS) *generator.House {
	t.Helper()
	house, faults := generator.Open(generator.Files{Clinic: files, Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	if house == nil {
		t.Fatal(faults)
	}
	return house
}

// plans plans all; one that has a mistake is nil.
func plans(t testing.TB, clinic string, all []folk, more map[string]string) []*plan.Plan {
	t.Helper()
	house := open(t, town(clinic, all, more))
	list := make([]*plan.Plan, len(all))
	places := make(chan int)
	var working sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		working.Go(func() {
			for i := range places {
				done := house.Plan(codeOf(i))
				list[i] = done.Plan
			}
		})
	}
	for i := range all {
		places <- i
	}
	close(places)
	working.Wait()
	return list
}

// everybody are the demo clients and the variations.
var everybody = sync.OnceValues(func() ([]folk, string) {
	all, clinic := demoFolk(&testing.T{})
	return append(all, variations(many(72, 300))...), clinic
})

// planned are the plans of everybody; nil where there is none.
var planned = sync.OnceValue(func() []*plan.Plan {
	made, clinic := everybody()
	return plans(&testing.T{}, clinic, made, nil)
})

// population is everybody with their plans; those that cannot be planned are left out.
func population(t testing.TB) (all []folk, base []*plan.Plan, clinic string) {
	t.Helper()
	made, clinic := everybody()
	for i, p := range planned() {
		if p != nil {
			all, base = append(all, made[i]), append(base, p)
		}
	}
	if none := len(made) - len(all); none > 10 {
		t.Fatalf("%d of %d clients cannot be planned", none, len(made))
	}
	return all, base, clinic
}

// dosed is what one slot gives one leg in one week.
type dosed struct {
	place    int // in the slot's choices
	exercise string
	dose     plan.WeekDose
}

type legWeek struct {
	slot string
	side unit.Side
	week int
}

// byLeg is a plan by slot, leg and week: a choice for both legs stands under each of them, under the other leg only where
// that has none of its own.
func byLeg(p *plan.Plan) map[legWeek]dosed {
	out := map[legWeek]dosed{}
	for _, r := range p.Prescriptions {
		sides := []unit.Side{r.Side}
		if r.Side == unit.Both {
			sides = []unit.Side{unit.Left, unit.Right}
		}
		for _, w := range r.Weeks {
			for _, side := range sides {
				k := legWeek{r.Slot.ID, side, w.Week}
				if _, twice := out[k]; !twice || r.Side != unit.Both {
					out[k] = dosed{slices.Index(r.Slot.Choose, r.Exercise.ID), r.Exercise.ID, w}
				}
			}
		}
	}
	return out
}

func kilograms(d plan.WeekDose) (v float64, ok bool) {
	m, ok := d.Moved.Value()
	return float64(m), ok
}

var openness = map[string]int{"closed": 0, "suspended": 1, "open": 2}

// criteria are all criteria of a plan by id.
func criteriaOf(p *plan.Plan) map[string]plan.Criterion {
	out := map[string]plan.Criterion{}
	for _, c := range p.Stage.Criteria {
		out[c.ID] = c
	}
	for _, a := range p.Activities {
		for _, c := range a.Criteria {
			out[c.ID] = c
		}
	}
	return out
}

// widened says what a second plan allows that the first did not; nothing where it is as strict. Both are of one stage.
func widened(base, now *plan.Plan) (wrong []string) {
	was := byLeg(base)
	for k, d := range byLeg(now) {
		before, had := was[k]
		if !had || d.place < before.place {
			both := base.Program.Exercises[d.exercise].Side == program.BothLegs && k.side != base.Event.Side // a later choice of the event's leg, which takes the other with it
			if !both && !excused(base, k, d.exercise) {
				wrong = append(wrong, fmt.Sprintf("%v: %s, before it was %q", k, d.exercise, before.exercise))
			}
			continue
		}
		if d.exercise != before.exercise {
			continue // a later choice, which the limits of the second plan allow by themselves (another law)
		}
		bound := k.side == base.Event.Side || base.Program.Exercises[d.exercise].Side == program.BothLegs || base.Program.Exercises[d.exercise].LoadsBoth
		if bound && d.dose.Range != nil && before.dose.Range != nil && !d.dose.Range.Within(*before.dose.Range) {
			wrong = append(wrong, fmt.Sprintf("%v: %s through %v, before %v", k, d.exercise, *d.dose.Range, *before.dose.Range))
		}
		if a, ok := kilograms(d.dose); ok {
			if b, had := kilograms(before.dose); had && a > b {
				wrong = append(wrong, fmt.Sprintf("%v: %s with %v kg, before %v", k, d.exercise, a, b))
			}
		}
	}
	for i, a := range now.Activities {
		if openness[a.State] > openness[base.Activities[i].State] {
			wrong = append(wrong, fmt.Sprintf("%s is %s, before %s", a.Activity.ID, a.State, base.Activities[i].State))
		}
	}
	had := criteriaOf(base)
	for id, c := range criteriaOf(now) {
		if c.Passed() && !had[id].Passed() {
			wrong = append(wrong, fmt.Sprintf("%s is %s, before %s", id, c.State, had[id].State))
		}
	}
	slices.Sort(wrong)
	return wrong
}

// excused reports whether an exercise was passed over only because its load lay under what the machine can be set to
// (without that load the client finds the weight, which is no wider), or because no row covered the day (a further limit may).
func excused(p *plan.Plan, k legWeek, exercise string) bool {
	return slices.ContainsFunc(p.Dropped, func(d plan.Dropped) bool {
		return d.Slot == k.slot && d.Exercise == exercise && d.Week == k.week && (d.Side == k.side || d.Side == unit.Both) &&
			(strings.Contains(d.Because.String(), "lightest weight") || strings.Contains(d.Because.String(), "empty machine") ||
				strings.Contains(d.Because.String(), "no row of a schedule"))
	})
}

// stricterLimits are limits that each forbid something more, from the event on and until further notice.
func stricterLimits(setBy, name string) (all []string) {
	for _, l := range []string{
		"kind = \"loaded-bend\"\nrange_deg = [0, 40]", "kind = \"loaded-bend\"\nrange_deg = [20, 70]", "kind = \"loaded-bend\"\nallowed = false",
		"kind = \"active-bend\"\nrange_deg = [0, 80]", "kind = \"passive-bend\"\nrange_deg = [0, 60]", "kind = \"straightening-under-load\"\nrange_deg = [50, 90]",
		"kind = \"straightening-under-load\"\nallowed = false", "kind = \"added-weight\"\nallowed = false", "kind = \"hamstring-work\"\ngrade = \"active\"",
		"kind = \"weight-bearing\"\npart_percent = 30", "kind = \"impact\"\nallowed = false", "kind = \"running\"\nallowed = false", "kind = \"maximal-effort\"\nallowed = false",
		"kind = \"added-weight\"\non = [\"loaded-bend\"]\nallowed = false",
	} {
		all = append(all, fmt.Sprintf("[[limit]]\n%s\nfrom = EVENT\nset_by = %q\nname = %q\nsaid = EVENT\nroute = \"letter\"\n", l, setBy, name))
	}
	return all
}

var eventLine = regexp.MustCompile(`(?m)^date = (\S+)`)

// TestLawAStricterLimitWidensNothing: adding a therapist's limit, a surgeon's closing, or a shipped limit widens no range,
// raises no load, brings in no exercise but a later choice, opens no activity and passes no criterion.
func TestLawAStricterLimitWidensNothing(t *testing.T) {
	all, base, clinic := population(t)
	for i, text := range append(stricterLimits("therapist", "Imbali R."), stricterLimits("surgeon", "Ms Dunlin")...) {
		surgeon := i >= len(stricterLimits("", ""))
		if surgeon && !strings.Contains(text, "allowed = false") {
			continue // a surgeon's range replaces the shipped one and may be looser
		}
		var stricter []folk
		var of []int // some of all, others for the next limit
		for n, every := i%many(6, 3), many(6, 3); n < len(all); n += every {
			one := all[n]
			of = append(of, n)
			event := eventLine.FindStringSubmatch(one["client.toml"])[1]
			stricter = append(stricter, one.change("client.toml", func(s string) string { return s + "\n" + strings.ReplaceAll(text, "EVENT", event) }))
		}
		held := 0
		for i, now := range plans(t, clinic, stricter, nil) {
			n := of[i]
			if now == nil {
				continue // two instructions that contradict each other are an error, and there is no plan
			}
			held++
			for _, wrong := range widened(base[n], now) {
				t.Errorf("%s\nwith\n%s%s", wrong, text, about(all[n]))
			}
		}
		if 2*held < len(of) {
			t.Errorf("only %d of %d clients have a plan with\n%s", held, len(of), text)
		}
		if t.Failed() {
			return
		}
	}
}

// TestLawAShippedLimitWidensNothing: one more limit in a file of limits.
func TestLawAShippedLimitWidensNothing(t *testing.T) {
	all, base, clinic := population(t)
	shipped, err := programs.FS.ReadFile("limits/acl-also.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{
		"[[limit]]\nkind = \"loaded-bend\"\nstanding = \"tool default\"\nlifts_week = 30\nsteps = [ { week = 0, range_deg = [0, 40] } ]\n",
		"[[limit]]\nkind = \"loaded-bend\"\nstanding = \"tool default\"\nlifts_week = 20\nsteps = [ { week = 6, range_deg = [10, 80] } ]\n",
		"[[limit]]\nkind = \"active-bend\"\nstanding = \"tool default\"\nsteps = [ { week = 0, range_deg = [0, 70] } ]\n",
		"[[limit]]\nkind = \"impact\"\nstanding = \"tool default\"\nlifts_week = 40\nsteps = [ { week = 0, allowed = false } ]\n",
		"[[limit]]\nkind = \"added-weight\"\nstanding = \"tool default\"\nlifts_week = 16\nsteps = [ { week = 0, allowed = false } ]\n",
	} {
		for n, now := range plans(t, clinic, all, map[string]string{"programs/limits/acl-also.toml": string(shipped) + text}) {
			if now == nil {
				t.Fatalf("no plan with\n%s%s", text, about(all[n]))
			}
			for _, wrong := range widened(base[n], now) {
				t.Errorf("%s\nwith\n%s%s", wrong, text, about(all[n]))
			}
		}
		if t.Failed() {
			return
		}
	}
}

var rangeLine = regexp.MustCompile(`(?m)^range_deg = \[(\d+), (\d+)\]$`)

// TestLawATighterInstructionWidensNothing: the surgeon's own range, ten degrees narrower.
func TestLawATighterInstructionWidensNothing(t *testing.T) {
	all, base, clinic := population(t)
	var tighter []folk
	narrowed := 0
	for _, one := range all {
		tighter = append(tighter, one.change("client.toml", func(s string) string {
			if rangeLine.MatchString(s) {
				narrowed++
			}
			return rangeLine.ReplaceAllStringFunc(s, func(line string) string {
				var a, b int
				fmt.Sscanf(line, "range_deg = [%d, %d]", &a, &b)
				return fmt.Sprintf("range_deg = [%d, %d]", a+5, b-10)
			})
		}))
	}
	if narrowed < 10 {
		t.Errorf("only %d clients have an instruction to narrow: is the law still looking?", narrowed)
	}
	for n, now := range plans(t, clinic, tighter, nil) {
		if now == nil {
			t.Fatalf("no plan\n%s", about(tighter[n]))
		}
		for _, wrong := range widened(base[n], now) {
			t.Errorf("%s\n%s", wrong, about(all[n]))
		}
	}
}

// about is a client to read beside a failure.
func about(one folk) string {
	var b strings.Builder
	for _, name := range slices.Sorted(maps.Keys(one)) {
		fmt.Fprintf(&b, "-- %s --\n%s", name, one[name])
	}
	return b.String()
}

// legValue is a line of a test that gives a value of one leg's strength, lift or hop.
var legValue = map[unit.Side]*regexp.Regexp{
	unit.Left:  regexp.MustCompile(`(?m)^left(\.(peak|torque|distance|time|seat|anterior|posteromedial|posterolateral)_\w+|\.count)?\s*= ?.*\n`),
	unit.Right: regexp.MustCompile(`(?m)^right(\.(peak|torque|distance|time|seat|anterior|posteromedial|posterolateral)_\w+|\.count)?\s*= ?.*\n`),
}

// TestLawAnUntestedLegOpensNothing: without any value of a leg there is no load for it or for both, and nothing that
// compares the legs is met.
func TestLawAnUntestedLegOpensNothing(t *testing.T) {
	all, _, clinic := population(t)
	for _, side := range []unit.Side{unit.Left, unit.Right} {
		var untested []folk
		for _, one := range all {
			untested = append(untested, one.each(func(s string) string { return legValue[side].ReplaceAllString(s, "") }))
		}
		for n, p := range plans(t, clinic, untested, nil) {
			if p == nil {
				t.Fatalf("no plan\n%s", about(untested[n]))
			}
			for _, r := range p.Prescriptions {
				for _, w := range r.Weeks {
					if (r.Side == side || r.Side == unit.Both) && (w.Plates.OK() || w.Moved.OK()) {
						t.Errorf("%s %s carries %v though the %s leg was never tested\n%s", r.Exercise.ID, r.Side, w.Plates.Or(0), side, about(untested[n]))
					}
				}
			}
			for id, c := range criteriaOf(p) {
				if strings.HasSuffix(id, ".lsi") && c.State != plan.NotTested && c.State != plan.Waived {
					t.Errorf("%s is %s though the %s leg was never tested", id, c.State, side)
				}
			}
		}
	}
}

// TestLawDeletingALegsTestRaisesNothing: without the value of one leg on one day no load is higher and no criterion passed.
func TestLawDeletingALegsTestRaisesNothing(t *testing.T) {
	all, base, clinic := population(t)
	for turn := range 4 {
		var fewer []folk
		for n, one := range all {
			event, starts := base[n].Event.Date, base[n].Block.Starts
			var after []string // what was measured before the event is a second reference: without it less is known
			for _, name := range slices.Sorted(maps.Keys(one)) {
				if d, err := unit.ParseDay(strings.TrimSuffix(strings.TrimPrefix(name, "tests/"), ".toml")); err == nil && !d.Before(event) && !d.After(starts) {
					after = append(after, name)
				}
			}
			if len(after) == 0 {
				fewer = append(fewer, one)
				continue
			}
			name := after[(len(after)-1-turn/2+len(after))%len(after)]
			side := []unit.Side{unit.Left, unit.Right}[turn%2]
			fewer = append(fewer, one.change(name, func(s string) string { return legValue[side].ReplaceAllString(s, "") }))
		}
		for n, now := range plans(t, clinic, fewer, nil) {
			if now == nil {
				t.Fatalf("no plan\n%s", about(fewer[n]))
			}
			was, had := byLeg(base[n]), criteriaOf(base[n])
			for k, d := range byLeg(now) {
				before := was[k]
				a, ok := kilograms(d.dose)
				if b, loaded := kilograms(before.dose); ok && d.exercise == before.exercise && (!loaded || a > b) {
					t.Errorf("%v: %s with %v kg, before %v\n%s", k, d.exercise, a, b, about(fewer[n]))
				}
			}
			for id, c := range criteriaOf(now) {
				if c.Passed() && !had[id].Passed() && !c.Rule.OnlyIfTested {
					t.Errorf("%s is %s, before %s\n%s", id, c.State, had[id].State, about(fewer[n]))
				}
			}
		}
	}
}

// bendLine is a line of a test that gives the bend of one leg.
var bendLine = map[unit.Side]*regexp.Regexp{
	unit.Left:  regexp.MustCompile(`(?m)^left\.flexion_deg\s*=.*\n`),
	unit.Right: regexp.MustCompile(`(?m)^right\.flexion_deg\s*=.*\n`),
}

// TestLawAMeasuredBendOnlyNarrows: without any measured bend of the event's leg no range is narrower, no load of the same
// exercise higher and no criterion passed. What such a measurement forbids altogether is left to the next choice of a slot.
func TestLawAMeasuredBendOnlyNarrows(t *testing.T) {
	all, base, clinic := population(t)
	var without []folk
	for n, one := range all {
		without = append(without, one.each(func(s string) string { return bendLine[base[n].Event.Side].ReplaceAllString(s, "") }))
	}
	narrowed := 0
	for n, now := range plans(t, clinic, without, nil) {
		if now == nil {
			t.Fatalf("no plan\n%s", about(without[n]))
		}
		was, had := byLeg(base[n]), criteriaOf(base[n])
		for k, d := range byLeg(now) {
			before := was[k]
			if d.exercise != before.exercise {
				continue
			}
			if d.dose.Range != nil && !before.dose.Range.Within(*d.dose.Range) {
				t.Errorf("%v: %s through %v, measured %v\n%s", k, d.exercise, *d.dose.Range, *before.dose.Range, about(all[n]))
			}
			if d.dose.Range != nil && *d.dose.Range != *before.dose.Range {
				narrowed++
			}
			if a, ok := kilograms(d.dose); ok {
				if b, loaded := kilograms(before.dose); !loaded || a > b {
					t.Errorf("%v: %s with %v kg, measured %v\n%s", k, d.exercise, a, b, about(all[n]))
				}
			}
		}
		for id, c := range criteriaOf(now) {
			if c.Passed() && !had[id].Passed() && !c.Rule.OnlyIfTested {
				t.Errorf("%s is %s, measured %s\n%s", id, c.State, had[id].State, about(all[n]))
			}
		}
	}
	if narrowed < 5 {
		t.Errorf("only %d ranges are narrowed by a measurement: is the law still looking?", narrowed)
	}
}

// TestLawBodyMassChangesNoSymmetry: both legs carry the same body on the same day, so a heavier one leaves every ratio of the legs as
// it is. Pulls at 90 degrees only: elsewhere the weight of the shank is taken from the body's.
func TestLawBodyMassChangesNoSymmetry(t *testing.T) {
	all, base, clinic := population(t)
	mass := regexp.MustCompile(`(?m)^mass_kg = \d+$`)
	var heavier []folk
	for _, one := range all {
		heavier = append(heavier, one.each(func(s string) string { return mass.ReplaceAllString(s, "mass_kg = 101") }))
	}
	compared, moved := 0, 0
	for n, p := range plans(t, clinic, heavier, nil) {
		if p == nil {
			t.Fatalf("no plan\n%s", about(heavier[n]))
		}
		for name, m := range p.Found.Measures {
			was := base[n].Found.Measures[name]
			if strings.HasSuffix(name, ".nm-per-kg") && m.OK && m.Number != was.Number {
				moved++
			}
			if !strings.HasSuffix(name, ".lsi") && !strings.HasPrefix(name, "hamstrings-to-quadriceps") {
				continue
			}
			if compared++; m.Number != was.Number || m.OK != was.OK {
				t.Errorf("%s is %v, with 101 kg %v\n%s", name, was.Number, m.Number, about(heavier[n]))
			}
		}
	}
	if compared < many(50, 200) || moved == 0 {
		t.Errorf("%d ratios compared, %d values per kilogram moved: is the law still looking?", compared, moved)
	}
}

// mirror swaps the words left and right; "is left" and "left out" are no sides.
func mirror(s string) string {
	return sideWord.ReplaceAllStringFunc(s, func(w string) string {
		switch w {
		case "left":
			return "right"
		case "right":
			return "left"
		}
		return w
	})
}

var sideWord = regexp.MustCompile(`\b(?:is left|left out|left|right)\b`)

// told is a plan as data, with its text changed. Flags are a set: their order is nobody's promise.
func told(t testing.TB, p *plan.Plan, change func(string) string) any {
	t.Helper()
	var v map[string]any
	if err := json.Unmarshal([]byte(anyCode.ReplaceAllString(change(string(page.PlanJSON(p))), "bird")), &v); err != nil {
		t.Fatal(err)
	}
	flags, _ := v["flags"].([]any)
	slices.SortFunc(flags, func(a, b any) int { return strings.Compare(fmt.Sprint(a), fmt.Sprint(b)) })
	return v
}

var anyCode = regexp.MustCompile(`bird-\d+`)

func asItIs(s string) string { return s }

// TestLawLeftAndRightAreAlike: left and right swapped everywhere give the mirrored plan.
func TestLawLeftAndRightAreAlike(t *testing.T) {
	all, base, clinic := population(t)
	var mirrored []folk
	for _, one := range all {
		mirrored = append(mirrored, one.each(mirror))
	}
	for n, now := range plans(t, clinic, mirrored, nil) {
		if now == nil {
			t.Fatalf("no plan\n%s", about(mirrored[n]))
		}
		now.Client.Code = base[n].Client.Code
		want, got := told(t, base[n], mirror), told(t, now, asItIs)
		if !reflect.DeepEqual(want, got) {
			t.Fatalf("the mirrored client has another plan:\n%s\n%s", cmp.Diff(want, got), about(all[n]))
		}
	}
}

var isoDay = regexp.MustCompile(`\b\d{4}-\d{2}-\d{2}\b`)

func later(days int) func(string) string {
	return func(s string) string {
		return isoDay.ReplaceAllStringFunc(s, func(text string) string {
			d, err := unit.ParseDay(text)
			if err != nil {
				return text
			}
			return d.AddDays(days).String()
		})
	}
}

// withoutMonths leaves out what counts in calendar months.
func withoutMonths(v any, ids []string) any {
	counted := func(s string) bool { return slices.ContainsFunc(ids, func(id string) bool { return s == id }) }
	switch v := v.(type) {
	case []any:
		var out []any
		for _, e := range v {
			if s, ok := e.(string); ok && counted(s) {
				continue
			}
			if m, ok := e.(map[string]any); ok {
				if id, _ := m["id"].(string); counted(id) {
					continue
				}
				if _, trend := m["mark"]; trend { // its floors may be in months, and its days are not told before them
					m = maps.Clone(m)
					delete(m, "for")
					delete(m, "not_before")
					delete(m, "first")
					delete(m, "last")
					delete(m, "could_be")
					e = m
				}
				if what, _ := m["what"].(string); m["kind"] == "not-before" && counted(what+".time") {
					continue
				}
			}
			out = append(out, withoutMonths(e, ids))
		}
		return out
	case map[string]any:
		out := map[string]any{}
		for k, e := range v {
			if id, _ := v["id"].(string); k == "not_before" && counted(id+".time") || counted(k) {
				continue
			}
			out[k] = withoutMonths(e, ids)
		}
		return out
	}
	return v
}

// TestLawAWeekLaterIsTheSamePlan: all dates moved by seven days give the same plan moved, floors in months apart.
func TestLawAWeekLaterIsTheSamePlan(t *testing.T) {
	all, base, clinic := population(t)
	var months []string
	for _, a := range base[0].Program.Activities {
		if slices.ContainsFunc(a.Needs, func(c program.Criterion) bool { return c.EarliestMonth != nil }) {
			months = append(months, a.ID+".time", a.ID+".time-2")
		}
	}
	for _, days := range []int{7, 364} {
		var moved []folk
		for n := 0; n < len(all); n += 3 {
			moved = append(moved, all[n].each(later(days)))
		}
		for i, now := range plans(t, clinic, moved, nil) {
			n := 3 * i
			if now == nil {
				t.Fatalf("no plan\n%s", about(moved[i]))
			}
			now.Client.Code = base[n].Client.Code
			want, got := withoutMonths(told(t, base[n], later(days)), months), withoutMonths(told(t, now, asItIs), months)
			if !reflect.DeepEqual(want, got) {
				t.Fatalf("%d days later the plan is another:\n%s\n%s", days, cmp.Diff(want, got), about(all[n]))
			}
		}
	}
}

// TestLawEveryRangeLiesWithinEveryLimit holds each prescribed week against the limits of each of its days and of each knee
// that it works, reckoned here from the files anew.
func TestLawEveryRangeLiesWithinEveryLimit(t *testing.T) {
	all, base, clinic := population(t)
	var donors []folk
	for _, one := range all {
		if strings.Contains(one["client.toml"], `other_leg = "donor"`) {
			donors = append(donors, one)
		}
	}
	also, err := programs.FS.ReadFile("limits/acl-also.toml")
	if err != nil {
		t.Fatal(err)
	}
	rows := "\n[[limit]]\nkind = \"loaded-bend\"\nwhen.leg = \"donor\"\nlifts_week = 30\nsteps = [ { week = 0, range_deg = [0, 70] } ]\n" +
		"[[limit]]\nkind = \"hamstring-work\"\nwhen.leg = \"donor\"\nlifts_week = 20\nsteps = [ { week = 0, grade = \"active\" } ]\n"
	held := map[string]int{}
	for _, p := range append(plans(t, clinic, donors, map[string]string{"programs/limits/acl-also.toml": string(also) + rows}), base...) {
		if p == nil {
			t.Fatal("a donor has no plan")
		}
		for _, r := range p.Prescriptions {
			for _, knee := range []unit.Side{unit.Left, unit.Right} {
				if r.Side == knee || r.Side == unit.Both || r.Exercise.LoadsBoth {
					leg := "event"
					if knee != p.Event.Side {
						leg = string(p.Client.OtherLeg)
					}
					held[leg] += withinLimits(t, p, r, knee)
				}
			}
		}
	}
	for _, leg := range []string{"event", "donor", "operated-too"} {
		if held[leg] < 50 {
			t.Errorf("only %d limits of the %s leg were met: is the law still looking?", held[leg], leg)
		}
	}
}

// withinLimits holds the weeks of a prescription against the limits of one knee, and counts those limits.
func withinLimits(t *testing.T, p *plan.Plan, r plan.Prescription, knee unit.Side) (met int) {
	t.Helper()
	kinds := slices.Clone(r.Exercise.Kinds)
	if r.Exercise.Range != nil {
		kinds = append(kinds, unit.PassiveBend)
	}
	if slices.Contains(kinds, unit.LoadedBend) {
		kinds = append(kinds, unit.ActiveBend)
	}
	for _, w := range r.Weeks {
		for i := range 7 {
			d := w.Starts.AddDays(i)
			for _, k := range kinds {
				for _, a := range allowances(p, knee, k, r.Exercise.Kinds, d) {
					met++
					switch {
					case a.Allowed != nil && !*a.Allowed:
						t.Errorf("%s, %s: %s is prescribed though %s of the %s knee is closed", p.Client.Code, d, r.Exercise.ID, k, knee)
					case a.Range != nil && k != unit.Brace && (w.Range == nil || !w.Range.Within(*a.Range)):
						t.Errorf("%s, %s: %s through %v though %s of the %s knee allows %v", p.Client.Code, d, r.Exercise.ID, w.Range, k, knee, *a.Range)
					case a.Grade != "" && r.Exercise.Work.Rank() > a.Grade.Rank():
						t.Errorf("%s, %s: %s is %s though only %s work of the %s knee is allowed", p.Client.Code, d, r.Exercise.ID, r.Exercise.Work, a.Grade, knee)
					}
				}
			}
		}
	}
	return met
}

// scheduled are the events from which the rows of a knee count, each with the leg that its rows must be written for.
func scheduled(p *plan.Plan, knee unit.Side) map[program.LegRole]*client.Event {
	of := map[program.LegRole]*client.Event{}
	if p.Event.Side == knee {
		of[program.OperatedLeg] = p.Event
		return of
	}
	for i := range p.Client.Events {
		if e := &p.Client.Events[i]; e.Side == knee && !e.Date.After(p.AsOf) && (of[program.OperatedLeg] == nil || e.Date.After(of[program.OperatedLeg].Date)) {
			of[program.OperatedLeg] = e
		}
	}
	if p.Event.GraftFrom == knee {
		of[program.DonorLeg] = p.Event
	}
	return of
}

// allowances are all that bind a kind of a knee on a day: instructions in the place of the shipped rows, the therapist's
// beside both.
func allowances(p *plan.Plan, knee unit.Side, k unit.Kind, named []unit.Kind, d unit.Day) (list []unit.Allowance) {
	about := func(kind unit.Kind, on []unit.Kind) bool {
		return kind == k && (len(on) == 0 || slices.ContainsFunc(on, func(o unit.Kind) bool { return slices.Contains(named, o) }))
	}
	instructed := false
	for _, l := range p.Client.Limits {
		if l.Side != knee && (l.Side != "" || p.Event.Side != knee) || !about(l.Kind, l.On) || d.Before(l.From) || l.Lifts != nil && !d.Before(*l.Lifts) {
			continue
		}
		list = append(list, l.Allowance) // no client here has two words of one author about one kind of one knee
		instructed = instructed || l.SetBy != "therapist"
	}
	if instructed {
		return list
	}
	events := scheduled(p, knee)
	for _, l := range p.Program.Limits {
		role := l.When.Leg
		if role == "" {
			role = program.OperatedLeg
		}
		event := events[role]
		if event == nil || !about(l.Kind, l.On) || len(l.When.Graft) > 0 && !slices.Contains(l.When.Graft, event.Graft) || !originFits(l.When.GraftFrom, event, knee) ||
			len(l.When.Also) > 0 && !slices.ContainsFunc(l.When.Also, func(a string) bool { return slices.Contains(event.Also, a) }) {
			continue
		}
		week := d.WeeksSince(event.Date)
		if l.LiftsWeek != nil && week >= *l.LiftsWeek {
			continue
		}
		if l.Kind == unit.StraighteningUnderLoad && strings.HasSuffix(l.At.File, "acl-graft.toml") && l.Preset != p.Program.Presets[string(l.Kind)] {
			continue
		}
		for i := len(l.Steps) - 1; i >= 0; i-- {
			if *l.Steps[i].Week <= week {
				list = append(list, l.Steps[i].Allowance)
				break
			}
		}
	}
	return list
}

// originFits reports whether the graft of a knee's event came from where a row says.
func originFits(from program.GraftFrom, event *client.Event, knee unit.Side) bool {
	switch from {
	case program.FromSame:
		return event.GraftFrom == knee
	case program.FromOther:
		return event.GraftFrom == knee.Opposite()
	case program.FromDonor:
		return event.Graft == unit.Allograft
	}
	return true
}

// TestLawOneIDOneNumber: no plan keeps two numbers under one id.
func TestLawOneIDOneNumber(t *testing.T) {
	all, base, _ := population(t)
	for n, p := range base {
		if shared := page.SharedIDs(p); len(shared) > 0 {
			t.Fatalf("%v\n%s", shared, about(all[n]))
		}
	}
}

// TestLawEverySumGivesItsResult redoes each sum that `why` prints with a pocket calculator that shares no code with it.
func TestLawEverySumGivesItsResult(t *testing.T) {
	all, base, _ := population(t)
	sums := 0
	for n := 0; n < len(base); n += many(8, 4) {
		ids, _ := page.WhyText(base[n], "", nil)
		for _, line := range strings.Split(ids, "\n") {
			id, _, _ := strings.Cut(line, " ")
			if !strings.Contains(id, ".") || !strings.Contains(id, "load") && !strings.Contains(id, "lsi") && !strings.Contains(id, "implied") && !strings.Contains(id, "share") && !strings.Contains(id, "kg") {
				continue // the chains of these hold all the others
			}
			chain, ok := page.WhyText(base[n], id, nil)
			if !ok {
				t.Fatalf("%s is listed and not known", id)
			}
			for _, step := range strings.Split(chain, "\n") {
				if done, err := redo(step); err != nil {
					t.Fatalf("%v\n%s\n%s", err, step, about(all[n]))
				} else if done {
					sums++
				}
			}
		}
	}
	if sums < many(300, 1000) {
		t.Errorf("only %d sums were found: is the law still looking at them?", sums)
	}
}

// tree is a folder's files by name.
func tree(t testing.TB, dir string) map[string]string {
	t.Helper()
	out := map[string]string{}
	err := filepath.WalkDir(dir, func(name string, e os.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		data, err := os.ReadFile(name)
		rel, _ := filepath.Rel(dir, name)
		out[rel] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func built(t testing.TB, files fstest.MapFS, workers int) map[string]string {
	t.Helper()
	dir := t.TempDir()
	out, err := site.Open(dir)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := open(t, files).Build(out, workers, nil); err != nil {
		t.Fatal(err)
	}
	if err := out.Close(); err != nil {
		t.Fatal(err)
	}
	made := tree(t, dir)
	for name := range made {
		if strings.HasPrefix(name, ".") || strings.Contains(name, "/.") {
			delete(made, name) // the site's own book-keeping holds times of files
		}
	}
	return made
}

// TestLawTheSameBytes: with one worker and with eight, and in another zone of time.
func TestLawTheSameBytes(t *testing.T) {
	made, clinic := everybody()
	n := many(12, 60)
	files := town(clinic, made[:n], nil)
	one, eight := built(t, files, 1), built(t, files, 8)
	if len(one) < 3*n {
		t.Fatalf("only %d files", len(one))
	}
	same := func(what string, other map[string]string) {
		if !maps.Equal(one, other) {
			for name := range one {
				if one[name] != other[name] {
					t.Errorf("%s: %s is another", what, name)
				}
			}
			t.Errorf("%s: %d files, before %d", what, len(other), len(one))
		}
	}
	same("eight workers", eight)
	zone, err := time.LoadLocation("Pacific/Kiritimati")
	if err != nil {
		t.Skip(err)
	}
	here := time.Local
	time.Local = zone
	defer func() { time.Local = here }()
	same("Kiritimati", built(t, files, 2))
}

// shelf holds the shipped programs and words, read once for all houses of these tests.
var shelf generator.Shelf
