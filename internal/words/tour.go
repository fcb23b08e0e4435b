package words

import "fmt"

// TourStop is what is said at one step of the tour.
type TourStop struct{ Title, Text string }

// The stops of the tour.
var (
	TourWays = TourStop{"The ways to buy",
		"Each is one way to get film, with what a roll of it comes to once everything is counted. Choose one, and the form and the answer turn to it."}
	TourPrice = TourStop{"What the seller asks",
		"Type what the seller's page says, in its currency. Beside the field stands what it comes to, and every figure follows as you type."}
	TourReceipt = TourStop{"The receipt",
		"What an order costs, line by line, until it is in your hands, rounded as it will be billed. Below it, what a roll comes to."}
	TourVerdict = TourStop{"The answer",
		"What this way saves or costs you against the one compared with: first the cash that leaves your wallet, then all counted."}
	TourChanges = TourStop{"What changes it",
		"Where the answer turns, the nearest first: at which rate, at how many rolls a year, at which price. Choose a line and it is drawn."}
	TourHandingOn = TourStop{"Handing it on",
		"Save keeps all of it as plain text in a file of yours. Export writes what the page shows, Report two pages for somebody else. They are all under File."}
)

// The buttons of the tour.
const (
	TourBack  = "Back"
	TourNext  = "Next"
	TourDone  = "Done"
	TourLeave = "Leave"
)

// TourPlace counts the steps from 1: "2 of 6".
func TourPlace(step, of int) string { return fmt.Sprintf("%d of %d", step, of) }

// TourOfDemo says what the tour goes through while the demo is open.
const TourOfDemo = "What you see is the built-in demo; its figures are made up. The tour changes nothing."

// TourOf says that it goes through what is open.
func TourOf(name string) string {
	return fmt.Sprintf("The tour goes through what is open: %s. It changes nothing in it.", name)
}

// What is said once, at the first start, beside its link.
const (
	TourOffer     = "New here? Six steps show where everything is."
	LinkTakeATour = "Take the tour"
)
