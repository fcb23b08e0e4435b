package kit

// NewNaming is a box to type a name in where it stands. Enter and leaving the box give the
// name to take, which answers why it cannot be taken, "" when it was; Esc leaves the old
// one. say is told what is wrong, and done that the box can go: with the focus in it or not.
func NewNaming(name string, take func(name string) (wrong string), say func(wrong string), done func(inside bool)) *TextBox {
	b := NewTextBox(false)
	b.Set(name)
	over := false
	end := func() {
		over = true
		done(b.Entry.Inside())
	}
	try := func() {
		if over {
			return
		}
		wrong := ""
		if b.Entry.Text != name {
			wrong = take(b.Entry.Text)
		}
		if b.SetFaulty(wrong != ""); wrong != "" {
			say(wrong)
			return
		}
		end()
	}
	b.Changed = func(string) {
		b.SetFaulty(false)
		say("")
	}
	b.Entered = func(in bool) {
		if !in {
			try()
		}
	}
	b.Entry.OnSubmitted = func(string) { try() }
	b.Entry.Escape = end
	return b
}
