"""Finds the functions of a C++ text and how many lines each takes. A scanner of braces, no compiler: it knows what opens
a scope (namespace, class), what opens a function, and that whatever lies inside a function belongs to it."""

import re
from dataclasses import dataclass

from cpp_text import bare, line_of

SCOPE = re.compile(r"\b(namespace|class|struct|union|enum|extern)\b")
ACCESS = re.compile(r"\b(?:(?:public|private|protected)(?:\s+(?:slots|Q_SLOTS))?|signals|Q_SIGNALS)\s*:(?!:)")
MACROS = re.compile(r"\b(?:Q_OBJECT|Q_GADGET)\b|\b(?:Q_PROPERTY|Q_ENUM)\s*\([^)]*\)")
OPERATOR = re.compile(r"\boperator\s*(?:\(\s*\)|\[\s*\]|[^\s\w(]+|\w+)")
LAMBDA = re.compile(r"=\s*\[[^\[\]]*\]\s*(?:\(|\w|$)")


@dataclass(frozen=True)
class Function:
    name: str
    line: int
    lines: int


def functions(text):
    return list(_scan(_prepare(text)))


def _prepare(text):
    code = bare(text)
    for noise in (ACCESS, MACROS):
        # A semicolon ends what stood before, so that the next head begins after it.
        code = noise.sub(lambda found: re.sub(r"[^\n]", " ", found[0][:-1]) + ";", code)
    return code


def _scan(code):
    at = head_start = 0
    while at < len(code):
        character = code[at]
        if character in ";}":
            head_start = at + 1
        elif character == "(":
            at = _matching(code, at)
        elif character == "{":
            head = code[head_start:at]
            if _opens_scope(head):
                head_start = at + 1
            else:
                end = _matching(code, at)
                if _opens_function(head):
                    yield _function(code, head_start, end, head)
                    head_start = end + 1
                at = end
        at += 1


def _function(code, head_start, end, head):
    first = head_start + len(head) - len(head.lstrip())
    start_line = line_of(code, first)
    return Function(" ".join(head.split())[:80], start_line, line_of(code, end) - start_line + 1)


def _matching(code, at):
    """Where the bracket at `at` is closed; the end of the text if it is not."""
    depth = 0
    for index in range(at, len(code)):
        if code[index] in "({[":
            depth += 1
        elif code[index] in ")}]":
            depth -= 1
            if depth == 0:
                return index
    return len(code)


def _simplified(head):
    """The head without template lists, operator names and what stands in brackets: `f() : a`."""
    head = OPERATOR.sub(" operator_name ", head)
    for pattern in (r"\([^()]*\)", r"\{[^{}]*\}", r"<[^<>]*>"):
        earlier = None
        while earlier != head:
            earlier, head = head, re.sub(pattern, {"(": "@", "{": "~", "<": " "}[pattern.replace("\\", "")[0]], head)
    return head


def _opens_scope(head):
    plain = _simplified(head)
    return bool(SCOPE.search(plain)) and "@" not in re.sub(r"\balignas\s*@", "", plain) and "=" not in plain


def _opens_function(head):
    plain = _simplified(head)
    if "=" in plain:
        return bool(LAMBDA.search(OPERATOR.sub("", head))) and head.rstrip()[-1] != "="
    if "@" not in plain:
        return False
    members = re.search(r"@[^@]*?(?<!:):(?!:)(.*)$", plain, re.DOTALL)
    # `: a_(1), b_` before a brace: that brace gives b_ its value and is not the body.
    return not (members and re.search(r"[\w>]\s*$", members[1]))


