// Package handout prints a comparison on two pages, to hand to somebody who has not the
// program: the finding, both charts and the ways to buy; then the receipts of the two
// best, what would change the answer, what is assumed, and what to be careful about.
//
// It promises two pages for up to 8 ways to buy and 8 rates, beyond which tables go on
// over further ones; text that can be selected; the same file, byte for byte, for the
// same comparison, day and version; and to tell which letters the typeface lacks.
package handout
