"""A whole job out of one store and into another, from a terminal."""
import base64
import hashlib
import json
import pathlib
import sqlite3
import unittest

from program import DEMO, SOURCE, Bench, entries_in, main, run

try:
    import jsonschema
except ImportError:
    raise SystemExit("The Python package jsonschema is missing; install python3-jsonschema.")

SCHEMA = jsonschema.Draft202012Validator(json.loads((SOURCE / "data/schema/job.schema.json").read_text(encoding="utf-8")))


def jobs_in(store):
    return sorted(entries_in(store))


class Exchange(Bench):
    def setUp(self):
        super().setUp()
        self.other = self.folder / "other" / "workshop.shimwright"
        self.assertEqual(run("make-demo", "--jobs", 3, "--store", self.store)[0], 0)
        self.assertEqual(run("make-demo", "--jobs", 2, "--seed", 9, "--store", self.other)[0], 0)

    def sent(self, job, store=None):
        status, out, err = run("export", job, self.folder, "--store", store or self.store)
        self.assertEqual((status, err), (0, []))
        return pathlib.Path(json.loads(out[0])["file"])

    def taken(self, file, store):
        status, out, err = run("import", file, "--store", store)
        self.assertEqual(status, 0, err)
        return json.loads(out[0]), err

    def test_two_stores_merged_both_ways_hold_the_same(self):
        for source, target in ((self.store, self.other), (self.other, self.store)):
            for job in jobs_in(source):
                self.taken(self.sent(job, source), target)
        self.assertEqual(len(jobs_in(self.store)), 5)
        with sqlite3.connect(self.store) as one, sqlite3.connect(self.other) as two:
            hashes = "SELECT job, seq, hash FROM entry ORDER BY job, seq"
            self.assertEqual(one.execute(hashes).fetchall(), two.execute(hashes).fetchall())
        for store in (self.store, self.other):
            status, out, err = run("check", "--store", store)
            self.assertEqual((status, err), (0, []))

    def test_the_same_file_again_changes_nothing(self):
        file = self.sent(jobs_in(self.store)[0])
        first, _ = self.taken(file, self.other)
        self.assertGreater(first["entries_new"], 0)
        again, _ = self.taken(file, self.other)
        self.assertEqual((again["entries_new"], again["entries_there"]), (0, first["entries_new"]))

    def test_equal_numbers_are_told(self):
        with sqlite3.connect(self.store) as one, sqlite3.connect(self.other) as two:
            numbers = "SELECT number FROM job ORDER BY number"
            both = {row[0] for row in one.execute(numbers)} & {row[0] for row in two.execute(numbers)}
            self.assertTrue(both, "the demonstration numbers its jobs from the same start")
            number = sorted(both)[0]
        line, err = self.taken(self.sent(number), self.other)
        self.assertTrue(any(f"number {number} as well" in each for each in line["told"]))
        self.assertTrue(any(f"number {number} as well" in each for each in err))

    def test_the_file_is_lines_of_json_as_the_schema_says(self):
        self.assertEqual(run("replay", DEMO[0], "--store", self.store)[0], 0)
        for job in jobs_in(self.store):
            lines = self.sent(job).read_bytes().splitlines(keepends=True)
            first = json.loads(lines[0])
            SCHEMA.validate(first)
            self.assertEqual(len(lines), len(first["photos"]) + 2)
            for named, line in zip(first["photos"], lines[1:-1]):
                photo = json.loads(line)
                content = base64.b64decode(photo["base64"])
                self.assertEqual(hashlib.sha256(content).hexdigest(), named["sha256"])
            whole = hashlib.sha256(b"".join(lines[:-1])).hexdigest()
            self.assertEqual(json.loads(lines[-1]), {"sha256": whole})

    def test_the_schema_refuses_what_the_program_refuses(self):
        jsonschema.Draft202012Validator.check_schema(SCHEMA.schema)
        first = json.loads(self.sent(jobs_in(self.store)[0]).read_bytes().splitlines()[0])
        for key in first:
            self.assertFalse(SCHEMA.is_valid({**first, key: None}), key)
            self.assertFalse(SCHEMA.is_valid({other: first[other] for other in first if other != key}), key)
        self.assertFalse(SCHEMA.is_valid({**first, "surprise": 1}))

    def test_what_is_refused_is_one_line_and_changes_nothing(self):
        file = self.sent(jobs_in(self.store)[0])
        before = entries_in(self.other)
        hostile = self.folder / "hostile.jsonl"
        contents = [b"", b"\n", b"[" * 100000, b'{"format":"shimwright.job"', file.read_bytes()[:-70],
                    file.read_bytes().replace(b"TESTVN", b"TESTVM", 1), self.other.read_bytes(), b"\x00" * 5000,
                    b'{"format":"shimwright.job","min_reader":9}\n', DEMO[0].read_bytes()]
        for content in contents:
            hostile.write_bytes(content)
            self.refused("import", hostile, "--store", self.other)
        self.refused("import", self.folder, "--store", self.other)
        self.refused("import", self.folder / "nothing", "--store", self.other)
        self.assertEqual(entries_in(self.other), before)
        self.assertEqual(run("check", "--store", self.other)[0], 0)

    def test_an_import_begins_no_store(self):
        file = self.sent(jobs_in(self.store)[0])
        self.assertIn("no store", self.refused("import", file, "--store", self.folder / "new"))
        self.assertFalse((self.folder / "new").exists())

    def test_nothing_else_is_written_over(self):
        notes = self.folder / "notes.txt"
        notes.write_text("mine", encoding="utf-8")
        self.assertIn("not written over", self.refused("export", jobs_in(self.store)[0], notes, "--store", self.store))
        self.assertEqual(notes.read_text(encoding="utf-8"), "mine")
        self.refused("export", "no such job", self.folder, "--store", self.store)


main()
