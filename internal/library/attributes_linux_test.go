package library

import "syscall"

func setAttribute(path, name string, value []byte) error {
	return syscall.Setxattr(path, name, value, 0)
}

func attribute(path, name string) []byte {
	value := make([]byte, 100)
	n, err := syscall.Getxattr(path, name, value)
	if err != nil {
		return nil
	}
	return value[:n]
}
