"""A damaged store, and its last whole backup put in its place from a terminal."""
import json

from program import DEMO, Bench, entries_in, main, run


class Rescue(Bench):
    def setUp(self):
        super().setUp()
        self.backup = self.folder / "backups" / "monday.shimwright"
        self.assertEqual(run("make-demo", "--jobs", 2, "--store", self.store)[0], 0)
        self.assertEqual(run("backup", self.backup, "--store", self.store)[0], 0)
        self.backed = entries_in(self.store)
        self.assertEqual(run("replay", DEMO[0], "--store", self.store)[0], 0)

    def damage(self):
        """Takes the end of the file away; gives what is left."""
        data = self.store.read_bytes()[:-4096]
        self.store.write_bytes(data)
        return data

    def spoil_a_row(self):
        """Changes one letter of what is derived: all can still be read."""
        data = bytearray(self.store.read_bytes())
        at = data.rfind(b'"within"')
        data[at + 1] ^= 1
        self.store.write_bytes(data)

    def test_it_tells_what_there_is_and_changes_nothing(self):
        left = self.damage()
        status, out, err = run("rescue", "--store", self.store)
        self.assertEqual((status, len(err)), (0, 1))
        self.assertIn("is whole; its last entry is of", err[0])
        line = json.loads(out[0])
        self.assertEqual((line["backup"], line["jobs"]), (str(self.backup), 2))
        self.assertEqual(line["entries"], sum(map(len, self.backed.values())))
        self.assertNotIn("kept", line)
        self.assertEqual(self.store.read_bytes(), left)

    def test_it_tells_what_would_be_missing(self):
        whole = entries_in(self.store)
        self.spoil_a_row()
        status, out, err = run("rescue", "--store", self.store, "--from", self.backup.parent)
        missing = json.loads(out[0])["missing"]
        after = sum(map(len, whole.values())) - sum(map(len, self.backed.values()))
        self.assertEqual((status, missing), (0, {"jobs": 1, "entries": after}))
        self.assertIn(f"Entered after it, and then missing: {after} entries, in jobs: 1", err[0])

    def test_it_puts_the_backup_back_and_keeps_the_damaged_store(self):
        for number in (1, 2):
            left = self.damage()
            status, out, err = run("rescue", "--store", self.store, "--put-back")
            self.assertEqual(status, 0, err)
            kept = self.folder / f"{self.store.name}.damaged-{number}"
            self.assertEqual(json.loads(out[0])["kept"], str(kept))
            self.assertEqual(kept.read_bytes(), left)
            self.assertEqual(entries_in(self.store), self.backed)
            self.assertEqual(run("check", "--store", self.store)[0], 0)
        self.assertEqual(run("replay", DEMO[0], "--store", self.store)[0], 0)

    def test_a_store_in_order_stays(self):
        before = entries_in(self.store)
        self.assertIn("in order", self.refused("rescue", "--store", self.store, "--put-back"))
        self.assertEqual(entries_in(self.store), before)
        self.assertEqual(list(self.folder.glob("*.damaged-*")), [])

    def test_where_there_is_no_whole_backup_nothing_is_put_back(self):
        left = self.damage()
        self.backup.write_bytes(self.backup.read_bytes()[:-4096])
        status, out, err = run("rescue", "--store", self.store, "--put-back")
        self.assertEqual((status, out, len(err)), (1, [], 1))
        self.assertIn("no whole backup", err[0])
        self.assertEqual(self.store.read_bytes(), left)
        self.assertEqual(run("rescue", "--store", self.store, "--from", self.folder / "none")[0], 1)


main()
