package generator_test

import (
	"bytes"
	"fmt"
	"io/fs"
	"maps"
	"math/rand/v2"
	"os"
	"regexp"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/page"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// Fuzzing by law: whatever stands in a file, nothing panics from reading to HTML, every fault points at a line that is
// there, and what is accepted is rendered, twice alike. The seeds are the shipped invented clients.

func demoFiles(t testing.TB) fstest.MapFS {
	t.Helper()
	files, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		t.Fatal(err)
	}
	clinic := fstest.MapFS{}
	for name, data := range files {
		clinic[name] = &fstest.MapFile{Data: data}
	}
	return clinic
}

// FuzzClientFolder puts any text in the place of one file of a client.
func FuzzClientFolder(f *testing.F) {
	files := demoFiles(f)
	names := slices.DeleteFunc(slices.Sorted(maps.Keys(files)), func(name string) bool { return !strings.HasPrefix(name, "clients/") })
	for i, name := range names {
		if many(0, 1) == 1 || strings.Contains(name, "/tern-04/") {
			f.Add(byte(i), string(files[name].Data))
		}
	}
	all, _ := everybody()
	for i, one := range all[:many(4, 40)] {
		for j, name := range names {
			if strings.HasSuffix(name, "/client.toml") && j%many(8, 3) == i%many(8, 3) {
				f.Add(byte(j), one["client.toml"])
			}
		}
	}
	house := open(f, files)
	printer, err := house.Printer()
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, which byte, text string) {
		name := names[int(which)%len(names)]
		was := files[name]
		defer func() { files[name] = was }()
		files[name] = &fstest.MapFile{Data: []byte(text)}
		holds(t, house, printer, strings.Split(name, "/")[1], files)
	})
}

// FuzzClientLines changes single lines of one file of a client: what it makes is mostly still a file that is read to the end.
func FuzzClientLines(f *testing.F) {
	files := demoFiles(f)
	for i := range 12 {
		f.Add(byte(i), uint64(i), byte(3))
	}
	f.Fuzz(jumbles(f, files))
}

// TestJumbledClients is FuzzClientLines with a fixed run of seeds; PACELEAF_JUMBLES gives a run of any length.
func TestJumbledClients(t *testing.T) {
	n := many(40, 150)
	if more, err := strconv.Atoi(os.Getenv("PACELEAF_JUMBLES")); err == nil {
		n = more
	}
	hold := jumbles(t, demoFiles(t))
	for i := range n {
		hold(t, byte(i), uint64(i), byte(i/7))
		if t.Failed() {
			return
		}
	}
}

// jumbles is the law of FuzzClientLines.
func jumbles(tb testing.TB, files fstest.MapFS) func(t *testing.T, which byte, seed uint64, changes byte) {
	names := slices.DeleteFunc(slices.Sorted(maps.Keys(files)), func(name string) bool { return !strings.HasPrefix(name, "clients/") })
	var all strings.Builder
	for _, name := range names {
		all.Write(files[name].Data)
	}
	words := quotedWord.FindAllString(all.String(), -1)
	for _, kind := range []string{"loaded-bend", "added-weight", "weight-bearing", "hamstring-work", "timed-6m", "leg-press-both", "squat", "donor", "allograft", "run", "jumping", "surgeon"} {
		words = append(words, fmt.Sprintf("%q", kind))
	}
	house := open(tb, files)
	printer, err := house.Printer()
	if err != nil {
		tb.Fatal(err)
	}
	return func(t *testing.T, which byte, seed uint64, changes byte) {
		name := names[int(which)%len(names)]
		was := files[name]
		text := jumbled(string(was.Data), words, rand.New(rand.NewPCG(seed, 7)), 1+int(changes%6))
		files[name] = &fstest.MapFile{Data: []byte(text)}
		defer func() {
			files[name] = was
			if wrong := recover(); wrong != nil {
				t.Fatalf("%v\n-- %s --\n%s\n%s", wrong, name, text, debug.Stack())
			}
		}()
		holds(t, house, printer, strings.Split(name, "/")[1], files)
		if t.Failed() {
			t.Logf("-- %s --\n%s", name, text)
		}
	}
}

var (
	quotedWord = regexp.MustCompile(`"[^"\n]*"`)
	plainNum   = regexp.MustCompile(`\b\d+(\.\d+)?\b`)
)

// jumbled deletes, doubles, swaps and alters lines.
func jumbled(text string, words []string, r *rand.Rand, changes int) string {
	lines := strings.Split(text, "\n")
	pick := func(from []string) string { return from[r.IntN(len(from))] }
	numbers := []string{"0", "1", "2", "3", "7", "8", "12", "40", "60", "90", "110", "1e9", "-1", "0.1", "nan", "true"}
	for range changes {
		i, j := r.IntN(len(lines)), r.IntN(len(lines))
		switch r.IntN(7) {
		case 0:
			lines = slices.Delete(lines, i, i+1)
			if len(lines) == 0 {
				return ""
			}
		case 1:
			lines = slices.Insert(lines, j, lines[i])
		case 2:
			lines[i], lines[j] = lines[j], lines[i]
		case 3:
			lines[i] = quotedWord.ReplaceAllStringFunc(lines[i], func(string) string { return pick(words) })
		case 4:
			lines[i] = isoDay.ReplaceAllStringFunc(lines[i], later(r.IntN(400)-200))
		case 5:
			if !isoDay.MatchString(lines[i]) {
				lines[i] = plainNum.ReplaceAllStringFunc(lines[i], func(string) string { return pick(numbers) })
			}
		case 6:
			lines[i] = mirror(lines[i])
		}
	}
	return strings.Join(lines, "\n")
}

