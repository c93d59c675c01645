package browser_test

import (
	"bytes"
	"compress/gzip"
	"io"
	"os"
	"strings"
	"testing"
)

// What a handout may weigh, and what must be in the first bytes of it: they come down in the first round trip of a slow
// connection, ten packets of some 1,400 bytes.
const (
	mostRaw, mostPacked = 300_000, 100_000
	firstWindow         = 14_000
)

// TestHandoutIsLight holds that every handout keeps to its weight, and that its first 14 kB hold what a client with one bar of
// signal must see: whose page it is, the brief, when to stop, what not to do yet, and the first week.
func TestHandoutIsLight(t *testing.T) {
	for _, f := range pages(t) {
		if f.kind != "handout" {
			continue
		}
		raw, err := os.ReadFile(f.url[len("file://"):])
		if err != nil {
			t.Fatal(err)
		}
		packed := pack(raw)
		if len(raw) > mostRaw || len(packed) > mostPacked {
			t.Errorf("%s: %d bytes, %d compressed; at most %d and %d", f.path, len(raw), len(packed), mostRaw, mostPacked)
		}
		first := string(unpack(packed[:min(len(packed), firstWindow)]))
		whole := string(raw)
		for _, part := range []string{"head", "brief", "stop", "not-yet", "week-1"} {
			_, from, there := strings.Cut(whole, `id="`+part+`"`)
			if !there {
				continue // a block without a limit has no such part
			}
			end := "</section>"
			if part == "week-1" {
				end = "</div>"
			}
			needs := len(whole) - len(from) + strings.Index(from, end)
			if len(first) < needs {
				t.Errorf("%s: the first %d bytes hold %d of the page, and %s ends at %d", f.path, firstWindow, len(first), part, needs)
			}
		}
		t.Logf("%s: %d bytes, %d compressed", f.path, len(raw), len(packed))
	}
}

func pack(data []byte) []byte {
	var b bytes.Buffer
	w, _ := gzip.NewWriterLevel(&b, gzip.DefaultCompression)
	w.Write(data)
	w.Close()
	return b.Bytes()
}

// unpack is as much as a browser has of a page of which only the beginning has come.
func unpack(beginning []byte) []byte {
	r, err := gzip.NewReader(bytes.NewReader(beginning))
	if err != nil {
		panic(err)
	}
	data, _ := io.ReadAll(r)
	return data
}
