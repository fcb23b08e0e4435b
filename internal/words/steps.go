package words

// The steps that can be taken back, as the menu names them after Undo and Redo. A change
// of one field has the field's own name.
const (
	StepAddEquipment    = "adding equipment"
	StepRemoveEquipment = "removing equipment"
	StepRemoveRate      = "removing an exchange rate"
	StepDayRates        = "taking a day's rates"
	StepStatement       = "taking a rate from a statement"
	StepTurnRate        = "turning an exchange rate round"
	StepAddProcess      = "adding a way of developing"
	StepDevelopAll      = "the developing of all"
	StepRange           = "a range"
	StepDropRanges      = "taking out what is not used"
	StepUsualRange      = "going back to the usual range"
	StepCompareWith     = "what the others are compared with"
	StepMove            = "the order of the ways to buy"
	StepOrder           = "how much is ordered at once"
	StepNewScenario     = "a new scenario"
	StepRename          = "the name of the scenario"
	StepForgetSeen      = "forgetting a price seen"
	StepPutInHand       = "putting a reel in hand"
	StepRemoveReel      = "taking a reel out"
	StepLoad            = "load"
	StepResult          = "result"
	StepRecount         = "recount"
	StepPlan            = "plan loaded"
	StepCassette        = "cassette"
	StepCounter         = "counter"
	StepTakeOver        = "what the reels taught"
)

// StepAdd is adding something by its name.
func StepAdd(name string) string { return "adding " + name }

// StepRemove is taking it away.
func StepRemove(name string) string { return "removing " + name }

// StepDuplicate is making another like it.
func StepDuplicate(name string) string { return "duplicating " + name }

// StepDelete is taking a whole scenario away.
func StepDelete(name string) string { return "deleting " + name }

// StepSeen is keeping a price that was seen of an offer.
func StepSeen(offer string) string { return "a price seen of " + offer }

// StepUseSeen is putting a price that was seen in use.
func StepUseSeen(offer string) string { return "the price of " + offer }

// ChangedEntry and RemovedEntry are what is done to an entry of a log.
func ChangedEntry(entry string) string { return "changed " + entry }
func RemovedEntry(entry string) string { return "taking out the " + entry }
