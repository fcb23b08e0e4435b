package kit

// Labels are the few words that widgets say of themselves. The window gives them once,
// before it makes any.
var Labels struct {
	Close, Cancel string // of dialogs
	Copy          string // of a table
	FindOne       string // in an open list, before a letter is typed
	FindNone      string // after letters that nothing begins with
	Chosen, Empty string // of a card or an option, and of a field, read aloud
	Unit          string // what is chosen beside a field, read aloud
	Page          string // before the name of a page, read aloud
}
