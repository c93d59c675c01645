package generator_test

import (
	"bytes"
	"compress/gzip"
	"io"
	"strings"
	"testing"

	"paceleaf/generator"
	"paceleaf/generator/page"
	"paceleaf/programs"
	"paceleaf/templates"
)

// What a handout may weigh, and what must be in the first bytes of it: they come down in the first round trip of a slow
// connection, ten packets of some 1,400 bytes.
const (
	mostRaw, mostPacked = 300_000, 100_000
	firstWindow         = 14_000
)

// TestHandoutIsLight holds that the handout of every client of the demo clinic, and of a client in the first and the last stage
// of every program that ships, keeps to its weight, and that its first 14 kB hold what a client with one bar of signal must
// see: whose page it is, the brief, when to stop, what not to do yet, and the first week.
func TestHandoutIsLight(t *testing.T) {
	house, faults := generator.Open(generator.Files{Clinic: demoFiles(t), Programs: programs.FS, Templates: templates.FS, Version: "test"})
	if house == nil {
		t.Fatal(faults)
	}
	for _, code := range house.Codes() {
		t.Run(code, func(t *testing.T) { isLight(t, printed(t, page.Handout(house.Plan(code).Plan, house.Words()))) })
	}
	for _, id := range shippedPrograms(t) {
		p := shippedProgram(t, id)
		for _, phase := range []int{0, len(p.Phases) - 1} {
			t.Run(id+"/"+p.Phases[phase].ID, func(t *testing.T) {
				w := at(p, phase)
				w.weeks = 4
				house, plan := w.plan(t)
				isLight(t, printed(t, page.Handout(plan, house.Words())))
			})
		}
	}
}

func printed(t *testing.T, v page.View) []byte {
	t.Helper()
	printer, err := page.NewPrinter(templates.FS)
	if err != nil {
		t.Fatal(err)
	}
	html, err := printer.HTML(v)
	if err != nil {
		t.Fatal(err)
	}
	return html
}

func isLight(t *testing.T, html []byte) {
	t.Helper()
	packed := packedAs(html)
	if len(html) > mostRaw || len(packed) > mostPacked {
		t.Errorf("%d bytes, %d compressed; at most %d and %d", len(html), len(packed), mostRaw, mostPacked)
	}
	needs, last := 0, ""
	for _, part := range []string{"head", "brief", "stop", "not-yet", "week-1"} {
		_, from, there := strings.Cut(string(html), `id="`+part+`"`)
		if !there {
			if part != "not-yet" { // a block without a limit has no such part
				t.Errorf("the page has no part %s", part)
			}
			continue
		}
		end := "</section>"
		if part == "week-1" {
			end = "</div>"
		}
		if to := len(html) - len(from) + strings.Index(from, end); to > needs {
			needs, last = to, part
		}
	}
	if first := beginningOf(packed, firstWindow); first < needs {
		t.Errorf("the first %d bytes hold %d of the page, and %s ends at %d", firstWindow, first, last, needs)
	}
	t.Logf("%d bytes, %d compressed; week 1 ends within the first %d", len(html), len(packed), len(packedAs(html[:needs])))
}

// packedAs is a page as a server sends it.
func packedAs(data []byte) []byte {
	var b bytes.Buffer
	w, _ := gzip.NewWriterLevel(&b, gzip.DefaultCompression)
	w.Write(data)
	w.Close()
	return b.Bytes()
}

// beginningOf is how many bytes of a page a browser has of which only so much has come.
func beginningOf(packed []byte, come int) int {
	r, err := gzip.NewReader(bytes.NewReader(packed[:min(len(packed), come)]))
	if err != nil {
		panic(err)
	}
	data, _ := io.ReadAll(r)
	return len(data)
}

// TestHeavyHandoutIsSeen holds the measurement itself.
func TestHeavyHandoutIsSeen(t *testing.T) {
	var noise strings.Builder
	for n := uint32(1); noise.Len() < 40_000; n = n*1664525 + 1013904223 {
		noise.WriteByte('a' + byte(n>>24)%26)
	}
	if come := beginningOf(packedAs([]byte(noise.String())), firstWindow); come > 30_000 || come < firstWindow/2 {
		t.Errorf("%d of 40000 bytes that cannot be compressed have come with %d", come, firstWindow)
	}
}
