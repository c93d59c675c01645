package generator_test

import (
	"bytes"
	"fmt"
	"io/fs"
	"maps"
	"runtime/metrics"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"testing/fstest"
	"time"

	"paceleaf/generator"
	"paceleaf/programs"
	"paceleaf/site"
	"paceleaf/templates"
)

// BenchmarkBuild builds clinics of many copies of the demo clients whole. Memory must not grow with their number: one
// client is read, planned, rendered, written and forgotten. Plain numbers; nothing here judges a time.
func BenchmarkBuild(b *testing.B) {
	for _, n := range []int{10, 100, 1000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			files := copies(b, n)
			var peak uint64
			for b.Loop() {
				house, faults := generator.Open(generator.Files{Clinic: files, Programs: programs.FS, Templates: templates.FS, Version: "bench"})
				if house == nil {
					b.Fatal(faults)
				}
				out, err := site.Open(b.TempDir())
				if err != nil {
					b.Fatal(err)
				}
				stop := watchHeap(&peak)
				report, err := house.Build(out, 0, nil)
				stop()
				if err != nil || report.Built != n {
					b.Fatalf("%d of %d built: %v %v", report.Built, n, err, report.Faults)
				}
				if err := out.Close(); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(float64(peak)/1e6, "MB-heap-peak")
			b.ReportMetric(float64(n)*float64(b.N)/b.Elapsed().Seconds(), "clients/s")
		})
	}
}

// BenchmarkFresh builds a clinic in which nothing has changed.
func BenchmarkFresh(b *testing.B) {
	files := copies(b, 1000)
	dir := b.TempDir()
	build := func() generator.Report {
		house, faults := generator.Open(generator.Files{Clinic: files, Programs: programs.FS, Templates: templates.FS, Version: "bench"})
		if house == nil {
			b.Fatal(faults)
		}
		out, err := site.Open(dir)
		if err != nil {
			b.Fatal(err)
		}
		defer out.Close()
		report, err := house.Build(out, 0, nil)
		if err != nil {
			b.Fatal(err)
		}
		return report
	}
	build()
	for b.Loop() {
		if r := build(); r.Fresh != 1000 {
			b.Fatalf("%d of 1000 are fresh", r.Fresh)
		}
	}
	b.ReportMetric(1000*float64(b.N)/b.Elapsed().Seconds(), "clients/s")
}

// copied is a clinic of n clients whose files are made when they are read, so that the clinic itself takes no memory.
type copied struct {
	demo  fstest.MapFS
	codes []string
	n     int
}

func copies(b testing.TB, n int) fs.FS {
	demo := demoFiles(b)
	delete(demo, "days/2026-03-30.csv") // a day sheet is shared and read once
	var codes []string
	for _, name := range slices.Sorted(maps.Keys(demo)) {
		if code, ok := strings.CutSuffix(strings.TrimPrefix(name, "clients/"), "/client.toml"); ok {
			codes = append(codes, code)
		}
	}
	return copied{demo, codes, n}
}

// of is the demo's name of a file of a copy: clients/heron-07-0003/… is clients/heron-07/….
func (c copied) of(name string) string {
	parts := strings.Split(name, "/")
	if len(parts) > 1 && parts[0] == "clients" && len(parts[1]) > 5 {
		parts[1] = parts[1][:len(parts[1])-5]
	}
	return strings.Join(parts, "/")
}

func (c copied) Open(name string) (fs.File, error) {
	if name == "clients" {
		return c.list().Open(name)
	}
	if strings.Contains(name, "/logs/") && strings.HasSuffix(name, ".json") {
		return c.log(name)
	}
	return c.demo.Open(c.of(name))
}

// log is a log of the demo under the code of the copy, which the file itself names.
func (c copied) log(name string) (fs.File, error) {
	data, err := fs.ReadFile(c.demo, c.of(name))
	if err != nil {
		return nil, err
	}
	code := func(name string) []byte { return []byte(`"` + strings.Split(name, "/")[1] + `"`) }
	return fstest.MapFS{name: {Data: bytes.ReplaceAll(data, code(c.of(name)), code(name))}}.Open(name)
}

// TestCopiesBuild: what the benchmarks build has no mistake.
func TestCopiesBuild(t *testing.T) {
	files := copies(t, 16)
	house, faults := generator.Open(generator.Files{Clinic: files, Programs: programs.FS, Templates: templates.FS, Version: "bench", Shelf: &shelf})
	if house == nil {
		t.Fatal(faults)
	}
	for _, code := range house.Codes() {
		if wrong := house.Plan(code).Faults.Wrong(); len(wrong) > 0 {
			t.Errorf("%s: %v", code, wrong)
		}
	}
}

func (c copied) ReadDir(name string) ([]fs.DirEntry, error) {
	if name == "clients" {
		return fs.ReadDir(c.list(), name)
	}
	return fs.ReadDir(c.demo, c.of(name))
}

// list is the folder of the clients alone.
func (c copied) list() fstest.MapFS {
	list := fstest.MapFS{}
	for i := range c.n {
		list[fmt.Sprintf("clients/%s-%04d/client.toml", c.codes[i%len(c.codes)], i)] = &fstest.MapFile{}
	}
	return list
}

// watchHeap notes the most that live objects and garbage took, looked at every two milliseconds.
func watchHeap(peak *uint64) (stop func()) {
	var done atomic.Bool
	ended := make(chan struct{})
	sample := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}}
	go func() {
		defer close(ended)
		for !done.Load() {
			metrics.Read(sample)
			*peak = max(*peak, sample[0].Value.Uint64())
			time.Sleep(2 * time.Millisecond)
		}
	}()
	return func() {
		done.Store(true)
		<-ended
	}
}

// BenchmarkPlanOneClient plans one client of an open house, with a log and a block before it to work out again: what `why` and each
// turn of a build do before a page is made. Nothing is written.
func BenchmarkPlanOneClient(b *testing.B) {
	house, faults := generator.Open(generator.Files{Clinic: demoFiles(b), Programs: programs.FS, Templates: templates.FS, Version: "bench"})
	if house == nil {
		b.Fatal(faults)
	}
	for _, code := range house.Codes() {
		b.Run(code, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if done := house.Plan(code); done.Plan == nil {
					b.Fatal(done.Faults)
				}
			}
		})
	}
}
