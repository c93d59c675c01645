package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"paceleaf/generator"
	"paceleaf/site"
)

func (a *app) keys() *cobra.Command {
	var schemas string
	c := &cobra.Command{
		Use:   "keys [FILE-KIND]",
		Short: "Print every key of every file, with an example of each",
		Long: `Keys prints what may stand in each kind of file: the keys, what each is, in which units, within which bounds or words,
and an example. It is made from what the reader itself reads by. A FILE-KIND is one of clinic, client, test, block,
hold, log, program, phase, limits, exercise, errors and sources; template tells what page templates may use.

With --schemas it writes the same as JSON Schemas, by which an editor completes and checks. start clinic and demo write
them already; do it again in ` + generator.SchemaFolder + ` of your clinic after an update of Paceleaf.`,
		Example: "  paceleaf keys test\n  paceleaf keys > keys.md\n  paceleaf keys --schemas " + generator.SchemaFolder,
		Args:    args(0, 1, "at most one kind of file"),
		RunE: func(_ *cobra.Command, given []string) error {
			if schemas != "" {
				return a.writeSchemas(schemas, given)
			}
			kind := ""
			if len(given) > 0 {
				kind = given[0]
			}
			if kind == "template" {
				fmt.Fprint(a.out, generator.TemplateReference())
				return nil
			}
			page, err := generator.Reference(kind)
			if err != nil {
				return usageError{err}
			}
			fmt.Fprint(a.out, page)
			return nil
		},
	}
	c.ValidArgsFunction = func(*cobra.Command, []string, string) (names []string, _ cobra.ShellCompDirective) {
		for _, k := range generator.FileKinds() {
			names = append(names, k.Name)
		}
		return names, cobra.ShellCompDirectiveNoFileComp
	}
	c.Flags().StringVar(&schemas, "schemas", "", "write the JSON Schemas of all kinds of file into this folder")
	return c
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
