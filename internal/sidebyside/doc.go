// Package sidebyside sets scenarios beside each other, each with its best reel and its
// best boxed offer, and brings them to one currency.
//
// It promises that converting is for show alone: who wins is what each scenario's own
// comparison says, and nothing is rounded on the way. It does no I/O and gives facts only;
// package words makes sentences of them.
package sidebyside
