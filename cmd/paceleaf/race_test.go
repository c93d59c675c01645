//go:build race

package main

// detecting says that the race detector watches this test binary.
const detecting = true
