"""A real small file system, filled to the brim, under a replay."""
import json
import subprocess
import sys
import tempfile

from program import DEMO, Bench, entries_in, main, run

NOT_RUN = 77
SIZE = "12m"


def mounted(folder):
    """Why it could not be mounted; nothing where it was."""
    try:
        done = subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={SIZE}", "tmpfs", str(folder)], capture_output=True,
                              text=True, check=False)
    except OSError as error:
        return str(error)
    return done.stderr.strip() or "refused" if done.returncode else ""


def unmount(folder):
    subprocess.run(["umount", str(folder)], check=True)


def why_not():
    """Tried once before the tests: what keeps from mounting keeps from all of them."""
    with tempfile.TemporaryDirectory() as folder:
        why = mounted(folder)
        if not why:
            unmount(folder)
        return why


class FullDisk(Bench):
    def setUp(self):
        super().setUp()
        self.disk = self.folder / "disk"
        self.disk.mkdir()
        self.assertEqual(mounted(self.disk), "")
        self.addCleanup(unmount, self.disk)
        self.store = self.disk / "workshop.shimwright"
        self.filler = self.disk / "filler"

    def fill(self, but=0):
        """Fills the disk, but for so many bytes."""
        with self.filler.open("wb", buffering=0) as file:
            try:
                while file.write(b"x" * 4096):
                    pass
            except OSError:
                pass
            file.truncate(max(file.tell() - but, 0))

    def is_full_told(self, err):
        self.assertEqual(len(err), 1, err)
        self.assertIn("The disk is full, so this was not saved; free some space and try again.", err[0])

    def test_a_replay_that_fills_the_disk_loses_nothing_it_printed(self):
        self.assertEqual(run("replay", DEMO[0], "--store", self.store)[0], 0)
        before = entries_in(self.store)
        for room in (0, 16, 64, 160, 320):
            with self.subTest(f"{room} KB"):
                self.fill(but=room * 1024)
                status, out, err = run("replay", DEMO[1], "--store", self.store)
                self.assertEqual(status, 2 if room == 0 else status)
                self.assertNotEqual(status, 0)
                self.is_full_told(err)
                kept = entries_in(self.store)
                self.assertEqual({job: kept[job] for job in before}, before)
                printed = {seq for line in map(json.loads, out) for seq in line.get("entries", [])}
                new = [job for job in kept if job not in before]
                self.assertEqual(printed, kept[new[0]] if new else set())
                before = kept
                self.filler.unlink()
                self.assertEqual(run("check", "--store", self.store)[0], 0)
        status, out, err = run("replay", DEMO[1], "--store", self.store)
        self.assertEqual((status, err), (0, []))
        self.assertEqual(run("check", "--store", self.store)[0], 0)

    def test_a_backup_that_does_not_fit_leaves_the_one_before(self):
        self.assertEqual(run("make-demo", "--jobs", 1, "--store", self.folder / "w.shimwright")[0], 0)
        backup = self.disk / "backup.shimwright"
        self.assertEqual(run("backup", backup, "--store", self.folder / "w.shimwright")[0], 0)
        before = backup.read_bytes()
        self.fill(but=64 * 1024)
        status, out, err = run("backup", backup, "--store", self.folder / "w.shimwright")
        self.assertEqual((status, out), (1, []))
        self.is_full_told([line for line in err if not line.startswith("backup: ")])
        self.assertEqual(backup.read_bytes(), before)
        self.assertEqual(sorted(path.name for path in self.disk.iterdir()), ["backup.shimwright", "filler", "photos"])
        self.filler.unlink()
        self.assertEqual(run("backup", backup, "--store", self.folder / "w.shimwright")[0], 0)


if WHY_NOT := why_not():
    print(f"Not run: a file system of {SIZE} could not be mounted ({WHY_NOT}).")
    sys.exit(NOT_RUN)
main()
