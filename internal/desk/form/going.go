package form

import "fyne.io/fyne/v2"

// Fields are the form's fields in reading order.
func (c *Column) Fields() []*Field { return c.form.fields }

// Title is what the form is about.
func (c *Column) Title() string { return c.form.head.String() }

// Withheld names the fields whose text is not part of the answer.
func (c *Column) Withheld() []string {
	var names []string
	for _, f := range c.form.withheld() {
		names = append(names, f.Name)
	}
	return names
}

// FirstWithheld is the key of the first of them, "" for none.
func (c *Column) FirstWithheld() string {
	for _, f := range c.form.withheld() {
		return f.Key
	}
	return ""
}

// field is the field of a key, nil where there is none.
func (c *Column) field(key string) *Field {
	for _, f := range c.form.fields {
		if f.Key == key {
			return f
		}
	}
	return nil
}

// Focused is the key of the field that has the focus, "" for none.
func (c *Column) Focused() string { return c.focusedKey() }

func (c *Column) focusedKey() string {
	for _, f := range c.form.fields {
		if f.Focus != nil && c.canvas.Focused() == f.Focus {
			return f.Key
		}
	}
	return ""
}

func (c *Column) focusOn(key string) {
	if f := c.field(key); f != nil {
		c.canvas.Focus(f.Focus)
	}
}

// Has says whether the form has a field.
func (c *Column) Has(key string) bool { return c.form.about(key) != nil }

// GoTo enters a field, unfolding the group it stands in.
func (c *Column) GoTo(key string) {
	f := c.form.about(key)
	if f == nil {
		return
	}
	c.win.InSight()
	if c.form.unfoldFor(f) {
		c.lay()
	}
	c.canvas.Focus(f.Focus)
}

// First is where the focus enters the form, nil where it has no field.
func (c *Column) First() fyne.Focusable {
	if len(c.form.fields) == 0 {
		return nil
	}
	return c.form.fields[0].Focus
}

// FocusFirst enters the first field.
func (c *Column) FocusFirst() {
	c.win.InSight()
	if f := c.First(); f != nil {
		c.canvas.Focus(f)
	}
}

// reveal scrolls the form so that a field can be seen.
func (c *Column) reveal(f *Field) {
	const margin = 30
	top, height := f.Row.Position().Y, f.Row.Size().Height
	view := c.Scroll.Size().Height
	at := c.Scroll.Offset.Y
	switch {
	case top-margin < at:
		at = max(0, top-margin)
	case top+height+margin > at+view:
		at = top + height + margin - view
	default:
		return
	}
	c.Scroll.ScrollToOffset(fyne.NewPos(0, at))
}
