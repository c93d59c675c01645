// Command paceleaf turns a clinic's folder into handouts. Only here: arguments, clock, terminal, exit code.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }
