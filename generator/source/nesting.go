package source

// tooDeep returns the line at which brackets or dotted keys go deeper than the limit; 0 where none does. It runs before the
// library, whose time grows with the square of a dotted key and whose stack grows with brackets.
func tooDeep(data []byte) int {
	line, depth, dots := 1, 0, 0
	for i := 0; i < len(data); {
		switch data[i] {
		case '"', '\'':
			end := stringEnd(data, i)
			line += newlines(data[i:end])
			i = end
			continue
		case '#':
			i = lineEnd(data, i)
			continue
		case '\n':
			line++
			dots = 0
		case '[', '{':
			depth++
			dots = 0
		case ']', '}':
			depth = max(0, depth-1)
			dots = 0
		case '=', ',':
			dots = 0
		case '.':
			dots++
		}
		if depth > maxNesting || dots > maxNesting {
			return line
		}
		i++
	}
	return 0
}

// stringEnd returns the offset after the string that begins at i: of one line, or between three quotes. A string of one
// line that is not closed ends with its line.
func stringEnd(data []byte, i int) int {
	q := data[i]
	if i+2 < len(data) && data[i+1] == q && data[i+2] == q {
		return longStringEnd(data, i+3, q)
	}
	for i++; i < len(data); i++ {
		switch {
		case data[i] == '\n':
			return i
		case data[i] == '\\' && q == '"':
			i++
		case data[i] == q:
			return i + 1
		}
	}
	return len(data)
}

// longStringEnd ends at three quotes; up to two more belong to the text.
func longStringEnd(data []byte, i int, q byte) int {
	for ; i < len(data); i++ {
		if data[i] == '\\' && q == '"' {
			i++
			continue
		}
		if data[i] != q || i+2 >= len(data) || data[i+1] != q || data[i+2] != q {
			continue
		}
		i += 3
		for extra := 0; extra < 2 && i < len(data) && data[i] == q; extra++ {
			i++
		}
		return i
	}
	return len(data)
}

func lineEnd(data []byte, i int) int {
	for i < len(data) && data[i] != '\n' {
		i++
	}
	return i
}

func newlines(data []byte) (n int) {
	for _, c := range data {
		if c == '\n' {
			n++
		}
	}
	return n
}
