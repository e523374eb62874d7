"""Words that do not belong in the code, each with the reason and what to write instead."""

import re
from dataclasses import dataclass

from arrows import WITHOUT_QT
from cpp_text import bare, blank, line_of
from source_tree import CPP_ENDINGS, run

CORE = tuple(f"src/{layer}" for layer in WITHOUT_QT)


@dataclass(frozen=True)
class Rule:
    pattern: str
    folders: tuple
    reason: str
    allowed: str = r"(?!)"  # what holds the word and is right all the same


RULES = (
    Rule(r"(?:\.|->)\s*value\s*\(\s*\)", ("src", "ui"), "value() throws where there is none; test first, then use *."),
    Rule(
        r"(?<!operator )\bnew\b",
        ("src",),
        "no raw owning pointer; use std::make_unique or a value.",
        # Owned at once: the only way to a constructor that is private.
        allowed=r"\bunique_ptr<[\w:]+>\s*\w*\s*\(\s*new\b",
    ),
    Rule(r"(?<!operator )(?<!= )(?<!=)\bdelete\b", ("src", "ui"), "no raw owning pointer; let the owner go out of scope."),
    Rule(
        # Every name that ends in a pause: of the standard library, the system and the toolkit.
        r"\b(?:[umq]?|nano|this_thread::)[Ss]leep(?:_\w+)?\s*\(|\bqWait\s*\(",
        ("tests",),
        "no sleeps in tests: wait for a condition, or hand in a clock.",
    ),
    Rule(r"\bQDoubleSpinBox\b", ("src", "ui"), "it turns 0,125 into 125; use the number field on the one reader."),
    Rule(
        r"\b(?:toDouble|toFloat|stod|stof|strtod|strtof|atof)\s*\(",
        ("src", "ui"),
        "it depends on the locale or hides what it could not read; use quantity::read_number or std::from_chars.",
    ),
    Rule(r"\bthrow\b", ("src", "ui"), "errors are values: return a Result."),
    Rule(
        r"\b(?:system_clock|steady_clock|high_resolution_clock|getenv|ifstream|ofstream|fopen|random_device)\b",
        CORE,
        "the core is pure: clock, files, environment and chance are handed in.",
    ),
)


def faults_in(name, text):
    code = bare(text)
    for rule in RULES:
        if name.startswith(tuple(f"{folder}/" for folder in rule.folders)):
            checked = re.sub(rule.allowed, lambda found: blank(found[0]), code)
            for found in re.finditer(rule.pattern, checked):
                yield f"{name}:{line_of(code, found.start())}: {found[0].strip()} – {rule.reason}"


def faults(tree):
    return [fault for name in tree.files(("src", "ui", "tests"), CPP_ENDINGS) for fault in faults_in(name, tree.text(name))]


if __name__ == "__main__":
    run(faults)
