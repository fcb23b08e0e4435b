package pages

import (
	"strings"

	"fyne.io/fyne/v2"

	"reelworth/internal/desk/kit"
)

// AccessibilityLabel of the receipt reads its rows out.
func (l *ReceiptTable) AccessibilityLabel() string {
	return kit.Spoken(kit.Objects(l.Shown()...)...)
}
func (l *ReceiptTable) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleText }

// AccessibilityLabel of a row is its line, its amounts and how it came about.
func (r *receiptRow) AccessibilityLabel() string {
	var parts []string
	for _, t := range []*kit.Text{r.label, r.Seller, r.Home, r.how} {
		if text := t.String(); text != "" {
			parts = append(parts, text)
		}
	}
	return strings.Join(parts, ", ")
}
func (r *receiptRow) AccessibilityRole() fyne.AccessibleRole { return fyne.AccessibleRoleText }
