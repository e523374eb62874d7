"""What the texts point to is there, and every picture of the guide is shown in it."""

import re
from posixpath import dirname, join, normpath

from cpp_text import line_of
from source_tree import run

LINK = re.compile(r"\]\((?P<to>[^)\s#]+)(?:#[^)]*)?\)")
PICTURES = "docs/guide/pictures"


def texts(tree):
    at_top = sorted(path.name for path in tree.root.iterdir() if path.name.endswith(".md"))
    return at_top + tree.files(("docs", "data", "tests"), (".md",))


def links(tree):
    """Name of the text, line, and what it points to, by its path from the top."""
    for name in texts(tree):
        text = tree.text(name)
        for found in LINK.finditer(text):
            if "://" not in found["to"]:
                yield name, line_of(text, found.start()), normpath(join(dirname(name), found["to"]))


def faults(tree):
    all_links = list(links(tree))
    lost = [f"{name}:{line}: {to} is not there." for name, line, to in all_links if not tree.exists(to)]
    shown = {to for _, _, to in all_links}
    unused = [f"{name}: no text shows it." for name in tree.files((PICTURES,), (".png",)) if name not in shown]
    return lost + unused


if __name__ == "__main__":
    run(faults)
