package paper

import "math"

// outlined is what a pen of a width leaves along a path, as paths to fill: each straight
// piece a bar, with square ends at corners so that no notch shows.
func (p Path) outlined(width float64, dash []float64) []Path {
	var out []Path
	for _, line := range p.flat() {
		for _, part := range dashed(line, dash) {
			for i := 0; i+1 < len(part); i++ {
				out = append(out, bar(part[i], part[i+1], width/2, i > 0, i+2 < len(part)))
			}
		}
	}
	return out
}

// bar is a rectangle along a line, longer by its half width at an end that is a corner.
func bar(a, b [2]float64, half float64, before, after bool) Path {
	dx, dy := b[0]-a[0], b[1]-a[1]
	length := math.Hypot(dx, dy)
	if length == 0 {
		return nil
	}
	dx, dy = dx/length*half, dy/length*half
	if before {
		a[0], a[1] = a[0]-dx, a[1]-dy
	}
	if after {
		b[0], b[1] = b[0]+dx, b[1]+dy
	}
	var p Path
	p.Move(a[0]-dy, a[1]+dx)
	p.Line(b[0]-dy, b[1]+dx)
	p.Line(b[0]+dy, b[1]-dx)
	p.Line(a[0]+dy, a[1]-dx)
	p.Close()
	return p
}

// pieces is how many straight pieces stand for a curve.
const pieces = 24

// flat is a path as lines of points.
func (p Path) flat() [][][2]float64 {
	var lines [][][2]float64
	add := func(at [2]float64) {
		if n := len(lines) - 1; n >= 0 {
			lines[n] = append(lines[n], at)
		}
	}
	for _, s := range p {
		switch s.op {
		case opMove:
			lines = append(lines, [][2]float64{s.at[0]})
		case opLine:
			add(s.at[0])
		case opClose:
			if n := len(lines) - 1; n >= 0 {
				add(lines[n][0])
			}
		default:
			if n := len(lines) - 1; n >= 0 {
				from := lines[n][len(lines[n])-1]
				for i := 1; i <= pieces; i++ {
					add(s.along(from, float64(i)/pieces))
				}
			}
		}
	}
	return lines
}

// along is the point of a curve at t, 0 to 1.
func (s piece) along(from [2]float64, t float64) (at [2]float64) {
	a, b, end := s.at[0], s.at[1], s.at[2]
	if s.op == opQuad {
		end = s.at[1]
		a, b = raised(from, s.at[0], end)
	}
	u := 1 - t
	for i := range 2 {
		at[i] = u*u*u*from[i] + 3*u*u*t*a[i] + 3*u*t*t*b[i] + t*t*t*end[i]
	}
	return at
}

// dashed cuts a line by a pattern of lengths drawn and left out.
func dashed(line [][2]float64, dash []float64) [][][2]float64 {
	total := 0.0
	for _, d := range dash {
		total += d
	}
	if !(total > 0) {
		return [][][2]float64{line}
	}
	var out [][][2]float64
	at, left, on := 0, dash[0], true
	part := [][2]float64{line[0]}
	for i := 0; i+1 < len(line); i++ {
		a, b := line[i], line[i+1]
		length, done := math.Hypot(b[0]-a[0], b[1]-a[1]), 0.0
		for length-done > left {
			done += left
			cut := [2]float64{a[0] + (b[0]-a[0])*done/length, a[1] + (b[1]-a[1])*done/length}
			if on {
				out = append(out, append(part, cut))
			}
			at, on, part = (at+1)%len(dash), !on, [][2]float64{cut}
			left = dash[at]
		}
		left -= length - done
		part = append(part, b)
	}
	if on && len(part) > 1 {
		out = append(out, part)
	}
	return out
}
