package generator

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"runtime"
	"sync"

	"paceleaf/generator/page"
	"paceleaf/generator/source"
	"paceleaf/site"
)

// Report is what a build did.
type Report struct {
	Built, Fresh, Failed, Waiting int // clients; waiting for their first block
	site.Written
	Library site.Written  // files of the public library
	Faults  source.Faults // mistakes and questions of all clients
}

// Build makes the pages of every client into a site: one client is read, planned, rendered, written and forgotten. A
// client with a mistake keeps its earlier pages. step is called after each client, from one goroutine at a time.
func (h *House) Build(out *site.Site, workers int, step func(done, of int)) (Report, error) {
	printer, err := h.Printer()
	if err != nil {
		return Report{}, err
	}
	b := &builder{House: h, out: out, printer: printer, outcomes: make([]outcome, len(h.codes)), step: step}
	b.all(cmp.Or(workers, runtime.GOMAXPROCS(0)))
	if b.err != nil {
		return b.report, b.err
	}
	if err := b.library(workers); err != nil {
		return b.report, err
	}
	b.report.Faults.Sort()
	if err := b.overview(); err != nil {
		out.Partial() // the earlier overview stays
		return b.report, err
	}
	return b.report, nil
}

// builder is one build under way.
type builder struct {
	*House
	out      *site.Site
	printer  *page.Printer
	step     func(done, of int)
	outcomes []outcome // by place in codes: small, for they are all kept

	mu     sync.Mutex
	done   int
	report Report
	err    error
}

// outcome is what is remembered of a client for the overview.
type outcome struct {
	row     *page.OverviewRow
	failed  *page.Failed
	waiting bool // for its first block
}

func (b *builder) all(workers int) {
	places := make(chan int)
	var working sync.WaitGroup
	for range max(1, min(workers, len(b.codes))) {
		working.Go(func() {
			for i := range places {
				b.one(i)
			}
		})
	}
	for i := range b.codes {
		places <- i
	}
	close(places)
	working.Wait()
	b.report.Faults.Sort()
}

// one builds one client.
func (b *builder) one(i int) {
	code := b.codes[i]
	key := b.key(code)
	group := groupOf(code)
	if key != "" && b.out.Fresh(group, key) {
		row := &page.OverviewRow{}
		if json.Unmarshal(b.out.Note(group), row) == nil {
			var asked source.Faults
			if row.Warnings > 0 {
				asked = b.Plan(code).Faults // asked until they are answered
			}
			b.settle(i, outcome{row: row}, asked, site.Written{}, func(r *Report) { r.Fresh++ })
			return
		}
	}
	planned := b.Plan(code)
	wrong := planned.Faults.Wrong()
	switch {
	case len(wrong) > 0:
		b.out.Keep(group)
		failed := &page.Failed{Code: code, Mistakes: len(wrong), First: wrong[0].Error(), Kept: b.out.Has(group)}
		b.settle(i, outcome{failed: failed}, planned.Faults, site.Written{}, func(r *Report) { r.Failed++ })
	case planned.Plan == nil:
		b.settle(i, outcome{waiting: true}, planned.Faults, site.Written{}, func(r *Report) { r.Waiting++ })
	default:
		row := page.OverviewOf(planned.Plan)
		row.Warnings = len(planned.Faults)
		written, err := b.write(code, key, planned, row)
		if err != nil {
			b.stop(err)
			return
		}
		b.settle(i, outcome{row: &row}, planned.Faults, written, func(r *Report) { r.Built++ })
	}
}

// write renders the pages of a client and hands them over.
func (b *builder) write(code, key string, planned Planned, row page.OverviewRow) (site.Written, error) {
	files, err := b.pages(code, planned)
	if err != nil {
		return site.Written{}, err
	}
	note, err := json.Marshal(row)
	if err != nil {
		return site.Written{}, err
	}
	return b.out.Put(groupOf(code), site.Noted(key, note), files)
}

