package kit

import (
	"time"
	"unicode"
)

// pause is after what time without a letter the next begins another word.
const pause = time.Second

// seekingLetters are those typed into a picker to find an option.
type seekingLetters struct {
	now  func() time.Time
	text string
	at   time.Time // of the last letter
}

// letters outlive the picker they are typed into: a choice lays the form out anew, with the
// focus on a new picker in the place of the old one.
var letters = seekingLetters{now: time.Now}

// SeekBy sets the clock by which letters make a word, and forgets those typed before.
func SeekBy(now func() time.Time) { letters = seekingLetters{now: now} }

// add puts a letter to those typed within a second of each other.
func (l *seekingLetters) add(r rune) string {
	now := l.now()
	if now.Sub(l.at) > pause {
		l.text = ""
	}
	l.text, l.at = l.text+string(unicode.ToLower(r)), now
	return l.text
}
