package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// fenced returns the first block of the README that is fenced with a word, and
// holds another.
func fenced(t *testing.T, readme, fence, word string) string {
	t.Helper()
	for _, b := range strings.Split(readme, "\n```"+fence+"\n")[1:] {
		if block, _, ok := strings.Cut(b, "```"); ok && strings.Contains(block, word) {
			return block
		}
	}
	t.Fatalf("README.md has no block %q with %q", fence, word)
	return ""
}

// TestImporter walks through the README as somebody who imports the library
// from a clone: a module of their own in a folder of its own, the commands and
// the program as they are printed, without a network. The README also prints
// what comes out.
func TestImporter(t *testing.T) {
	if testing.Short() {
		t.Skip("builds a module of its own")
	}
	root, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	b, err := os.ReadFile(filepath.Join(root, "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	readme := string(b)
	dir := t.TempDir()
	put(t, dir, "main.go", fenced(t, readme, "go", "package main"))
	var out []byte
	for _, line := range strings.Split(strings.TrimSpace(fenced(t, readme, "sh", "go mod init")), "\n") {
		args := strings.Fields(line)
		for i := range args {
			args[i] = strings.ReplaceAll(args[i], "PATH/TO/CLONE", root)
		}
		cmd := exec.Command(args[0], args[1:]...)
		cmd.Dir = dir
		cmd.Env = append(os.Environ(), "GOFLAGS=", "GOWORK=off", "GOPROXY=off", "GOSUMDB=off", "GOOS=", "GOARCH=", "GOAMD64=")
		var stderr bytes.Buffer
		cmd.Stderr = &stderr
		if out, err = cmd.Output(); err != nil {
			t.Fatalf("%s: %v\n%s", line, err, stderr.String())
		}
	}
	if want := fenced(t, readme, "text", "bumps"); string(out) != want {
		t.Errorf("the program prints\n%s\nREADME.md says\n%s", out, want)
	}
	// The lines of the two commands name things that are there.
	for _, name := range []string{"examples/plan", "examples/checks/CHECKS.md", "examples/checks/checks.csv", "examples/checks/CITATION.cff",
		"examples/figures", "examples/hindcast/SCORES.md", "DEVELOPERS.md", "CHANGELOG.md"} {
		if !strings.Contains(readme, name) {
			t.Errorf("README.md no longer names %s", name)
		}
		if _, err := os.Stat(filepath.Join(root, name)); err != nil {
			t.Error(err)
		}
	}
}
