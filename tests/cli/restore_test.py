"""Going back to a backup from a terminal, and bringing it to another machine."""
import json
import sqlite3

from program import DEMO, Bench, entries_in, main, run


class Restore(Bench):
    def setUp(self):
        super().setUp()
        self.backup = self.folder / "stick" / "monday.shimwright"
        self.assertEqual(run("make-demo", "--jobs", 2, "--store", self.store)[0], 0)
        self.assertEqual(run("backup", self.backup, "--store", self.store)[0], 0)
        self.backed = entries_in(self.store)
        self.assertEqual(run("replay", DEMO[0], "--store", self.store)[0], 0)
        self.whole = entries_in(self.store)

    def test_it_tells_what_would_come_and_changes_nothing(self):
        status, out, err = run("restore", self.backup, "--store", self.store, "--look")
        line = json.loads(out[0])
        after = sum(map(len, self.whole.values())) - sum(map(len, self.backed.values()))
        self.assertEqual((status, line["jobs"], line["missing"]), (0, 2, {"jobs": 1, "entries": after}))
        self.assertIn(f"Entered after it: {after} entries, in jobs: 1", err[0])
        self.assertEqual(entries_in(self.store), self.whole)

    def test_it_restores_and_keeps_what_was_there(self):
        status, out, err = run("restore", self.backup, "--store", self.store)
        self.assertEqual((status, err), (0, []))
        line = json.loads(out[0])
        self.assertEqual(line["entries_compared"], sum(map(len, self.backed.values())))
        self.assertEqual(entries_in(self.store), self.backed)
        self.assertEqual(entries_in(line["kept"]), self.whole)
        self.assertEqual(run("check", "--store", self.store)[0], 0)

    def test_another_machine_begins_with_the_backup(self):
        new = self.folder / "laptop" / "workshop.shimwright"
        self.assertEqual(run("restore", self.backup, "--store", new)[0], 0)
        self.assertEqual(entries_in(new), self.backed)
        self.assertEqual(run("check", "--store", new)[0], 0)

    def test_what_is_no_backup_of_ours_is_refused(self):
        for content in (b"", b"a text", self.backup.read_bytes()[:-5000]):
            other = self.folder / "stick" / "other.shimwright"
            other.write_bytes(content)
            self.refused("restore", other, "--store", self.store)
            self.refused("restore", other, "--store", self.store, "--look")
        other.unlink()
        with sqlite3.connect(other) as database:
            database.execute("CREATE TABLE theirs (a)")
        database.close()
        self.refused("restore", other, "--store", self.store)
        self.assertEqual(entries_in(self.store), self.whole)
        self.assertEqual(list(self.folder.glob("*.before-restore-*")), [])


main()
