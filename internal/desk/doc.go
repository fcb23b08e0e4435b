// Package desk is the window: choose a way to buy, type what the seller's page says,
// see the answer move. One file per region.
//
// It promises that nothing typed is thrown away or reformatted under the cursor, that
// the interface thread neither computes nor draws charts, and that it does no
// arithmetic with money of its own.
package desk
