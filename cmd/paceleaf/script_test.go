package main

import (
	"bytes"
	"cmp"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/templates"
)

const scripts = "../../testdata/scripts"

var update = flag.Bool("update", false, "rewrite what the scripts of testdata/scripts expect")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"paceleaf": func() {
			testOnlyWithoutLibrary = os.Getenv("WITHOUT_LIBRARY") != "" && !slices.Contains(os.Args, "--library")
			os.Exit(run(os.Args[1:], os.Stdout, os.Stderr))
		},
	})
}

// TestScripts runs every script of testdata/scripts: one behaviour a file, as a therapist could read it.
func TestScripts(t *testing.T) {
	plain := plainBinary(t)
	testscript.Run(t, testscript.Params{
		Dir: scripts,
		Setup: func(env *testscript.Env) error {
			if plain != "" && !isWatched(env.WorkDir) {
				env.Setenv("PATH", plain+string(os.PathListSeparator)+env.Getenv("PATH"))
			}
			env.Vars = append(env.Vars, "GORACE=atexit_sleep_ms=0", "WITHOUT_LIBRARY=1") // a script that looks at the library clears the second; the race detector would wait a second at the end of each command
			return nil
		},
		Cmds:                map[string]func(*testscript.TestScript, bool, []string){"saltmarsh": saltmarsh, "edit": edit, "exits": exits, "same": same, "fill": fill, "copy": copyTree, "append": appendFile, "uncomment": uncomment, "forget": forget},
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
	})
}

// saltmarsh writes the demo clinic into a folder that need not be empty: what is there stays.
func saltmarsh(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: saltmarsh DIR")
	}
	files, err := generator.Demo(templates.FS, unit.Day{})
	ts.Check(err)
	for name, data := range files {
		to := ts.MkAbs(filepath.Join(args[0], filepath.FromSlash(name)))
		if _, err := os.Stat(to); err == nil {
			continue
		}
		ts.Check(os.MkdirAll(filepath.Dir(to), 0o755))
		ts.Check(os.WriteFile(to, data, 0o644))
	}
}

// edit replaces a text that stands once in a file, as an author would; \n is a new line.
func edit(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: edit FILE OLD NEW")
	}
	name := ts.MkAbs(args[0])
	data, err := os.ReadFile(name)
	ts.Check(err)
	lines := strings.NewReplacer(`\n`, "\n")
	old, now := lines.Replace(args[1]), lines.Replace(args[2])
	if n := strings.Count(string(data), old); n != 1 {
		ts.Fatalf("%q stands %d times in %s", old, n, args[0])
	}
	ts.Check(os.WriteFile(name, []byte(strings.Replace(string(data), old, now, 1)), 0o644))
}

// fill writes many copies of a line behind a file.
func fill(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: fill FILE LINE TIMES")
	}
	times, err := strconv.Atoi(args[2])
	ts.Check(err)
	f, err := os.OpenFile(ts.MkAbs(args[0]), os.O_APPEND|os.O_WRONLY|os.O_CREATE, 0o644)
	ts.Check(err)
	defer f.Close()
	_, err = f.WriteString(strings.Repeat(args[1]+"\n", times))
	ts.Check(err)
}

// exits runs a command and asks for its exact exit code.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits CODE COMMAND [ARGS...]")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	var exit *exec.ExitError
	switch err := ts.Exec(args[1], args[2:]...); {
	case errors.As(err, &exit):
		got = exit.ExitCode()
	case err != nil:
		ts.Check(err)
	}
	if got != want {
		ts.Fatalf("exit code %d, want %d", got, want)
	}
}

// appendFile adds a file of the script behind a file of the clinic.
func appendFile(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: append FILE MORE")
	}
	name := ts.MkAbs(args[0])
	data, err := os.ReadFile(name)
	ts.Check(err)
	ts.Check(os.WriteFile(name, append(data, ts.ReadFile(args[1])...), 0o644))
}

