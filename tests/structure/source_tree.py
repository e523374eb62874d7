"""What the checks look at: the files of the repository, by their path from its top."""

from pathlib import Path

# Wrong on purpose: the checks prove on these that they can fail.
FIXTURES = "tests/structure/fixtures"
CPP_ENDINGS = (".cpp", ".h")


class SourceTree:
    def __init__(self, root):
        self.root = Path(root).resolve()

    def files(self, folders, endings):
        """Paths from the top, sorted, of the files below `folders` whose name ends with one of `endings`."""
        found = []
        for folder in folders:
            found += [path for path in (self.root / folder).rglob("*") if path.is_file()]
        names = [path.relative_to(self.root).as_posix() for path in found]
        return sorted(name for name in names if name.endswith(tuple(endings)) and not is_left_out(name))

    def text(self, name):
        return (self.root / name).read_text(encoding="utf-8")

    def exists(self, name):
        return (self.root / name).exists()


def is_left_out(name):
    return name.startswith(FIXTURES) or "__pycache__" in name


def run(faults_of):
    """Runs one check on the tree named on the command line; prints what is wrong, and fails if anything is."""
    import sys

    faults = faults_of(SourceTree(sys.argv[1]))
    for fault in faults:
        print(fault)
    sys.exit(1 if faults else 0)
