// Package rates reads the European Central Bank's euro foreign exchange reference rates,
// in the three forms in which the bank publishes them, and fetches them when asked to.
//
// It promises that a rate is what the file says, exactly; that a cross rate is one exact
// fraction; that a file is read whole or refused with a Fault that names the line; that
// nothing is fetched unless Fetch is called, and nothing else is asked of any server than
// the one published address; and that the last good file stays when a fetch fails.
//
// The bank publishes the rates for information only: nobody need trade at them. Whoever
// shows one says so.
package rates
