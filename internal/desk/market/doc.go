// Package market keeps the published rates that the window goes by: read from a file,
// fetched from the bank when a person asks for that, or the last good ones that were
// fetched.
//
// It promises that nothing is fetched but by Fetch, that reading and fetching are done
// away from the interface thread and can be stopped, and that the rates in use stay when
// new ones cannot be had. It knows no widgets.
package market
