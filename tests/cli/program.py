"""Runs the program as a person would and reads what it says."""
import contextlib
import json
import pathlib
import sqlite3
import subprocess
import sys
import tempfile
import unittest

PROGRAM = sys.argv.pop(1) if len(sys.argv) > 1 and not sys.argv[1].startswith("-") else ""
SOURCE = pathlib.Path(__file__).resolve().parents[2]
DEMO = sorted((SOURCE / "data" / "demo").glob("*.json"))


def run(*words, text=None, folder=None):
    """What a call in that folder did: exit status, lines of standard output, lines of standard error."""
    done = subprocess.run([PROGRAM, *map(str, words)], input=text, capture_output=True, text=True, check=False, cwd=folder)
    return done.returncode, done.stdout.splitlines(), done.stderr.splitlines()


def entries_in(store):
    """Sequence numbers of each job in the store, read by plain SQLite."""
    there = {}
    with contextlib.closing(sqlite3.connect(f"file:{store}?mode=ro", uri=True)) as database:
        for job, seq in database.execute("SELECT job, seq FROM entry"):
            there.setdefault(job, set()).add(seq)
    return there


class Bench(unittest.TestCase):
    """A folder of its own for each test."""

    def setUp(self):
        self._folder = tempfile.TemporaryDirectory()
        self.addCleanup(self._folder.cleanup)
        self.folder = pathlib.Path(self._folder.name)
        self.store = self.folder / "workshop.shimwright"

    def refused(self, *words, text=None, folder=None):
        """The one line with which a call is refused."""
        status, out, err = run(*words, text=text, folder=folder)
        self.assertEqual(status, 2, err)
        self.assertEqual(out, [])
        self.assertEqual(len(err), 1, err)
        return err[0]


def script(path=None):
    return json.loads((path or DEMO[0]).read_text(encoding="utf-8"))


def main():
    unittest.main(verbosity=1)
