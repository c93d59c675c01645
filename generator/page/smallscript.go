package page

import (
	"bytes"
	"fmt"
	"strings"

	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/js"
)

// smallScript is a script as it goes through a slow phone: without comments and spaces, with short names for what it declares
// itself. The files are its parts, to say in which one the script cannot be read.
func smallScript(script, files string) (string, error) {
	var to bytes.Buffer
	if err := (&js.Minifier{}).Minify(minify.New(), &to, strings.NewReader(script), nil); err != nil {
		return "", fmt.Errorf("%s: the script cannot be read: %w", files, err)
	}
	return to.String(), nil
}
