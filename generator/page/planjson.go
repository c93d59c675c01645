package page

import (
	"bytes"
	"encoding/json"
	"math"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// PlanJSON is the plan as data, for other tools: numbers with their basis, keys named by unit. A value that does not
// exist is absent or null, never 0.
func PlanJSON(p *plan.Plan) []byte {
	t := trailOf(p)
	out := planJSON{
		Format: 1, Client: p.Client.Code, Program: p.Program.ID, AsOf: p.AsOf,
		Block: blockJSON{p.Block.Number, p.Block.Starts, p.Block.Weeks},
		Stage: stageIn(p.Stage), Findings: findingsIn(p, t), Criteria: criteriaIn(allCriteriaAtTop(p), t), Goals: goalsIn(p.Goals, t),
		Changes: changesIn(p.Changes), Trends: trendsIn(p.Trends),
		Prescriptions: prescriptionsIn(p.Prescriptions, t), Dropped: droppedIn(p.Dropped), Flags: flagsIn(p.Flags),
		Limits: limitsIn(p.Limits, t), Activities: activitiesIn(p.Activities), Symptoms: symptomsIn(p.Symptoms),
		Sessions: sessionsIn(p.Sessions), Minutes: p.Minutes, Dates: datesIn(p.Dates), Overrides: overridesIn(p.Overrides),
		Basis: basisIn(t, t.order, nil),
	}
	if p.End != nil {
		out.End = &endJSON{append([]string{}, p.End.Missing...)}
	}
	if r := p.Retest; r != nil {
		out.Retest = &retestJSON{r.EveryWeeks, r.Last, r.Due}
	}
	for _, w := range p.Weeks {
		if p.Stage.Set != nil && p.Stage.Set.DeloadIn(w.PhaseWeek) != nil {
			out.Lighter = append(out.Lighter, w.Number)
		}
	}
	return indentedJSON(out)
}

// indentedJSON writes JSON for people too: indented, and with < and × as they are.
func indentedJSON(v any) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(v); err != nil {
		panic("page: a plan that cannot be written as JSON: " + err.Error()) // no map, func or cycle is in the types
	}
	return b.Bytes()
}

// jsonNumber is written with at most six decimals and no zeros at the end.
type jsonNumber float64

func (n jsonNumber) MarshalJSON() ([]byte, error) {
	if math.IsNaN(float64(n)) || math.IsInf(float64(n), 0) {
		return []byte("null"), nil
	}
	text := strings.TrimRight(strings.TrimRight(strconv.FormatFloat(float64(n), 'f', 6, 64), "0"), ".")
	if text == "-0" {
		text = "0"
	}
	return []byte(text), nil
}

// knownNumber is the number of a Num; nil, which is left out, where there is none.
func knownNumber[Q unit.Quantity](n basis.Num[Q]) *jsonNumber {
	v, ok := n.Value()
	if !ok {
		return nil
	}
	return jsonNumberOf(float64(v))
}

func jsonNumberOf[Q ~float64](v Q) *jsonNumber {
	n := jsonNumber(v)
	return &n
}

// jsonOptional is the number of a pointer; nil where there is none.
func jsonOptional[Q ~float64](v *Q) *jsonNumber {
	if v == nil {
		return nil
	}
	return jsonNumberOf(*v)
}

// bendPair is a range as [straightest, most bent]; nil where there is none.
func bendPair(r *unit.Reach) []jsonNumber {
	if r == nil {
		return nil
	}
	return []jsonNumber{jsonNumber(r.Straightest), jsonNumber(r.MostBent)}
}

