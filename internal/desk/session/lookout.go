package session

import (
	"time"

	"reelworth/internal/library"
	"reelworth/internal/words"
)

// ClaimFile says to other windows that this one works on a file.
func (k *Keeper) ClaimFile(path string) {
	if k.dir == "" || k.recovery == nil {
		return
	}
	if k.claim != nil {
		k.claim.Release()
	}
	k.claim, _ = library.NewClaim(k.dir, path, k.now()) // without a claim nobody is noticed, and nothing is lost
	k.aside = ""
	k.warn()
	k.Look()
}

// lookAround looks again and again.
func (k *Keeper) lookAround() {
	time.AfterFunc(lookEvery, func() {
		k.in.Post(func() {
			if k.recovery != nil {
				k.Look()
				k.lookAround()
			}
		})
	})
}

// Look says when another window works on the file, or another program changed it.
func (k *Keeper) Look() {
	claim, doc := k.claim, k.work().Doc
	k.in.Do(func() func() {
		text := ""
		if claim != nil && len(claim.Others()) > 0 {
			text = words.OpenElsewhere
		}
		if doc != nil && doc.Changed() {
			text = words.ChangedElsewhere
		}
		return func() {
			if k.saving() || doc != k.work().Doc {
				return // it looked at what is no more
			}
			if text != k.aside {
				k.aside = text
				k.warn()
			}
		}
	})
}
