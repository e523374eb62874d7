"""What the window says in other languages: a language that says anything says everything, each sentence keeps what is
filled into it, and no sentence stands in the sources where the translation tools do not see it."""

import re
import xml.etree.ElementTree as ElementTree
from collections import Counter

from cpp_text import line_of
from source_tree import CPP_ENDINGS, run

FOLDER = "data/translations"
FILE_NAME = re.compile(r"shimwright_(?P<language>[a-z]{2,3})\.ts$")
# How many forms a number takes in a language, as the translation tools count them.
PLURAL_FORMS = {"de": 2, "fr": 2}

FILLED_IN = re.compile(r"%L?(?:\d{1,2}|n)|\{\d\}")
TAG = re.compile(r"</?[a-z][^<>]*>|&[a-z]+;|&#\d+;")
# `&` before a letter marks the key of a button or a menu.
KEY_MARK = re.compile(r"&(?=[^\W\d_])(?![a-z]+;)")
BLANKS = " \t\r\n"

# The one place that looks up what another layer has marked.
LOOKS_UP = "ui/widgets/say.cpp"
TRANSLATE = re.compile(r"\b(?:translate\(\s*(?:\w+|\"[^\"]*\"),|tr\()\s*(?P<next>\S)")
ENGLISH_MONTH = re.compile(r"^(?!.*QLocale).*toString\(.*MMM", re.MULTILINE)
MARKED = re.compile(r"SHIMWRIGHT_TEXT\(\s*\"(?P<context>[^\"]*)\"")
WORD = re.compile(r"\"(?P<word>[a-z]+)\"")


def ends(text):
    return text[: len(text) - len(text.lstrip(BLANKS))], text[len(text.rstrip(BLANKS)) :]


def unlike(source, said, counts):
    """What the translation `said` does not keep of `source`; `counts`: it stands for a number, which one form may leave out."""
    left, right = Counter(FILLED_IN.findall(source)), Counter(FILLED_IN.findall(said))
    if counts:
        del left["%n"], right["%n"]
    if left != right:
        return "other things are filled in"
    if Counter(TAG.findall(source)) != Counter(TAG.findall(said)):
        return "its tags differ"
    if ends(source) != ends(said):
        return "it begins or ends with other blanks"
    if len(KEY_MARK.findall(source)) != len(KEY_MARK.findall(said)):
        return "one of the two marks a key with &, the other does not"
    return None


def forms_of(message):
    said = message.find("translation")
    if message.get("numerus") == "yes":
        return [form.text or "" for form in said.findall("numerusform")]
    return [said.text or ""]


def is_said(message):
    return message.find("translation").get("type") is None and all(form.strip() for form in forms_of(message))


def faults_of_message(message, language):
    if message.find("translation").get("type") in ("vanished", "obsolete"):
        return ["it is in the sources no more; take it out"]
    if not is_said(message):
        return ["it is not translated"]
    source = message.find("source").text or ""
    forms = forms_of(message)
    counts = message.get("numerus") == "yes"
    if counts and len(forms) != PLURAL_FORMS.get(language, len(forms)):
        return [f"it has {len(forms)} forms for a number"]
    return [fault for fault in (unlike(source, said, counts) for said in forms) if fault]


def messages(root):
    for context in root.findall("context"):
        for message in context.findall("message"):
            yield context.findtext("name"), message


def faults_of_file(tree, name):
    root = ElementTree.fromstring(tree.text(name))
    named = FILE_NAME.search(name)
    language = root.get("language")
    if not named or named["language"] != language:
        return [f"{name}: its name and its language '{language}' differ."]
    everything = list(messages(root))
    if not any(is_said(message) for _, message in everything):
        return []  # nobody has begun it, and it is not offered
    return [
        f"{name}: {context}, “{message.findtext('source')}”: {fault}."
        for context, message in everything
        for fault in faults_of_message(message, language)
    ]


def faults_between(tree, names):
    """All languages are made from the same sources."""
    roots = {name: ElementTree.fromstring(tree.text(name)) for name in names}
    said = {
        name: {(context, each.findtext("source"), each.findtext("comment")) for context, each in messages(root)}
        for name, root in roots.items()
    }
    everything = set().union(*said.values())
    return [
        f"{name}: {context}, “{source}”: it is missing; build the target `sentences`."
        for name in names
        for context, source, _ in sorted(everything - said[name], key=str)
    ]


def faults_of_sources(tree):
    looked_up = {found["word"] for found in WORD.finditer(tree.text(LOOKS_UP))} if tree.exists(LOOKS_UP) else set()
    found = []
    for name in tree.files(("src", "ui"), CPP_ENDINGS):
        text = tree.text(name)
        for each in TRANSLATE.finditer(text):
            if name != LOOKS_UP and each["next"] != '"':
                line = line_of(text, each.start())
                found.append(f"{name}:{line}: the translation tools see no text here; write it in the call.")
        for each in ENGLISH_MONTH.finditer(text):
            line = line_of(text, each.start())
            found.append(f"{name}:{line}: this month is always English; let QLocale() write it.")
        for each in MARKED.finditer(text):
            if each["context"] not in looked_up:
                line = line_of(text, each.start())
                found.append(f"{name}:{line}: {LOOKS_UP} does not look up what '{each['context']}' says.")
    return found


def faults(tree):
    names = tree.files((FOLDER,), (".ts",))
    found = [fault for name in names for fault in faults_of_file(tree, name)]
    return found + (faults_between(tree, names) if names else []) + faults_of_sources(tree)


if __name__ == "__main__":
    run(faults)