// pages are the files of one client.
func (b *builder) pages(code string, planned Planned) ([]site.File, error) {
	p := planned.Plan
	files, err := b.both(page.Handout(p, b.words), "hand/"+code+"/handout")
	if err != nil {
		return nil, err
	}
	if p.Symptoms.Held != nil {
		pause, err := b.both(page.Hold(p, b.words), "hand/"+code+"/hold")
		if err != nil {
			return nil, err
		}
		files = append(files, pause...)
	}
	desk, err := b.printer.HTML(page.Worksheet(p, b.words))
	if err != nil {
		return nil, err
	}
	letter, err := b.both(page.Letter(p, b.words), "desk/"+code+"/letter")
	if err != nil {
		return nil, err
	}
	form, err := b.printer.HTML(b.retest(planned))
	if err != nil {
		return nil, err
	}
	return append(append(files, letter...),
		site.File{Path: "desk/" + code + "/retest.html", Data: form},
		site.File{Path: "desk/" + code + "/worksheet.html", Data: desk},
		site.File{Path: "desk/" + code + "/plan.json", Data: page.PlanJSON(p)}), nil
}

// retest is the form for the next measuring day: the booked visit, else the day after the block.
func (b *builder) retest(planned Planned) page.View {
	on := planned.Plan.Block.Starts.AddWeeks(planned.Plan.Block.Weeks)
	if visit := planned.Plan.Block.NextVisit; visit != nil {
		on = *visit
	}
	return page.Retest(planned.Plan, b.due(planned, on), on, b.words)
}

// both prints a view as HTML and as Markdown.
func (b *builder) both(v page.View, path string) ([]site.File, error) {
	html, err := b.printer.HTML(v)
	if err != nil {
		return nil, err
	}
	markdown, err := b.printer.Markdown(v)
	return []site.File{{Path: path + ".html", Data: html}, {Path: path + ".md", Data: markdown}}, err
}

// settle notes the outcome of a client.
func (b *builder) settle(i int, o outcome, faults source.Faults, w site.Written, count func(*Report)) {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.outcomes[i] = o
	b.report.Faults = append(b.report.Faults, faults...)
	b.report.Written = b.report.Written.Plus(w)
	count(&b.report)
	b.done++
	if b.step != nil {
		b.step(b.done, len(b.codes))
	}
}

// stop notes the first error that is nobody's mistake: a full disk, a template that cannot be printed.
func (b *builder) stop(err error) {
	b.mu.Lock()
	defer b.mu.Unlock()
	if b.err == nil {
		b.err = err
	}
	b.out.Partial()
}

// The groups of the site: one a client, and the overview.
const overviewGroup = "overview"

func groupOf(code string) string { return "client/" + code }

// overview writes the page of all clients.
func (b *builder) overview() error {
	roster := b.roster()
	seen, err := json.Marshal([]any{b.shared, roster.Today, roster.Rows, roster.Failed, roster.Waiting})
	if err != nil {
		return err
	}
	sum := sha256.Sum256(seen)
	key := hex.EncodeToString(sum[:])
	if b.out.Fresh(overviewGroup, key) {
		return nil
	}
	html, err := b.printer.HTML(page.Overview(roster, b.words))
	if err != nil {
		return err
	}
	written, err := b.out.Put(overviewGroup, key, []site.File{{Path: "desk/overview.html", Data: html}})
	b.report.Written = b.report.Written.Plus(written)
	return err
}

// roster gathers the outcomes, in the order of codes.
func (b *builder) roster() page.Roster {
	r := page.Roster{Clinic: b.Clinic, Today: b.Today}
	for i, o := range b.outcomes {
		switch {
		case o.row != nil:
			r.Rows = append(r.Rows, *o.row)
		case o.failed != nil:
			r.Failed = append(r.Failed, *o.failed)
		case o.waiting:
			r.Waiting = append(r.Waiting, b.codes[i])
		}
	}
	return r
}
