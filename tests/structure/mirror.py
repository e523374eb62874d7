"""Each source has a test of its name: src/shim/fit.cpp is tested by tests/shim/fit_test.cpp. The exceptions stand in one
file, each with its reason; a reason `tested by tests/…` has to name a test that is there."""

import re

from source_tree import run

EXCEPTIONS = "tests/structure/without_test.txt"


def test_of(source):
    """src/shim/fit.cpp and ui/bench/page.cpp: tests/shim/fit_test.cpp and tests/ui/bench/page_test.cpp."""
    place = source.removeprefix("src/").removesuffix(".cpp")
    return f"tests/{place}_test.cpp"


def exceptions(tree):
    """`path  reason` on each line; a line without a reason excuses nothing."""
    lines = tree.text(EXCEPTIONS).splitlines() if tree.exists(EXCEPTIONS) else []
    pairs = [line.split(maxsplit=1) for line in lines if line.strip() and not line.startswith("#")]
    return {pair[0]: pair[1] for pair in pairs if len(pair) == 2}


def faults(tree):
    excused = exceptions(tree)
    found = []
    sources = tree.files(("src", "ui"), (".cpp",))
    for source in sources:
        tested = tree.exists(test_of(source))
        if not tested and source not in excused:
            found.append(f"{source}: there is no {test_of(source)}.")
        if tested and source in excused:
            found.append(f"{EXCEPTIONS}: {source} has its test now; take the line out.")
    for source, reason in excused.items():
        other = re.match(r"tested by (\S+?),?(?:\s|$)", reason)
        if other and not tree.exists(other[1]):
            found.append(f"{EXCEPTIONS}: {source} is said to be tested by {other[1]}, which is not there.")
    found += [f"{EXCEPTIONS}: {source} is not there; take the line out." for source in excused if source not in sources]
    return found


if __name__ == "__main__":
    run(faults)
