"""Statements for the database are fixed text: what a person, a file or the store itself says is bound to them, never
written into them. Only names of tables and columns that the code itself holds may be put together."""

import re

from cpp_text import line_of, without_comments
from source_tree import CPP_ENDINGS, run

LITERAL = re.compile(r'"((?:\\.|[^"\\\n])*)"')
STATEMENT = re.compile(r"\b(?:SELECT|INSERT|UPDATE|DELETE FROM|REPLACE INTO|CREATE|DROP|ALTER|ATTACH|VACUUM|PRAGMA)\b ")
# Names the code holds, and marks that stand for bound values.
FIXED = re.compile(
    r"""
    std::string\(table\.(?:name|order)\)
  | std::string\(\w+\.text\(\)\)  # FixedText: nothing but a literal fits in
  | joined\(table\.\w+\)
  | joined\(std::vector<std::string_view>\(table\.columns\.size\(\),\ \)\)
  | (?:job|summary)_columns
  | places\(\w+\.size\(\)\)
    """,
    re.VERBOSE,
)


def end_of_operand(code, start):
    """Where the operand ends that begins here: at the next +, comma or semicolon outside of its own brackets."""
    depth = 0
    at = start
    while at < len(code):
        literal = LITERAL.match(code, at)
        if literal:
            at = literal.end()
            continue
        if code[at] in "([{":
            depth += 1
        elif code[at] in ")]}":
            if depth == 0:
                return at
            depth -= 1
        elif code[at] in "+,;" and depth == 0:
            return at
        at += 1
    return at


def operands_after(code, at):
    """What is put behind the text that ends here by + or .arg(), one after the other."""
    while True:
        gap = re.compile(r'(?:\s|\)|"(?:\\.|[^"\\\n])*")*').match(code, at)
        at = gap.end()
        argument = re.compile(r"\.\s*arg\s*\(").match(code, at)
        if argument:
            yield at, code[argument.end() : end_of_operand(code, argument.end())].strip()
            at = end_of_operand(code, argument.end())
            continue
        if at >= len(code) or code[at] != "+" or code[at : at + 2] == "++":
            return
        start = at + 1
        at = end_of_operand(code, start)
        yield start, code[start:at].strip()


def is_fixed(operand):
    rest = FIXED.sub("", LITERAL.sub("", operand))
    return not rest.strip(" \n()")


def faults_in(name, text):
    code = without_comments(text)
    for literal in LITERAL.finditer(code):
        if not STATEMENT.search(literal[1] + " "):
            continue
        if re.search(r"\bformat(?:_to)?\s*\(\s*$", code[: literal.start()]):
            yield f"{name}:{line_of(code, literal.start())}: a statement is formatted – bind the values with ? instead."
        for at, operand in operands_after(code, literal.end()):
            if not is_fixed(operand):
                yield f"{name}:{line_of(code, at)}: {operand} – bind this value with ? instead of writing it into the statement."


def faults(tree):
    names = tree.files(("src/store", "src/cli", "ui"), CPP_ENDINGS)
    return [fault for name in names for fault in faults_in(name, tree.text(name))]


if __name__ == "__main__":
    run(faults)
