// Package desk is the window: choose a way to buy, type what the seller's page says,
// see the answer move. It wires the rooms below it, and has the menu, the keys and the
// files; parts.go says what each room may ask of the window.
//
// It promises that nothing typed is thrown away or reformatted under the cursor, that
// the interface thread neither computes nor draws charts, and that it does no
// arithmetic with money of its own.
package desk
