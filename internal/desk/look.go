package desk

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"reelworth/assets"
	"reelworth/internal/palette"
)

// Colours of our own beside the toolkit's.
const (
	colGround                      = theme.ColorNameBackground
	colField   fyne.ThemeColorName = "field"
	colChosen  fyne.ThemeColorName = "chosen"
	colInk                         = theme.ColorNameForeground
	colMuted   fyne.ThemeColorName = "muted"
	colRule    fyne.ThemeColorName = "rule"
	colAccent                      = theme.ColorNamePrimary
	colGood    fyne.ThemeColorName = "good"
	colFault                       = theme.ColorNameError
	colNothing fyne.ThemeColorName = "nothing"
)

// themeChoice is which theme the user asked for.
type themeChoice string

const (
	followSystem   themeChoice = "system"
	alwaysPaper    themeChoice = "paper"
	alwaysDarkroom themeChoice = "safelight"
)

// look is the program's theme.
type look struct{ choice themeChoice }

// theLook is the one theme of the program: the toolkit knows one per app, and asks it
// again whenever it is set.
var theLook = &look{choice: followSystem}

func (l *look) palette(v fyne.ThemeVariant) palette.Theme {
	switch {
	case l.choice == alwaysPaper, l.choice == followSystem && v == theme.VariantLight:
		return palette.Paper
	}
	return palette.Safelight
}

// palette is the colours in use now.
func currentPalette() palette.Theme {
	return theLook.palette(fyne.CurrentApp().Settings().ThemeVariant())
}

// Color of the theme, ours and the toolkit's names.
func (l *look) Color(name fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	p := l.palette(v)
	switch name {
	case colNothing:
		return color.Transparent
	case theme.ColorNameBackground, theme.ColorNameHeaderBackground:
		return p.Ground
	case colField, theme.ColorNameInputBackground, theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground:
		return p.Field
	case colChosen, theme.ColorNameHover, theme.ColorNamePressed, theme.ColorNameButton, theme.ColorNameDisabledButton:
		return p.Chosen
	case theme.ColorNameForeground:
		return p.Ink
	case colMuted, theme.ColorNamePlaceHolder, theme.ColorNameDisabled:
		return p.Muted
	case colRule, theme.ColorNameSeparator, theme.ColorNameInputBorder:
		return p.Rule
	case theme.ColorNamePrimary, theme.ColorNameHyperlink, theme.ColorNameWarning:
		return p.Accent
	case theme.ColorNameFocus:
		return fade(p.Accent, 0x50)
	case theme.ColorNameSelection:
		return fade(p.Accent, 0x50)
	case colGood, theme.ColorNameSuccess:
		return p.Good
	case theme.ColorNameError:
		return p.Fault
	case theme.ColorNameForegroundOnPrimary, theme.ColorNameForegroundOnError, theme.ColorNameForegroundOnSuccess, theme.ColorNameForegroundOnWarning:
		return p.Ground
	case theme.ColorNameScrollBar:
		return fade(p.Muted, 0x90)
	case theme.ColorNameScrollBarBackground:
		return color.Transparent
	}
	return theme.DefaultTheme().Color(name, l.variant(v))
}

func (l *look) variant(v fyne.ThemeVariant) fyne.ThemeVariant {
	if l.palette(v).Name == palette.Paper.Name {
		return theme.VariantLight
	}
	return theme.VariantDark
}

// Font is one typeface in two weights; its digits are all of one width.
func (l *look) Font(s fyne.TextStyle) fyne.Resource {
	switch {
	case s.Symbol:
		return theme.DefaultTheme().Font(s)
	case s.Bold:
		return fontBold
	}
	return fontRegular
}

var (
	fontRegular = fyne.NewStaticResource("NotoSans-Regular.ttf", assets.Regular)
	fontBold    = fyne.NewStaticResource("NotoSans-Bold.ttf", assets.Bold)
)

// Icon is the toolkit's.
func (l *look) Icon(n fyne.ThemeIconName) fyne.Resource { return theme.DefaultTheme().Icon(n) }

// Size is tighter than the toolkit's, for a form beside a seller's page.
func (l *look) Size(n fyne.ThemeSizeName) float32 {
	switch n {
	case theme.SizeNameText:
		return sizeText
	case theme.SizeNameCaptionText:
		return sizeSmall
	case theme.SizeNameSubHeadingText:
		return sizeTitle
	case theme.SizeNameHeadingText:
		return sizeAnswer
	case theme.SizeNameInnerPadding:
		return 7
	case theme.SizeNameInputRadius, theme.SizeNameSelectionRadius:
		return 4
	case theme.SizeNameScrollBar:
		return 10
	case theme.SizeNameInlineIcon:
		return 18
	}
	return theme.DefaultTheme().Size(n)
}

func fade(c color.NRGBA, alpha uint8) color.Color {
	c.A = alpha
	return c
}

// bareLook is theLook with entries that draw no box.
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
	return theLook.Color(n, v)
}

func (bareTheme) Font(s fyne.TextStyle) fyne.Resource     { return theLook.Font(s) }
func (bareTheme) Icon(n fyne.ThemeIconName) fyne.Resource { return theLook.Icon(n) }

func (bareTheme) Size(n fyne.ThemeSizeName) float32 {
	switch n {
	case theme.SizeNameInnerPadding:
		return barePadding
	case theme.SizeNameInputBorder: // also the width of the cursor
		return 1.5
	}
	return theLook.Size(n)
}
