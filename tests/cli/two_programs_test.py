"""A second program beside one that writes: it looks, and is told who writes."""
import json
import os
import subprocess

from program import DEMO, PROGRAM, Bench, entries_in, main, run, script


class Writer:
    """A replay that waits in the middle of a job until go_on(): its photo is a pipe that nobody has written to yet."""

    def __init__(self, folder, store):
        self.pipe = folder / "photo.png"
        os.mkfifo(self.pipe)
        job = script(DEMO[0])
        photo = next(at for at, each in enumerate(job["commands"]) if each["command"] == "photo")
        job["commands"] = job["commands"][:photo + 2]
        # A pipe is no photo that could be kept: refused once it was read.
        job["commands"][photo].update(file=str(self.pipe), expect="refused")
        job["commands"][photo + 1]["file"] = str(DEMO[0].parent / job["commands"][photo + 1]["file"])
        path = folder / "script.json"
        path.write_text(json.dumps(job), encoding="utf-8")
        self.running = subprocess.Popen([PROGRAM, "replay", path, "--store", store], stdout=subprocess.PIPE, text=True)
        self.lines = [json.loads(self.running.stdout.readline()) for _ in range(photo)]

    def go_on(self):
        """Gives the lines that were still to come and the exit status."""
        self.pipe.write_bytes(next((DEMO[0].parent / "photos").glob("*.png")).read_bytes())
        rest, _ = self.running.communicate()
        return [json.loads(line) for line in rest.splitlines()], self.running.returncode

    def end(self):
        if self.running.poll() is None:
            self.running.kill()
        self.running.wait()
        self.running.stdout.close()


class TwoPrograms(Bench):
    def setUp(self):
        super().setUp()
        self.assertEqual(run("make-demo", "--jobs", 2, "--store", self.store)[0], 0)
        self.before = entries_in(self.store)
        self.writer = Writer(self.folder, self.store)
        self.addCleanup(self.writer.end)

    def goes_on(self):
        """The writer stores what it still had to, and all of it is in order."""
        rest, status = self.writer.go_on()
        self.assertEqual(status, 0)
        self.assertEqual([line["accepted"] for line in rest[:-1]], [False, True])
        status, out, _ = run("check", "--store", self.store)
        self.assertEqual((status, json.loads(out[0])["jobs"]), (0, 3))
        self.assertEqual(json.loads(out[0])["entries"], sum(map(len, self.before.values())) + rest[-1]["entries"])

    def test_a_second_writer_is_told_who_writes(self):
        said = self.refused("replay", DEMO[1], "--store", self.store)
        self.assertRegex(said, r"Mara Kestrel has had this store open on the computer \S+ since \d{4}-\d\d-\d\d \d\d:\d\d UTC[+-]\d\d:\d\d")
        self.assertIn("open the store for looking", said)
        vehicle = json.loads(run("find", "1001", "--store", self.store)[1][0])["vehicle"]
        self.assertEqual(self.refused("erase", vehicle, "--store", self.store), said)
        self.assertEqual(self.refused("make-demo", "--jobs", 1, "--store", self.store), said)
        self.goes_on()

    def test_who_looks_sees_every_line_the_writer_printed(self):
        job = [each for each in entries_in(self.store) if each not in self.before]
        number = script(DEMO[0])["commands"][0]["number"]
        status, out, err = run("find", number, "--store", self.store)
        self.assertEqual((status, err, json.loads(out[0])["job"]), (0, [], job[0]))
        status, out, err = run("check", "--store", self.store)
        self.assertEqual((status, err), (0, []))
        stored = sum(len(line["entries"]) for line in self.writer.lines)
        self.assertEqual(json.loads(out[0])["entries"], sum(map(len, self.before.values())) + stored)
        status, out, err = run("record", number, "--store", self.store, "--summary")
        self.assertEqual((status, err, bool(out)), (0, [], True))
        self.goes_on()

    def test_a_backup_made_meanwhile_is_whole(self):
        copy = self.folder / "copy.shimwright"
        status, out, _ = run("backup", copy, "--store", self.store)
        self.assertEqual(status, 0)
        self.assertEqual(entries_in(copy), entries_in(self.store))
        self.assertEqual(run("check", "--store", copy)[0], 0)
        self.goes_on()

    def test_a_store_somebody_writes_in_is_not_replaced(self):
        copy = self.folder / "backups" / "monday.shimwright"
        self.assertEqual(run("backup", copy, "--store", self.store)[0], 0)
        status, out, _ = run("rescue", "--store", self.store, "--put-back")
        self.assertEqual((status, out), (2, []))
        self.goes_on()


main()
