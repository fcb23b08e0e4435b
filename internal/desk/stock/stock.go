package stock

import (
	"context"
	"reflect"

	"reelworth/internal/desk/answer"
	"reelworth/internal/exact"
	"reelworth/internal/figure"
	"reelworth/internal/film"
	"reelworth/internal/reels"
	"reelworth/internal/scenario"
)

// Job is what is to be worked out.
type Job struct {
	Reels    []scenario.InHand
	Scenario scenario.Scenario
	Today    scenario.Date
	Of       Subject
	Wishes   []reels.Wish // of its cut plan
	Style    figure.Style
	Page     Page // of the subject that is in sight
	Strip    answer.Room
	Cuts     answer.Room // of the figure of cut sizes
	Sheet    Sheet       // how labels are printed
}

// Page is a page of a reel.
type Page int

// The pages, in the order of their tabs.
const (
	Log Page = iota
	Cut
	Account
	Labels
)

// Subject is what is looked at: a reel in hand or, with Thought, the reel of an offer. The
// zero value with Reel −1 is neither.
type Subject struct {
	Reel    int // of those in hand, −1 for none
	Offer   int // of the scenario
	Thought bool
}

// None looks at no reel.
var None = Subject{Reel: -1}

// Plan names a cut plan within a file: that of a reel in hand or, of a scenario, of the
// reel of an offer. An offer and the reel that it became may have one name.
type Plan struct {
	Scenario string `json:",omitempty"` // "" for a reel in hand
	Name     string
}

// Called is what the subject's cut plan goes by, and how many exposures its cassettes
// have; no name for no subject.
func (j *Job) Called() (of Plan, exposures int) {
	switch {
	case j.Of.Thought && j.Of.Offer < len(j.Scenario.Offers) && j.Scenario.Offers[j.Of.Offer].Reel != nil:
		o := &j.Scenario.Offers[j.Of.Offer]
		return Plan{j.Scenario.Name, o.Name}, o.Reel.Exposures
	case j.Of.Reel >= 0 && j.Of.Reel < len(j.Reels):
		return Plan{Name: j.Reels[j.Of.Reel].Name}, j.Reels[j.Of.Reel].Exposures
	}
	return Plan{}, 0
}

// Stock is what came of a job.
type Stock struct {
	Job       Job
	Standings []reels.Standing // of all reels, in their order

	Film     film.InHand // of the subject
	Standing *reels.Standing
	Name     string
	Fault    *scenario.Fault // why the subject cannot be computed, nil where it can
	Is       bool            // there is a subject that can be computed
	Plan     reels.Plan
	Strip    answer.Picture

	Sizes   *Sizes
	Account *Accounted
	Labels  *Printed
}

// Keeper works jobs out, and remembers where reels stood.
type Keeper struct {
	seen      []scenario.InHand
	standings []reels.Standing
}

// Work works a job out; it gives up when ctx is done.
func (k *Keeper) Work(ctx context.Context, j Job) (*Stock, bool) {
	if !k.stand(ctx, j.Reels) {
		return nil, false
	}
	s := &Stock{Job: j, Standings: k.standings}
	s.subject()
	if !s.Is {
		return s, true
	}
	s.Plan = reels.CutPlan(&s.Film, s.left(), s.wishes())
	s.Strip = answer.Draw(j.Strip, func(w, h float64) *figure.Drawing {
		in := figure.InHand{Film: s.Film, Plan: s.Plan}
		if s.Standing != nil {
			in.Loaded, in.Used = s.Standing.Loaded, s.Standing.Used
		}
		return figure.ReelStrip(in, w, h, j.Style)
	})
	switch j.Page {
	case Cut:
		s.Sizes = sizesOf(ctx, j)
	case Account:
		s.Account = accountOf(j, s.Standings)
	case Labels:
		s.Labels = printed(j, s.Standing)
	case Log:
	}
	return s, ctx.Err() == nil
}

// stand finds where the reels stand; those that are as they were are not computed again.
func (k *Keeper) stand(ctx context.Context, list []scenario.InHand) bool {
	next := make([]reels.Standing, len(list))
	for i := range list {
		if i < len(k.seen) && reflect.DeepEqual(&k.seen[i], &list[i]) { // a slice is alike at once where it is the same
			next[i] = k.standings[i]
			continue
		}
		if ctx.Err() != nil {
			return false
		}
		next[i] = reels.Stand(&list[i], scenario.CheckReels(list[i:i+1]))
	}
	k.seen, k.standings = list, next
	return true
}

// subject finds the film that is looked at.
func (s *Stock) subject() {
	j := &s.Job
	switch {
	case j.Of.Thought:
		if j.Of.Offer >= len(j.Scenario.Offers) {
			return
		}
		o := &j.Scenario.Offers[j.Of.Offer]
		if o.Kind != scenario.KindReel || o.Reel == nil {
			return
		}
		s.Name, s.Film = o.Name, film.InHand{Reel: o.Reel.Cutting()}
		_, err := s.Film.Remaining()
		s.Is = err == nil
	case j.Of.Reel >= 0 && j.Of.Reel < len(j.Reels):
		r := &j.Reels[j.Of.Reel]
		s.Name, s.Film, s.Standing = r.Name, r.Film(), &s.Standings[j.Of.Reel]
		s.Fault = s.Standing.Fault
		s.Is = s.Fault == nil
	}
}

// left is the film there is for cassettes.
func (s *Stock) left() exact.Fraction {
	if s.Standing != nil {
		return s.Standing.Left
	}
	rest, _ := s.Film.Remaining()
	return rest.Left
}

// wishes are those of the plan; the other pages show what the rest gives by itself.
func (s *Stock) wishes() []reels.Wish {
	if s.Job.Page != Cut {
		return nil
	}
	return s.Job.Wishes
}