// FuzzClinicFolder puts any text in the place of a file that all clients share: clinic.toml, a day sheet, a program.
func FuzzClinicFolder(f *testing.F) {
	files := demoFiles(f)
	names := []string{"clinic.toml", "days/2026-03-30.csv", "programs/acl-reconstruction.toml", "programs/limits/acl-graft.toml", "programs/limits/acl-also.toml",
		"programs/phases/rebuild.toml", "programs/exercises/leg-press-single.toml", "programs/exercises/squat.toml", "programs/sources.toml"}
	for i, name := range names[:many(3, len(names))] { // as they are shipped they are built by other tests too
		if inside, shipped := strings.CutPrefix(name, "programs/"); shipped {
			data, err := fs.ReadFile(programs.FS, inside)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(byte(i), string(data))
		} else {
			f.Add(byte(i), string(files[name].Data))
		}
	}
	f.Fuzz(func(t *testing.T, which byte, text string) { sharedHolds(t, files, names[int(which)%len(names)], text) })
}

// TestJumbledClinics changes single lines of a file that all clients share.
func TestJumbledClinics(t *testing.T) {
	n := many(8, 25)
	if more, err := strconv.Atoi(os.Getenv("PACELEAF_JUMBLES")); err == nil {
		n = more
	}
	files := demoFiles(t)
	shared := map[string]string{"clinic.toml": string(files["clinic.toml"].Data), "days/2026-03-30.csv": string(files["days/2026-03-30.csv"].Data)}
	err := fs.WalkDir(programs.FS, ".", func(name string, e fs.DirEntry, err error) error {
		if err == nil && !e.IsDir() && strings.HasSuffix(name, ".toml") {
			data, err := fs.ReadFile(programs.FS, name)
			shared["programs/"+name] = string(data)
			return err
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	names := slices.Sorted(maps.Keys(shared))
	var all strings.Builder
	for _, name := range names {
		all.WriteString(shared[name])
	}
	words := quotedWord.FindAllString(all.String(), -1)
	for i := range n {
		r := rand.New(rand.NewPCG(uint64(i), 11))
		name := names[r.IntN(len(names))]
		text := jumbled(shared[name], words, r, 1+i%6)
		func() {
			defer func() {
				if wrong := recover(); wrong != nil {
					t.Fatalf("%v\n-- %s --\n%s\n%s", wrong, name, text, debug.Stack())
				}
			}()
			sharedHolds(t, files, name, text)
		}()
		if t.Failed() {
			t.Fatalf("-- %s --\n%s", name, text)
		}
	}
}

// sharedHolds opens a clinic with one file of it replaced, and holds the laws for every client.
func sharedHolds(t *testing.T, files fstest.MapFS, name, text string) {
	t.Helper()
	clinic := maps.Clone(files)
	clinic[name] = &fstest.MapFile{Data: []byte(text)}
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	located(t, faults, clinic)
	if house == nil {
		if len(faults.Wrong()) == 0 {
			t.Fatal("nothing is opened, and nothing is said to be wrong")
		}
		return
	}
	located(t, house.Check(unit.Day{Year: 2026, Month: 4, Date: 6}), clinic)
	printer, err := house.Printer()
	if err != nil {
		t.Fatal(err)
	}
	codes := house.Codes()
	for _, code := range codes[:many(min(2, len(codes)), len(codes))] {
		holds(t, house, printer, code, clinic)
	}
}

// holds plans and renders one client and holds the laws.
func holds(t *testing.T, house *generator.House, printer *page.Printer, code string, files fstest.MapFS) {
	t.Helper()
	done := house.Plan(code)
	located(t, done.Faults, files)
	if done.Plan == nil || len(done.Faults.Wrong()) > 0 {
		if done.Plan == nil && len(done.Faults) == 0 {
			t.Fatalf("%s has no plan, and nothing is said", code)
		}
		return
	}
	p := done.Plan
	for _, v := range []page.View{page.Handout(p, house.Words()), page.Worksheet(p, house.Words())} {
		if _, err := printer.HTML(v); err != nil {
			t.Fatal(err)
		}
		if _, err := printer.Markdown(v); err != nil {
			t.Fatal(err)
		}
	}
	page.OverviewOf(p)
	if _, ok := page.WhyText(p, "", house.Line); !ok {
		t.Fatal("why has nothing to say")
	}
	if shared := page.SharedIDs(p); len(shared) > 0 {
		t.Errorf("ids that mean two numbers: %v", shared)
	}
	if again := house.Plan(code); again.Plan == nil || !bytes.Equal(page.PlanJSON(p), page.PlanJSON(again.Plan)) {
		t.Error("planned twice, two plans")
	}
}

// located asks that each fault points at a line that is there.
func located(t *testing.T, faults source.Faults, files fstest.MapFS) {
	t.Helper()
	for _, f := range faults {
		if f.Line == 0 {
			continue
		}
		var data []byte
		if file, known := files[f.File]; known {
			data = file.Data
		} else if inside, ok := strings.CutPrefix(f.File, "programs/"); ok {
			data, _ = fs.ReadFile(programs.FS, inside)
		}
		if lines := bytes.Count(data, []byte("\n")) + 1; f.Line < 0 || f.Line > lines {
			t.Errorf("%s: the file has %d lines", f, lines)
		}
	}
	if strings.Contains(fmt.Sprint(faults), "%!") {
		t.Errorf("a message that is not filled in: %v", faults)
	}
}
