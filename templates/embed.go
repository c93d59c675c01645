// Package templates carries the shipped templates, styles and words. Go can embed only from its own folder: hence this file.
package templates

import "embed"

// FS holds page.html.tmpl, page.md.tmpl, parts/, style/, script/, words/, the files that start begins with (start/), what keys says beside its tables
// (keys/), and the demo clinic (demo/).
//
//go:embed *.tmpl parts library style script words start keys demo
var FS embed.FS
