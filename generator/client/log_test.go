package client_test

import (
	"fmt"
	"strings"
	"testing"
)

const logBlock = "starts = 2026-04-06\nweeks = 3\nby = \"imbali\"\n"

// logged reads tern-04 with one block and these logs.
func logged(t *testing.T, logs map[string]string) (string, map[string]float64) {
	t.Helper()
	files := map[string]string{"blocks/3.toml": logBlock}
	for name, text := range logs {
		files["logs/"+name] = text
	}
	c, faults := read(t, operation("2026-01-12", "left", "graft_from = \"left\"\n"), files)
	loads := map[string]float64{}
	for _, s := range c.DoneUpTo(civil(t, "2026-12-31")) {
		loads[s.Done.On.String()+" "+s.Do+" "+string(s.Side)] += float64(s.Load.Or(0))
	}
	return strings.ReplaceAll(faults.Error(), "clients/tern-04/", ""), loads
}

func logText(rest string) string {
	return "{ \"log\": 1, \"client\": \"tern-04\", \"block\": 3,\n" + rest + "\n}"
}

// TestLogMistakes: every mistake of a log, with its place.
func TestLogMistakes(t *testing.T) {
	const set = `"done": [ { "on": "2026-04-06", "do": "press", "left": { "kg": 50, "reps": [10, 9], "reserve": 2 } } ]`
	for _, row := range []struct{ name, text, says string }{
		{"plain", logText(set), ""},
		{"an empty leg is done", logText(`"done": [ { "on": "2026-04-06", "do": "bridge", "both": {} } ]`), ""},
		{"a newer format", `{ "log": 2, "client": "tern-04", "block": 3, "knew": 1 }`, "logs/2026-04-27.json: this log is of format 2; this version reads format 1; use a newer Paceleaf"},
		{"another client's", strings.Replace(logText(set), "tern-04", "knot-12", 1), "logs/2026-04-27.json:1: this log is of knot-12, and it stands in the folder of tern-04; move it to clients/knot-12/logs, or away"},
		{"no such block", strings.Replace(logText(set), `"block": 3`, `"block": 4`, 1), "logs/2026-04-27.json:1: tern-04 has no block 4; write the number of a file in blocks/"},
		{"before the event", logText(strings.Replace(set, "2026-04-06", "2026-01-11", 1)), "logs/2026-04-27.json:2: 2026-01-11 lies before the first event; mend the day"},
		{"before the block", logText(strings.Replace(set, "2026-04-06", "2026-04-05", 1)), "logs/2026-04-27.json:2: 2026-04-05 lies before block 3 begins, 2026-04-06; mend the day, or the number of the block"},
		{"after its own day", logText(strings.Replace(set, "2026-04-06", "2026-04-28", 1)), "logs/2026-04-27.json:2: 2026-04-28 lies after the day of the log, 2026-04-27; mend the day, or name the file by the day on which it was written"},
		{"after the block", logText(strings.Replace(set, "2026-04-06", "2026-04-27", 1)), "logs/2026-04-27.json:2: 2026-04-27 lies after block 3 ended; see whether the day and the number of the block are right"},
		{"no leg", logText(`"done": [ { "on": "2026-04-06", "do": "press" } ]`), `logs/2026-04-27.json:2: press does not say which leg did it; write "left", "right" or "both": { … }`},
		{"kg and lb", logText(strings.Replace(set, `"kg": 50`, `"kg": 50, "lb": 110`, 1)), "logs/2026-04-27.json:2: kg and lb together; keep the one that the device is marked in"},
		{"a load alone", logText(`"done": [ { "on": "2026-04-06", "do": "press", "left": { "kg": 50 } } ]`), `logs/2026-04-27.json:2: a load without repetitions; write "reps": [ … ], set by set`},
		{"half a repetition", logText(strings.Replace(set, "9]", "9.5]", 1)), "logs/2026-04-27.json:2: set 2 has 9.5 repetitions; write whole repetitions"},
		{"half a landing", logText(`"done": [ { "on": "2026-04-06", "do": "jump", "both": { "foot_contacts": 30.5 } } ]`), "logs/2026-04-27.json:2: 30.5 is no whole number; write how many it was"},
		{"told by the clock", logText(`"done": [ { "on": "2026-04-06", "do": "plank", "both": { "time_s": [30, 25] } }, { "on": "2026-04-06", "do": "bike", "both": { "time_min": [20], "rounds": 6, "times": 2 } } ]`), ""},
		{"an unknown place", logText(strings.Replace(set, `"do"`, `"place": "gmy", "do"`, 1)), `logs/2026-04-27.json:2: there is no place "gmy" in clinic.toml; write "gym", or add a [[place]] there`},
		{"an unknown device", logText(strings.Replace(set, `"do"`, `"place": "gym", "device": "prss", "do"`, 1)), `logs/2026-04-27.json:2: there is no device "prss" at gym; write "press", or add a [[place.device]] to gym in clinic.toml`},
		{"no word of the knee", logText(`"knee": [ { "on": "2026-04-06" } ]`), "logs/2026-04-27.json:2: a report that says nothing of the knee; write pain, pain_am, kind or swelling, or take it out"},
		{"an unknown swelling", logText(`"knee": [ { "on": "2026-04-06", "swelling": "huge" } ]`), `logs/2026-04-27.json:2: swelling "huge"; write "same", "more" or "much more"`},
		{"pain beyond its scale", logText(`"knee": [ { "on": "2026-04-06", "pain": 11 } ]`), "logs/2026-04-27.json:2: pain 11 is outside 0 to 10; check the number"},
		{"rated twice", logText(`"effort": [ { "on": "2026-04-06", "rating": 6, "minutes": 50 }, { "on": "2026-04-06", "rating": 5, "minutes": 50 } ]`), "logs/2026-04-27.json:2: the session of 2026-04-06 is rated twice; keep one: a day has one session"},
		{"all at once", logText("\"done\": [ { \"on\": \"2026-04-06\", \"do\": \"press\",\n\"left\": { \"kgs\": 5 } } ],\n\"not_done\": [ { \"on\": \"2026-04-08\" } ]"),
			"logs/2026-04-27.json:3: unknown key kgs; did you mean kg?\nlogs/2026-04-27.json:4: why is missing; write \"why\": \"…\""},
	} {
		if got, _ := logged(t, map[string]string{"2026-04-27.json": row.text}); got != row.says {
			t.Errorf("%s:\n got %s\nwant %s", row.name, got, row.says)
		}
	}
}

