package words

import "fmt"

// What the window says where it shows the report as it will print.
const (
	PreviewName   = "Report"
	PreviewHint   = "As it will print. Page Up and Page Down turn the pages."
	PreviewExport = "Export as PDF…"
	PreviewMaking = "Laying out the pages …"
)

// PreviewPage is a page among others: "page 1".
func PreviewPage(n int) string { return fmt.Sprintf("page %d", n) }
