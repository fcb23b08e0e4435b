// Package history costs a scenario per roll at the published rates of every day of a span.
//
// It promises that each day's figure is exactly what a comparison at that day's rates
// gives: a rate is never rounded on its way in, and places, ranks and ties are decided on
// exact values. It keeps nothing between calls, stops when its context does, and gives
// facts only; package words makes sentences of them.
//
// The published rates are for information only, and a card adds to them: a history says
// how the rates moved the cost, not what anybody was charged.
package history
