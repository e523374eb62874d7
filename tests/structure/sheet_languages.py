"""The shipped sheets speak every language the window is offered in: who reads the window in German gets no caution in
English. Of a sheet that lies there in several issues this holds for the latest."""

import json
import re
import xml.etree.ElementTree as ElementTree

from sentences import FILE_NAME, FOLDER, is_said, messages
from source_tree import run

SHEETS = "data/sheets"
SPECS = "data/specs"
NUMBER = re.compile(r"\d+(?:[.,]\d+)?")


def languages(tree):
    """English, and those in which the window says anything."""
    found = ["en"]
    for name in tree.files((FOLDER,), (".ts",)):
        root = ElementTree.fromstring(tree.text(name))
        if FILE_NAME.search(name) and any(is_said(message) for _, message in messages(root)):
            found.append(root.get("language"))
    return found


def texts(value, place=""):
    """Each text by language and its JSON pointer."""
    if isinstance(value, dict):
        if "en" in value:
            yield place, value
            return
        for key, part in value.items():
            yield from texts(part, f"{place}/{key}")
    elif isinstance(value, list):
        for at, part in enumerate(value):
            yield from texts(part, f"{place}/{at}")


def latest(sheets):
    """By name of the file, of each sheet the one with the highest issue."""
    best = {}
    for name, sheet in sheets.items():
        key = sheet.get("name") or sheet.get("gearbox")
        if key not in best or sheets[best[key]]["issue"] < sheet["issue"]:
            best[key] = name
    return {name: sheets[name] for name in sorted(best.values())}


def faults_of_text(text, wanted):
    """What is wrong with one text. A sentence of several words is not the English one again."""
    for language in wanted:
        if not text.get(language, "").strip():
            yield f"it has no {language}"
        elif language != "en" and text[language] == text["en"] and " " in text["en"]:
            yield f"its {language} is the English text"
        elif sorted(NUMBER.findall(text[language])) != sorted(NUMBER.findall(text["en"])):
            yield f"its {language} has other numbers"


def faults(tree):
    wanted = languages(tree)
    found = []
    for folder in (SHEETS, SPECS):
        sheets = {name: json.loads(tree.text(name)) for name in tree.files((folder,), (".json",))}
        for name, sheet in latest(sheets).items():
            for place, text in texts(sheet):
                found += [f"{name}: {place}, “{text['en']}”: {fault}." for fault in faults_of_text(text, wanted)]
    return found


if __name__ == "__main__":
    run(faults)
