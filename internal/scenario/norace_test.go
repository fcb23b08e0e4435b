//go:build !race

package scenario

const slowness = 1
