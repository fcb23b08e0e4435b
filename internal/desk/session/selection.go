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
)

// Selection is what the form is about; offer counts only with TopicOffer, but is kept
// so that charts and receipt go on showing the offer looked at last.
type Selection struct {
	Topic Topic
	Offer int
}
