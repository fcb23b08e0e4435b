package desk

type document struct{ p string }

func (d *document) Path() string { return d.p }
func (d *Desk) askOpen()         {}
func (d *Desk) save(then func()) {}
func (d *Desk) askSaveAs(func()) {}
func (d *Desk) close()           { d.win.Close() }
func (d *Desk) folder() string   { return d.Home }
