"""Nothing in the repository names a place on the machine it was written on."""

import re

from cpp_text import line_of
from source_tree import run

FOLDERS = ("src", "ui", "data", "tests", "docs", ".ci")
ENDINGS = tuple(
    ".cpp .h .txt .cmake .md .json .jsonl .sql .py .sh .svg .ts .qss .qrc .xml .in .desktop .1 .supp /run LICENSE".split()
)
PLACE = re.compile(r"(?<![\w.}/$-])/(?:work|home|root|Users|tmp)/\w[^\s\"')]*|\b[A-Z]:\\\\?Users\\|\.\./shared\b")


def faults(tree):
    at_top = sorted(path.name for path in tree.root.iterdir() if path.is_file())
    names = [name for name in at_top if name.endswith(ENDINGS)] + tree.files(FOLDERS, ENDINGS)
    return [
        f"{name}:{line_of(text, found.start())}: {found[0]} is a path of one machine."
        for name in names
        for text in (tree.text(name),)
        for found in PLACE.finditer(text)
    ]


if __name__ == "__main__":
    run(faults)
