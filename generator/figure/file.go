package figure

import "bytes"

// small hides the digits where the picture is shown so small that they could not be read: a picture of 150 units has letters of
// 12 pixels from 257 pixels on.
const small = "@media(max-width:250px){.f-deg{display:none}}"

// File draws the picture as a file of its own, with its style in it. It fails where Draw does.
func File(p Pose, o Options) ([]byte, error) {
	svg, err := Draw(p, o)
	if err != nil {
		return nil, err
	}
	svg = bytes.Replace(svg, []byte("<svg "), []byte(`<svg xmlns="http://www.w3.org/2000/svg" `), 1)
	return bytes.Replace(svg, []byte("</desc>"), []byte("</desc><style>"+ownStyle()+small+"</style>"), 1), nil
}