// TestLogNames: a log is known by the day that it tells itself, whatever a messenger calls it, and else by its name.
func TestLogNames(t *testing.T) {
	plain := logText(`"done": [ { "on": "2026-04-06", "do": "press", "left": { "kg": 50, "reps": [10] } } ]`)
	stamped := func(at string) string {
		return strings.Replace(plain, `"log": 1,`, `"log": 1, "written": "`+at+`",`, 1)
	}
	for _, row := range []struct{ name, file, text, says string }{
		{"its day", "2026-04-27.json", plain, ""},
		{"a name alone", "april.json", plain, "logs/april.json: this log does not say when it was written, and its name is no day; name the file by the day on which it was written, as in logs/2026-04-27.json"},
		{"renamed by a messenger", "DOC-20260427-WA0003.json", stamped("2026-04-27 18:03"), ""},
		{"saved twice", "2026-04-27 (1).json", stamped("2026-04-27 18:03"), ""},
		{"shared as text", "2026-04-27.txt", stamped("2026-04-27 18:03"), ""},
		{"shouted by an old system", "LOG.JSON", stamped("2026-04-27 18:03"), ""},
		{"no file of text", "2026-04-27.pdf", plain, "logs/2026-04-27.pdf: this name is no log; let it end in .json, as in logs/2026-04-27.json"},
		{"no such time", "x.json", stamped("2026-04-27 25:03"), `logs/x.json:1: written "2026-04-27 25:03" is no day and time; write year-month-day and the time, as in "2026-04-27 18:03"`},
		{"no such day", "x.json", stamped("2026-02-30 18:03"), `logs/x.json:1: written "2026-02-30 18:03" is no day and time; write year-month-day and the time, as in "2026-04-27 18:03"`},
		{"written before it was done", "x.json", stamped("2026-04-05 18:03"), `logs/x.json:2: 2026-04-06 lies after the day of the log, 2026-04-05; mend the day, or the day that "written" gives`},
		{"no log at all", "IMG-20260427-WA0003.json", "a photograph", "logs/IMG-20260427-WA0003.json:1: this is not JSON; use the file as it was written, or write it again"},
		{"a table cut short", "IMG-20260427-WA0003.json", plain[:40], "logs/IMG-20260427-WA0003.json:1: the file ends before its value does; use the file as it was written, or write it again"},
		{"its day is a number", "x.json", strings.Replace(plain, `"log": 1,`, `"log": 1, "written": 20260427,`, 1), `logs/x.json:1: written "20260427" is no day and time; write year-month-day and the time, as in "2026-04-27 18:03"`},
		{"name and file disagree", "2026-04-28.json", stamped("2026-04-27 18:03"), "logs/2026-04-28.json:1: this log says that it was written on 2026-04-27, and its name says 2026-04-28; see which is right and mend the other; until then what it says itself is believed"},
	} {
		if got, _ := logged(t, map[string]string{row.file: row.text}); got != row.says {
			t.Errorf("%s:\n got %s\nwant %s", row.name, got, row.says)
		}
	}
}

