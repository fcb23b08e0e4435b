// Package jobs does the window's work away from the interface thread.
//
// It promises that of jobs of one kind only the newest counts (Latest), that what is
// waited for comes back on the interface thread (Background), in order where order
// matters (Sequence), that a busy thread finds one answer and no heap of them (Mailbox),
// and that the headline stays still while somebody types (Pace). It knows nothing of what
// the jobs are about.
package jobs
