package tide

import (
	"flag"

	_ "pgregory.net/rapid" // has the flag
)

// Properties are drawn from the same seed in every run, so that a run says
// something about a change and not about its luck. Look further with
// -rapid.seed=0, which draws a new one, and -rapid.checks=10000.
func init() {
	if err := flag.Set("rapid.seed", "20260621"); err != nil {
		panic(err)
	}
}
