package generator_test

import (
	"maps"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator"
	"paceleaf/generator/library"
	prose "paceleaf/generator/words"
)

// TestNoPersonCanGetIn walks every type that a shelf is made of: plain data of the rooms program, words and below, no type of
// a room that knows a client, and nothing that could hide one (a function, a channel, an interface).
func TestNoPersonCanGetIn(t *testing.T) {
	if faults := unfit(reflect.TypeFor[library.Shelf]()); len(faults) > 0 {
		t.Errorf("a shelf of the library can carry more than a library: %v", faults)
	}
	for _, hidden := range []reflect.Type{reflect.TypeFor[struct{ House *generator.House }](), reflect.TypeFor[struct{ Any any }](),
		reflect.TypeFor[struct{ By map[string][]func() }](), reflect.TypeFor[struct{ Done generator.Planned }]()} {
		if len(unfit(hidden)) == 0 {
			t.Errorf("the test does not see what is wrong with %v", hidden)
		}
	}
}

// roomsOfLibrary are the packages whose types a shelf may hold. Those of words are not looked into: they hold sentences.
var roomsOfLibrary = []string{"paceleaf/generator/library", "paceleaf/generator/program", "paceleaf/generator/figure", "paceleaf/generator/basis", "paceleaf/generator/unit"}

func unfit(t reflect.Type) (faults []string) {
	seen := map[reflect.Type]bool{}
	var visit func(t reflect.Type, at string)
	visit = func(t reflect.Type, at string) {
		if seen[t] || t == reflect.TypeFor[prose.Words]() {
			return
		}
		seen[t] = true
		if p := t.PkgPath(); p != "" && !slices.Contains(roomsOfLibrary, p) {
			faults = append(faults, at+" is of "+p)
			return
		}
		switch t.Kind() {
		case reflect.Pointer, reflect.Slice, reflect.Array:
			visit(t.Elem(), at)
		case reflect.Map:
			visit(t.Key(), at)
			visit(t.Elem(), at)
		case reflect.Struct:
			for f := range t.NumField() {
				visit(t.Field(f).Type, at+"."+t.Field(f).Name)
			}
		case reflect.Interface, reflect.Func, reflect.Chan, reflect.UnsafePointer:
			faults = append(faults, at+" is a "+t.Kind().String())
		}
	}
	visit(t, t.Name())
	return faults
}

// TestLibraryNamesNobody builds the demo clinic's library and looks for what its clients' files say of them.
func TestLibraryNamesNobody(t *testing.T) {
	clinic, files := demoClinic(t, nil), shippedLibrary(t)
	all := strings.Join(slices.Collect(maps.Values(files)), "\n")
	typed := regexp.MustCompile(`(?m)^(?:called|goal|born|name) = "([^"]+)"`)
	looked := 0
	for name, file := range clinic {
		code, ofClient := strings.CutPrefix(name, "clients/")
		if !ofClient {
			continue
		}
		code, _, _ = strings.Cut(code, "/")
		private := []string{code}
		for _, m := range typed.FindAllStringSubmatch(string(file.Data), -1) {
			private = append(private, m[1])
		}
		for _, p := range private {
			looked++
			if strings.Contains(all, p) && regexp.MustCompile(`\b`+regexp.QuoteMeta(p)+`\b`).MatchString(all) {
				t.Errorf("the library says %q of %s", p, name)
			}
		}
	}
	if looked < 50 {
		t.Errorf("only %d words were looked for", looked)
	}
}
