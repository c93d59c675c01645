package page

import (
	"strings"
	"testing"
)

// TestSmallScript: what a phone gets is shorter, keeps every text, and no script that cannot be read goes out.
func TestSmallScript(t *testing.T) {
	got, err := smallScript("(() => {\n// why\nconst longName = { longName: 1 }\nsend('a  // text', longName.longName, 1)\n})()", "script/x.js")
	if err != nil {
		t.Fatal(err)
	}
	if strings.Contains(got, "why") || strings.Count(got, "longName") != 2 || !strings.Contains(got, "a  // text") {
		t.Errorf("comments and long names go, texts and properties stay: %s", got)
	}
	if _, err := smallScript("(() => { const = 1 })()", "script/x.js"); err == nil || !strings.Contains(err.Error(), "script/x.js") {
		t.Errorf("a script that cannot be read: %v", err)
	}
}
