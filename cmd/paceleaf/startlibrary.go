package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"paceleaf/generator"
	"paceleaf/site"
)

// startLibrary begins a file of the clinic's own library.
func (a *app) startLibrary(k generator.LibraryKind) *cobra.Command {
	var copied string
	c := &cobra.Command{
		Use:     k.Name + " ID",
		Short:   article(k.Name) + " of your own, in " + k.Folder + "/",
		Long:    "A file to fill in, or with --copy a shipped one to change. A file of yours with a shipped one's name takes its place.",
		Example: fmt.Sprintf("  paceleaf start %s my-%s", k.Name, k.Name),
		Args:    args(1, 1, "an id, such as my-"+k.Name),
		RunE: func(_ *cobra.Command, args []string) error {
			house, err := a.open()
			if err != nil {
				return err
			}
			if err := generator.LibraryID(k, args[0]); err != nil {
				return usageError{err}
			}
			files, err := house.StartLibrary(k, args[0], copied)
			if err != nil {
				return err
			}
			for _, file := range files {
				if err := site.Add(a.clinic, file.Name, file.Data); err != nil {
					return err
				}
				fmt.Fprintln(a.out, filepath.Join(a.clinic, filepath.FromSlash(file.Name)))
			}
			fmt.Fprintln(a.out, "Then: paceleaf check")
			return nil
		},
	}
	c.Flags().StringVar(&copied, "copy", "", "begin with a copy of this shipped "+k.Name)
	return c
}

// article is a noun with its article.
func article(noun string) string {
	if strings.ContainsRune("aeiou", rune(noun[0])) {
		return "an " + noun
	}
	return "a " + noun
}
