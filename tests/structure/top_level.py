"""The top level holds what it is said to hold, and nothing else."""

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


def faults(tree):
    names = {path.name for path in tree.root.iterdir() if not path.name.startswith(".")}
    surplus = [f"{name}: does not belong at the top level." for name in sorted(names - ALLOWED - IGNORED)]
    return surplus + [f"{name}: is missing from the top level." for name in sorted(ALLOWED - NOT_YET - names)]


if __name__ == "__main__":
    run(faults)
