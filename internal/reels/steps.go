package reels

// Step is one cassette to load.
type Step struct {
	Number    int // to write on it
	Exposures int
	Counts    int64 // to turn to, where Counted
	Rounds    int64 // that the dial makes on the way
	Rest      int64 // where it stands then
	Counted   bool
	After     int // cassettes of the plan that are still to come
	Wish      int // of the plan, from 0
}

// Steps are a plan's cassettes one after another, numbered on from those of a reel that
// are loaded.
func Steps(p Plan, loaded int) []Step {
	var steps []Step
	for i, w := range p.Wishes {
		for range min(w.Cassettes, MostLabels) {
			s := Step{Number: loaded + len(steps) + 1, Exposures: w.Exposures, Counts: w.Counts, Rounds: w.Rounds, Rest: w.Rest, Counted: w.Counted, Wish: i}
			steps = append(steps, s)
		}
	}
	for i := range steps {
		steps[i].After = len(steps) - i - 1
	}
	return steps
}
