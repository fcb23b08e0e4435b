package library

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"

	"reelworth/internal/scenario"
)

// Options say how far a save may go.
type Options struct {
	// Overwrite saves over a file that was changed from outside, or over another
	// file.
	Overwrite bool
	// Force replaces a file that is read-only, or another user's. It is said once for
	// each document: its next saves are forced too.
	Force bool
	// Backups keeps apart what the first save of a session replaces; nil keeps only the .bak.
	Backups *Backups
}

// Save writes a file over the document's own and makes it the document's content.
// The bytes it replaces stay beside it, in a .bak. Errors: *ChangedOutside, *Protected,
// *Problem; the file on disk is then as it was.
func (d *Document) Save(f scenario.File, o Options) error {
	if d.Path == "" {
		return &Problem{Cause: NoName, Doing: Saving}
	}
	o.Force = o.Force || d.forced
	return d.save(d.Path, f, o, func(now stamp) error {
		if now.same(d.stamp) {
			return nil
		}
		return &ChangedOutside{Path: d.Path, Gone: !now.there}
	})
}

// SaveAs is Save under another name, which becomes the document's. Errors:
// *AlreadyThere, *ChangedOutside where the name is the document's own, *Protected,
// *Problem.
func (d *Document) SaveAs(path string, f scenario.File, o Options) error {
	full, err := filepath.Abs(path)
	if err != nil {
		return problem(Saving, path, err)
	}
	if full == d.Path {
		return d.Save(f, o)
	}
	return d.save(full, f, o, func(now stamp) error {
		if now.there {
			return &AlreadyThere{full}
		}
		return nil
	})
}

// save writes f to path unless allowed objects to what is there now.
func (d *Document) save(path string, f scenario.File, o Options, allowed func(now stamp) error) error {
	next, inPlace := d.said.Saying(f)
	data := next.Bytes
	if len(data) > MaxBytes {
		return &Problem{Cause: WouldBeTooLarge, Doing: Saving, Path: path}
	}
	target, err := follow(path)
	if err != nil {
		return problem(Saving, path, err)
	}
	release, err := alone(d.on(), target)
	if err != nil {
		return err
	}
	defer release()
	old, now, err := d.mayReplace(path, target, o, allowed)
	if err != nil {
		return err
	}
	parted := parts(target)
	if now.there && !bytes.Equal(old, data) {
		if err := d.backUp(path, target, old, now, o.Backups); err != nil {
			return err
		}
	}
	unchanged := func() error { return unchangedSince(target, now, path) }
	if o.Overwrite {
		unchanged = nil
	}
	info, err := replace(d.on(), target, data, guiseOf(target, now.mode, now.there), unchanged)
	if err != nil {
		var changed *ChangedOutside
		if errors.As(err, &changed) {
			return err
		}
		return problem(Saving, path, err)
	}
	d.settle(path, f, next, info)
	d.Rewritten, d.Parted = !inPlace, parted
	d.forced = o.Force
	return nil
}

// mayReplace is what a save would replace, or why it must not.
func (d *Document) mayReplace(path, target string, o Options, allowed func(now stamp) error) (old []byte, now stamp, err error) {
	old, now, err = whatIsThere(target)
	if err != nil {
		return nil, now, irreplaceable(path, err, o)
	}
	if !o.Overwrite {
		if err := allowed(now); err != nil {
			return nil, now, err
		}
	}
	if !o.Force {
		if err := protects(path, target); err != nil {
			return nil, now, err
		}
	}
	return old, now, nil
}

// settle makes what was written the document's content.
func (d *Document) settle(path string, f scenario.File, t scenario.Text, info fs.FileInfo) {
	d.Path, d.File, d.stamp = path, f, stampOf(t.Bytes, info)
	d.take(t)
}

func (d *Document) on() disk {
	if d.disk == nil {
		return realDisk{}
	}
	return d.disk
}

// irreplaceable is the error where what is to be replaced cannot be read.
func irreplaceable(path string, err error, o Options) error {
	var why *Problem
	large := errors.As(err, &why) && why.Cause == TooLarge
	switch {
	case errors.Is(err, fs.ErrPermission):
		return &Problem{Cause: BackupUnreadable, Doing: Saving, Path: path, Err: err}
	case !large:
		return problem(Saving, path, err)
	case !o.Overwrite:
		return &ChangedOutside{Path: path}
	}
	return &Problem{Cause: BackupTooLarge, Doing: Saving, Path: path, Err: err}
}

// whatIsThere is the content that a save would replace, which may be none.
func whatIsThere(path string) ([]byte, stamp, error) {
	data, st, err := load(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, stamp{}, nil
	}
	return data, st, err
}

// unchangedSince looks once more, just before a file is replaced.
func unchangedSince(target string, was stamp, path string) error {
	info, err := os.Stat(target)
	switch {
	case err != nil && !was.there:
		return nil
	case err != nil:
		return &ChangedOutside{Path: path, Gone: true}
	case !was.there || info.Size() != was.size || !info.ModTime().Equal(was.modified):
		return &ChangedOutside{Path: path}
	}
	return nil
}

// mostLinks is how many links may lead to one another, as on Linux.
const mostLinks = 40

// follow is the file that a path leads to, so that a link stays a link. The file
// need not be there.
func follow(path string) (string, error) {
	for range mostLinks {
		real, err := filepath.EvalSymlinks(path)
		if err == nil {
			return real, nil
		}
		if _, plainer := os.Stat(path); plainer != nil && !errors.Is(err, fs.ErrNotExist) {
			err = plainer // it tells a circle of links by its number
		}
		if !errors.Is(err, fs.ErrNotExist) {
			return "", err
		}
		to, err := os.Readlink(path)
		if err != nil {
			return path, nil // no link: a new file
		}
		if !filepath.IsAbs(to) {
			to = filepath.Join(filepath.Dir(path), to)
		}
		path = to
	}
	return "", &fs.PathError{Op: "open", Path: path, Err: syscall.ELOOP}
}
