package browser_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// TestLook writes pictures of every page into the folder LOOK, on a phone, light and dark, to be looked at. It does nothing
// without it.
func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK=folder writes pictures of the pages")
	}
	for _, f := range pages(t) {
		t.Run(f.path, func(t *testing.T) {
			t.Parallel()
			p := open(t, f.url, look{before: clock(asOf)})
			for _, theme := range []string{"light", "dark"} {
				p.look(look{dark: theme == "dark"})
				png, err := chromedp.Run(p.ctx, chromedp.FullScreenshot(100))
				if err != nil {
					t.Fatal(err)
				}
				name := strings.ReplaceAll(strings.TrimSuffix(f.path, ".html"), "/", "-") + "-" + theme + ".png"
				if err := os.WriteFile(filepath.Join(dir, name), png, 0o644); err != nil {
					t.Fatal(err)
				}
			}
		})
	}
}
