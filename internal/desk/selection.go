package desk

// topic is a part of the scenario that has a form.
type topic string

// The topics.
const (
	topicOffer      topic = "offer"
	topicShooting   topic = "shooting"
	topicLoading    topic = "loading"
	topicDeveloping topic = "developing"
	topicBorder     topic = "border"
	topicRates      topic = "rates"
)

// selection is what the form is about; offer counts only with topicOffer, but is kept
// so that charts and receipt go on showing the offer looked at last.
type selection struct {
	topic topic
	offer int
}
