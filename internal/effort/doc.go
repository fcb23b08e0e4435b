// Package effort tells how much work this process has done, for tests that hold it to a
// limit: a busy machine stretches the time of day, but not the time on a processor.
package effort
