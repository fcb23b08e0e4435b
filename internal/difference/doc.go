// Package difference finds what is other in one scenario file than in another.
//
// It promises that every field of the file is compared, keys of later versions too; that
// a table which got another name is found again, so that it is not told as one gone and
// one new; and that it says nothing of how a file is spelt, but for the decimals of a
// number. It goes by the keys of the file and knows no field.
package difference
