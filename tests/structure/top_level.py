"""The top level holds what it is said to hold, and nothing else; no folder holds what a program's run left there."""

import re

from source_tree import run

ALLOWED = {
    "CMakeLists.txt",
    "CMakePresets.json",
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "data",
    "docs",
    "shimwright.sh",
    "src",
    "tests",
    "ui",
}
# Laid where it is needed and not before: an empty folder is not kept by git.
NOT_YET = {"ui"}
# Made by a build and never committed.
IGNORED = {"build", "compile_commands.json", "CMakeUserPresets.json"}
# A store with what lies beside it, and its photos, which have the hash of their content for a name.
LEFT_BY_A_RUN = re.compile(r"(^|/)([0-9a-f]{64}|[^/]*\.(shimwright|sw)(-wal|-shm|\.lock)?)$")


def leftovers(tree):
    folders = sorted(name for name in ALLOWED if (tree.root / name).is_dir())
    return [f"{name}: was left there by a store; take it out." for name in tree.files(folders, [""]) if LEFT_BY_A_RUN.search(name)]


def faults(tree):
    names = {path.name for path in tree.root.iterdir() if not path.name.startswith(".")}
    surplus = [f"{name}: does not belong at the top level." for name in sorted(names - ALLOWED - IGNORED)]
    missing = [f"{name}: is missing from the top level." for name in sorted(ALLOWED - NOT_YET - names)]
    return surplus + missing + leftovers(tree)


if __name__ == "__main__":
    run(faults)
