// Package version says which Reelworth this is.
//
// It promises to ask the build alone: a build of a tag bears the tag's number, one of
// any other revision says which, and one made without either bears the number of the
// release being worked on.
package version
