package main

import (
	"os"
	"syscall"
)

// peak returns the most memory that a process took, in kB.
func peak(s *os.ProcessState) int64 {
	if u, ok := s.SysUsage().(*syscall.Rusage); ok {
		return int64(u.Maxrss)
	}
	return 0
}
