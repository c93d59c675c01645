package generator

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/source"
)

// What check says of the clinic's own library, whether or not a program or a client needs it yet.

// checkLibrary judges the clinic's own files alone, and the programs that it uses against its places.
func (h *House) checkLibrary() (faults source.Faults) {
	if len(h.folder.List("programs")) > 0 {
		_, found := h.library.Catalog()
		faults = slices.Concat(h.own(found), h.own(h.library.Loose()), h.copies(), h.reading())
	}
	for _, id := range h.library.IDs() {
		r := h.program(id)
		if r.program != nil && (h.isOwn("programs/"+id+".toml") || h.isUsed(id)) {
			faults = append(faults, asFaults(plan.Unfillable(r.program, h.Clinic.Places))...)
		}
	}
	return h.located(faults)
}

// isOwn reports whether a file is the clinic's.
func (h *House) isOwn(file string) bool { return h.folder.Exists(file) }

// isUsed reports whether a client is on a program.
func (h *House) isUsed(id string) bool {
	return slices.ContainsFunc(h.codes, func(code string) bool {
		data, _, _ := h.folder.Read("clients/" + code + "/client.toml")
		named := programLine.FindSubmatch(data)
		return named != nil && string(named[1]) == id
	})
}

// own keeps what is said of the clinic's own files.
func (h *House) own(faults source.Faults) source.Faults {
	return slices.DeleteFunc(faults, func(f source.Fault) bool {
		return !h.isOwn(f.File) && !h.isOwn(strings.TrimSuffix(f.File, ".md")+".toml")
	})
}

// ownFiles are the clinic's own files of a kind, by id.
func (h *House) ownFiles(k LibraryKind) (ids []string) {
	for _, e := range h.folder.List(k.Folder) {
		if id, isTOML := strings.CutSuffix(e.Name, ".toml"); isTOML && !e.Dir && !(k.Name == "program" && notPrograms[id]) {
			ids = append(ids, id)
		}
	}
	return ids
}

// copies asks about files that stand in the place of a shipped one without saying so, and about copies whose original has changed.
func (h *House) copies() (faults source.Faults) {
	for _, k := range LibraryKinds {
		for _, id := range h.ownFiles(k) {
			file := k.file(id, ".toml")
			data, _, err := h.folder.Read(file)
			if err != nil {
				continue
			}
			mark, line := copiedFrom(data)
			if f := h.copyFault(k, id, mark); f.What != "" {
				f.File, f.Line = file, max(1, line)
				faults.Add(f)
			}
		}
	}
	return faults
}

// copyFault is what is wrong with what a file says that it was copied from.
func (h *House) copyFault(k LibraryKind, id, mark string) source.Fault {
	of, digest, _ := strings.Cut(mark, " ")
	instead := h.shipped(k.file(id, ".toml"))
	switch shipped := h.shipped(k.file(of, ".toml")); {
	case mark == "" && instead != nil:
		return source.Fault{Ask: true, What: fmt.Sprintf("this file takes the place of the shipped %s %q and does not say so", k.Name, id),
			Instead: fmt.Sprintf("write copied_from = %q, so that check tells when the shipped one changes; or give the file another name", copyMark(id, instead))}
	case mark == "":
		return source.Fault{}
	case shipped == nil:
		return source.Fault{What: fmt.Sprintf("copied_from names %q, and there is no shipped %s of that name", of, k.Name), Instead: h.shippedLike(k, of) + ", or take the line out"}
	case digest == "":
		return source.Fault{Ask: true, What: "copied_from does not say which version was copied", Instead: fmt.Sprintf("write copied_from = %q", copyMark(of, shipped))}
	case mark != copyMark(of, shipped):
		return source.Fault{Ask: true, What: fmt.Sprintf("the shipped %s %q has changed since it was copied", k.Name, of),
			Instead: fmt.Sprintf("compare the two (paceleaf start %s NEW-ID --copy %s), then write copied_from = %q", k.Name, of, copyMark(of, shipped))}
	}
	return source.Fault{}
}

// copiedFrom reads what a file says that it was copied from, and where. The file itself may be half-written, so it is found by line.
func copiedFrom(data []byte) (mark string, line int) {
	for i, text := range strings.Split(string(data), "\n") {
		key, value, found := strings.Cut(text, "=")
		if found && strings.TrimSpace(key) == "copied_from" {
			value, _, _ = strings.Cut(strings.TrimSpace(value), "#")
			return strings.Trim(strings.TrimSpace(value), `"`), i + 1
		}
	}
	return "", 0
}
