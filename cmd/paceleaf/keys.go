package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"paceleaf/generator"
	"paceleaf/site"
	"paceleaf/templates"
)

func (a *app) keys() *cobra.Command {
	var schemas string
	c := &cobra.Command{
		Use:   "keys [FILE-KIND]",
		Short: "Print every key of every file, with an example of each",
		Long: `Keys prints what may stand in each kind of file: the keys, what each is, in which units, within which bounds or words,
and an example. It is made from what the reader itself reads by. A FILE-KIND is one of
` + strings.Join(kinds(), ", ") + `.
Two more are no kinds of file: words prints every sentence of the pages under its key, template what page templates may use.

With --schemas it writes the same as JSON Schemas, by which an editor completes and checks. start clinic and demo write
them already; do it again in ` + generator.SchemaFolder + ` of your clinic after an update of Paceleaf.`,
		Example: "  paceleaf keys test\n  paceleaf keys > keys.md\n  paceleaf keys --schemas " + generator.SchemaFolder,
		Args:    args(0, 1, "at most one kind of file"),
		RunE: func(_ *cobra.Command, given []string) error {
			if schemas != "" {
				return a.writeSchemas(schemas, given)
			}
			page, err := keysPage(given)
			if err != nil {
				return usageError{err}
			}
			fmt.Fprint(a.out, page)
			return nil
		},
	}
	c.ValidArgsFunction = func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return append(kinds(), "words", "template"), cobra.ShellCompDirectiveNoFileComp
	}
	c.Flags().StringVar(&schemas, "schemas", "", "write the JSON Schemas of all kinds of file into this folder")
	return c
}

// keysPage is what keys prints: of all kinds of file, of one, of the sentences or of templates.
func keysPage(given []string) (string, error) {
	switch {
	case len(given) == 0:
		return generator.Reference("", templates.FS)
	case given[0] == "template":
		return generator.TemplateReference(), nil
	case given[0] == "words":
		return generator.WordReference(templates.FS)
	}
	page, err := generator.Reference(given[0], templates.FS)
	if err != nil {
		err = fmt.Errorf("%w, words, template", err)
	}
	return page, err
}

func kinds() (names []string) {
	for _, k := range generator.FileKinds() {
		names = append(names, k.Name)
	}
	return names
}

func (a *app) writeSchemas(dir string, given []string) error {
	if len(given) > 0 {
		return usageError{fmt.Errorf("--schemas writes all kinds of file; leave %q out", given[0])}
	}
	files := generator.Schemas("")
	if err := site.Renew(dir, files, []byte(generator.SchemaMark)); err != nil {
		return err
	}
	fmt.Fprintf(a.out, "%s written to %s\n", counted(len(files), "schema"), dir)
	return nil
}
