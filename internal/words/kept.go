package words

// Kept is where the program keeps files on this system; "" is nowhere.
type Kept struct {
	Open     string // the scenario file that is open
	Folder   string // where questions for a file begin
	Unsaved  string // the folder of unsaved work
	Backups  string // the folder of what first saves replaced
	Settings string
	Rates    string // the folder of published rates
}

// FilesHelp says where files are kept.
func FilesHelp(k Kept) []Passage {
	open := "Nothing that is open has a file yet. Questions for one begin in " + k.Folder + "."
	if k.Open != "" {
		open = k.Open
	}
	return []Passage{
		{Heading: "Your scenario file", Paragraphs: []string{open, "Wherever you save it, as plain text. What a save replaces stays beside it as .bak."}},
		{Heading: "What first saves replaced", Paragraphs: []string{orNowhere(k.Backups), "The last ten, each a scenario file to open."}},
		{Heading: "Unsaved work", Paragraphs: []string{orNowhere(k.Unsaved), "Kept while you type, and offered again after a crash. It goes when the window is closed."}},
		{Heading: "Settings", Paragraphs: []string{orNowhere(k.Settings), "The theme, the size of the text and of the window, the form of numbers, the files opened last."}},
		{Heading: "Published rates", Paragraphs: []string{orNowhere(k.Rates), "The bank's last good file, if you ever fetched one. Only this can be fetched again."}},
	}
}

func orNowhere(path string) string {
	if path == "" {
		return "Nowhere: this system has no folder for it."
	}
	return path
}
