"""No file over 400 lines, no function over 60: what is longer is two things."""

from cpp_functions import functions
from source_tree import CPP_ENDINGS, run

MOST_LINES_OF_FILE = 400
MOST_LINES_OF_FUNCTION = 60
FOLDERS = ("src", "ui", "tests")


def faults(tree):
    found = []
    for name in tree.files(FOLDERS, CPP_ENDINGS + (".py", ".cmake", "CMakeLists.txt")):
        text = tree.text(name)
        if len(text.splitlines()) > MOST_LINES_OF_FILE:
            found.append(f"{name}: {len(text.splitlines())} lines; {MOST_LINES_OF_FILE} at most. Split it.")
        if name.endswith(CPP_ENDINGS):
            found += [
                f"{name}:{each.line}: {each.lines} lines; {MOST_LINES_OF_FUNCTION} at most: {each.name}"
                for each in functions(text)
                if each.lines > MOST_LINES_OF_FUNCTION
            ]
    return found


if __name__ == "__main__":
    run(faults)
