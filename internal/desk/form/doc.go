// Package form is the window's middle column: the form of what is chosen.
//
// A Binding is one value of the scenario as it is shown and changed, a Field joins it
// with its row, the forms put fields in the order of the seller's page, and the Column
// takes what is typed into the session. It promises that nothing typed is thrown away or
// reformatted under the cursor, and that what cannot be taken leaves no trace.
package form
