package site

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"sync"
	"sync/atomic"
	"testing"
	"time"
)

// Many workers, all verbs at once: run with -race.
func TestWorkers(t *testing.T) {
	dir := t.TempDir()
	const groups, workers = 120, 8
	name := func(i int) string { return fmt.Sprintf("g-%03d", i) }
	files := func(i, round int) []File {
		return pages("hand/"+name(i)+"/p", fmt.Sprint(i, round), "hand/"+name(i)+"/q", "q", "library/"+name(i), "l")
	}
	for round := range 3 {
		s := open(t, dir)
		next := atomic.Int64{}
		var wg sync.WaitGroup
		for range workers {
			wg.Go(func() {
				for i := int(next.Add(1)) - 1; i < groups; i = int(next.Add(1)) - 1 {
					switch {
					case s.Fresh(name(i), "k"):
					case round > 0 && i%5 == 0:
						s.Keep(name(i))
					default:
						if _, err := s.Put(name(i), fmt.Sprint("k", round), files(i, round)); err != nil {
							t.Error(err)
						}
					}
				}
			})
		}
		wg.Wait()
		shut(t, s)
	}
	for i := range groups {
		round := 2
		if i%5 == 0 {
			round = 0
		}
		if data, _ := os.ReadFile(filepath.Join(dir, "hand", name(i), "p")); string(data) != fmt.Sprint(i, round) {
			t.Errorf("%s: got %s, want round %d", name(i), data, round)
		}
	}
}

// Of many workers that want one path, one gets it.
func TestWorkersClash(t *testing.T) {
	s := open(t, t.TempDir())
	var won atomic.Int64
	var wg sync.WaitGroup
	for i := range 16 {
		wg.Go(func() {
			if _, err := s.Put(fmt.Sprint("g", i), "k", pages("one/x", fmt.Sprint(i))); err == nil {
				won.Add(1)
			}
		})
	}
	wg.Wait()
	shut(t, s)
	if won.Load() != 1 {
		t.Errorf("%d groups wrote one path", won.Load())
	}
}

// What a run keeps in memory is the manifest, not the pages.
func TestMemoryFlat(t *testing.T) {
	page := bytes.Repeat([]byte("0123456789abcdef"), 60<<10/16)
	held := func(groups int) uint64 {
		s := open(t, t.TempDir())
		before := heap()
		for i := range groups {
			mustPut(t, s, fmt.Sprintf("g-%04d", i), "k", []File{{fmt.Sprintf("hand/g-%04d/handout.html", i), page}})
		}
		after := heap()
		shut(t, s)
		return max(after, before) - before
	}
	few, many := held(10), held(1000)
	each := float64(many-min(few, many)) / 990
	t.Logf("10 groups hold %d B, 1,000 hold %d B: %.0f B a group of one 60-KB page", few, many, each)
	if each > 1000 {
		t.Errorf("%.0f B stay in memory for each group", each)
	}
}

func heap() uint64 {
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.HeapAlloc
}

// BenchmarkPut writes 60-KB pages, each in a new folder, by two workers: bare,
// and through Put (temporary file, rename, hash, journal). x-raw is the speed of Put
// as a share of the bare one; the two take turns, and nothing is deleted between.
func BenchmarkPut(b *testing.B) {
	page := bytes.Repeat([]byte("0123456789abcdef"), 60<<10/16)
	const batch, workers = 400, 2
	dir := b.TempDir()
	s, err := Open(filepath.Join(dir, "out"))
	if err != nil {
		b.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Join(dir, "raw", "hand"), 0o755); err != nil {
		b.Fatal(err)
	}
	inTurn := func(do func(i int)) time.Duration {
		begun := time.Now()
		var next atomic.Int64
		var wg sync.WaitGroup
		for range workers {
			wg.Go(func() {
				for i := int(next.Add(1)) - 1; i < batch; i = int(next.Add(1)) - 1 {
					do(i)
				}
			})
		}
		wg.Wait()
		return time.Since(begun)
	}
	var ratios []float64
	var through time.Duration
	round := 0
	for b.Loop() {
		bare := inTurn(func(i int) {
			folder := filepath.Join(dir, "raw", "hand", fmt.Sprintf("g-%d-%d", round, i))
			if os.Mkdir(folder, 0o755) != nil || os.WriteFile(filepath.Join(folder, "handout.html"), page, 0o644) != nil {
				b.Error("bare write failed")
			}
		})
		put := inTurn(func(i int) {
			name := fmt.Sprintf("g-%d-%d", round, i)
			if _, err := s.Put(name, "k", []File{{"hand/" + name + "/handout.html", page}}); err != nil {
				b.Error(err)
			}
		})
		ratios = append(ratios, bare.Seconds()/put.Seconds())
		through += put
		round++
	}
	slices.Sort(ratios)
	b.ReportMetric(ratios[len(ratios)/2], "x-raw")
	b.ReportMetric(float64(round*batch)/through.Seconds(), "files/s")
	b.ReportMetric(0, "ns/op")
	if err := s.Close(); err != nil {
		b.Fatal(err)
	}
}

// BenchmarkNothingChanged opens, finds 2,000 groups of five pages fresh, closes.
func BenchmarkNothingChanged(b *testing.B) {
	dir := b.TempDir()
	const groups = 2000
	name := func(i int) string { return fmt.Sprintf("g-%05d", i) }
	s, err := Open(dir)
	if err != nil {
		b.Fatal(err)
	}
	for i := range groups {
		h, d := "hand/"+name(i), "desk/"+name(i)
		if _, err := s.Put(name(i), "k", pages(h+"/a", "1", h+"/b", "1", h+"/c", "1", d+"/a", "1", d+"/b", "1")); err != nil {
			b.Fatal(err)
		}
	}
	if err := s.Close(); err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		s, err := Open(dir)
		if err != nil {
			b.Fatal(err)
		}
		for i := range groups {
			if !s.Fresh(name(i), "k") {
				b.Fatal(name(i))
			}
		}
		if err := s.Close(); err != nil {
			b.Fatal(err)
		}
	}
}
