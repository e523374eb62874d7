"""The schema of entries takes every body that is kept for ever and refuses what the program refuses; the document of
entries has a place for each kind."""

import copy
import json
import sys
import unittest
from pathlib import Path

try:
    import jsonschema
except ImportError:
    sys.exit("The Python package jsonschema is missing; install python3-jsonschema.")

ROOT = Path(__file__).resolve().parents[2]
SCHEMA = json.loads((ROOT / "data" / "schema" / "entry.schema.json").read_text(encoding="utf-8"))
KINDS = SCHEMA["properties"]["kind"]["enum"]
CHECK = jsonschema.Draft202012Validator(SCHEMA)


def kept_entries():
    """Each golden body as an entry: `float_run.json`, `noted.bare.json` and `read.version-2.json` are named by their kind."""
    for path in sorted((Path(__file__).resolve().parent / "golden").glob("*.json")):
        body = json.loads(path.read_text(encoding="utf-8"))
        version = 2 if path.name.endswith(".version-2.json") else 1
        yield path.name, {"kind": path.name.split(".")[0], "kind_version": version, "body": body}


class EntrySchema(unittest.TestCase):
    def test_is_a_schema_itself(self):
        jsonschema.Draft202012Validator.check_schema(SCHEMA)
        self.assertEqual(SCHEMA["$id"], "urn:shimwright:schema:entry")

    def test_takes_every_body_that_is_kept(self):
        kinds = set()
        for name, entry in kept_entries():
            with self.subTest(name):
                self.assertEqual([error.message for error in CHECK.iter_errors(entry)], [])
            kinds.add(entry["kind"])
        self.assertEqual(kinds, set(KINDS))

    def test_refuses_a_member_too_many_or_of_another_type(self):
        for name, entry in kept_entries():
            with self.subTest(name):
                wrong = copy.deepcopy(entry)
                wrong["body"]["mood"] = "good"
                self.assertFalse(CHECK.is_valid(wrong))
                for member in entry["body"]:
                    wrong = copy.deepcopy(entry)
                    wrong["body"][member] = 0.5
                    self.assertFalse(CHECK.is_valid(wrong), member)

    def test_refuses_another_kind_or_version(self):
        entry = {"kind": "noted", "kind_version": 1, "body": {"text": "Rain"}}
        self.assertTrue(CHECK.is_valid(entry))
        for change in ({"kind": "sung"}, {"kind_version": 2}, {"kind": "done"}, {"body": {}}):
            with self.subTest(str(change)):
                self.assertFalse(CHECK.is_valid({**entry, **change}))

    def test_the_document_describes_every_kind(self):
        document = (ROOT / "docs" / "formats" / "entries.md").read_text(encoding="utf-8")
        for kind in KINDS:
            with self.subTest(kind):
                self.assertIn(f"\n### `{kind}`\n", document)
                for member in SCHEMA["$defs"][kind]["properties"]:
                    self.assertIn(f"`{member}`", document)


if __name__ == "__main__":
    unittest.main()
