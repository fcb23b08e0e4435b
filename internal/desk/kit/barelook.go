package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// bareLook is Look with entries that draw no box.
var bareLook fyne.Theme = bareTheme{}

type bareTheme struct{}

func (bareTheme) Color(n fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	switch n {
	case theme.ColorNameInputBackground, theme.ColorNameInputBorder:
		return color.Transparent
	case theme.ColorNamePrimary:
		// The entry's own focus border; its blinking cursor does not ask here.
		if fyne.CurrentApp().Settings().ShowAnimations() {
			return color.Transparent
		}
	}
	return Look.Color(n, v)
}

func (bareTheme) Font(s fyne.TextStyle) fyne.Resource     { return Look.Font(s) }
func (bareTheme) Icon(n fyne.ThemeIconName) fyne.Resource { return Look.Icon(n) }

func (bareTheme) Size(n fyne.ThemeSizeName) float32 {
	switch n {
	case theme.SizeNameInnerPadding:
		return barePadding
	case theme.SizeNameInputBorder: // also the width of the cursor
		return 1.5
	}
	return Look.Size(n)
}
