package figure

// axis is the span of values along one side of a chart.
type axis struct{ low, high float64 }

// share is how far along the axis a value stands: 0 at its low end, 1 at its high one.
func (a axis) share(value float64) float64 { return (value - a.low) / (a.high - a.low) }

// tick is a labelled value of an axis.
type tick struct {
	value float64
	label string
}
