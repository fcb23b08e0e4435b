package words

// reelHelps is the help on the fields of a reel in hand. How it is cut is said as of an
// offer's reel.
var reelHelps = map[string]string{
	"reel.name":             "What you call this reel, such as Tidewater 2. It stands on its labels; each name stands once among the reels.",
	"reel.note":             "Whatever you want to remember about this reel. It changes no figure.",
	"reel.offer":            "The way to buy it was bought as. What happens to the reel can be taken over there.",
	"reel.bought":           "The day it came. It changes no figure.",
	"reel.keeps_until":      "The day by which the film should be shot. It stands on the labels as use by.",
	"reel.paid":             "What this one reel came to until it was here: film, shipping, duty and tax.",
	"reel.currency":         "The currency it was paid in, such as EUR. Needed where something was paid.",
	"reel.session_waste_mm": "Film lost on each day of loading, where the reel is taken out and threaded again; 0 if it stays in the loader.",
	"reel.speed":            "The exposure index to set on the camera, from 1 to 25,000. It stands on the labels and in the speed code.",
	"reel.process":          "How it is to be developed, for the labels.",
	"reel.label_note":       "What else stands on each label, where there is room.",

	"reel.counter_mm":        "Film that one count of the loader winds. Wind a scrap over a few counts and measure it. Leave it empty without a counter.",
	"reel.counter_growth_mm": "By how much the turns grow as the spool gets thicker; 0 for a counter of frames. Two scraps of different counts tell it.",
	"reel.counter_zero_mm":   "Film that is wound before the counter is set to 0.",
	"reel.counter_wraps":     "After how many counts the dial is back at its mark. Leave it empty if it goes on counting.",

	"reel.load.date":      "The day these cassettes were loaded.",
	"reel.load.cassettes": "How many cassettes were loaded alike.",
	"reel.load.exposures": "Exposures loaded into each of these cassettes.",
	"reel.load.counts":    "What the counter showed, where it was another number than the one to turn to.",
	"reel.load.note":      "Whatever you want to remember about these cassettes. It changes no figure.",

	"reel.result.date":           "The day these cassettes were developed.",
	"reel.result.cassettes":      "How many cassettes were developed alike.",
	"reel.result.exposures":      "Exposures that were loaded into each of the developed cassettes.",
	"reel.result.good":           "Technically usable frames of all these cassettes together. A bad picture on good film counts as good.",
	"reel.result.lost_otherwise": "Frames lost to the camera or to developing, which would have struck ready-made rolls too.",
	"reel.result.note":           "Whatever you want to remember about this result. It changes no figure.",

	"reel.recount.date":    "The day it was measured. From then on it stands for what was computed.",
	"reel.recount.left_mm": "Film on the reel as measured, in millimetres, its end included; 0 if it is empty, lost or given away.",
	"reel.recount.note":    "How it was measured, or where the reel went. It changes no figure.",
}
