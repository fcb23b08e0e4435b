package catalogue

import "strings"

// inHandFields are those of a reel in hand. How it is cut is said as of an offer's reel.
var inHandFields = join([]Entry{
	{"reel.name", None, "Name", "name", "what you call this reel; each name once",
		"What you call this reel, such as Tidewater 2. It stands on its labels; each name stands once among the reels."},
	{"reel.note", None, "Note", "note", "anything",
		"Whatever you want to remember about this reel. It changes no figure."},
	{"reel.offer", None, "Bought as", "way to buy it was bought as", "the offer it was bought as, which need not be there",
		"The way to buy it was bought as. What happens to the reel can be taken over there."},
	{"reel.bought", None, "Bought on", "day it was bought", "the day it came, such as 2027-01-31",
		"The day it came. It changes no figure."},
	{"reel.keeps_until", None, "Keeps until", "day it keeps until", "the day by which the film should be shot",
		"The day by which the film should be shot. It stands on the labels as use by."},
	{"reel.paid", Paid, "Paid", "what was paid", "what this reel came to until it was here",
		"What this one reel came to until it was here: film, shipping, duty and tax."},
	{"reel.currency", None, "Currency", "currency it was paid in", "the currency it was paid in; required where something was paid",
		"The currency it was paid in, such as EUR. Needed where something was paid."},
}, cuttingOfReel(), []Entry{
	{"reel.session_waste_mm", MM, "Lost a session", "what a session loses", "film lost on each day of loading, where the reel is taken out and threaded again",
		"Film lost on each day of loading, where the reel is taken out and threaded again; 0 if it stays in the loader."},
	{"reel.speed", None, "Speed", "speed", "the exposure index to set, 1 to 25,000; without it none on the labels",
		"The exposure index to set on the camera, from 1 to 25,000. It stands on the labels and in the speed code."},
	{"reel.process", None, "Process", "process", "how it is to be developed, for the labels",
		"How it is to be developed, for the labels."},
	{"reel.label_note", None, "On the labels", "note on the labels", "what else stands on each label",
		"What else stands on each label, where there is room."},
	{"reel.counter_mm", MM, "One count winds", "film of one count", "film that one count of the loader winds; without it no counter",
		"Film that one count of the loader winds. Wind a scrap over a few counts and measure it. Leave it empty without a counter."},
	{"reel.counter_growth_mm", MM, "Grows by", "growth of a count", "by how much a count grows from turn to turn",
		"By how much the turns grow as the spool gets thicker; 0 for a counter of frames. Two scraps of different counts tell it."},
	{"reel.counter_zero_mm", MM, "Before the 0", "film before the 0", "what is wound before the counter is set to 0",
		"Film that is wound before the counter is set to 0."},
	{"reel.counter_wraps", None, "Starts again after", "count it starts again after", "after how many counts the dial is back at its mark; without it never",
		"After how many counts the dial is back at its mark. Leave it empty if it goes on counting."},

	{"reel.load.date", None, "Loaded on", "day of loading", "the day these cassettes were loaded",
		"The day these cassettes were loaded."},
	{"reel.load.cassettes", None, "Cassettes", "cassettes loaded", "cassettes loaded alike, 1 to 999",
		"How many cassettes were loaded alike."},
	{"reel.load.exposures", Exposures, "Exposures in each", "exposures in each", "of each of them",
		"Exposures loaded into each of these cassettes."},
	{"reel.load.counts", None, "Counts", "counts", "what the counter showed; without it as computed",
		"What the counter showed, where it was another number than the one to turn to."},
	{"reel.load.note", None, "Note", "note", "anything",
		"Whatever you want to remember about these cassettes. It changes no figure."},

	{"reel.result.date", None, "Developed on", "day of developing", "the day these cassettes were developed",
		"The day these cassettes were developed."},
	{"reel.result.cassettes", None, "Cassettes", "cassettes developed", "cassettes developed alike, 1 to 999",
		"How many cassettes were developed alike."},
	{"reel.result.exposures", Exposures, "Exposures in each", "exposures in each", "that were loaded into each of them",
		"Exposures that were loaded into each of the developed cassettes."},
	{"reel.result.good", None, "Good", "good exposures", "usable frames of all together",
		"Technically usable frames of all these cassettes together. A bad picture on good film counts as good."},
	{"reel.result.lost_otherwise", None, "Lost otherwise", "exposures lost otherwise", "frames lost to the camera or to developing, which would have struck boxed film too",
		"Frames lost to the camera or to developing, which would have struck ready-made rolls too."},
	{"reel.result.note", None, "Note", "note", "anything",
		"Whatever you want to remember about this result. It changes no figure."},

	{"reel.recount.date", None, "Measured on", "day of measuring", "the day the film on the reel was measured",
		"The day it was measured. From then on it stands for what was computed."},
	{"reel.recount.left_mm", MM, "Left on the reel", "film left", "film on the reel, its end included; 0 where it is empty, lost or given away",
		"Film on the reel as measured, in millimetres, its end included; 0 if it is empty, lost or given away."},
	{"reel.recount.note", None, "Note", "note", "anything",
		"How it was measured, or where the reel went. It changes no figure."},
})

// cuttingOfReel is how a reel in hand is cut: the fields of an offer's reel.
func cuttingOfReel() []Entry {
	var list []Entry
	for _, e := range reelFields {
		e.Key = strings.TrimPrefix(e.Key, "offer.")
		list = append(list, e)
	}
	return list
}
