package kit

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"reelworth/assets"
	"reelworth/internal/palette"
)

// Colours of our own beside the toolkit's.
const (
	Ground                     = theme.ColorNameBackground
	Field  fyne.ThemeColorName = "field"
	Chosen fyne.ThemeColorName = "chosen"
	Ink                        = theme.ColorNameForeground
	Muted  fyne.ThemeColorName = "muted"
	Rule   fyne.ThemeColorName = "rule"
	Accent                     = theme.ColorNamePrimary
	Good   fyne.ThemeColorName = "good"
	Fault                      = theme.ColorNameError
	Clear  fyne.ThemeColorName = "nothing"
	Veil   fyne.ThemeColorName = "veil" // over what is not meant now
)

// ThemeChoice is which theme the user asked for.
type ThemeChoice string

const (
	FollowSystem    ThemeChoice = "system"
	AlwaysPaper     ThemeChoice = "paper"
	AlwaysSafelight ThemeChoice = "safelight"
)

// Theme is the program's theme.
type Theme struct{ Choice ThemeChoice }

// Look is the one theme of the program: the toolkit knows one per app, and asks it
// again whenever it is set.
var Look = &Theme{Choice: FollowSystem}

func (l *Theme) palette(v fyne.ThemeVariant) palette.Theme {
	switch {
	case l.Choice == AlwaysPaper, l.Choice == FollowSystem && v == theme.VariantLight:
		return palette.Paper
	}
	return palette.Safelight
}

// Palette is the colours in use now.
func Palette() palette.Theme {
	return Look.palette(fyne.CurrentApp().Settings().ThemeVariant())
}

// Color of the theme, ours and the toolkit's names.
func (l *Theme) Color(name fyne.ThemeColorName, v fyne.ThemeVariant) color.Color {
	p := l.palette(v)
	switch name {
	case Clear:
		return color.Transparent
	case Veil:
		return fade(p.Ground, 0x90)
	case theme.ColorNameBackground, theme.ColorNameHeaderBackground:
		return p.Ground
	case Field, theme.ColorNameInputBackground, theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground:
		return p.Field
	case Chosen, theme.ColorNameHover, theme.ColorNamePressed, theme.ColorNameButton, theme.ColorNameDisabledButton:
		return p.Chosen
	case theme.ColorNameForeground:
		return p.Ink
	case Muted, theme.ColorNamePlaceHolder, theme.ColorNameDisabled:
		return p.Muted
	case Rule, theme.ColorNameSeparator, theme.ColorNameInputBorder:
		return p.Rule
	case theme.ColorNamePrimary, theme.ColorNameHyperlink, theme.ColorNameWarning:
		return p.Accent
	case theme.ColorNameFocus:
		return fade(p.Accent, 0x50)
	case theme.ColorNameSelection:
		return fade(p.Accent, 0x50)
	case Good, theme.ColorNameSuccess:
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

func (l *Theme) variant(v fyne.ThemeVariant) fyne.ThemeVariant {
	if l.palette(v).Name == palette.Paper.Name {
		return theme.VariantLight
	}
	return theme.VariantDark
}

// Font is one typeface in two weights; its digits are all of one width.
func (l *Theme) Font(s fyne.TextStyle) fyne.Resource {
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
func (l *Theme) Icon(n fyne.ThemeIconName) fyne.Resource { return theme.DefaultTheme().Icon(n) }

// Size is tighter than the toolkit's, for a form beside a seller's page.
func (l *Theme) Size(n fyne.ThemeSizeName) float32 {
	switch n {
	case theme.SizeNameText:
		return SizeText
	case theme.SizeNameCaptionText:
		return SizeSmall
	case theme.SizeNameSubHeadingText:
		return SizeTitle
	case theme.SizeNameHeadingText:
		return SizeAnswer
	case theme.SizeNameInnerPadding:
		return 7
	case theme.SizeNameInputBorder: // the width of a cursor
		return 1.5
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
