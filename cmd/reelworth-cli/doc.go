// Command reelworth-cli compares ways to buy film without a window: it prints a
// scenario file's comparison, draws its charts, and checks it.
//
// It promises the same figures and words as the window, and an exit status to build on:
// 0 when all is well, 1 when the input is at fault (what could be computed is printed
// all the same, faults go to standard error as file:line: key: what is wrong; what to
// write), 2 when the call is at fault. It never prints the program's insides.
package main
