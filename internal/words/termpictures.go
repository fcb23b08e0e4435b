package words

// TermPicture is a drawing that goes with a term; "" for none.
type TermPicture string

// The drawings.
const (
	DrawnLeader    TermPicture = "leader"
	DrawnTrailer   TermPicture = "trailer"
	DrawnFogged    TermPicture = "fogged end"
	DrawnPitch     TermPicture = "perforation pitch"
	DrawnFrame     TermPicture = "frame"
	DrawnRemjet    TermPicture = "remjet"
	DrawnShortRoll TermPicture = "short roll"
	DrawnWaste     TermPicture = "waste"
)

// TermPictures are all drawings.
var TermPictures = []TermPicture{DrawnFogged, DrawnFrame, DrawnLeader, DrawnPitch, DrawnRemjet, DrawnShortRoll, DrawnTrailer, DrawnWaste}

// What stands in the drawings.
const (
	DrawnAsLeader    = "leader"
	DrawnAsExposures = "exposures"
	DrawnAsFogged    = "fogged end"
	DrawnAsTrailer   = "trailer"
	DrawnAsStart     = "start"
	DrawnAsFull      = "full roll"
	DrawnAsShort     = "short roll"
	DrawnAsEnd       = "end"
	DrawnAsPitch     = "pitch: 4.750 mm long, 4.740 mm short"
	DrawnAsFrame     = "frame: eight perforations"
	DrawnAsEmulsion  = "emulsion: the picture"
	DrawnAsBase      = "film base"
	DrawnAsRemjet    = "remjet: soot, on the back"
)

// TermDrawn describes a drawing.
func TermDrawn(p TermPicture) string {
	const roll = "A roll from its start to its end: leader, exposures, fogged end, trailer. "
	const reel = "A reel as it is cut: its start, full rolls, a short roll, its end. "
	return map[TermPicture]string{
		DrawnLeader:    roll + "The leader is marked.",
		DrawnTrailer:   roll + "The trailer is marked.",
		DrawnFogged:    roll + "The fogged end is marked.",
		DrawnPitch:     "The film's edge with its perforations. The distance from one to the next is marked.",
		DrawnFrame:     "The film's edge with its perforations. A frame, eight of them long, is marked.",
		DrawnRemjet:    "The film cut through: the emulsion, the base below it, and the remjet on its back, which is marked.",
		DrawnShortRoll: reel + "The short roll is marked.",
		DrawnWaste:     reel + "The start and the end are marked.",
	}[p]
}