// TestLogsInTurn: of two logs of one day the one written later is believed, though its name comes first.
func TestLogsInTurn(t *testing.T) {
	log := func(at, kg string) string {
		return strings.Replace(logText(`"done": [ { "on": "2026-04-06", "do": "press", "left": { "kg": `+kg+`, "reps": [10] } } ]`), `"log": 1,`, `"log": 1, "written": "2026-04-06 `+at+`",`, 1)
	}
	if _, loads := logged(t, map[string]string{"2026-04-06.json": log("09:10", "50"), "2026-04-06 (1).json": log("20:15", "45")}); loads["2026-04-06 press left"] != 45 {
		t.Errorf("%v: the later of two logs of one day is not believed", loads)
	}
}

// TestLogsOfOneMinute: of logs of one day and minute, or that tell no minute, the last by name is believed, however many there are.
func TestLogsOfOneMinute(t *testing.T) {
	logs := map[string]string{}
	for i := range 40 {
		on := []string{"2026-04-06", "2026-04-07", "2026-04-08"}[i%3]
		logs[fmt.Sprintf("n%02d.json", i)] = fmt.Sprintf(`{ "log": 1, "written": "%s 18:03", "client": "tern-04", "block": 3, "done": [ { "on": "%s", "do": "press", "left": { "kg": %d, "reps": [10] } } ] }`, on, on, i)
	}
	_, loads := logged(t, logs)
	for day, want := range map[string]float64{"2026-04-06": 39, "2026-04-07": 37, "2026-04-08": 38} {
		if got := loads[day+" press left"]; got != want {
			t.Errorf("%s: %g kg are believed, want those of n%g.json", day, got, want)
		}
	}
}

// TestLogToldTwice: of two logs the later one is believed, and a question is asked only where they differ; an export that
// tells the old again asks nothing.
func TestLogToldTwice(t *testing.T) {
	set := func(kg string) string {
		return `{ "on": "2026-04-06", "do": "press", "left": { "kg": ` + kg + `, "reps": [10] } }`
	}
	first := logText(`"done": [ ` + set("50") + ` ]`)
	for _, row := range []struct {
		name, second string
		load         float64
		asks         bool
	}{
		{"the same again", logText(`"done": [ ` + set("50") + ` ]`), 50, false},
		{"mended", logText(`"done": [ ` + set("45") + ` ]`), 45, true},
		{"two lines of one day", logText(`"done": [ ` + set("50") + ", " + set("40") + ` ]`), 90, true},
		{"another day only", logText(`"done": [ ` + strings.Replace(set("70"), "04-06", "04-08", 1) + ` ]`), 50, false},
	} {
		says, loads := logged(t, map[string]string{"2026-04-10.json": first, "2026-04-17.json": row.second})
		if loads["2026-04-06 press left"] != row.load {
			t.Errorf("%s: %v, want %v", row.name, loads, row.load)
		}
		if asked := strings.Contains(says, "logs/2026-04-17.json:2: press of 2026-04-06, left, is told otherwise in clients/tern-04/logs/2026-04-10.json") ||
			strings.Contains(says, "is told otherwise in logs/2026-04-10.json"); asked != row.asks {
			t.Errorf("%s: asked %v: %s", row.name, asked, says)
		}
	}
}
