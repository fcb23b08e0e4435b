package session

// Topic is a part of the scenario that has a form.
type Topic string

// The topics.
const (
	TopicOffer      Topic = "offer"
	TopicShooting   Topic = "shooting"
	TopicLoading    Topic = "loading"
	TopicDeveloping Topic = "developing"
	TopicBorder     Topic = "border"
	TopicRates      Topic = "rates"
	TopicStart      Topic = "start" // what a new scenario needs first, of all the others
	TopicReel       Topic = "reel"  // in hand
)

// Selection is what the form is about; Offer counts only with TopicOffer, but is kept
// so that charts and receipt go on showing the offer looked at last. Reel, of those in
// hand, counts only with TopicReel.
type Selection struct {
	Topic Topic
	Offer int
	Reel  int
}

// offerAt is the selection of the offer at i.
func offerAt(i int) Selection { return Selection{Topic: TopicOffer, Offer: i} }

// reelAt is the selection of the reel in hand at i; the offer looked at stays.
func (s Selection) reelAt(i int) Selection {
	return Selection{Topic: TopicReel, Offer: s.Offer, Reel: i}
}
