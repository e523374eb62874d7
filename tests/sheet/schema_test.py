"""The schemas take every sheet that is shipped and refuse what the program refuses, wherever a schema can say it; the
examples in the documents of the formats stand in shipped files."""

import copy
import json
import re
import sys
import unittest
from pathlib import Path

try:
    import jsonschema
except ImportError:
    sys.exit("The Python package jsonschema is missing; install python3-jsonschema.")

ROOT = Path(__file__).resolve().parents[2]
DATA = ROOT / "data"
HERE = Path(__file__).resolve().parent / "data"
FOLDERS = {"job-sheet": DATA / "sheets", "spec-sheet": DATA / "specs"}


def load(path):
    return json.loads(path.read_text(encoding="utf-8"))


def schema(name):
    return load(DATA / "schema" / f"{name}.schema.json")


def validator(name):
    return jsonschema.Draft202012Validator(schema(name))


def target(document, path):
    """The list or object that holds the last step of a JSON pointer, and that step."""
    steps = [step.replace("~1", "/").replace("~0", "~") for step in path.split("/")[1:]]
    for step in steps[:-1]:
        document = document[int(step)] if isinstance(document, list) else document[step]
    return document, int(steps[-1]) if isinstance(document, list) else steps[-1]


def patched(document, patch):
    """RFC 6902, the operations our tables use."""
    document = copy.deepcopy(document)
    for change in patch:
        holder, key = target(document, change["path"])
        if change["op"] == "remove":
            del holder[key]
        elif change["op"] == "add" and isinstance(holder, list):
            holder.insert(key, change["value"])
        else:
            holder[key] = change["value"]
    return document


class Schemas(unittest.TestCase):
    def test_are_schemas_themselves(self):
        for name in FOLDERS:
            with self.subTest(name):
                jsonschema.Draft202012Validator.check_schema(schema(name))
                self.assertEqual(schema(name)["$id"], f"urn:shimwright:schema:{name}")

    def test_take_every_shipped_file(self):
        for name, folder in FOLDERS.items():
            files = sorted(folder.glob("*.json"))
            self.assertTrue(files, folder)
            for path in files:
                with self.subTest(path.name):
                    self.assertEqual([error.message for error in validator(name).iter_errors(load(path))], [])

    def test_refuse_a_shipped_file_of_the_other_kind(self):
        self.assertFalse(validator("job-sheet").is_valid(load(DATA / "specs" / "D7-2.json")))
        self.assertFalse(validator("spec-sheet").is_valid(load(DATA / "sheets" / "dry-pack-renewal.json")))

    def test_refuse_what_a_schema_can_say_and_leave_the_rest_to_the_program(self):
        tables = sorted((HERE / "refused").glob("*.json"))
        self.assertTrue(tables)
        for table in map(load, tables):
            good = load(HERE / table["file"])
            check = validator(table["schema"])
            self.assertTrue(check.is_valid(good))
            for row in table["refusals"]:
                with self.subTest(f"{table['file']}: {row['name']}"):
                    self.assertEqual(not check.is_valid(patched(good, row["patch"])), row["schema"])


def examples(document):
    """Each JSON block of a document as a value; a member alone is the value of its name."""
    for block in re.findall(r"^```json\n(.*?)^```", document, re.MULTILINE | re.DOTALL):
        value = json.loads(block if block.lstrip().startswith("{") else "{" + block + "}")
        yield block, value if block.lstrip().startswith("{") else next(iter(value.values()))


def is_text(value):
    return isinstance(value, dict) and "en" in value


def same(example, value):
    """An empty list in an example stands for any."""
    if isinstance(example, dict) and isinstance(value, dict):
        return example.keys() == value.keys() and all(same(example[key], value[key]) for key in example)
    return example == value or (example == [] and isinstance(value, list))


def holds(value, example):
    inside = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    return same(example, value) or any(holds(each, example) for each in inside)


class Documents(unittest.TestCase):
    def test_show_what_stands_in_shipped_files(self):
        for name, folder in FOLDERS.items():
            document = (ROOT / "docs" / "formats" / f"{name}.md").read_text(encoding="utf-8")
            shipped = [load(path) for path in sorted(folder.glob("*.json"))]
            shown = [(block, value) for block, value in examples(document) if not is_text(value)]
            self.assertTrue(shown)
            for block, value in shown:
                with self.subTest(f"{name}: {block}"):
                    self.assertTrue(any(holds(each, value) for each in shipped))

    def test_name_every_field_of_the_schema(self):
        for name in FOLDERS:
            document = (ROOT / "docs" / "formats" / f"{name}.md").read_text(encoding="utf-8")
            for field in fields_of(schema(name)):
                with self.subTest(f"{name}: {field}"):
                    self.assertRegex(document, rf"[`\"]{field}[`\"]")


def fields_of(value):
    """Every name under `properties`, at any depth."""
    if isinstance(value, list):
        return {name for each in value for name in fields_of(each)}
    if not isinstance(value, dict):
        return set()
    own = set(value["properties"]) if isinstance(value.get("properties"), dict) else set()
    return own | {name for each in value.values() for name in fields_of(each)}


if __name__ == "__main__":
    unittest.main()
