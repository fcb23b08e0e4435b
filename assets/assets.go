// Package assets holds what is built into the programs: the icon, and the
// typeface, under the licence in NotoSans-LICENSE.txt.
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

// Icon is the program's icon, PNG, 512 × 512 px; it is drawn in icon.svg.
//
//go:embed icon.png
var Icon []byte