type (
	planJSON struct {
		Format        int                 `json:"format"`
		Client        string              `json:"client"`
		Program       string              `json:"program"`
		AsOf          unit.Day            `json:"as_of"`
		Block         blockJSON           `json:"block"`
		Stage         stageJSON           `json:"stage"`
		Findings      []findingJSON       `json:"findings"`
		Criteria      []criterionJSON     `json:"criteria"`
		Changes       []changeJSON        `json:"changes"`
		Trends        []trendJSON         `json:"trends"`
		Goals         []goalJSON          `json:"goals"`
		End           *endJSON            `json:"end,omitempty"`     // of the program, in its last phase
		Retest        *retestJSON         `json:"retest,omitempty"`  // where the program says one
		Lighter       []int               `json:"lighter,omitempty"` // weeks of the block that the program plans lighter
		Prescriptions []prescriptionJSON  `json:"prescriptions"`
		Dropped       []droppedJSON       `json:"dropped"`
		Flags         []flagJSON          `json:"flags"`
		Limits        []limitJSON         `json:"limits"`
		Activities    []activityJSON      `json:"activities"`
		Symptoms      symptomsJSON        `json:"symptoms"`
		Sessions      []sessionJSON       `json:"sessions"`
		Minutes       map[string]int      `json:"minutes,omitempty"` // about, by id of the session
		Dates         []dateJSON          `json:"dates"`
		Overrides     []overrideJSON      `json:"overrides"`
		Basis         map[string]stepJSON `json:"basis"`
		Signed        *struct{}           `json:"signed"` // the conductor fills it at sign-off
	}
	blockJSON struct {
		Number int      `json:"number"`
		Starts unit.Day `json:"starts"`
		Weeks  int      `json:"weeks"`
	}
	endJSON struct {
		Missing []string `json:"missing"`
	}
	retestJSON struct {
		EveryWeeks int      `json:"every_weeks"`
		Last       unit.Day `json:"last,omitzero"`
		Due        unit.Day `json:"due"`
	}
	stageJSON struct {
		Set             string    `json:"set"`
		Since           unit.Day  `json:"since,omitzero"`
		WeeksSinceEvent int       `json:"weeks_since_event"`
		Earned          string    `json:"earned"`
		Recorded        bool      `json:"recorded"`
		Ahead           bool      `json:"ahead,omitempty"`
		Short           []string  `json:"short,omitempty"` // what was missing on the day a stage was recorded without being earned
		Next            *nextJSON `json:"next"`
	}
	nextJSON struct {
		ID      string   `json:"id"`
		Missing []string `json:"missing"`
	}
	flagJSON struct {
		ID    string `json:"id"`
		About string `json:"about,omitempty"`
		Says  string `json:"says"`
	}
	sessionJSON struct {
		Day     unit.Day `json:"day"`
		Week    int      `json:"week"`
		Session string   `json:"session"`
		Title   string   `json:"title,omitempty"`
		Daily   bool     `json:"daily,omitempty"`
	}
	dateJSON struct {
		On      unit.Day       `json:"on"`
		Kind    string         `json:"kind"`
		Side    unit.Side      `json:"side,omitempty"` // of a limit: the leg
		What    string         `json:"what,omitempty"`
		Title   string         `json:"title,omitempty"`
		Allow   *allowanceJSON `json:"allow,omitempty"`
		Missing []string       `json:"missing,omitempty"`
		SetBy   string         `json:"set_by,omitempty"`
	}
	overrideJSON struct {
		Exercise string        `json:"exercise"`
		Side     unit.Side     `json:"side,omitempty"`
		Changed  string        `json:"changed,omitempty"`
		Applied  bool          `json:"applied"`
		Reason   string        `json:"reason"`
		At       *basis.Origin `json:"at,omitempty"`
	}
)

func stageIn(s plan.StageState) stageJSON {
	out := stageJSON{Set: phaseID(s.Set), Since: s.Since, WeeksSinceEvent: s.WeeksSince, Earned: phaseID(s.Earned), Recorded: s.Recorded, Ahead: s.Ahead}
	for _, c := range s.Short {
		if !c.Passed() {
			out.Short = append(out.Short, c.ID)
		}
	}
	if s.Next != nil {
		out.Next = &nextJSON{s.Next.ID, missingFor(s, s.Next.ID)}
	}
	return out
}

func phaseID(ph *program.Phase) string {
	if ph == nil {
		return ""
	}
	return ph.ID
}

// missingFor are the ids of the criteria of a phase that are not passed.
func missingFor(s plan.StageState, phase string) []string {
	missing := []string{}
	for _, c := range s.Criteria {
		if c.Of == phase && !c.Passed() {
			missing = append(missing, c.ID)
		}
	}
	return missing
}

func flagsIn(flags []plan.Flag) []flagJSON {
	out := []flagJSON{}
	for _, f := range flags {
		out = append(out, flagJSON{f.ID, f.About, f.Says.String()})
	}
	return out
}

func sessionsIn(days []plan.SessionDay) []sessionJSON {
	out := []sessionJSON{}
	for _, s := range days {
		out = append(out, sessionJSON(s))
	}
	return out
}

func datesIn(dates []plan.DateLine) []dateJSON {
	out := []dateJSON{}
	for _, d := range dates {
		line := dateJSON{On: d.On, Kind: d.Kind, Side: d.Side, What: d.What, Title: d.Title, Missing: d.Missing, SetBy: d.SetBy.String()}
		if d.Allow != nil {
			allow := allowanceIn(*d.Allow)
			line.Allow = &allow
		}
		out = append(out, line)
	}
	return out
}

func overridesIn(all []plan.AppliedOverride) []overrideJSON {
	out := []overrideJSON{}
	for _, o := range all {
		out = append(out, overrideJSON{o.Override.Exercise, o.Override.Side, basis.Listed(o.Changed...).String(), o.Applied, o.Override.Reason, placeOf(o.Override.At)})
	}
	return out
}

// inEnglish are fragments as every file for machines has them.
func inEnglish(all []basis.Said) (texts []string) {
	for _, said := range all {
		texts = append(texts, said.String())
	}
	return texts
}

// placeOf is an origin to print; nil where nothing was typed.
func placeOf(at basis.Origin) *basis.Origin {
	if at.File == "" {
		return nil
	}
	return &at
}