// uncomment takes the # away from the lines that offer a key or a header, and writes last time's value, or one that could
// be, as a therapist does.
func uncomment(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: uncomment FILE")
	}
	lines := strings.Split(ts.ReadFile(args[0]), "\n")
	for i, line := range lines {
		offer, is := strings.CutPrefix(line, "#")
		if !is || strings.HasPrefix(offer, " ") || strings.HasPrefix(offer, ":schema ") {
			continue
		}
		lines[i] = offer
		key, rest, _ := strings.Cut(offer, "=")
		value, _, _ := strings.Cut(rest, "#")
		_, last, _ := strings.Cut(rest, "# last: ")
		_, like, _ := strings.Cut(rest, "# as in: ")
		if strings.Contains(offer, "=") && strings.TrimSpace(value) == "" {
			lines[i] = key + "= " + cmp.Or(last, like, couldBe[strings.TrimSpace(key)], "5")
		}
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(strings.Join(lines, "\n")), 0o644))
}

// couldBe are values of a key where 5 could not be one.
var couldBe = map[string]string{"mass_kg": "70",
	"angle_deg": "90", "left.peak_n": "[300, 305]", "right.peak_n": "[300, 305]", "left.distance_cm": "[120, 121]", "right.distance_cm": "[120, 121]",
	"left.time_s": "[2.1, 2.2]", "right.time_s": "[2.1, 2.2]", "left.count": "[40, 41]", "right.count": "[40, 41]", "pain_kind": `"ache"`, "effusion": `"trace"`}

// forget takes the members of a name out of a JSON file, wherever they stand.
func forget(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: forget FILE NAME")
	}
	var all any
	ts.Check(json.Unmarshal([]byte(ts.ReadFile(args[0])), &all))
	var strip func(any)
	strip = func(v any) {
		switch v := v.(type) {
		case map[string]any:
			delete(v, args[1])
			for _, below := range v {
				strip(below)
			}
		case []any:
			for _, below := range v {
				strip(below)
			}
		}
	}
	strip(all)
	data, err := json.MarshalIndent(all, "", "  ")
	ts.Check(err)
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), append(data, '\n'), 0o644))
}

// copyTree copies a folder, to be compared later.
func copyTree(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: copy FROM TO")
	}
	ts.Check(os.CopyFS(ts.MkAbs(args[1]), os.DirFS(ts.MkAbs(args[0]))))
}

// same compares a file or a tree, byte for byte, with another; names behind them are passed over.
func same(ts *testscript.TestScript, neg bool, args []string) {
	if len(args) < 2 {
		ts.Fatalf("usage: [!] same A B [NAME...]")
	}
	a, b := tree(ts, args[0], args[2:]), tree(ts, args[1], args[2:])
	var differ []string
	for name, data := range a {
		if other, both := b[name]; !both || !bytes.Equal(data, other) {
			differ = append(differ, name)
		}
	}
	for name := range b {
		if _, both := a[name]; !both {
			differ = append(differ, name)
		}
	}
	slices.Sort(differ)
	switch {
	case len(differ) > 0 && !neg:
		ts.Fatalf("%s and %s differ in %s", args[0], args[1], strings.Join(differ, ", "))
	case len(differ) == 0 && neg:
		ts.Fatalf("%s and %s are the same", args[0], args[1])
	}
}

func tree(ts *testscript.TestScript, top string, passedOver []string) map[string][]byte {
	files := map[string][]byte{}
	top = ts.MkAbs(top)
	ts.Check(filepath.WalkDir(top, func(path string, e fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		name, err := filepath.Rel(top, path)
		if err != nil || e.IsDir() || slices.Contains(passedOver, filepath.ToSlash(name)) {
			return err
		}
		files[filepath.ToSlash(name)], err = os.ReadFile(path)
		if err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
		return nil
	}))
	return files
}
