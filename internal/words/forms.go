package words

// The topics of a scenario: the left column lists them, each has its form.
const (
	TopicShooting   = "The year's shooting"
	TopicLoading    = "Loading"
	TopicDeveloping = "Developing"
	TopicBorder     = "At the border"
	TopicRates      = "Exchange rates"
)

// What stands under the name of a topic.
const (
	UnderShooting   = "each way to buy serves all of it"
	UnderLoading    = "for every reel"
	UnderDeveloping = "each way to buy can choose one of these"
	UnderBorder     = "for what is imported"
	UnderRates      = "what one unit of a currency is in another"
	UnderStart      = "type what you know; the answer follows"
)

// FromSeller stands under the name of an offer.
func FromSeller(seller string) string { return "from " + seller }

// The headings of the left column.
const (
	HeadingOffers = "Ways to buy"
	HeadingTopics = "For all of them"
)

// HeadingUnit is what the costs of the offers are told in.
func HeadingUnit(currency string) string { return currency + " A ROLL" }

// The headings within a form.
const (
	GroupPage        = "On the seller's page"
	GroupHome        = "Bringing it home"
	GroupFilm        = "The film"
	GroupReel        = "The reel"
	GroupAfterwards  = "Afterwards"
	GroupOffer       = "This way to buy"
	GroupCutting     = "Cutting"
	GroupCassettes   = "Cassettes"
	GroupTime        = "Time"
	GroupImportTax   = "Import tax"
	GroupDuty        = "Duty"
	GroupCollecting  = "Whoever collects it takes"
	GroupAllYear     = "All year"
	GroupMonths      = "Month by month"
	GroupScenario    = "The scenario"
	GroupFurtherRate = "One more"
	GroupAtHome      = "At home"
)

// The links behind which groups are folded away.
const (
	FoldOffer   = "Name, sales tax, free shipping, stock…"
	FoldCutting = "Leader, trailer, waste, perforation…"
)

// CurrencyPair is the heading of a rate.
func CurrencyPair(one, in string) string { return one + " and " + in }

// The links of the left column and the forms.
const (
	LinkAddReel       = "+ reel"
	LinkAddBoxed      = "+ boxed"
	LinkDeal          = "a deal?"
	LinkRename        = "rename"
	LinkDuplicate     = "Duplicate"
	LinkCompareWith   = "Compare with it"
	LinkUp            = "Up"
	LinkDown          = "Down"
	LinkRemove        = "Remove"
	LinkRemoveProcess = "Remove this way of developing"
	LinkAddLab        = "+ lab"
	LinkAddAtHome     = "+ at home"
	LinkAddEquipment  = "+ equipment"
	LinkDevelopAll    = "Use this developing for all"
)

// LinkTurnRound turns a rate round.
func LinkTurnRound(one, in string) string { return "Turn round: 1 " + one + " in " + in }

// StartElse stands below what a new scenario asks for.
const StartElse = "All else is on the left: how it is loaded and developed, and what is due at the border."

// SeasonBroken is said of a year in which idle months stand between others.
const SeasonBroken = "with breaks"

// HelpIdle is what the strip under a form says while no field has the focus.
const HelpIdle = "Enter a field, and what it means is explained here."
