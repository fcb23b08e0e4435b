// Package assets holds what is built into the programs: the typeface, under the
// licence in NotoSans-LICENSE.txt.
//
// Treat the bytes as read-only: every caller gets the same ones.
package assets

import _ "embed"

// Regular is Noto Sans, TrueType.
//
//go:embed NotoSans-Regular.ttf
var Regular []byte

// Bold is Noto Sans Bold, TrueType.
//
//go:embed NotoSans-Bold.ttf
var Bold []byte
