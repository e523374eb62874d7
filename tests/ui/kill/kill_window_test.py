"""Killing the window at any moment loses no entry it had shown as kept, and the job reopens at its place."""
import json
import os
import pathlib
import random
import signal
import sqlite3
import subprocess
import sys
import tempfile
import unittest

CLI, WORKER = sys.argv.pop(1), sys.argv.pop(1)
SCRIPT = "02-bearing-not-home"
TIMES = 1000 if os.environ.get("SHIMWRIGHT_LONG") else int(os.environ.get("SHIMWRIGHT_KILLS", "20"))
MOST_LINES = 30


def killed_after(folder, lines):
    """Numbers of the entries the window showed before it was killed."""
    with subprocess.Popen([WORKER, folder, SCRIPT], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL) as running:
        printed = [running.stdout.readline() for _ in range(lines)]
        running.send_signal(signal.SIGKILL)
        printed += running.stdout.read().splitlines(keepends=True)
    whole = [json.loads(line) for line in printed if line.endswith(b"\n") and line.startswith(b"{")]
    return {seq for line in whole for seq in line["entries"]}


def rows(store, sql):
    with sqlite3.connect(f"file:{store}?mode=ro", uri=True) as database:
        return database.execute(sql).fetchall()


class Kill(unittest.TestCase):
    def test_what_was_shown_is_there(self):
        seed = random.SystemRandom().randrange(1 << 32)
        chance = random.Random(seed)
        for turn in range(TIMES):
            where = f"seed {seed}, turn {turn}"
            with tempfile.TemporaryDirectory() as folder:
                shown = killed_after(folder, chance.randrange(1, MOST_LINES))
                self.is_whole(pathlib.Path(folder) / "workshop.shimwright", shown, where)
                self.reopens_at_its_place(folder, where)

    def is_whole(self, store, shown, where):
        self.assertTrue(shown, where)
        kept = {seq for (seq,) in rows(store, "SELECT seq FROM entry")}
        self.assertEqual(shown - kept, set(), where)
        self.assertEqual(kept, set(range(1, len(kept) + 1)), where)
        checked = subprocess.run([CLI, "check", "--store", store], capture_output=True, text=True, check=False)
        self.assertEqual((checked.returncode, checked.stderr), (0, ""), where)

    def reopens_at_its_place(self, folder, where):
        again = subprocess.run([WORKER, folder, SCRIPT, "--again"], capture_output=True, text=True, check=False)
        lines = [line for line in again.stdout.splitlines() if line.startswith("{")]
        self.assertEqual(len(lines), 1, f"{where}: {again.stdout}{again.stderr}")
        [(step,)] = rows(pathlib.Path(folder) / "workshop.shimwright", "SELECT next_step FROM job")
        self.assertEqual(json.loads(lines[0])["step"], step, where)


unittest.main(verbosity=1)
