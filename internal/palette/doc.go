// Package palette is the colours of the two themes, paper and safelight.
//
// It promises, and its tests hold, that on each of the theme's grounds every part of
// a chart stands out at 3:1 or more and every text at 4.5:1 or more, which are the
// ratios of WCAG 2.2 (success criteria 1.4.11 and 1.4.3).
package palette
