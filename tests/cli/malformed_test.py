"""What is malformed is refused with one sentence that names the place, and nothing is changed."""
import copy
import hashlib
import json

import program
from program import Bench, main, run


def without(field):
    return lambda script: script.pop(field)


def command(change):
    return lambda script: script["commands"][0].update(change)


FAULTS = {
    "/commands": without("commands"),
    "/people": without("people"),
    "/format": lambda script: script.update(format="another"),
    "/min_reader": lambda script: script.update(min_reader=99),
    "/extra": lambda script: script.update(extra=1),
    "/commands/0/command": command({"command": "fly"}),
    "/commands/0/by": command({"by": "ZZ"}),
    "/commands/0/at": command({"at": "yesterday"}),
    "/commands/0/number": command({"number": 2041}),
    "/commands/0/colour": command({"colour": "red"}),
    "/commands/0/expect": command({"expect": "perhaps"}),
    "/instruments/0/kind": lambda script: script["instruments"][0].update(kind="hammer"),
    "/instruments/0/resolution": lambda script: script["instruments"][0].update(resolution="0..1"),
    "no-such-sheet": lambda script: script.update(sheet="no-such-sheet"),
    "Z9-1": lambda script: script.update(spec="Z9-1"),
}


class Malformed(Bench):
    def test_scripts(self):
        for place, fault in FAULTS.items():
            with self.subTest(place):
                script = copy.deepcopy(program.script())
                fault(script)
                line = self.refused("replay", "-", "--store", self.store, text=json.dumps(script))
                self.assertTrue(line.startswith(place + ": "), line)
                self.assertFalse(self.store.exists())

    def test_texts_that_are_no_json(self):
        for text in ("", "{", "[1,", '{"a": 01}', "nothing", '{"a": 1} x', "[" * 100000):
            with self.subTest(text[:10]):
                self.refused("replay", "-", "--store", self.store, text=text)
                self.refused("advise", text=text)
                self.assertFalse(self.store.exists())

    def test_a_store_stays_as_it_was(self):
        self.assertEqual(run("make-demo", "--jobs", 1, "--store", self.store)[0], 0)
        before = hashlib.sha256(self.store.read_bytes()).hexdigest()
        self.refused("replay", "-", "--store", self.store, text="{}")
        self.refused("make-demo", "--jobs", 1, "--store", self.store)
        self.assertEqual(hashlib.sha256(self.store.read_bytes()).hexdigest(), before)

    def test_files_that_are_no_store(self):
        self.store.write_text("not a database, but long enough to look like something " * 40, encoding="utf-8")
        before = self.store.read_bytes()
        for words in (["check"], ["find", "0417"], ["record", "1001", "--summary"], ["make-demo", "--jobs", "1"],
                      ["backup", self.folder / "copy"]):
            with self.subTest(words[0]):
                status, _, err = run(*words, "--store", self.store)
                self.assertIn(status, (1, 2))
                self.assertEqual(len(err), 1, err)
        self.assertEqual(self.store.read_bytes(), before)

    def test_a_script_file_that_is_not_there(self):
        self.assertIn("nowhere.json", self.refused("replay", self.folder / "nowhere.json", "--store", self.store))


main()
