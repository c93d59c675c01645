package page

import (
	"bytes"
	"encoding/json"
)

// JSON is the canonical form of the view: one line, fields in the order of the type. Sign-off is over these bytes.
func (v View) JSON() []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		panic("page: a view cannot fail to encode: " + err.Error()) // it holds only texts, numbers and lists
	}
	return b.Bytes()
}
