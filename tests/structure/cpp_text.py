"""C++ text with comments, string contents and preprocessor lines blanked: same length, same lines."""

import re

TOKEN = re.compile(
    r"""
    (?P<line_comment>//(?:\\\n|[^\n])*)
  | (?P<block_comment>/\*.*?\*/)
  | (?P<raw_string>(?:u8|[uUL])?R"(?P<mark>[^()\\\s]{0,16})\(.*?\)(?P=mark)")
  | (?P<string>"(?:\\.|[^"\\\n])*")
  | (?P<digit_mark>(?<=[0-9a-fA-F])'(?=[0-9a-fA-F]))
  | (?P<character>'(?:\\.|[^'\\\n])+')
    """,
    re.VERBOSE | re.DOTALL,
)
DIRECTIVE = re.compile(r"^[ \t]*#(?:\\\n|[^\n])*", re.MULTILINE)


def blank(text):
    return re.sub(r"[^\n]", " ", text)


def without_comments(text):
    """Comments blanked, all else as it stands."""
    return TOKEN.sub(lambda token: blank(token[0]) if "comment" in (token.lastgroup or "") else token[0], text)


def bare(text):
    """Only the code: a string keeps its quotes, a directive leaves nothing."""

    def shell(token):
        kind = token.lastgroup
        if kind == "digit_mark":
            return "0"
        if kind in ("string", "character"):
            return token[0][0] + blank(token[0][1:-1]) + token[0][-1]
        if token["raw_string"]:
            return '"' + blank(token[0][1:-1]) + '"'
        return blank(token[0])

    return DIRECTIVE.sub(lambda directive: blank(directive[0]), TOKEN.sub(shell, text))


def line_of(text, offset):
    return text.count("\n", 0, offset) + 1
