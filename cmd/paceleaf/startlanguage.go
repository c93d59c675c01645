package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"paceleaf/site"
)

// startLanguage begins the words of another language.
func (a *app) startLanguage() *cobra.Command {
	return &cobra.Command{
		Use:   "language TAG",
		Short: "the words of another language, with the English to write over",
		Long: "Every file that a language needs and that is not there yet: the sentences of the pages in templates/words/TAG/, the texts of\n" +
			"programs, exercises and notes in programs/words/TAG/. Type it again after an update, and the new files are added.",
		Example: "  paceleaf start language de",
		Args:    args(1, 1, "the tag of a language, such as de or pt-BR"),
		RunE: func(_ *cobra.Command, args []string) error {
			house, err := a.open()
			if err != nil {
				return err
			}
			files, err := house.StartLanguage(args[0])
			if err != nil {
				return err
			}
			for _, file := range files {
				if err := site.Add(a.clinic, file.Name, file.Data); err != nil {
					return err
				}
			}
			fmt.Fprintf(a.out, "%d files in templates/words/%s and programs/words/%s\n", len(files), args[0], args[0])
			fmt.Fprintf(a.out, "Write over the English, from [language] of client.toml on. Then: language = %q in clinic.toml, and paceleaf check\n", args[0])
			return nil
		},
	}
}
