package source

import (
	"path"
	"strings"
)

// Unreadable is the fault of a file or folder that is there and cannot be read: too long, or without permission. What
// is there and not read must never be passed over in silence.
func Unreadable(file string, err error) Fault {
	why := err.Error()
	if _, behind, named := strings.Cut(why, path.Base(file)); named {
		why = behind
	}
	if reason, ofSystem := strings.CutPrefix(why, ": "); ofSystem {
		why = reason
	} else {
		why = "it" + why
	}
	if strings.Contains(why, "escapes") {
		why = "it is a link that leads out of the clinic's folder"
	}
	return Fault{File: file, What: "cannot be read: " + why, Instead: "mend it, or move it away"}
}
