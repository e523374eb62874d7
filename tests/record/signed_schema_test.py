"""Signed records hold to data/schema/signed-record.schema.json, and what stands in them as a record to record.schema.json;
a member too many, missing or of another type is refused wherever it stands."""

import copy
import json
import subprocess
import sys
import unittest
from pathlib import Path

try:
    import jsonschema
except ImportError:
    sys.exit("The Python package jsonschema is missing; install python3-jsonschema.")

ROOT = Path(__file__).resolve().parents[2]
SAMPLES = [json.loads(line) for line in
           subprocess.run(sys.argv.pop(1), check=True, capture_output=True, text=True).stdout.splitlines()]


def validator(name):
    return jsonschema.Draft202012Validator(json.loads((ROOT / f"data/schema/{name}.schema.json").read_text(encoding="utf-8")))


SIGNED = validator("signed-record")


def objects_in(value, at=()):
    """The way to each object but those of the record, which have a schema of their own, and the list of texts."""
    if isinstance(value, dict):
        if at not in ((), ("personal",)):
            yield at
        for key, each in value.items():
            if key != "record":
                yield from objects_in(each, (*at, key))
    elif isinstance(value, list):
        for place, each in enumerate(value[:2]):
            yield from objects_in(each, (*at, place))


def reached(document, way):
    for key in way:
        document = document[key]
    return document


class SignedSchema(unittest.TestCase):
    def test_is_a_schema_itself(self):
        jsonschema.Draft202012Validator.check_schema(SIGNED.schema)
        self.assertEqual(SIGNED.schema["$id"], "urn:shimwright:schema:signed-record")

    def test_takes_what_is_written(self):
        self.assertEqual(len(SAMPLES), 2)
        for sample in SAMPLES:
            self.assertEqual([error.message[:200] for error in SIGNED.iter_errors(sample)], [])
            record = {"format": "shimwright.record", "version": 1, "min_reader": 1, "record": sample["record"],
                      "personal": sample["personal"]}
            self.assertEqual([error.message[:200] for error in validator("record").iter_errors(record)], [])

    def test_refuses_a_member_too_many_missing_or_of_another_type(self):
        sample = SAMPLES[0]
        ways = [(), *objects_in(sample)]
        self.assertGreater(len(ways), 10)
        for way in ways:
            with self.subTest(str(way)):
                wrong = copy.deepcopy(sample)
                reached(wrong, way)["mood"] = "good"
                self.assertFalse(SIGNED.is_valid(wrong))
                for member in reached(sample, way):
                    wrong = copy.deepcopy(sample)
                    reached(wrong, way)[member] = 0.5
                    self.assertFalse(SIGNED.is_valid(wrong), member)
                    del reached(wrong, way)[member]
                    self.assertFalse(SIGNED.is_valid(wrong), member)

    def test_the_document_names_every_member(self):
        document = (ROOT / "docs/formats/signed-record.md").read_text(encoding="utf-8")
        for part in (SIGNED.schema, SIGNED.schema["$defs"]["seal"], SIGNED.schema["$defs"]["addendum"]):
            for member in part["properties"]:
                self.assertIn(f"`{member}`", document)


if __name__ == "__main__":
    unittest.main()
