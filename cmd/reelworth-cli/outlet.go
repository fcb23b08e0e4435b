package main

import "io"

// outlet is standard output that remembers whether it took everything, so that no
// command can end well whose output was lost.
type outlet struct {
	to  io.Writer
	err error // the first
}

func (o *outlet) Write(p []byte) (int, error) {
	if o.err != nil {
		return 0, o.err
	}
	n, err := o.to.Write(p)
	o.err = err
	return n, err
}
