package source

import (
	"strconv"

	"github.com/BurntSushi/toml"
)

// A path names a place in a file: keys with dots between, list items counted from 0, as in strength[1].left.peak_n[0].
// A key that could not stand bare in a file is quoted.

// below is the path of a key in the table at path.
func below(path, key string) string {
	if path == "" {
		return shown(key)
	}
	return path + "." + shown(key)
}

// item is the path of the i-th item of the list at path.
func item(path string, i int) string { return path + "[" + strconv.Itoa(i) + "]" }

// shown writes a key as it would have to stand in a file.
func shown(key string) string { return toml.Key{key}.String() }

// above is the path of the table or list that holds path; "" for a key of the root.
func above(path string) string {
	cut, quoted := 0, false
	for i := 0; i < len(path); i++ {
		switch c := path[i]; {
		case quoted && c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case !quoted && (c == '.' || c == '['):
			cut = i
		}
	}
	return path[:cut]
}
