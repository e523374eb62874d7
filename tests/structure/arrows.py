"""Includes and linked targets go along the arrows of the house, never against them."""

import re

from cpp_text import line_of, without_comments
from source_tree import CPP_ENDINGS, run

# Who may use whom at first hand; whatever those use is allowed as well.
ARROWS = {
    "quantity": [],
    "json": ["quantity"],
    "metrology": ["json"],
    "shim": ["metrology"],
    "vehicle": ["json"],
    "sheet": ["shim"],
    "job": ["sheet", "vehicle"],
    "record": ["job"],
    "store": ["record"],
    "print": ["record"],
    "cli": ["store", "print"],
    "widgets": ["store", "print"],
    "bench": ["widgets"],
    "past": ["widgets"],
    "workshop": ["widgets"],
    "shell": ["bench", "past", "workshop", "cli"],
}
WITHOUT_QT = ("quantity", "json", "metrology", "shim", "vehicle", "sheet", "job", "record")
INCLUDE = re.compile(r'^[ \t]*#[ \t]*include[ \t]*(?P<text>"[^"\n]*"|<[^>\n]*>)', re.MULTILINE)
OWN_HEADER = re.compile(r"^shimwright/(?P<layer>\w+)/")
QT_HEADER = re.compile(r"^(?:Q[A-Z]\w*(?:/|$)|Qt\w+/)")
DATABASE_HEADER = re.compile(r"^(?:QtSql/|QSql\w*$|sqlite3\.h$)")


def allowed_for(layer):
    reached, to_visit = set(), [layer]
    while to_visit:
        each = to_visit.pop()
        if each not in reached:
            reached.add(each)
            to_visit += ARROWS[each]
    return reached


def layer_of(name):
    """`src/shim/fit.cpp` and `tests/shim/fit_test.cpp` are of `shim`; nothing for what is of no layer. What measures
    speed, in `tests/bench`, is of none: not of the layer `ui/bench`, whose tests lie in `tests/ui/bench`."""
    if name.startswith("tests/bench/"):
        return None
    return next((part for part in name.split("/")[1:3] if part in ARROWS), None)


def include_fault(name, layer, header):
    own = OWN_HEADER.match(header)
    if own and own["layer"] not in allowed_for(layer):
        return f"{layer} may not include {header}: it is against the arrows."
    if header.startswith("../") or "/../" in header:
        return f"{header}: headers of others are reached by their target, not by a path."
    if layer in WITHOUT_QT and QT_HEADER.match(header):
        return f"{layer} is built without Qt and may not include {header}."
    if DATABASE_HEADER.match(header) and layer not in ("store", "cli") and not name.startswith("tests/"):
        return f"{header}: only the store speaks to the database."
    return None


def include_faults(tree):
    for name in tree.files(("src", "ui", "tests"), CPP_ENDINGS):
        layer = layer_of(name)
        text = without_comments(tree.text(name))
        for found in INCLUDE.finditer(text) if layer else ():
            fault = include_fault(name, layer, found["text"][1:-1])
            if fault:
                yield f"{name}:{line_of(text, found.start('text'))}: {fault}"


def link_faults(tree):
    for name in tree.files(("src", "ui", "tests"), ("CMakeLists.txt",)):
        layer = layer_of(name)
        text = re.sub(r"#[^\n]*", "", tree.text(name))
        for found in re.finditer(r"\bshimwright(?:::|_)(\w+)", text) if layer else ():
            if found[1] in ARROWS and found[1] not in allowed_for(layer):
                yield f"{name}:{line_of(text, found.start())}: {layer} may not link {found[0]}."
        for found in re.finditer(r"\bQt6?::\w+|\bshimwright_qt_\w+", text) if layer in WITHOUT_QT else ():
            yield f"{name}:{line_of(text, found.start())}: {layer} is built without Qt and may not use {found[0]}."


def header_place_faults(tree):
    """A public header lies where only the target of its layer makes it found."""
    for name in tree.files(("src", "ui"), (".h",)):
        parts = name.split("/")
        if "include" in parts[2:-1] and parts[3:5] != ["shimwright", parts[1]]:
            yield f"{name}: public headers of {parts[1]} belong in include/shimwright/{parts[1]}/."


def faults(tree):
    return [*include_faults(tree), *link_faults(tree), *header_place_faults(tree)]


if __name__ == "__main__":
    run(faults)
