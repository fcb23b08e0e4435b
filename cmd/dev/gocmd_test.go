package main

import (
	"strings"
	"testing"
)

// The tag is the toolkit's own; without it a screen reader finds an empty window.
func TestWindowsForPeopleSpeakWhereTheyCan(t *testing.T) {
	for tags, want := range map[string]bool{tagsOn("darwin"): true, tagsOn("windows"): true, releaseWindows.tags: true, tagsOn("linux"): false, releaseLinux.tags: false} {
		if got := strings.Contains(","+tags+",", ",accessibility,"); got != want || !strings.HasPrefix(tags, windowTags) {
			t.Error(tags)
		}
	}
}
