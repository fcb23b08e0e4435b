package tomltext

import "slices"

// mostSteps is how many additions and removals are looked for before the lists are taken
// for different ones.
const mostSteps = 1200

// common finds a longest common subsequence: the places in a and in b, in order. Its time
// grows with what differs between the two, not with their length (E. W. Myers, "An O(ND)
// Difference Algorithm and Its Variations", Algorithmica 1, 1986).
func common(a, b []int) (pairs [][2]int) {
	first := 0
	for first < len(a) && first < len(b) && a[first] == b[first] {
		pairs = append(pairs, [2]int{first, first})
		first++
	}
	last := 0
	for last < len(a)-first && last < len(b)-first && a[len(a)-1-last] == b[len(b)-1-last] {
		last++
	}
	for _, p := range between(a[first:len(a)-last], b[first:len(b)-last]) {
		pairs = append(pairs, [2]int{first + p[0], first + p[1]})
	}
	for k := last; k > 0; k-- {
		pairs = append(pairs, [2]int{len(a) - k, len(b) - k})
	}
	return pairs
}

// between is common for lists that begin and end differently; nothing for lists that
// differ too much.
func between(a, b []int) [][2]int {
	if len(a) == 0 || len(b) == 0 {
		return nil
	}
	// reach[k] is how far in a one comes on diagonal k, x − y = k − middle, in so many steps.
	middle := min(len(a)+len(b), mostSteps) + 1
	reach := make([]int, 2*middle+1)
	var past [][]int // reach before each step, from −steps to +steps
	for steps := range middle {
		past = append(past, slices.Clone(reach[middle-steps:middle+steps+1]))
		for k := middle - steps; k <= middle+steps; k += 2 {
			x := reach[k-1] + 1
			if k == middle-steps || k != middle+steps && reach[k-1] < reach[k+1] {
				x = reach[k+1]
			}
			for y := x - (k - middle); x < len(a) && y < len(b) && a[x] == b[y]; y++ {
				x++
			}
			reach[k] = x
			if x >= len(a) && x-(k-middle) >= len(b) {
				return wayBack(past, len(a), len(b))
			}
		}
	}
	return nil
}

// wayBack follows the steps from the end of both lists to their beginning, and notes the
// elements that both have.
func wayBack(past [][]int, x, y int) (pairs [][2]int) {
	for steps := len(past) - 1; steps >= 0; steps-- {
		reach := func(k int) int { // before the step
			if k < -steps || k > steps {
				return 0
			}
			return past[steps][k+steps]
		}
		k := x - y
		before := k - 1
		if k == -steps || k != steps && reach(k-1) < reach(k+1) {
			before = k + 1
		}
		fromX, fromY := 0, 0
		if steps > 0 {
			fromX = reach(before)
			fromY = fromX - before
		}
		for x > fromX && y > fromY {
			x, y = x-1, y-1
			pairs = append(pairs, [2]int{x, y})
		}
		x, y = fromX, fromY
	}
	slices.Reverse(pairs)
	return pairs
}
