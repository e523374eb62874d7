"""What is malformed is refused with one sentence that names the place, and nothing is changed."""
import copy
import contextlib
import hashlib
import json
import sqlite3

import program
from program import DEMO, Bench, main, run


def dump(store):
    with contextlib.closing(sqlite3.connect(f"file:{store}?mode=ro", uri=True)) as database:
        return list(database.iterdump())


def without(field):
    return lambda script: script.pop(field)


def command(change):
    return lambda script: script["commands"][0].update(change)


def item(kind, change, at=0):
    return lambda script: script[kind][at].update(change)


def twice(kind):
    return lambda script: script[kind].append(copy.deepcopy(script[kind][0]))


def appended(**fields):
    return lambda script: script["commands"].append({"by": "MK", **fields})


TRAY = {"name": "large D7", "shims": [{"id": "1.65", "thickness": "1.652", "u_um": 2}]}


def tray(change):
    return lambda script: script.update(trays=[{**TRAY, **change}])


def shims(*of):
    return tray({"shims": [{"id": each, "thickness": thickness, "u_um": 2} for each, thickness in of]})


# Each is the last of its kind, so that what stands before it could have been written.
FAULTS_OF_REGISTERS = {
    "/people/3/name": lambda script: script["people"].append({"initials": "QQ", "name": " "}),
    "/people/3/initials": lambda script: script["people"].append({"initials": "", "name": "Quill Quarry"}),
    "/workshop/name": lambda script: script.update(workshop=""),
    "/instruments/0/resolution": item("instruments", {"resolution": "0"}),
    "/instruments/1/permissible_error": item("instruments", {"permissible_error": "-0.01"}, 1),
    "/instruments/2/calibrated_to": item("instruments", {"calibrated_to": "soon"}, 2),
    "/instruments/0/turn": item("instruments", {"turn": "0"}),
    "/trays/0/1.65/thickness": shims(("1.60", "1.60"), ("1.65", "-1.65")),
    "/trays/0/1.60": shims(("1.60", "1.60"), ("1.60", "1.65")),
}

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
    "/people/3/initials": twice("people"),
    "/trays/0/shims": tray({"shims": []}),
    "/trays/0/name": tray({"name": "zzz"}),
    "/trays/1/name": lambda script: script.update(trays=[TRAY, TRAY]),
    "/commands/0/language": command({"language": "xx"}),
    "/title": lambda script: script.update(title="a\0b"),
    "/commands/0/plate": command({"plate": "a\0b"}),
    "no-such-sheet": lambda script: script.update(sheet="no-such-sheet"),
    "Z9-1": lambda script: script.update(spec="Z9-1"),
}


class Malformed(Bench):
    def refused_script(self, script, store=None):
        words = ("replay", "-", "--store", store or self.store)
        return self.refused(*words, text=json.dumps(script), folder=DEMO[0].parent)

    def test_scripts(self):
        for place, fault in FAULTS.items():
            with self.subTest(place):
                script = copy.deepcopy(program.script())
                fault(script)
                line = self.refused_script(script)
                self.assertTrue(line.startswith(place + ": "), line)
                self.assertFalse(self.store.exists())

    def test_what_the_registers_refuse(self):
        self.assertEqual(run("make-demo", "--jobs", 1, "--store", self.store)[0], 0)
        before = dump(self.store)
        for place, fault in FAULTS_OF_REGISTERS.items():
            with self.subTest(place):
                script = copy.deepcopy(program.script())
                fault(script)
                # Somebody new, who could have been entered before the fault was met.
                script["people"].insert(0, {"initials": "NN", "name": "Nell Norden"})
                moved = place.replace("/people/3", "/people/4")
                for store in (self.store, self.folder / "new.shimwright"):
                    line = self.refused_script(script, store)
                    self.assertTrue(line.startswith(moved + ": "), line)
                self.assertEqual(dump(self.store), before)
                self.assertFalse((self.folder / "new.shimwright").exists())

    def test_names_that_nothing_bears(self):
        for name, fault in {
            "/commands": lambda script: script.update(commands=[]),
            "/instruments": twice("instruments"),
            "/step": appended(command="do", step="no-such-step"),
            "/file": appended(command="photo", step="received-photos", file="nowhere.jpg"),
        }.items():
            with self.subTest(name):
                script = copy.deepcopy(program.script())
                fault(script)
                line = self.refused_script(script)
                self.assertIn(name, line.split(": ")[0])
                self.assertFalse(self.store.exists())

    def test_what_is_expected_to_be_refused_may_be_unknown(self):
        script = copy.deepcopy(program.script(DEMO[3]))
        by = script["people"][0]["initials"]
        script["commands"].append({"command": "do", "by": by, "step": "no-such-step", "expect": "refused"})
        status, out, err = run("replay", "-", "--store", self.store, text=json.dumps(script), folder=DEMO[0].parent)
        self.assertEqual(status, 0, err)
        self.assertEqual(json.loads(out[-1])["unexpected"], 0)

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
