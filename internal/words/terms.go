package words

import (
	"slices"
	"strings"
)

// Term is a word that is explained, and the drawing that goes with it.
type Term struct {
	Word, Meaning string
	Picture       TermPicture
}

// Glossary explains the words the program uses.
func Glossary() (list []Term) {
	for _, t := range terms {
		list = append(list, Term{capital(t.word), t.meaning, t.picture()})
	}
	return list
}

// picture is the drawing of the same name, if there is one.
func (t term) picture() TermPicture {
	if p := TermPicture(t.word); slices.Contains(TermPictures, p) {
		return p
	}
	return ""
}

// WordsHelp explains the words the program uses, a paragraph each.
func WordsHelp() string {
	var list []string
	for _, t := range terms {
		list = append(list, t.word+": "+t.meaning)
	}
	return strings.Join(list, "\n\n")
}

// term is a word of the trade, or of this program, and what it means.
type term struct{ word, meaning string }

// terms are in alphabetical order.
//
// What cassettes, leaders, trailers, fogged ends, short rolls and remjet are is common
// practice, no source. The pitches are those of SMPTE ST 139 (KS-1870, 0.1870 in) and
// SMPTE ST 93 (BH-1866, 0.1866 in), both of which give eight perforations to a still frame.
var terms = []term{
	{"all counted", "The cash, less what is left at the end (film, cassettes and chemistry you will still use, what equipment would sell for), " +
		"plus what your time is worth."},
	{"cassette", "The small light-tight can that holds a roll in the camera. Some kinds can be opened and filled again several times."},
	{"compared with", "The way to buy that the others are compared with, usually what you buy now. In the file it is called the baseline."},
	{"duty", "A charge on goods brought in from abroad, a percentage that depends on what they are. The customs authority decides what is due."},
	{"fogged end", "The part of a roll before its trailer that is lit while the film is taped to the spool in daylight. Loading in the dark saves it."},
	{"frame", "One picture on the film and the gap to the next: eight perforations long, 38.00 mm at the long pitch and 37.92 mm at the short one."},
	{"free limit", "The value of the film up to which no duty, or no import tax, is due; each has its own. Above it the charge is on the whole, " +
		"so a little more can cost a lot. The customs authority publishes it."},
	{"import tax", "What a country takes on goods from abroad in place of its sales tax: at the border, or through the seller at the checkout. " +
		"The customs authority decides what is due."},
	{"landed cost", "All that an order costs until it is in your hands: film, shipping, taxes, the card's fee, duty and handling at the border."},
	{"leader", "The start of a roll, pulled out of the cassette to thread the camera. It is lit and takes no pictures."},
	{"payback", "How many rolls it takes until what is saved on each has paid for the equipment."},
	{"perforation pitch", "The distance from one hole at the film's edge to the next: long is 4.750 mm, short 4.740 mm. " +
		"An exposure takes eight of them, so a reel of short pitch gives a little more."},
	{"remjet", "A black backing of soot on much cinema film. It comes off in an ordinary lab's baths and spoils them and other people's film: " +
		"ask the lab first."},
	{"saving in cash", "How much less leaves your wallet than by the way compared with, in the months looked at. " +
		"What is left over and your time are not in it."},
	{"short roll", "The last roll of a reel, of the exposures that are left when no full roll can be cut any more. Too short a one is not loaded."},
	{"standard roll", "The roll that every cost per roll is told for, usually of 36 exposures. Longer and shorter rolls are brought to it by their exposures."},
	{"trailer", "The end of a roll, taped to the spool in the cassette. It takes no pictures."},
	{"used share", "The part of an order that is shot before the film is too old. The rest is thrown away, so the part used bears the cost of all."},
	{"waste", "What a reel loses once at its start, where it is threaded, and once at its end, where it is fixed. No roll can be cut from it."},
}
