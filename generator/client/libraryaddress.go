package client

import (
	"fmt"
	"net/url"

	"paceleaf/generator/basis"
)

// judgeLibrary asks that the library's address can be led to from a page: https, a host, and nothing behind the path.
func (c *Clinic) judgeLibrary(wrong func(at basis.Origin, what, instead string)) {
	if c.Library == "" {
		return
	}
	u, err := url.Parse(c.Library)
	if err != nil || u.Scheme != "https" || u.Host == "" || u.User != nil || u.RawQuery != "" || u.Fragment != "" {
		wrong(c.At.At("library"), fmt.Sprintf("library %q is no address that a page may lead to", c.Library),
			`write it as in "https://library.saltmarsh.example", without ? or #, or leave it out`)
	}
}
