package figure

import "bytes"

// File draws the picture as a file of its own, with its style in it. It fails where Draw does.
func File(p Pose, o Options) ([]byte, error) {
	svg, err := Draw(p, o)
	if err != nil {
		return nil, err
	}
	svg = bytes.Replace(svg, []byte("<svg "), []byte(`<svg xmlns="http://www.w3.org/2000/svg" `), 1)
	return bytes.Replace(svg, []byte("</desc>"), []byte("</desc><style>"+ownStyle()+"</style>"), 1), nil
}
