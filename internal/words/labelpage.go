package words

import "fmt"

// What stands on the page of a reel's labels.
const (
	LabelSheet     = "Sheet"
	OwnSheet       = "my own sheet"
	LabelsOf       = "Print"
	LabelsLoaded   = "those loaded"
	LabelsToCome   = "those to come"
	FirstFreeLabel = "First free label"
	LabelNumberOf  = "One of them: no."
	LinkLabelsPDF  = "Labels as PDF…"
	LinkLabelPNG   = "This label as PNG…"
	LinkCodePDF    = "Speed code as PDF…"
	HeadingCode    = "Speed code"
	CodeTolerance  = "Tolerance"
	NoLabels       = "No cassette to label there: load one, or print those to come."
	NoSuchLabel    = "no label there has this number; choose one of those shown"
	SheetColumns   = "Columns"
	SheetRows      = "Rows"
	SheetLeft      = "Margin left"
	SheetTop       = "Margin above"
	SheetRight     = "Margin right"
	SheetBottom    = "Margin below"
	SheetGapX      = "Gap across"
	SheetGapY      = "Gap down"
)

// LabelTitle is what the picture of one label is called.
func LabelTitle(reel string, number int) string { return fmt.Sprintf("Label %d: %s", number, reel) }
