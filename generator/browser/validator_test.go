package browser_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// TestValidHTML has an HTML validator read every page: html-validate with its rules of the standard alone, none of taste.
func TestValidHTML(t *testing.T) {
	command := os.Getenv("PACELEAF_HTML")
	if _, err := os.Stat(command); command == "" || err != nil {
		missing(t, "the HTML validator", "set PACELEAF_HTML to the path of html-validate")
	}
	rules := filepath.Join(t.TempDir(), "rules.json")
	if err := os.WriteFile(rules, []byte(`{"root": true, "extends": ["html-validate:standard"]}`), 0o600); err != nil {
		t.Fatal(err)
	}
	check := func(files ...string) (string, error) {
		out, err := exec.Command(command, append([]string{"--config", rules, "--formatter", "text"}, files...)...).CombinedOutput()
		return string(out), err
	}
	var files []string
	for _, f := range every(t) {
		files = append(files, f.url[len("file://"):])
	}
	if out, err := check(files...); err != nil {
		t.Errorf("%v\n%.4000s", err, out)
	}
	bad := filepath.Join(t.TempDir(), "bad.html")
	os.WriteFile(bad, []byte("<!doctype html><html lang=\"en\"><title>x</title><p id=a><div id=a></div></p>"), 0o600)
	if out, err := check(bad); err == nil {
		t.Errorf("two of one id pass: the validator does not see: %s", out)
	}
}
