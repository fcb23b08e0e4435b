package words

import (
	"fmt"
	"path/filepath"
	"strings"
	"time"
)

// What is said of work that is not saved, and of others who have the file open.
const (
	OldWorkStays     = "Unsaved work that was dropped is still kept"
	RecoveryStays    = "The recovery file was not removed"
	RecoveryUnread   = "Unsaved work of an earlier window cannot be read"
	OpenElsewhere    = "Another window has this file open: the last one to save asks before it overwrites."
	ChangedElsewhere = "Another program changed this file: saving asks before it overwrites."
)

// NoRecovery says that this window keeps nothing of unsaved work, and why.
func NoRecovery(err error) string { return "Unsaved work would not outlive a crash: " + Failure(err) }

// NotKept says that what is unsaved now is not kept.
func NotKept(err error) string { return "Unsaved work is not kept: " + Failure(err) }

// KeptForNow says where unsaved work is kept for want of a home folder.
func KeptForNow(dir string) string {
	return "Without a home folder unsaved work is kept in " + dir + ", which a restart of the computer may empty: save often."
}

// The question what to do with work that was found.
const (
	WorkFound  = "Unsaved work was found"
	NotNow     = "Not now"
	TakeUp     = "Take it up"
	NotRemoved = "It was not removed"
)

// LeftWork tells what was found: of which file, "" for work that had none, and of when;
// what is wrong with it, nil for nothing; and how it differs from the file.
func LeftWork(path string, when time.Time, damaged error, differences []string) string {
	at := when.Local().Format("2 Jan 2006, 15:04")
	text := fmt.Sprintf("Work of %s that was in no file yet was not saved when the window ended.", at)
	if path != "" {
		text = fmt.Sprintf("Changes to %s, of %s, were not saved when the window ended.", filepath.Base(path), at)
	}
	parts := []string{text}
	if damaged != nil {
		parts = append(parts, Failure(damaged))
	}
	return strings.Join(append(parts, differences...), "\n\n")
}
