// Package programs carries the programs that ship with Paceleaf: programs at its top, and phases, limits, exercises,
// notes of reasons and the bibliography (sources.toml) beside them. A clinic's own programs/ folder is laid over it, same paths.
package programs

import "embed"

// FS holds the shipped programs.
//
//go:embed *.toml phases/*.toml limits/*.toml exercises/*.toml exercises/*.md notes/*.toml notes/*.md
var FS embed.FS
