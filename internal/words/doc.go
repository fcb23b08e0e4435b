// Package words holds every sentence the program says about a comparison, so that the
// window, the command line and the charts say the same.
//
// It promises to decide and to compute nothing: it chooses a sentence and fills in what
// the engine found out, at most rounded for reading or brought to another unit.
//
// The rules of the wording:
//
//   - Plain words, those of a person who buys film. No term that is not explained where
//     it stands, no code of the program, no exclamation.
//   - Cash first, because it is what the wallet sees; then all counted, with what is
//     left over.
//   - Whole amounts in headlines, amounts to the minor unit everywhere else. An amount
//     below half a unit keeps its minor unit, so that no headline says "EUR 0".
//   - The ISO 4217 code is always visible: beside the amount, or over its column, or
//     once in the same sentence. Never a bare currency sign.
//   - A percent sign stands after a space, a minus before its number, × and ÷ between
//     numbers. Dates read 20 Nov 2026, months July or, beyond a year, July 2028.
//   - "this year" is said of twelve months and of nothing else.
//   - What is wrong comes with what would do. A warning says what it is, then what to do.
//   - Safety, disposal, and what is due at a border are others' to say: sentences about
//     them name the safety data sheet, the local rules, the customs authority.
//   - The only reel is "the reel"; where there are several they are called by name.
//   - British spelling. Numbers in the reader's locale, words in English.
package words
