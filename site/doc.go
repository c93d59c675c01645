// Package site is the only writer of output: it takes finished files and
// commits them to one folder. It reads no clinic, renders nothing and never
// empties a folder; what it did not write itself, it neither changes nor
// removes.
//
// The unit is a group: the files of one client, or of the overview. A group is
// written whole or not at all. One run goes like this:
//
//	s, err := site.Open("out")          // takes the lock, repairs after a crash
//	if s.Fresh("tern-04", key) { … }    // nothing to do for this client
//	s.Put("tern-04", key, files)        // or: write it
//	s.Keep("heron-11")                  // or: its files are wrong, leave its pages
//	s.Close()                           // removes pages of clients that are gone
//
// Whoever stops early calls Partial before Close; otherwise Close takes every
// group that was not mentioned for gone.
//
// Beside the pages stand, in the folder itself:
//
//	.paceleaf.json          what we wrote: group, key, path, size, hash; the same
//	                        bytes for the same pages
//	.paceleaf-stamps.json   when each file was written, so that an unchanged one
//	                        need not be read; differs from run to run
//	.paceleaf-journal       only while a run is under way, or after a crash
//	.paceleaf.lock          empty; a run locks it, and the system unlocks it when the run ends
//
// There is no fsync: it costs five to ten times the writing, and every page
// can be built again. After a power cut (not after a crash of the program) a
// page may be empty or old; its hash or its stamp tells, and the next run
// writes it again.
package site
