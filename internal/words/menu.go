package words

import (
	"path/filepath"
	"strings"

	"reelworth/internal/exact"
	"reelworth/internal/money"
)

// The commands of the menus. One that asks first ends in "…".
const (
	MenuFile        = "File"
	MenuOpen        = "Open…"
	MenuRecent      = "Open recent"
	MenuNoneRecent  = "none yet"
	MenuSave        = "Save"
	MenuSaveAs      = "Save as…"
	MenuExport      = "Export…"
	MenuReport      = "Report…"
	MenuSpreadsheet = "Spreadsheet…"
	MenuOpenRates   = "Open published rates…"
	MenuFetchRates  = "Fetch published rates from the bank"
	MenuQuit        = "Quit"

	MenuEdit        = "Edit"
	MenuUndo        = "Undo"
	MenuRedo        = "Redo"
	MenuCopySummary = "Copy summary"
	MenuAddReel     = "Add a reel"
	MenuAddBoxed    = "Add boxed film"
	MenuDeal        = "Is it a deal?…"
	MenuDuplicate   = "Duplicate this way to buy"
	MenuRenameOffer = "Rename this way to buy"
	MenuMoveUp      = "Move it up"
	MenuMoveDown    = "Move it down"
	MenuCompareWith = "Compare the others with this one"
	MenuRemove      = "Remove this way to buy"

	MenuPutInHand = "Put this reel in hand"
	MenuPlanCut   = "Plan the cut of this reel"
	MenuLoaded    = "Cassettes loaded…"
	MenuDeveloped = "Cassettes developed…"
	MenuMeasured  = "Film measured…"

	MenuScenario = "Scenario"
	MenuNewEmpty = "New, from nothing"
	MenuNewDemo  = "New, from the demo"
	MenuNewCopy  = "New, from this one"
	MenuNext     = "Next"
	MenuPrevious = "Previous"
	MenuBeside   = "Side by side"
	MenuRename   = "Rename"
	MenuDelete   = "Delete"

	MenuView           = "View"
	MenuShowIn         = "In another currency…"
	ThemeSystem        = "Theme of the system"
	ThemePaper         = "Paper theme"
	ThemeSafelight     = "Safelight theme"
	TextAsDrawn        = "Text as drawn"
	TextLarger         = "Larger text"
	TextLargest        = "Largest text"
	MenuNumbers        = "Numbers"
	MenuNextColumn     = "Next column"
	MenuPreviousColumn = "Previous column"

	MenuHelp      = "Help"
	MenuTour      = "Tour"
	MenuKeys      = "Keys"
	MenuModel     = "How it computes"
	MenuFilesHelp = "Where files are kept"
	MenuKeysOf    = "The scenario file"
	MenuWords     = "Words"
	MenuRatesHelp = "About rates"
	MenuCautions  = "Cautions"
	MenuAbout     = "About " + Program
)

// namesOfKeys are those that a keyboard does not have printed on it as the toolkit calls them.
var namesOfKeys = map[string]string{"Next": "Page Down", "Prior": "Page Up"}

// Keys are the keys of a command: "Ctrl+Shift+R".
func Keys(ctrl, alt, shift bool, key string) string {
	text := ""
	for _, k := range []struct {
		held bool
		name string
	}{{ctrl, "Ctrl+"}, {alt, "Alt+"}, {shift, "Shift+"}} {
		if k.held {
			text += k.name
		}
	}
	if name, has := namesOfKeys[key]; has {
		key = name
	}
	return text + key
}

// What the switch shows where the form and the answer have room for one of them only.
const (
	SeenForm   = "What you type"
	SeenAnswer = "The answer"
)

// Undo is the command that takes a step back, with what the step is called.
func Undo(step string) string { return named(MenuUndo, step) }

// Redo is the command that makes it again.
func Redo(step string) string { return named(MenuRedo, step) }

func named(verb, step string) string {
	if step == "" {
		return verb
	}
	return verb + " " + step
}

// RecentFile is a file in the list of those opened last.
func RecentFile(path string) string {
	return strings.Join(strings.Fields(filepath.Base(path)), " ") + "  –  " + strings.Join(strings.Fields(filepath.Dir(path)), " ")
}

// What is remembered between starts.
const (
	PreferredTheme   = "theme"
	PreferredText    = "size of the text"
	PreferredNumbers = "form of numbers"
	PreferredSize    = "size of the window"
)

// PreferencesLeftOut says that what was remembered made no sense.
func PreferencesLeftOut(names []string) string {
	return "What was remembered made no sense and was left out: " + listed(names, "and") + "."
}

// NumbersSample shows a way of writing numbers by a number in it.
func NumbersSample(l money.Locale) string {
	return l.Number(exact.Ratio(123450, 100), 2) + "   " + string(l)
}

// WindowTitle names a file in the title of the window, with a sign where it is not saved.
func WindowTitle(file string, unsaved bool) string {
	title := Program + " – " + file
	if unsaved {
		return "● " + title
	}
	return title
}
