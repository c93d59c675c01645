package words

import (
	"regexp"
	"strings"
	"unicode"
)

// Counts are what the grade formulas count in a text.
type Counts struct{ Letters, Characters, Words, Sentences int }

// Grades are two readings of a school grade. Both need no syllables, so they are exact; they hold for English.
type Grades struct{ ColemanLiau, ARI float64 }

// Grade returns the school grades of a text of that many letters, words and sentences.
//
// Source: Coleman and Liau 1975, J Appl Psychol 60:283 (0.0588 L − 0.296 S − 15.8, both per 100 words); Senter and Smith
// 1967, AMRL-TR-66-220 (4.71 characters a word + 0.5 words a sentence − 21.43).
func (c Counts) Grade() Grades {
	words, sentences := float64(max(c.Words, 1)), float64(max(c.Sentences, 1))
	return Grades{
		ColemanLiau: float64(0.0588*float64(100*float64(c.Letters)/words)) - float64(0.296*float64(100*sentences/words)) - 15.8,
		ARI:         float64(4.71*float64(float64(c.Characters)/words)) + float64(0.5*float64(words/sentences)) - 21.43,
	}
}

// sentenceEnd is where a sentence ends: a mark with a space after it, or the end of the text.
var sentenceEnd = regexp.MustCompile(`[.?!:](\s+|$)`)

// Sentences splits a text. What has no mark at its end, an item of a list, is a sentence too.
func Sentences(text string) (sentences []string) {
	for _, s := range sentenceEnd.Split(text, -1) {
		if s = strings.TrimSpace(s); s != "" {
			sentences = append(sentences, s)
		}
	}
	return sentences
}

// Count counts the sentences of texts, each of which is at least one. Words without a letter (figures, ×, ·) are not
// counted: nobody reads them as words.
func Count(texts ...string) (c Counts) {
	for _, text := range texts {
		for _, s := range Sentences(text) {
			before := c.Words
			for _, word := range strings.Fields(s) {
				letters := 0
				digits := 0
				for _, r := range word {
					switch {
					case unicode.IsLetter(r):
						letters++
					case unicode.IsDigit(r):
						digits++
					}
				}
				if letters > 0 {
					c.Words++
					c.Letters += letters
					c.Characters += letters + digits
				}
			}
			if c.Words > before {
				c.Sentences++
			}
		}
	}
	return c
}
