package words

import (
	"fmt"
	"strings"
)

// A new scenario, and a scenario's name.
const (
	NewScenarioName = "New scenario"

	LastScenario    = "The last scenario stays"
	LastScenarioWhy = "A file needs one scenario. Make another first."

	ScenarioUnnamed   = "it needs a name"
	ScenarioNameTaken = "another scenario has this name"
	OfferUnnamed      = "it needs a name"
	OfferNameTaken    = "another one has this name"
)

// NameTooLong is said of a name with more letters than it may have.
func NameTooLong(most int) string { return fmt.Sprintf("at most %d letters", most) }

// How far an input may go.
const (
	RangeTitle = "How far a figure may go"
	RangeInput = "Figure"
	RangeFrom  = "From"
	RangeTo    = "to"
	RangeUsual = "As usual"
	RangeSet   = "Set"
)

// The quick question whether an offer is a deal.
const (
	DealTitle     = "Is it a deal?"
	DealName      = "Somebody's offer"
	DealKind      = "Somebody offers"
	DealPrice     = "Price asked"
	DealPostage   = "Postage"
	DealRolls     = "Rolls"
	DealLength    = "Length"
	DealExposures = "Exposures in each"
	DealBad       = "Expected bad"
	DealSaving    = "Cheaper by at least"
	DealOther     = "Compared with"
	DealCheapest  = "the cheapest roll"
	DealKeep      = "Keep as a way to buy"
)

// The charts, as a file's name and the question where to write it call them.
const (
	ChartCost    = "cost per roll"
	ChartSpend   = "the year's spend"
	ChartFlip    = "what changes it"
	ChartSwings  = "what moves the saving"
	ChartVolumes = "who is cheaper by rolls a year"
	ChartSizes   = "order size"
	ChartCuts    = "cut sizes"
	ChartPast    = "the past"

	ExportReport      = "report"
	ExportSpreadsheet = "spreadsheet"
	ExportTables      = "tables"
	ExportData        = "data"

	Export           = "Export"
	ExportWhat       = "What"
	ExportForm       = "Form"
	ExportPaper      = "Paper"
	PaperA4          = "A4"
	PaperLetter      = "Letter"
	ExportColours    = "Colours"
	ExportScale      = "Size of a PNG"
	ColoursPaper     = "paper"
	ColoursSafelight = "safelight"
)

// FormOf is the form of a file by its ending, in a list.
func FormOf(ending string) string {
	about := map[string]string{
		".png": "a picture", ".svg": "lines to edit", ".pdf": "to print",
		".csv": "for a spreadsheet", ".md": "for notes and talks", ".json": "for programs", ".xlsx": "with live formulas",
	}[ending]
	name := strings.ToUpper(strings.TrimPrefix(ending, "."))
	if ending == ".md" {
		name = "Markdown"
	}
	return name + ", " + about
}

// ExportOf is the title of the question how to hand on one thing.
func ExportOf(what string) string { return Export + " " + what }

// What widgets say of themselves.
const (
	CopyTable = "Copy"
	CopyText  = "Copy the text"
	FindOne   = "type to find one"
	FindNone  = "nothing begins so"

	SpokenChosen = "chosen"
	SpokenEmpty  = "empty"
	SpokenPage   = "page"
	SpokenUnit   = "unit"
	SpokenFile   = "Scenario"
)
