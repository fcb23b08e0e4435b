package kit

import (
	"image"

	"fyne.io/fyne/v2"
)

// Document is a text to be read, put together from above: headings, paragraphs, and what
// stands between them.
type Document struct {
	list   *fyne.Container
	links  *fyne.Container // to the parts that are named on top
	scroll *Scroll
}

// DocumentWidth is the length of its lines.
func DocumentWidth() float32 { return 540 * TextFactor }

// NewDocument is an empty text.
func NewDocument() *Document {
	d := &Document{list: Inset(NewStack(DocumentWidth(), 8), 4, 2, 18, 8), links: NewLine(18)}
	d.scroll = NewScroll(d.list)
	return d
}

// Link puts a link to what comes next on top of the text.
func (d *Document) Link(name string) {
	if len(d.links.Objects) == 0 {
		d.list.Objects = append([]fyne.CanvasObject{d.links}, d.list.Objects...)
	}
	at := len(d.list.Objects)
	d.links.Add(NewLink(name, func() { d.scroll.ScrollToOffset(fyne.NewPos(0, d.list.Objects[at].Position().Y)) }))
}

// Heading begins a part.
func (d *Document) Heading(text string) {
	if len(d.list.Objects) > 0 {
		d.list.Add(Space(10))
	}
	d.list.Add(NewText(SizeTotal, Span{Text: text, Bold: true}))
}

// Paragraph adds one.
func (d *Document) Paragraph(text string) { d.list.Add(NewText(SizeText, Span{Text: text})) }

// Picture adds a picture as high as given; caption is what it shows, for whoever cannot see it.
func (d *Document) Picture(img image.Image, caption string, height float32) {
	v := NewImageView(func() {})
	v.Caption = caption
	v.Put(img, nil)
	d.list.Add(FixedHeight(v, height))
}

// Scroll is the text in a room that it is read through.
func (d *Document) Scroll() *Scroll {
	width := DocumentWidth() + 22
	d.scroll.SetMinSize(fyne.NewSize(width, min(HeightOf(d.list, width), 520)))
	return d.scroll
}
