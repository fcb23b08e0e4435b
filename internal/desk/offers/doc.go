// Package offers is the window's left column: the scenario, its ways to buy with what a
// roll costs, and the topics that hold for all of them.
package offers
