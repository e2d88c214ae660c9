"""Second pass of .ci/mutate: the tool runs only the tests of the package it
changes, and of those the short ones. This applies each survivor again, in a
copy of the tree, and runs all tests of the package and then the published
checks, which live in a package of their own.

    python3 .ci/survivors.py COPY PACKAGE [own] < lines of the form "LIVED TYPE at file.go:LINE:COLUMN"
"""
import os, re, subprocess, sys

copy, package = sys.argv[1], sys.argv[2]
SWAP = {
    "ARITHMETIC_BASE": {"+": "-", "-": "+", "*": "/", "/": "*", "%": "*"},
    "INVERT_NEGATIVES": {"-": "+"},
    "INCREMENT_DECREMENT": {"++": "--", "--": "++"},
    "CONDITIONALS_BOUNDARY": {"<=": "<", ">=": ">", "<": "<=", ">": ">="},
    "CONDITIONALS_NEGATION": {"<=": ">", ">=": "<", "==": "!=", "!=": "==", "<": ">=", ">": "<="},
}
SUITES = [["./" + package], ["-run", "^TestPublished$", "./internal/reference/published"]]
if sys.argv[3:] == ["own"]:  # the tests of the package only
    SUITES.pop()
alive, killed = 0, [0, 0]
for text in sys.stdin:
    m = re.search(r"LIVED (\w+) at (\S+\.go):(\d+):(\d+)", text)
    if not m:
        continue
    kind, name, line, column = m[1], m[2], int(m[3]), int(m[4])
    path = os.path.join(copy, package, name)
    kept = open(path, "rb").read()
    lines = kept.split(b"\n")
    at = lines[line - 1]
    rest = at[column - 1 :].decode()
    old = next((o for o in sorted(SWAP[kind], key=len, reverse=True) if rest.startswith(o)), None)
    if old is None:
        print("cannot find", text.strip())
        continue
    lines[line - 1] = at[: column - 1] + (SWAP[kind][old] + rest[len(old) :]).encode()
    open(path, "wb").write(b"\n".join(lines))
    try:
        for n, suite in enumerate(SUITES):
            run = subprocess.run(["go", "test", "-vet=off", "-count=1", "-failfast", "-timeout=120s", *suite], cwd=copy, capture_output=True, text=True)
            if run.returncode:
                killed[n] += 1
                break
        else:
            alive += 1
            print(f"alive {package}/{name}:{line}:{column} {kind}: {at.decode().strip()}", flush=True)
    finally:
        open(path, "wb").write(kept)
print(f"{package}: of {sum(killed) + alive} survivors all tests of the package catch {killed[0]}, the published checks {killed[1]} more")
