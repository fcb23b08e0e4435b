package kit

// Labels are the few words that widgets say of themselves. The window gives them once,
// before it makes any.
var Labels struct {
	Close, Cancel string // of dialogs
	Copy          string // of a table
	FindOne       string // in an open list, before a letter is typed
	FindNone      string // after letters that nothing begins with
}
