// Package reels follows a reel in hand from its first cassette to its last: what is left,
// what the rest gives, how a plan of cassettes fits, what stands on their labels, and what
// it came to in the end.
//
// It promises that lengths are exact, that what is used, left and wasted makes up the
// reel, and that a plan never takes more than is left. It knows no prices of offers, no
// files and no windows, and keeps nothing between calls. A change to a reel is a function
// from one value to the next.
package reels
