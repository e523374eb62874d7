"""Every cause of refusal the sources know, by layer: its code, its sentences, and what to do. Written to docs/refusals.md by
`python3 tests/structure/refusals.py --write`; the test beside this holds the document to it."""

import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
DOCUMENT = ROOT / "docs/refusals.md"
REMEDIES = ROOT / "tests/structure/remedies.txt"

LAYERS = {
    "quantity": ("src/quantity", "The reader of typed numbers."),
    "json": ("src/json", "JSON from outside, and canonical JSON."),
    "metrology": ("src/metrology", "Arithmetic on readings."),
    "shim": ("src/shim", "The shim engine's check of its case."),
    "vehicle": ("src/vehicle", "Vehicle and chassis numbers."),
    "sheet": ("src/sheet", "Job sheets and spec sheets."),
    "job": (
        "src/job",
        "A command is accepted or refused; the job is unchanged by a refusal. Readings that are off their limit or look odd are "
        "no refusals: they are kept and their step is *held*; the questions asked in place are listed in "
        "`src/job/include/shimwright/job/questions.h`. Reading stored entries refuses with `unknown_kind` and `bad_body`.",
    ),
    "record": ("src/record", "Signed records, seals, PINs and chains."),
    "store": ("src/store", "The store, its registers, backups, photos, keys and sealed jobs."),
    "print": ("src/print", "PDF and printer."),
    "cli": ("src/cli", "The command line and its scripts."),
    "window": ("ui", "The window; what lies below is told there as well."),
}

# Where code and sentence do not stand in one call: all sentences of the file that stand in none.
APART = {
    "src/job/codec_reader.cpp": "bad_body",
    "src/job/to_decide.cpp": "not_decided",
    "src/json/canonical.cpp": "not_canonical",
    "src/json/object_reader.cpp": "wrong_type",
    "src/json/scanner.cpp": "no_json",
    "ui/past/printing.cpp": "printer_fails",
    "ui/shell/pages.cpp": "unsent",
}

CALL = re.compile(r"\b(?:refuse|refuse_at|refuse_here|note|Error|fail)\s*[({]|\{SQLITE_\w+,")
CODE = re.compile(r'^[({]\s*(?:SQLITE_\w+,\s*)?(?:[\w.]+,\s*)?"([a-z][a-z0-9_]*)"')
LITERALS = r'((?:"(?:[^"\\]|\\.)*"\s*)+)'
SENTENCE = re.compile(r'(?:SHIMWRIGHT_TEXT|QT_TRANSLATE_NOOP|QCoreApplication::translate)\(\s*"[\w:]+",\s*' + LITERALS)
WRAPPED = re.compile(r'\b(bad_body)\(')


def call_at(text, start):
    """From its opening bracket to its closing one."""
    depth, at, quoted = 0, start, False
    while at < len(text):
        each = text[at]
        if quoted:
            at += each == "\\"
            quoted = each != '"'
        elif each == '"':
            quoted = True
        elif each in "({":
            depth += 1
        elif each in ")}":
            depth -= 1
            if depth == 0:
                break
        at += 1
    return text[start : at + 1]


def words(literals):
    return "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', literals)).replace('\\"', '"')


def refusals_in(path, text):
    """(code, sentence) in their order; a sentence is blank where the call has none."""
    found, used = [], set()
    for match in CALL.finditer(text):
        start = match.start() if match.group().startswith("{") else match.end() - 1
        call = call_at(text, start)
        code = CODE.match(call)
        if not code:
            continue
        sentences = list(SENTENCE.finditer(call))
        used.update(start + each.start() for each in sentences)
        found += [(code[1], words(each[1])) for each in sentences] or [(code[1], "")]
    for match in WRAPPED.finditer(text):
        call = call_at(text, match.end() - 1)
        for each in SENTENCE.finditer(call):
            used.add(match.end() - 1 + each.start())
            found.append((match[1], words(each[1])))
    if path in APART:
        apart = [words(each[1]) for each in SENTENCE.finditer(text) if each.start() not in used]
        found += [(APART[path], sentence) for sentence in apart if sentence.endswith(".")]
    return found


def refusals(root=ROOT):
    """Sentences by code, by layer."""
    layers = {}
    for layer, (folder, _) in LAYERS.items():
        codes = {}
        for path in sorted((root / folder).rglob("*")):
            if path.suffix in (".cpp", ".h"):
                for code, sentence in refusals_in(str(path.relative_to(root)), path.read_text(encoding="utf-8")):
                    known = codes.setdefault(code, [])
                    if sentence and sentence not in known:
                        known.append(sentence)
        layers[layer] = dict(sorted(codes.items()))
    return layers


def remedies(root=ROOT):
    """`layer code  what to do`, for what the sentence does not say by itself."""
    lines = (root / REMEDIES.relative_to(ROOT)).read_text(encoding="utf-8").splitlines()
    pairs = [line.split(maxsplit=2) for line in lines if line.strip() and not line.startswith("#")]
    return {(layer, code): remedy for layer, code, remedy in pairs}


def remedy_in(sentence):
    """What follows the last colon or semicolon is what to do."""
    end = re.split(r"[:;] ", sentence)
    return end[-1].rstrip(".") if len(end) > 1 and not re.fullmatch(r"\{\d\}\.?", end[-1]) else ""


def remedy_of(layer, code, sentences, known):
    if (layer, code) in known:
        return known[layer, code]
    told = []
    for sentence in sentences:
        remedy = remedy_in(sentence)
        if not remedy:
            return ""
        if remedy not in told:
            told.append(remedy)
    return " / ".join(told)


def document(layers, known):
    lines = [
        "# Refusals",
        "",
        "Every cause of refusal the program knows, written from the sources by `python3 tests/structure/refusals.py --write`. The code is",
        "stable, for programs; the sentence is what a person reads, with what is wrong, where, and what to do; nothing was changed by what was",
        "refused. `{0}` and the like are filled in. A layer passes on the codes of those below it, with the place of the field.",
        "",
        "`tests/structure/refusals_test.py` compares this document with the sources and asks for a test that provokes each.",
        "",
        "Where something *was changed*, keep it as it is. The signed file of a job in the backup folder, the backups, and the printed code are",
        "each proof by themselves; compare them (docs/formats/signed-record.md, code.md), and run `shimwright-cli check`.",
    ]
    for layer, (_, about) in LAYERS.items():
        if layers[layer]:
            lines += ["", f"## `{layer}`", "", about, "", "| code | sentence | what to do |", "|---|---|---|"]
            for code, sentences in layers[layer].items():
                remedy = remedy_of(layer, code, sentences, known)
                lines.append(f"| `{code}` | {' / '.join(sentences)} | {remedy} |".replace("\\n", " "))
    return "\n".join(lines) + "\n"


def main():
    text = document(refusals(), remedies())
    if "--write" in sys.argv:
        DOCUMENT.write_text(text, encoding="utf-8")
    else:
        sys.stdout.write(text)


if __name__ == "__main__":
    main()
