// Package film knows 35 mm film as an object: perforations, frames, the ends a
// cassette needs, and how a long reel divides into cassettes. It knows no money.
package film
