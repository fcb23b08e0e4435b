package words

import "strings"

// Question is what is asked before something is done that loses something.
type Question struct {
	Title, Text string
	Yes         string // the reply that does it
}

// ProtectedFile asks before a file is replaced that is read-only or, where other says so,
// another user's.
func ProtectedFile(name string, other bool) Question {
	q := Question{
		Title: "Replace the read-only file?",
		Text:  name + " is read-only: somebody protected it from being changed. Cancel to write under another name.",
		Yes:   "Replace",
	}
	if other {
		q.Title = "Replace another user's file?"
		q.Text = name + " belongs to another user of this computer. Cancel to write under another name."
	}
	return q
}

// ChangedFile asks before a file is saved over that another program changed or, where gone
// says so, deleted after it was opened.
func ChangedFile(name string, gone bool) Question {
	q := Question{
		Title: "Overwrite " + name + "?",
		Text: "Another program changed this file after it was opened. Overwriting it loses that change; " +
			"the file as it is now stays beside it as .bak.",
		Yes: "Overwrite",
	}
	if gone {
		q.Title, q.Yes = "Save "+name+" again?", "Save"
		q.Text = "The file was deleted after it was opened."
	}
	return q
}

// ExistingFile asks before an export replaces a file.
func ExistingFile(name string) Question {
	return Question{
		Title: "Replace the file?",
		Text:  name + " is already there. Replacing it loses what it holds.",
		Yes:   "Replace",
	}
}

// What did not come about, over the reason.
const (
	NotOpened   = "The file was not opened"
	NotSaved    = "Nothing was saved"
	NotExported = "The chart was not written"
)

// Exported says that a file was written; parted that it had other names before.
func Exported(path string, parted bool) string {
	if parted {
		return "Written to " + path + ". " + parting
	}
	return "Written to " + path
}

// Lacking says which letters stand as boxes in what was written, "" for none.
func Lacking(letters []rune) string {
	if len(letters) == 0 {
		return ""
	}
	return ". The typeface lacks " + strings.Join(strings.Split(string(letters), ""), " ") + "; a box stands in each one's place."
}

// SummaryCopied says that the finding can be pasted.
const SummaryCopied = "The summary is copied."

// parting is said of a file that had hard links.
const parting = "It had other names (hard links); they keep what it held before."

// SavedApart says that a saved file had hard links.
const SavedApart = "Saved. " + parting

// CommentsLost tells that a file could only be saved written anew.
var CommentsLost = Question{
	Title: "Saved, without its comments",
	Text: "The text of the file could not be changed in place, so it was written anew: comments and the order of its keys " +
		"are gone from it. The file as it was stays beside it as .bak.",
}

// UnsavedChanges asks before work that is not saved is left; Yes saves it.
func UnsavedChanges(work string) Question {
	return Question{Title: "Save the changes?", Text: "The changes to " + work + " are not saved.", Yes: Save}
}

// Replies and titles of questions about files.
const (
	Save    = "Save"
	SaveAs  = "Save as"
	Discard = "Discard"
	Cancel  = "Cancel"
	Close   = "Close"
)

// NoScenarioIn says that a file is sound but empty.
func NoScenarioIn(path string) string { return path + " holds no scenario." }

// FileOfSeveral is the name proposed for a file of several scenarios.
const FileOfSeveral = "Scenarios"

// NoFileYet is the name of work that is in no file.
const NoFileYet = "not in a file yet"

// WorkState is the line under the scenario's name: whether the work is saved, and the
// currency it is told in. inFile says whether it has a file of its own.
func WorkState(unsaved, inFile bool, currency string) string {
	state := "saved"
	switch {
	case unsaved:
		state = "● unsaved"
	case !inFile:
		state = "demo"
	}
	return state + " · all in " + currency
}

// The question where to write.
const (
	FieldFile       = "File"
	LinkOtherFolder = "Choose another folder…"
	TypeFileName    = "Type a file name."
	PathIsFolder    = "This is a folder; add a file name."
)

// NameMustEnd says how a file's name may end.
func NameMustEnd(endings []string) string {
	return "The name must end in " + listed(endings, "or") + "."
}

// NoSuchFolder says that a file cannot be in a folder.
func NoSuchFolder(folder string) string {
	return "There is no folder " + folder + "; choose one that exists."
}
